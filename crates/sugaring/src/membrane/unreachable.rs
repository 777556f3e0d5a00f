//! What to say where no run leads to the aim.

use alloc::{format, string::String};

use super::{
    Until,
    batch::{Batch, End},
};
use crate::{
    digits::{self, Toward},
    error::Error,
    units::{Unit, Value, table},
};

/// Share of the osmotic limit that is offered instead.
const OFFERED: f64 = 0.95;

impl Batch<'_> {
    /// The aim lies at or beyond the osmotic limit.
    #[cold]
    pub(super) fn out_of_reach(&mut self, until: Until) -> Error {
        let (argument, value, unit) = aim(until);
        let error = Error::unreachable(argument, &unit.show(value)).with_value(value, unit);
        if self.sap.brix == 0.0 && matches!(until, Until::Brix(_)) {
            return error.with_hint("there is no sugar in the sap");
        }
        let place = self.rig.place(self.sap.kelvin);
        let limit = digits::upper_limit(self.local.limit, 4);
        if self.way.is_none() {
            let tank = digits::significant(self.sap.brix, 4);
            return error.with_hint(format!(
                "at {place} the osmotic limit is {limit} °Bx, not above the tank's {tank} °Bx: \
                 use a rig rated for more pressure"
            ));
        }
        let offer = self.offer(until).unwrap_or_default();
        let advice = match until {
            Until::Volume(_) => "leave more",
            Until::Recovery(_) => "ask for less",
            _ => "aim lower",
        };
        error.with_hint(format!(
            "at {place} the osmotic limit is {limit} °Bx{offer}: {advice}, or use a rig rated for more pressure"
        ))
    }

    /// ", and 9.373 °Bx takes 7.122 h"
    fn offer(&mut self, until: Until) -> Option<String> {
        let way = self.way?;
        let brix = digits::rounded(OFFERED * self.local.limit, 4, Toward::Nearest);
        let growth = brix / self.sap.brix;
        if !(growth > 1.0 && growth.is_finite()) {
            return None;
        }
        let (seconds, _) = self.isothermal(&way, way.to(growth));
        let hours = digits::significant(table::hours.from_si(seconds), 4);
        let left = way.mass_at(growth);
        let strength = format!("{} °Bx", digits::shortest(brix));
        let what = match until {
            Until::Volume(_) => {
                let volume = table::litre.from_si(left / self.local.density.density(brix));
                format!("{} L ({strength})", digits::lower_limit(volume, 4))
            }
            Until::Recovery(_) => {
                let permeate = (self.sap.mass - left) / self.local.water;
                let recovery = permeate / (self.sap.mass / self.local.density.density(self.sap.brix));
                format!("{} ({strength})", digits::upper_limit(recovery, 4))
            }
            _ => strength,
        };
        seconds.is_finite().then(|| format!(", and {what} takes {hours} h"))
    }
}

/// A warming tank does not get there.
#[cold]
pub(super) fn too_warm(end: &End) -> Error {
    let shown = table::deg_brix.show(end.brix);
    Error::unreachable("brix", &shown)
        .with_value(end.brix, &table::deg_brix)
        .with_hint("the tank passes 45 °C, or its osmotic limit as it warms: cool it, or use a smaller pump")
}

fn aim(until: Until) -> (&'static str, f64, &'static Unit) {
    match until {
        Until::Brix(brix) => ("brix", brix.get(), &table::deg_brix),
        Until::Volume(volume) => ("volume", table::litre.from_si(volume.si()), &table::litre),
        Until::Recovery(recovery) => ("recovery", recovery.si(), &table::fraction),
        Until::Duration(duration) => ("duration", table::hours.from_si(duration.si()), &table::hours),
    }
}
