//! Texts and data from outside: one small tree of keys, numbers, texts and quantities.
//!
//! JSON, a dict or an object becomes a [`Tree`] first, and one builder walks it with the path in hand: so an
//! error has the same kind, path and text whatever the input came from.

pub use tree::Tree;

pub(crate) use node::Node;

mod amount;
#[cfg(test)]
mod checking;
mod data;
mod foreign;
mod json;
mod node;
mod plain;
mod schema;
mod tree;
