//! Values of keys, as every part of the inputs reads them.

use alloc::{
    string::{String, ToString},
    vec::Vec,
};

pub(crate) fn given<T: Value>(node: &Node<'_>, key: &str) -> Result<Option<Given<T>>, Error> {
    match node.get(key)? {
        Some(node) => node.quantity().map(Some),
        None => Ok(None),
    }
}

pub(crate) fn needed<T: Value>(node: &Node<'_>, key: &str) -> Result<Given<T>, Error> {
    node.required(key)?.quantity()
}

pub(crate) fn optional<'a, T>(
    node: &Node<'a>,
    key: &str,
    read: impl FnOnce(&Node<'a>) -> Result<T, Error>,
) -> Result<Option<T>, Error> {
    match node.get(key)? {
        Some(node) => read(&node).map(Some),
        None => Ok(None),
    }
}

pub(crate) fn each<'a, T>(
    node: Option<Node<'a>>,
    read: impl Fn(&Node<'a>) -> Result<T, Error>,
) -> Result<Vec<T>, Error> {
    match node {
        Some(node) => node.list()?.iter().map(read).collect(),
        None => Ok(Vec::new()),
    }
}

pub(crate) fn text(node: &Node<'_>, key: &str) -> Result<Option<String>, Error> {
    match node.get(key)? {
        Some(node) => Ok(Some(node.text(80)?.to_string())),
        None => Ok(None),
    }
}

pub(crate) fn number(node: &Node<'_>, key: &str) -> Result<Option<f64>, Error> {
    match node.get(key)? {
        Some(node) => node.number().map(Some),
        None => Ok(None),
    }
}

pub(crate) fn whole(node: &Node<'_>, key: &str, low: u32, high: u32) -> Result<Option<u32>, Error> {
    match node.get(key)? {
        Some(node) => {
            let number = node.whole(u64::from(low)..=u64::from(high))?;
            Ok(u32::try_from(number).ok())
        }
        None => Ok(None),
    }
}
use crate::{
    error::Error,
    form::{Node, Tree},
    units::{Given, Price, Value},
};

/// A seed of 64 bits: a number where a double holds it, else its digits as a text.
pub(crate) fn read_seed(node: &Node<'_>) -> Result<u64, Error> {
    if let Tree::Text(text) = node.tree() {
        if let Ok(seed) = text.parse() {
            return Ok(seed);
        }
    }
    node.whole(0..=u64::MAX)
}

pub(crate) fn price(node: &Node<'_>, key: &str) -> Result<Option<Price>, Error> {
    match node.get(key)? {
        Some(node) => node.price().map(Some),
        None => Ok(None),
    }
}
