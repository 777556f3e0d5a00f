//! The tree as serde data, read and written by hand.
#![cfg(feature = "serde")]

use alloc::{borrow::ToOwned, string::String, vec::Vec};
use core::fmt;

use serde::{
    Deserialize, Deserializer, Serialize, Serializer,
    de::{DeserializeSeed, Error as _, MapAccess, SeqAccess, Visitor},
    ser::{Error as _, SerializeMap},
};

use super::{Node, Tree};
use crate::units::{Quantity, Unit};

/// Inputs are a few levels deep; what is deeper is no input, and would use up the stack.
const DEEPEST: usize = 64;

/// The one key of the map as which `serde_json` hands out a number once any crate has turned on its
/// `arbitrary_precision`.
const RAW_NUMBER: &str = "$serde_json::private::Number";

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Branch { depth: 0 }.deserialize(deserializer)
    }
}

/// A tree at some depth.
#[derive(Clone, Copy)]
struct Branch {
    depth: usize,
}

impl Branch {
    fn deeper<E: serde::de::Error>(self) -> Result<Self, E> {
        if self.depth < DEEPEST {
            Ok(Self { depth: self.depth + 1 })
        } else {
            Err(E::custom("the data is nested more than 64 levels deep"))
        }
    }
}

impl<'de> DeserializeSeed<'de> for Branch {
    type Value = Tree;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Tree, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Branch {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a number, a text, a list or a set of keys with values")
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Bool(flag))
    }

    #[expect(clippy::cast_precision_loss, reason = "the nearest number, as for any other digits")]
    fn visit_i64<E>(self, number: i64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    #[expect(clippy::cast_precision_loss, reason = "the nearest number, as for any other digits")]
    fn visit_u64<E>(self, number: u64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Tree, E> {
        Ok(Tree::Number(number))
    }

    fn visit_str<E>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.to_owned()))
    }

    fn visit_string<E>(self, text: String) -> Result<Tree, E> {
        Ok(Tree::Text(text))
    }

    fn visit_unit<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_none<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<Tree, D::Error> {
        self.deeper()?.deserialize(deserializer)
    }

    fn visit_newtype_struct<D: Deserializer<'de>>(self, deserializer: D) -> Result<Tree, D::Error> {
        self.deeper()?.deserialize(deserializer)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Tree, A::Error> {
        let inner = self.deeper()?;
        let mut list = Vec::new();
        while let Some(item) = items.next_element_seed(inner)? {
            list.push(item);
        }
        Ok(Tree::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Tree, A::Error> {
        let inner = self.deeper()?;
        let mut map = Vec::new();
        while let Some(key) = entries.next_key::<String>()? {
            if map.is_empty() && key == RAW_NUMBER {
                return number(&entries.next_value::<String>()?);
            }
            let value = entries.next_value_seed(inner)?;
            map.push((key, value));
        }
        Ok(Tree::Map(map))
    }
}

fn number<E: serde::de::Error>(digits: &str) -> Result<Tree, E> {
    match digits.parse::<f64>() {
        Ok(number) if number.is_finite() => Ok(Tree::Number(number)),
        _ => Err(E::custom("number out of range")),
    }
}

impl Serialize for Tree {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Null => serializer.serialize_unit(),
            Self::Bool(flag) => serializer.serialize_bool(*flag),
            Self::Number(number) => Shortest(*number).serialize(serializer),
            Self::Text(text) => serializer.serialize_str(text),
            Self::Quantity(quantity) => quantity.serialize(serializer),
            Self::List(list) => serializer.collect_seq(list),
            Self::Map(map) => serializer.collect_map(map.iter().map(|(key, value)| (key, value))),
        }
    }
}

/// `{"value": 40, "unit": "gal"}`; °Brix, fractions and counts are bare numbers.
impl Serialize for Quantity {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let bare = self.dimension().is_plain() && self.unit() == Unit::base(self.dimension());
        if bare {
            return Shortest(self.value()).serialize(serializer);
        }
        let mut map = serializer.serialize_map(Some(2))?;
        map.serialize_entry("value", &Shortest(self.value()))?;
        map.serialize_entry("unit", self.unit().symbol)?;
        map.end()
    }
}

/// From a text such as `"40 gal"` or from `{"value": 40, "unit": "gal"}`.
impl<'de> Deserialize<'de> for Quantity {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let tree = Tree::deserialize(deserializer)?;
        Node::root(&tree, "quantity").any_quantity().map_err(D::Error::custom)
    }
}

/// A number in the shortest digits that read back to it; a whole one without ".0".
struct Shortest(f64);

impl Serialize for Shortest {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        // All digits of such a number are its own, so that they are the shortest too.
        const WHOLE: f64 = 9_007_199_254_740_992.0;
        let number = self.0;
        if !number.is_finite() {
            return Err(S::Error::custom("data cannot hold a number that is not finite"));
        }
        #[expect(clippy::cast_possible_truncation, reason = "what is cut off is compared below")]
        let whole = number as i64;
        #[expect(
            clippy::cast_precision_loss,
            clippy::float_cmp,
            reason = "exact up to 2^53, and only then used"
        )]
        let is_whole = number.abs() <= WHOLE && whole as f64 == number;
        let minus_zero = whole == 0 && number.is_sign_negative();
        if is_whole && !minus_zero {
            serializer.serialize_i64(whole)
        } else {
            serializer.serialize_f64(number)
        }
    }
}
