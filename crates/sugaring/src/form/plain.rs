//! Lists, texts, choices and bare numbers of a tree.

use alloc::{borrow::ToOwned, format, vec::Vec};
use core::ops::RangeInclusive;

use super::{Node, Tree};
use crate::{
    error::{Error, ErrorKind},
    units::{quoted, table},
};

impl<'a> Node<'a> {
    /// The items of a list: `sap[0]`, `sap[1]`.
    pub(crate) fn list(&self) -> Result<Vec<Node<'a>>, Error> {
        let Tree::List(list) = self.tree else {
            return Err(self.unreadable("a list"));
        };
        let nodes = list.iter().enumerate().map(|(index, tree)| {
            let node = self.item(index, tree);
            match tree {
                Tree::Null => Err(node.empty()),
                _ => Ok(node),
            }
        });
        nodes.collect()
    }

    /// A text of one line and at most `most` characters.
    pub(crate) fn text(&self, most: usize) -> Result<&'a str, Error> {
        let Tree::Text(text) = self.tree else {
            return Err(self.unreadable("a text"));
        };
        if text.chars().nth(most).is_some() {
            return Err(self.unreadable(&format!("a text of at most {most} characters")));
        }
        if text.chars().any(char::is_control) {
            return Err(self.unreadable("a text of one line"));
        }
        Ok(text)
    }

    /// One of the names `known`; those of `later` come in a later version.
    pub(crate) fn choice(&self, known: &[&'static str], later: &[&str]) -> Result<&'static str, Error> {
        let Tree::Text(text) = self.tree else {
            return Err(self.unreadable(&format!("one of {}", known.join(", "))));
        };
        if let Some(name) = known.iter().find(|name| *name == text) {
            return Ok(name);
        }
        if later.contains(&text.as_str()) {
            return Err(Error::not_yet(self.path().to_owned(), text));
        }
        Err(Error::unknown_name(self.path().to_owned(), text, known.iter().copied()))
    }

    /// A bare finite number.
    pub(crate) fn number(&self) -> Result<f64, Error> {
        match self.tree {
            Tree::Number(number) if number.is_finite() => Ok(*number),
            Tree::Number(number) => Err(Error::not_finite(self.path().to_owned(), *number)),
            Tree::Text(text) => {
                let error = Error::unreadable(self.path().to_owned(), &quoted(text));
                Err(error.with_hint("a number is needed, without quotes"))
            }
            _ => Err(self.unreadable("a number")),
        }
    }

    /// A finite number that is not negative.
    pub(crate) fn not_negative(&self) -> Result<f64, Error> {
        let number = self.number()?;
        if number >= 0.0 {
            return Ok(number);
        }
        let finding = format!(" = {} is outside 0 and up", table::fraction.show(number));
        Err(Error::new(ErrorKind::OutOfRange, self.path().to_owned(), finding)
            .with_value(number, &table::fraction)
            .with_range(0.0, f64::INFINITY))
    }

    /// A whole number of `range`.
    pub(crate) fn whole(&self, range: RangeInclusive<u64>) -> Result<u64, Error> {
        // Above this not every whole number is one of the numbers that JSON readers agree on.
        const MOST: u64 = 1 << 53;
        let number = self.number()?;
        let (low, high) = (*range.start(), (*range.end()).min(MOST));
        #[expect(clippy::cast_precision_loss, reason = "whole numbers up to 2^53 are exact")]
        let limits = (low as f64, high as f64);
        if number < limits.0 || number > limits.1 {
            let shown = table::fraction.show(number);
            let finding = format!(" = {shown} is outside {low} to {high}");
            return Err(Error::new(ErrorKind::OutOfRange, self.path().to_owned(), finding)
                .with_value(number, &table::fraction)
                .with_range(limits.0, limits.1));
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "it lies from 0 to 2^53, and what is cut off is compared below"
        )]
        let whole = number as u64;
        #[expect(clippy::cast_precision_loss, clippy::float_cmp, reason = "exact up to 2^53")]
        if whole as f64 == number {
            Ok(whole)
        } else {
            Err(self.unreadable("a whole number"))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::form::checking::{map, refused};
    use ErrorKind::{NotFinite, OutOfRange, UnknownName, Unreadable};

    #[test]
    fn another_type_is_refused() {
        let tree = map([
            ("sap", Tree::from(3.0)),
            ("title", map([("a", Tree::Null)])),
            ("run", Tree::from("batsh")),
            ("start", Tree::from("07\n00")),
            ("samples", Tree::from("many")),
        ]);
        let top = Node::top(&tree);
        let at = |key| top.required(key).unwrap();
        refused(at("sap").list(), Unreadable, "sap = 3 cannot be read; a list is needed");
        refused(
            at("sap").keys(&[], &[]),
            Unreadable,
            "sap = 3 cannot be read; a set of keys with values is needed",
        );
        refused(
            Node::top(&Tree::Null).get("sap"),
            Unreadable,
            "inputs = null cannot be read; a set of keys with values is needed",
        );
        refused(
            at("title").text(80),
            Unreadable,
            "title = {\"a\": …} cannot be read; a text is needed",
        );
        refused(
            at("run").choice(&["batch"], &[]),
            UnknownName,
            "run has the unknown name \"batsh\"; nearest: batch",
        );
        refused(
            at("run").choice(&["batch"], &["batsh"]),
            UnknownName,
            "run has the unknown name \"batsh\"; this version does not know it yet",
        );
        refused(
            at("sap").choice(&["batch", "held"], &[]),
            Unreadable,
            "sap = 3 cannot be read; one of batch, held is needed",
        );
        refused(
            at("run").text(4),
            Unreadable,
            "run = \"batsh\" cannot be read; a text of at most 4 characters is needed",
        );
        refused(
            at("start").text(80),
            Unreadable,
            "start = \"07 00\" cannot be read; a text of one line is needed",
        );
        refused(
            at("samples").number(),
            Unreadable,
            "samples = \"many\" cannot be read; a number is needed, without quotes",
        );
        assert_eq!(at("run").text(5), Ok("batsh"));
    }

    #[test]
    fn numbers_are_whole_and_within() {
        let tree: Tree = [2.0, 2.5, 70.0, -1.0, f64::NAN, 1e300]
            .map(Tree::from)
            .into_iter()
            .collect();
        let tree = map([("parallel", tree)]);
        let nodes = Node::top(&tree).required("parallel").unwrap().list().unwrap();
        let [two, half, many, below, nan, huge] = nodes.as_slice() else {
            panic!("six")
        };
        assert_eq!(two.whole(1..=64), Ok(2));
        refused(
            half.whole(1..=64),
            Unreadable,
            "parallel[1] = 2.5 cannot be read; a whole number is needed",
        );
        refused(many.whole(1..=64), OutOfRange, "parallel[2] = 70 is outside 1 to 64");
        refused(
            below.whole(0..=u64::MAX),
            OutOfRange,
            "parallel[3] = -1 is outside 0 to 9007199254740992",
        );
        refused(below.not_negative(), OutOfRange, "parallel[3] = -1 is outside 0 and up");
        refused(nan.whole(1..=64), NotFinite, "parallel[4] = NaN is not a finite number");
        refused(huge.whole(1..=64), OutOfRange, "parallel[5] = 1e300 is outside 1 to 64");
    }
}
