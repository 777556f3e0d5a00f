//! `sugaring.units`: a class a dimension, a line a word.

use sugaring::units::{Dimension, table::ALL};

use super::{
    PACKAGE, WRITTEN,
    words::{dimension, docstring},
};
use crate::File;

const TOP: &str = r#""""Quantities, unit words, measured values and prices.

One word both makes and reads: ``gal(40)`` is a volume, ``gal(40).to(litre)`` its litres. ``gal`` is the US gallon.
What a quantity measures is part of its type, so that a type checker refuses a mass where a volume is needed.

Examples
--------
>>> from sugaring.units import deg_c, deg_f, gal, litre
>>> gal(40).to(litre)
151.41647136
>>> deg_f(212) == deg_c(100)
True
"""

from __future__ import annotations

from ._amounts import Measured, Price, measured, price
from ._sugaring import Quantity, Unit, _unit, heading, parse

"#;

const KINDS: &str = r#"

class Amount:
    """What adds, and scales by numbers."""


class Point:
    """A place on a scale: two differ by an amount, and neither add nor scale."""


class DensityScale(Point):
    """A place on a density scale, which says at what temperatures it holds."""
"#;

pub(super) fn files() -> Vec<File> {
    let mut names: Vec<String> = [
        "Amount",
        "DensityScale",
        "Measured",
        "Point",
        "Price",
        "Quantity",
        "Unit",
        "heading",
        "measured",
        "parse",
        "price",
    ]
    .map(String::from)
    .to_vec();
    names.extend(Dimension::ALL.map(dimension));
    names.extend(ALL.iter().map(|unit| unit.word.to_owned()));
    names.sort_unstable();
    let mut text = format!("{WRITTEN}{TOP}__all__ = [\n");
    for name in names {
        text += &format!("    \"{name}\",\n");
    }
    text += &format!("]\n{KINDS}");
    for kind in Dimension::ALL {
        let base = if kind.is_density_scale() {
            "DensityScale"
        } else if kind.is_point() {
            "Point"
        } else {
            "Amount"
        };
        let article = kind.article_name();
        let said = article.get(..1).map(str::to_uppercase).unwrap_or_default() + article.get(1..).unwrap_or_default();
        text += &format!(
            "\n\nclass {}({base}):\n{}",
            dimension(kind),
            docstring(&format!("{said}."), "    ")
        );
    }
    let mut last = None;
    for unit in ALL {
        text += if last == Some(unit.dimension) {
            ""
        } else if last.is_none() {
            "\n\n"
        } else {
            "\n"
        };
        last = Some(unit.dimension);
        let symbol = if unit.symbol.is_empty() {
            "no symbol"
        } else {
            unit.symbol
        };
        text += &format!(
            "{}: Unit[{}] = _unit(\"{}\")\n\"\"\"{symbol}: {}.\"\"\"\n",
            unit.word,
            dimension(unit.dimension),
            unit.word,
            unit.definition
        );
    }
    vec![File::new(format!("{PACKAGE}/units.py"), text)]
}
