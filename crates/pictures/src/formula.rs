use sugaring::{
    Relation,
    catalogue::{self, Function},
};
use sugaring_tests::{Row, tables::points};

use crate::plot::{Curve, Kind, Mark};

/// A function of the catalogue, in the units that its relation is read in.
#[derive(Clone, Copy)]
pub(crate) struct Formula(&'static Function);

impl Formula {
    /// That of a path, `sucrose::density`.
    pub(crate) fn of(path: &str) -> Self {
        let found = catalogue::functions()
            .iter()
            .find(|function| function.relation.name == path);
        Self(found.unwrap_or_else(|| panic!("no function {path}")))
    }

    pub(crate) fn relation(self) -> &'static Relation {
        self.0.relation
    }

    /// The result, where the arguments are in range.
    pub(crate) fn at(self, arguments: &[f64]) -> Option<f64> {
        let given = arguments.iter().zip(self.relation().inputs);
        let si: Vec<_> = given.map(|(&x, range)| range.unit.to_si(x)).collect();
        self.0.value(&si).ok().map(|si| self.relation().output.from_si(si))
    }

    /// The curve over argument `index` from `low` to `high`, the others as `arguments` has them.
    pub(crate) fn curve(self, label: &str, arguments: &[f64], index: usize, low: f64, high: f64) -> Curve {
        curve(label, low, high, |x| {
            let mut arguments = arguments.to_vec();
            arguments[index] = x;
            self.at(&arguments)
        })
    }
}

/// The curve of any function; where it has no value there is a gap at the end, never a guess.
pub(crate) fn curve(label: &str, low: f64, high: f64, of: impl Fn(f64) -> Option<f64>) -> Curve {
    let steps = 240;
    let line = (0..=steps).filter_map(|step| {
        let x = if step == steps {
            high
        } else {
            low + (high - low) * f64::from(step) / f64::from(steps)
        };
        of(x).map(|y| (x, y))
    });
    Curve {
        label: String::from(label),
        line: line.collect(),
    }
}

/// The rows that judge a relation, where `at` says they stand along the picture; `None` leaves a row out.
///
/// Rows of the relation's own equation in many digits show that it is computed well, not that it is true; and the
/// trade's rules are no table.
pub(crate) fn marks(relation: &Relation, at: impl Fn(&Row) -> Option<f64>) -> Vec<Mark> {
    let rows = points(relation)
        .into_iter()
        .filter(|judged| !judged.table.contains("_equations"));
    rows.filter_map(|judged| {
        let kind = match judged.row.kind() {
            "published" => Kind::Seen,
            "from memory" => Kind::FromMemory,
            "derived" => Kind::Derived,
            _ => return None,
        };
        Some(Mark {
            x: at(&judged.row)?,
            value: judged.value,
            difference: -judged.deviation,
            kind,
        })
    })
    .collect()
}
