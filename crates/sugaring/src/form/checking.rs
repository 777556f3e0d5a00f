//! What the tests of this folder share.

use super::Tree;
use crate::error::{Error, ErrorKind};

pub(super) fn map<const N: usize>(entries: [(&str, Tree); N]) -> Tree {
    Tree::map(entries)
}

pub(super) fn refused<T: core::fmt::Debug>(result: Result<T, Error>, kind: ErrorKind, says: &str) {
    let error = result.unwrap_err();
    assert_eq!((error.kind(), error.to_string().as_str()), (kind, says));
}
