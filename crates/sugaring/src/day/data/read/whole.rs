//! One builder walks the tree with the path in hand, whatever language or file it came from.

use crate::{
    day::{
        data::read::{
            fire::{container, evaporator, finishing, target},
            first::{air, instrument, sap},
            keys::{each, given, optional, price, read_seed, text, whole},
            rig::membrane,
        },
        inputs::DayInputs,
    },
    error::Error,
    form::{Node, Tree},
};
use alloc::{string::ToString, vec::Vec};

impl DayInputs {
    /// The inputs of a tree of keys and values.
    ///
    /// # Errors
    /// An unknown, missing or unreadable key, with its path. Ranges are checked by [`plan`](crate::day::plan).
    pub fn from_tree(tree: &Tree) -> Result<Self, Error> {
        let day = Node::top(tree);
        day.keys(
            &[
                "schema_version",
                "title",
                "start",
                "seed",
                "samples",
                "air",
                "sap",
                "membrane",
                "evaporator",
                "finishing",
                "target",
                "instruments",
                "containers",
                "fill_temperature",
                "electricity",
                "labour",
            ],
            &["blend", "arrangement"],
        )?;
        Ok(Self {
            schema_version: match whole(&day, "schema_version", 1, 1)? {
                Some(version) => version,
                None => crate::day::SCHEMA_VERSION,
            },
            title: text(&day, "title")?,
            start: text(&day, "start")?,
            seed: match day.get("seed")? {
                Some(seed) => Some(read_seed(&seed)?),
                None => None,
            },
            samples: whole(&day, "samples", 0, crate::day::resolve::MOST_SAMPLES)?,
            air: air(&day.required("air")?)?,
            sap: each(Some(day.required("sap")?), sap)?,
            membrane: optional(&day, "membrane", membrane)?,
            evaporator: evaporator(&day.required("evaporator")?)?,
            finishing: optional(&day, "finishing", finishing)?,
            target: target(&day.required("target")?)?,
            instruments: match day.get("instruments")? {
                Some(named) => {
                    let mut list = Vec::new();
                    for (name, node) in named.entries()? {
                        list.push((name.to_string(), instrument(&node)?));
                    }
                    list
                }
                None => Vec::new(),
            },
            containers: each(day.get("containers")?, container)?,
            fill_temperature: given(&day, "fill_temperature")?,
            electricity: price(&day, "electricity")?,
            labour: price(&day, "labour")?,
        })
    }

    /// The inputs of a JSON text.
    ///
    /// # Errors
    /// Unreadable JSON, with line and column; else as [`DayInputs::from_tree`].
    ///
    /// ```
    /// use sugaring::day::{self, DayInputs};
    /// let inputs = DayInputs::from_json(r#"{
    ///     "air": {"altitude": "410 m"},
    ///     "sap": [{"volume": "265 L", "brix": 1.98, "temperature": "4 °C"}],
    ///     "evaporator": {"pan": {"length": "0.61 m", "width": "1.22 m"}},
    ///     "target": {"brix": 66.9}, "samples": 0}"#)?;
    /// assert_eq!(day::plan(&inputs)?.totals.water_removed.membrane, None);
    ///
    /// let error = DayInputs::from_json(r#"{"air": {"altitude": "410 m"}, "sapp": []}"#).unwrap_err();
    /// assert_eq!(error.to_string(), "inputs has the unknown name \"sapp\"; nearest: sap");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    #[cfg(feature = "json")]
    #[cfg_attr(docsrs, doc(cfg(feature = "json")))]
    pub fn from_json(text: &str) -> Result<Self, Error> {
        Self::from_tree(&Tree::from_json(text)?)
    }
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for DayInputs {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let tree = Tree::deserialize(deserializer)?;
        Self::from_tree(&tree).map_err(serde::de::Error::custom)
    }
}
