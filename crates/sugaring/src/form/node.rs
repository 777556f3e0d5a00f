use alloc::{
    borrow::ToOwned,
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::ops::RangeInclusive;

use super::Tree;
use crate::{
    error::{Error, ErrorKind},
    units::{quoted, table},
};

/// A place in a tree and the path to it: every error that comes out names the path.
#[derive(Clone, Debug)]
pub(crate) struct Node<'a> {
    pub(super) tree: &'a Tree,
    path: String,
    /// What the whole is called where the path is empty.
    whole: &'static str,
}

impl<'a> Node<'a> {
    /// The whole of a day's inputs: paths begin with the keys in it.
    pub(crate) fn top(tree: &'a Tree) -> Self {
        Self::root(tree, "inputs")
    }

    /// A tree that errors call `whole` where no path says more.
    pub(crate) fn root(tree: &'a Tree, whole: &'static str) -> Self {
        Self {
            tree,
            path: String::new(),
            whole,
        }
    }

    /// The path for errors: `sap[0].volume`.
    pub(crate) fn path(&self) -> &str {
        if self.path.is_empty() { self.whole } else { &self.path }
    }

    /// The tree at this place.
    pub(crate) fn tree(&self) -> &'a Tree {
        self.tree
    }

    /// An error of this place that names no argument yet.
    pub(super) fn at(&self, error: Error) -> Error {
        error.named(self.path())
    }

    pub(super) fn child(&self, key: &str, tree: &'a Tree) -> Self {
        let path = if self.path.is_empty() {
            key.to_owned()
        } else {
            format!("{}.{key}", self.path)
        };
        Self {
            tree,
            path,
            whole: self.whole,
        }
    }

    /// Something else stands here than `needed`, such as "a list".
    #[cold]
    pub(super) fn unreadable(&self, needed: &str) -> Error {
        Error::unreadable(self.path().to_owned(), &self.tree.shown()).with_hint(format!("{needed} is needed"))
    }

    fn missing(&self) -> Error {
        Error::missing(self.path().to_owned())
    }
}

/// Keys and values.
impl<'a> Node<'a> {
    fn map(&self) -> Result<&'a [(String, Tree)], Error> {
        match self.tree {
            Tree::Map(map) => Ok(map),
            _ => Err(self.unreadable("a set of keys with values")),
        }
    }

    /// Every key with its value, for maps whose keys the user chooses; none twice.
    pub(crate) fn entries(&self) -> Result<Vec<(&'a str, Node<'a>)>, Error> {
        let map = self.map()?;
        let mut names: Vec<&str> = map.iter().map(|(key, _)| key.as_str()).collect();
        names.sort_unstable();
        let mut pairs = names.iter().zip(names.iter().skip(1));
        if let Some((twice, _)) = pairs.find(|(one, next)| one == next) {
            return Err(self.twice(twice));
        }
        map.iter()
            .map(|(key, tree)| self.present(key, tree).map(|node| (key.as_str(), node)))
            .collect()
    }

    /// Refuses every key but those of `known`; those of `later` come in a later version. No key stands twice.
    pub(crate) fn keys(&self, known: &[&str], later: &[&str]) -> Result<(), Error> {
        let map = self.map()?;
        for (index, (key, _)) in map.iter().enumerate() {
            if later.contains(&key.as_str()) {
                return Err(Error::not_yet(self.path().to_owned(), key));
            }
            if !known.contains(&key.as_str()) {
                return Err(Error::unknown_name(self.path().to_owned(), key, known.iter().copied()));
            }
            // At most as many keys as are known come this far, so this stays quick.
            if map.iter().take(index).any(|(earlier, _)| earlier == key) {
                return Err(self.twice(key));
            }
        }
        Ok(())
    }

    fn twice(&self, key: &str) -> Error {
        let last = self.map().ok().and_then(|map| map.iter().rev().find(|(k, _)| k == key));
        match last {
            Some((_, tree)) => {
                let node = self.child(key, tree);
                Error::unreadable(node.path().to_owned(), &tree.shown()).with_hint("the key is given twice")
            }
            None => self.unreadable("each key once"),
        }
    }

    fn present(&self, key: &str, tree: &'a Tree) -> Result<Self, Error> {
        let node = self.child(key, tree);
        match tree {
            Tree::Null => Err(Error::unreadable(node.path().to_owned(), "null").with_hint("leave it out")),
            _ => Ok(node),
        }
    }

    /// The value of `key`, if it is given; call [`Node::keys`] first.
    pub(crate) fn get(&self, key: &str) -> Result<Option<Self>, Error> {
        match self.map()?.iter().find(|(k, _)| k == key) {
            Some((_, tree)) => self.present(key, tree).map(Some),
            None => Ok(None),
        }
    }

    /// The value of `key`, which must be given; call [`Node::keys`] first.
    pub(crate) fn required(&self, key: &str) -> Result<Self, Error> {
        match self.get(key)? {
            Some(node) => Ok(node),
            None => Err(self.child(key, self.tree).missing()),
        }
    }

    /// The one key this map has, which must be one of `known`: `{"recirculate_until": {…}}`.
    pub(crate) fn one_of(&self, known: &[&'static str], later: &[&str]) -> Result<(&'static str, Self), Error> {
        self.keys(known, later)?;
        match self.either(known)? {
            Some(found) => Ok(found),
            None => Err(self
                .missing()
                .with_hint(format!("one of {} is needed", known.join(", ")))),
        }
    }

    /// Which of the alternatives `known` is given, if any; two are one too many.
    pub(crate) fn either(&self, known: &[&'static str]) -> Result<Option<(&'static str, Self)>, Error> {
        let mut found: Option<(&'static str, Self)> = None;
        for key in known {
            let Some(node) = self.get(key)? else { continue };
            if let Some((first, other)) = found {
                let beside = format!("{first} = {}", other.tree.told());
                let error = Error::inconsistent(node.path().to_owned(), &node.tree.told(), &beside);
                return Err(error.with_hint("give one of them"));
            }
            found = Some((key, node));
        }
        Ok(found)
    }
}

/// Lists and plain values.
impl<'a> Node<'a> {
    /// The items of a list: `sap[0]`, `sap[1]`.
    pub(crate) fn list(&self) -> Result<Vec<Node<'a>>, Error> {
        let Tree::List(list) = self.tree else {
            return Err(self.unreadable("a list"));
        };
        let nodes = list.iter().enumerate().map(|(index, tree)| {
            let node = Self {
                tree,
                path: format!("{}[{index}]", self.path()),
                whole: self.whole,
            };
            match tree {
                Tree::Null => Err(Error::unreadable(node.path, "null").with_hint("leave it out")),
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

    /// Yes or no.
    pub(crate) fn flag(&self) -> Result<bool, Error> {
        match self.tree {
            Tree::Bool(flag) => Ok(*flag),
            _ => Err(self.unreadable("true or false")),
        }
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

    fn map<const N: usize>(entries: [(&str, Tree); N]) -> Tree {
        Tree::map(entries)
    }

    fn refused<T: core::fmt::Debug>(result: Result<T, Error>, kind: ErrorKind, says: &str) {
        let error = result.unwrap_err();
        assert_eq!((error.kind(), error.to_string().as_str()), (kind, says));
    }

    #[test]
    fn keys_are_known_or_refused() {
        let tree = map([("membrane", map([("presure", Tree::from("7.6 bar gauge"))]))]);
        let membrane = Node::top(&tree).required("membrane").unwrap();
        refused(
            membrane.keys(&["pressure", "parallel"], &[]),
            ErrorKind::UnknownName,
            "membrane has the unknown name \"presure\"; nearest: pressure",
        );
        refused(
            membrane.keys(&["pressure"], &["presure"]),
            ErrorKind::UnknownName,
            "membrane has the unknown name \"presure\"; this version does not know it yet",
        );
        refused(
            Node::top(&tree).keys(&["air", "sap"], &[]),
            ErrorKind::UnknownName,
            "inputs has the unknown name \"membrane\"; known: air, sap",
        );
        refused(Node::top(&tree).required("sap"), ErrorKind::Missing, "sap is missing");
        refused(
            membrane.required("pressure"),
            ErrorKind::Missing,
            "membrane.pressure is missing",
        );
    }

    #[test]
    fn a_key_stands_once_and_never_empty() {
        let twice = map([(
            "sap",
            map([("volume", Tree::from(1.0)), ("volume", Tree::from("95 L"))]),
        )]);
        let sap = Node::top(&twice).required("sap").unwrap();
        let says = "sap.volume = \"95 L\" cannot be read; the key is given twice";
        refused(sap.keys(&["volume"], &[]), ErrorKind::Unreadable, says);
        refused(sap.entries(), ErrorKind::Unreadable, says);
        let empty = map([("title", Tree::Null), ("sap", Tree::List(alloc::vec![Tree::Null]))]);
        let top = Node::top(&empty);
        let says = "title = null cannot be read; leave it out";
        refused(top.get("title"), ErrorKind::Unreadable, says);
        refused(top.entries(), ErrorKind::Unreadable, says);
        refused(
            top.required("sap").unwrap().list(),
            ErrorKind::Unreadable,
            "sap[0] = null cannot be read; leave it out",
        );
    }

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
        use ErrorKind::{UnknownName, Unreadable};
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
            at("sap").flag(),
            Unreadable,
            "sap = 3 cannot be read; true or false is needed",
        );
        refused(
            at("samples").number(),
            Unreadable,
            "samples = \"many\" cannot be read; a number is needed, without quotes",
        );
        assert_eq!(at("run").text(5), Ok("batsh"));
    }

    #[test]
    fn one_alternative_is_taken() {
        let until = map([("brix", Tree::from(4.0))]);
        let both = map([("brix", Tree::from(4.0)), ("volume", Tree::from("130 L"))]);
        let tree = map([("run", until), ("both", both), ("none", map([]))]);
        let top = Node::top(&tree);
        let at = |key| top.required(key).unwrap();
        let known = ["volume", "brix"];
        let (key, node) = at("run").one_of(&known, &[]).unwrap();
        assert_eq!((key, node.path(), node.number()), ("brix", "run.brix", Ok(4.0)));
        refused(
            at("both").one_of(&known, &[]),
            ErrorKind::Inconsistent,
            "both.brix = 4 does not fit volume = 130 L; give one of them",
        );
        refused(
            at("none").one_of(&known, &[]),
            ErrorKind::Missing,
            "none is missing; one of volume, brix is needed",
        );
        refused(
            at("run").one_of(&["volume"], &["brix"]),
            ErrorKind::UnknownName,
            "run has the unknown name \"brix\"; this version does not know it yet",
        );
        assert!(at("none").either(&known).unwrap().is_none());
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
        use ErrorKind::{NotFinite, OutOfRange, Unreadable};
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
