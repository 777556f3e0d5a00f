use super::Tree;
use crate::error::Error;
use alloc::{borrow::ToOwned, format, string::String, vec::Vec};

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

    /// An argument of a function: paths begin with its name.
    pub(crate) fn argument(tree: &'a Tree, name: &str) -> Self {
        Self {
            tree,
            path: name.to_owned(),
            whole: "",
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

    pub(super) fn item(&self, index: usize, tree: &'a Tree) -> Self {
        Self {
            tree,
            path: format!("{}[{index}]", self.path()),
            whole: self.whole,
        }
    }

    /// A key that is given with nothing in it.
    #[cold]
    pub(super) fn empty(&self) -> Error {
        Error::unreadable(self.path().to_owned(), "null").with_hint("leave it out")
    }

    /// Something else stands here than `needed`, such as "a list".
    #[cold]
    pub(crate) fn unreadable(&self, needed: &str) -> Error {
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
            Tree::Null => Err(node.empty()),
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        error::ErrorKind,
        form::checking::{map, refused},
    };

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
}
