//! Arguments of a function by name, taken out of data.

use alloc::{string::String, vec::Vec};

use crate::{
    air::{Origin, StationPressure},
    error::Error,
    form::{Node, Tree},
    units::{Pressure, Value, table},
};

/// The arguments of one call.
#[derive(Clone, Copy, Debug)]
pub(super) struct Given<'a>(&'a [(String, Tree)]);

impl<'a> Given<'a> {
    /// The arguments in `tree`, keys with values.
    pub(super) fn of(tree: &'a Tree) -> Result<Self, Error> {
        match tree {
            Tree::Map(entries) => Ok(Self(entries)),
            _ => Err(Error::unreadable("given", &tree.shown()).with_hint("a set of keys with values is needed")),
        }
    }

    /// What is given for `name`, if anything is.
    fn find(self, name: &str) -> Option<&'a Tree> {
        let found = self.0.iter().find(|(key, _)| key == name);
        found.map(|(_, tree)| tree).filter(|tree| **tree != Tree::Null)
    }

    /// What is given for `name`.
    pub(super) fn tree(self, name: &'static str) -> Result<&'a Tree, Error> {
        self.find(name).ok_or_else(|| Error::missing(name))
    }

    /// A quantity; a bare number where its dimension is plain.
    pub(super) fn value<T: Value>(self, name: &'static str) -> Result<T, Error> {
        typed(self.tree(name)?, name)
    }

    /// A quantity that may be left out.
    pub(super) fn optional<T: Value>(self, name: &'static str) -> Result<Option<T>, Error> {
        self.find(name).map(|tree| typed(tree, name)).transpose()
    }

    /// A bare number, which the function checks.
    pub(super) fn number(self, name: &'static str) -> Result<f64, Error> {
        bare(self.tree(name)?, name)
    }

    /// A bare number that may be left out.
    pub(super) fn optional_number(self, name: &'static str) -> Result<Option<f64>, Error> {
        self.find(name).map(|tree| bare(tree, name)).transpose()
    }

    /// A text.
    pub(super) fn text(self, name: &'static str) -> Result<&'a str, Error> {
        self.node(name)?.text(80)
    }

    /// A text that may be left out.
    pub(super) fn optional_text(self, name: &'static str) -> Result<Option<&'a str>, Error> {
        self.find(name)
            .map(|tree| Node::argument(tree, name).text(80))
            .transpose()
    }

    /// A place in data, whose errors begin with `name`.
    pub(super) fn node(self, name: &'static str) -> Result<Node<'a>, Error> {
        self.tree(name).map(|tree| Node::argument(tree, name))
    }

    /// The same, where it may be left out.
    pub(super) fn optional_node(self, name: &'static str) -> Option<Node<'a>> {
        self.find(name).map(|tree| Node::argument(tree, name))
    }

    /// A list of bare numbers, which the function checks.
    pub(super) fn numbers(self, name: &'static str) -> Result<Vec<f64>, Error> {
        let items = self.node(name)?.list()?;
        items.iter().map(|item| bare(item.tree(), item.path())).collect()
    }

    /// A list of quantities.
    pub(super) fn list<T: Value>(self, name: &'static str) -> Result<Vec<T>, Error> {
        let items = self.node(name)?.list()?;
        items.iter().map(|item| typed(item.tree(), item.path())).collect()
    }

    /// A station pressure as plain data: its pressure, and how it was come by and how well where that is said.
    pub(super) fn station(self, name: &'static str) -> Result<StationPressure, Error> {
        let tree = self.tree(name)?;
        let Tree::Map(_) = tree else {
            return Err(Error::no_station(name, tree));
        };
        let node = Node::argument(tree, name);
        node.keys(&["pressure", "uncertainty", "origin"], &[])?;
        let pressure = node.required("pressure")?.quantity::<Pressure>()?.value;
        let mut station = StationPressure::measured(pressure)?;
        if let Some(origin) = node.get("origin")? {
            let known = Origin::ALL.map(Origin::name);
            let origin = origin.choice(&known, &[])?;
            station = station.with_origin(Origin::named(origin).unwrap_or(station.origin()));
        }
        if let Some(uncertainty) = node.get("uncertainty")? {
            station = station.with_uncertainty(uncertainty.quantity::<Pressure>()?.value);
        }
        Ok(station)
    }
}

fn typed<T: Value>(tree: &Tree, name: &str) -> Result<T, Error> {
    let quantity = tree.argument(name, T::DIMENSION)?;
    quantity.typed().map_err(|error| error.named(name))
}

fn bare(tree: &Tree, name: &str) -> Result<f64, Error> {
    match tree {
        Tree::Number(number) => Ok(*number),
        Tree::Quantity(quantity) => Err(Error::no_number(name, quantity)),
        _ => Err(Error::unreadable(String::from(name), &tree.shown()).with_hint("a number is needed")),
    }
}

/// A station pressure as [`Given::station`] reads it.
pub(super) fn of_station(station: StationPressure) -> Tree {
    let pascal = |pressure: Pressure| Tree::Quantity(crate::units::Quantity::new(pressure.si(), &table::pa));
    Tree::map([
        ("pressure", pascal(station.pressure())),
        ("uncertainty", pascal(station.uncertainty())),
        ("origin", Tree::from(station.origin().name())),
    ])
}
