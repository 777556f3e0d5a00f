#![cfg(feature = "json")]

use alloc::{
    format,
    string::{String, ToString},
};

use super::Tree;
use crate::{
    error::{Error, ErrorKind},
    units::quoted,
};

/// JSON.
impl Tree {
    /// The tree of a JSON text. Numbers are read to the nearest f64, keys keep their order.
    ///
    /// # Errors
    /// Unreadable, with line and column, where the text is no JSON, holds a number that no f64 holds, or is
    /// nested more than 64 levels deep.
    ///
    /// ```
    /// use sugaring::form::Tree;
    /// assert_eq!(Tree::from_json("[1.5]")?, Tree::List(vec![Tree::Number(1.5)]));
    /// let error = Tree::from_json("{\"volume\": 40 gal}").unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "json = \"{\"volume\": 40 gal}\" cannot be read; line 1 column 15: expected `,` or `}`"
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn from_json(text: &str) -> Result<Self, Error> {
        // Editors of some systems put a mark of the byte order before the text.
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        serde_json::from_str(text).map_err(|error| no_json(text, &error))
    }

    /// The tree as JSON on one line; quantities as `{"value": 40, "unit": "gal"}`.
    ///
    /// # Errors
    /// Not finite, with its path, where the tree holds NaN or infinity.
    pub fn to_json(&self) -> Result<String, Error> {
        self.all_finite()?;
        serde_json::to_string(self).map_err(|error| unwritable(&error))
    }

    /// The same with a line for each value, indented by two spaces.
    ///
    /// # Errors
    /// As for [`Tree::to_json`].
    pub fn to_json_pretty(&self) -> Result<String, Error> {
        self.all_finite()?;
        serde_json::to_string_pretty(self).map_err(|error| unwritable(&error))
    }

    /// Refuses numbers that data cannot carry.
    fn all_finite(&self) -> Result<(), Error> {
        match self {
            Self::Number(number) if !number.is_finite() => Err(Error::not_finite("", *number)),
            Self::Quantity(quantity) => quantity.checked(None).map(|_| ()),
            Self::List(list) => {
                let mut items = list.iter().enumerate();
                items.try_for_each(|(index, item)| item.all_finite().map_err(|e| e.within(&format!("[{index}]"))))
            }
            Self::Map(map) => {
                let mut entries = map.iter();
                entries.try_for_each(|(key, value)| value.all_finite().map_err(|e| e.within(key)))
            }
            _ => Ok(()),
        }
    }
}

#[cold]
fn no_json(text: &str, error: &serde_json::Error) -> Error {
    let (line, column) = (error.line(), error.column());
    let told = error.to_string();
    let what = told.split(" at line ").next().unwrap_or(&told);
    let what = match what.strip_prefix("EOF while parsing ") {
        Some(part) => format!("the text ends within {part}"),
        None => String::from(what),
    };
    Error::unreadable("json", &quoted(around(text, line, column)))
        .with_hint(format!("line {line} column {column}: {what}"))
}

/// The part of a line where the fault stands.
fn around(text: &str, line: usize, column: usize) -> &str {
    const BEFORE: usize = 24;
    let line = text.lines().nth(line.saturating_sub(1)).unwrap_or_default();
    let mut start = column.saturating_sub(BEFORE).min(line.len());
    while !line.is_char_boundary(start) {
        start += 1;
    }
    line.get(start..).unwrap_or_default().trim()
}

/// Numbers were checked before, and text takes everything else.
#[cold]
fn unwritable(error: &serde_json::Error) -> Error {
    Error::new(ErrorKind::Unreadable, "", " cannot be written").with_hint(error.to_string())
}
