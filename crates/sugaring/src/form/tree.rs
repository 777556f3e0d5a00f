use alloc::{
    borrow::ToOwned,
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::{
    digits,
    units::{Quantity, clipped, quoted},
};

/// Data from outside, or for it: what JSON can hold, and quantities with the unit they were given in.
///
/// ```
/// use sugaring::{form::Tree, units::*};
/// let sap = Tree::map([
///     ("volume", Tree::from(Quantity::parse("170 L")?)),
///     ("brix", Tree::from(1.8)),
/// ]);
/// # #[cfg(feature = "json")]
/// assert_eq!(sap.to_json()?, r#"{"volume":{"value":170,"unit":"L"},"brix":1.8}"#);
/// # Ok::<(), sugaring::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub enum Tree {
    /// Nothing: an error wherever an input is read; leave the key out instead.
    Null,
    /// Yes or no.
    Bool(bool),
    /// A bare number.
    Number(f64),
    /// A text, such as a name or `"40 gal"`.
    Text(String),
    /// A number with its unit.
    Quantity(Quantity),
    /// A list.
    List(Vec<Tree>),
    /// Keys and values, in the order given.
    Map(Vec<(String, Tree)>),
}

impl Tree {
    /// Keys and values, in this order.
    pub fn map<K: Into<String>>(entries: impl IntoIterator<Item = (K, Self)>) -> Self {
        let owned = entries.into_iter().map(|(key, value)| (key.into(), value));
        Self::Map(owned.collect())
    }

    /// The value as an error shows it: texts in quotes, lists and maps as a hint of themselves.
    pub(crate) fn shown(&self) -> String {
        match self {
            Self::Null => "null".to_owned(),
            Self::Bool(flag) => flag.to_string(),
            Self::Number(number) => digits::significant(*number, 6),
            Self::Text(text) => quoted(text),
            Self::Quantity(quantity) => quantity.unit().show(quantity.value()),
            Self::List(list) if list.is_empty() => "[]".to_owned(),
            Self::List(_) => "[…]".to_owned(),
            Self::Map(map) => match map.first() {
                Some((key, _)) => format!("{{\"{}\": …}}", clipped(key, 24)),
                None => "{}".to_owned(),
            },
        }
    }

    /// The value as it stands beside another in an error: as [`Tree::shown`], texts without quotes.
    pub(crate) fn told(&self) -> String {
        match self {
            Self::Text(text) => clipped(text, 40),
            other => other.shown(),
        }
    }
}

impl From<bool> for Tree {
    fn from(flag: bool) -> Self {
        Self::Bool(flag)
    }
}

impl From<f64> for Tree {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<&str> for Tree {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<String> for Tree {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<Quantity> for Tree {
    fn from(quantity: Quantity) -> Self {
        Self::Quantity(quantity)
    }
}

impl From<Vec<Self>> for Tree {
    fn from(list: Vec<Self>) -> Self {
        Self::List(list)
    }
}

impl FromIterator<Self> for Tree {
    fn from_iter<I: IntoIterator<Item = Self>>(items: I) -> Self {
        Self::List(items.into_iter().collect())
    }
}
