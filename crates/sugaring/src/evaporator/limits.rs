//! What a pan cannot do, said with what would do.

use alloc::format;

use super::stages::Kettle;
use crate::{digits, error::Error, lot::Lot, sucrose, units::table};

impl Kettle<'_> {
    #[cold]
    pub(super) fn too_little(&self, stands: f64) -> Error {
        let litres = |mass: f64| table::litre.from_si(mass / sucrose::density_at(self.feed.brix, self.feed.kelvin));
        let least = self.shape.area * self.shape.least_depth;
        let enough = match self.left {
            None => least * self.line.density(self.feed.brix),
            Some(_) => self.fill_to(least).unwrap_or(f64::NAN),
        };
        let with = if self.left.is_some() {
            ", with what is in it,"
        } else {
            ""
        };
        let hint = format!(
            "{} L of sap{with} stand {} mm deep in this pan when hot: use a smaller pan, or collect {} L",
            digits::significant(litres(self.feed.mass), 4),
            digits::significant(table::mm.from_si(stands / self.shape.area), 4),
            digits::lower_limit(litres(enough), 4)
        );
        let depth = table::mm.from_si(self.shape.least_depth);
        Error::unkeepable("least_depth", &table::mm.show(depth))
            .with_value(depth, &table::mm)
            .with_hint(hint)
    }

    #[cold]
    pub(super) fn too_much(&self, left: &Lot, stands: f64, running: f64) -> Error {
        let litres = |si| digits::significant(table::litre.from_si(si), 4);
        let cold = table::litre.from_si(left.mass / sucrose::density_at(left.brix, left.kelvin));
        let depth = table::mm.show(table::mm.from_si(self.shape.running_depth));
        let hint = format!(
            "hot it is {} L and the pan holds {} L: draw some off first",
            litres(stands),
            litres(running)
        );
        Error::inconsistent(
            "left_in_pan.volume",
            &table::litre.show(cold),
            &format!("running_depth = {depth}"),
        )
        .with_value(cold, &table::litre)
        .with_hint(hint)
    }

    #[cold]
    pub(super) fn too_strong(&self, brix: f64) -> Error {
        let shown = |brix| table::deg_brix.show(brix);
        let strongest = self.left.map_or(self.feed.brix, |left| left.brix);
        let argument = if self.left.is_some() {
            "left_in_pan.brix"
        } else {
            "lot.brix"
        };
        let hint = format!(
            "the pan is full at {} °Bx: draw it off first",
            digits::significant(brix, 4)
        );
        let other = format!("to_brix = {}", shown(self.target));
        Error::inconsistent(argument, &shown(strongest), &other)
            .with_value(strongest, &table::deg_brix)
            .with_hint(hint)
    }
}
