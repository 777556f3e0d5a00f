//! Numbers on the page, metric or US.

use crate::{
    day::{inputs::DayInputs, plan::Figure},
    digits::{fixed, padded, significant},
    form::Tree,
    math,
    units::{Given, Length, System, Temperature, Unit, Value, kg, litre, table},
};
use alloc::{format, string::String};

/// How a page writes its numbers.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Face {
    us: bool,
}

impl Face {
    pub(crate) fn new(system: System, inputs: &DayInputs) -> Self {
        let us = match system {
            System::Us => true,
            System::Metric => false,
            System::AsGiven => inputs.mostly_us(),
        };
        Self { us }
    }

    fn pick(self, us: &'static Unit, metric: &'static Unit) -> &'static Unit {
        if self.us { us } else { metric }
    }

    fn three(self, si: f64, us: &'static Unit, metric: &'static Unit) -> String {
        let unit = self.pick(us, metric);
        unit.with_symbol(&padded(unit.from_si(si), 3))
    }

    pub(crate) fn volume(self, si: f64) -> String {
        self.three(si, &table::gal, &table::litre)
    }

    pub(crate) fn volume_two(self, si: f64) -> String {
        let unit = self.pick(&table::gal, &table::litre);
        unit.with_symbol(&padded(unit.from_si(si), 2))
    }

    pub(crate) fn volume_range(self, figure: &Figure<litre>) -> String {
        let unit = self.pick(&table::gal, &table::litre);
        figure.interval().map_or(String::new(), |i| {
            format!(
                " ({} to {})",
                padded(unit.from_si(i.low), 2),
                padded(unit.from_si(i.high), 2)
            )
        })
    }

    pub(crate) fn small_volume(self, si: f64) -> String {
        let unit = self.pick(&table::fl_oz, &table::ml);
        unit.with_symbol(&padded(unit.from_si(si), 3))
    }

    pub(crate) fn mass(self, si: f64) -> String {
        self.three(si, &table::lb, &table::kg)
    }

    pub(crate) fn mass_two(self, si: f64) -> String {
        let unit = self.pick(&table::lb, &table::kg);
        unit.with_symbol(&significant(unit.from_si(si), 2))
    }

    pub(crate) fn mass_range(self, figure: &Figure<kg>) -> String {
        let unit = self.pick(&table::lb, &table::kg);
        figure.interval().map_or(String::new(), |i| {
            format!(
                " ({} to {})",
                significant(unit.from_si(i.low), 2),
                significant(unit.from_si(i.high), 2)
            )
        })
    }

    pub(crate) fn small_mass(self, si: f64) -> String {
        let unit = self.pick(&table::oz, &table::gram);
        unit.with_symbol(&padded(unit.from_si(si), 3))
    }

    pub(crate) fn temperature_number(self, si: f64) -> String {
        fixed(self.pick(&table::deg_f, &table::deg_c).from_si(si), 1)
    }

    pub(crate) fn temperature(self, si: f64) -> String {
        self.pick(&table::deg_f, &table::deg_c)
            .with_symbol(&self.temperature_number(si))
    }

    pub(crate) fn round_temperature(self, temperature: Temperature) -> String {
        let unit = self.pick(&table::deg_f, &table::deg_c);
        unit.with_symbol(&fixed(unit.from_si(temperature.si()), 0))
    }

    /// Glass is warmed to at least this: rounded up.
    pub(crate) fn warm_glass(self, si: f64) -> String {
        let unit = self.pick(&table::deg_f, &table::deg_c);
        unit.with_symbol(&fixed(math::ceil(unit.from_si(si)), 0))
    }

    pub(crate) fn difference(self, si: f64) -> String {
        let unit = self.pick(&table::delta_f, &table::delta_c);
        let symbol = if self.us { "°F" } else { "°C" };
        format!("{} {symbol}", fixed(unit.from_si(si), 1))
    }

    pub(crate) fn pressure(self, si: f64) -> String {
        if self.us {
            table::in_hg.with_symbol(&fixed(table::in_hg.from_si(si), 2))
        } else {
            table::kpa.with_symbol(&fixed(table::kpa.from_si(si), 1))
        }
    }

    pub(crate) fn gauge(self, si: f64) -> String {
        if self.us {
            format!("{} psi", fixed(table::psi_gauge.from_si(si), 0))
        } else {
            format!("{} bar", significant(table::bar_gauge.from_si(si), 3))
        }
    }

    pub(crate) fn flow_number(self, si: f64) -> String {
        padded(self.pick(&table::gal_per_h, &table::litre_per_h).from_si(si), 2)
    }

    pub(crate) fn flow(self, si: f64) -> String {
        self.pick(&table::gal_per_h, &table::litre_per_h)
            .with_symbol(&self.flow_number(si))
    }

    /// How long a bucket's unit takes: "66 s a litre".
    pub(crate) fn seconds_each(self, si: f64) -> String {
        let name = if self.us { "gallon" } else { "litre" };
        format!("{} a {name}", self.seconds_short(si))
    }

    pub(crate) fn seconds_short(self, si: f64) -> String {
        let unit = self.pick(&table::gal, &table::litre);
        format!("{} s", fixed(unit.to_si(1.0) / si, 0))
    }

    pub(crate) fn depth(self, si: f64) -> String {
        if self.us {
            table::inch.with_symbol(&padded(table::inch.from_si(si), 2))
        } else {
            table::mm.with_symbol(&fixed(table::mm.from_si(si), 0))
        }
    }

    pub(crate) fn pan(self, length: &Given<Length>, width: &Given<Length>) -> String {
        let unit = self.pick(&table::inch, &table::metre);
        format!(
            "{} x {}",
            significant(unit.from_si(length.value.si()), 3),
            unit.with_symbol(&significant(unit.from_si(width.value.si()), 3))
        )
    }

    /// A fuel that is sold by the gallon stays in gallons.
    pub(crate) fn fuel_gallons(si: f64) -> String {
        table::gal.with_symbol(&padded(table::gal.from_si(si), 2))
    }
}

impl DayInputs {
    /// Whether more quantities were given in gallons, pounds, °F and inches than in metric units.
    fn mostly_us(&self) -> bool {
        let (mut us, mut all) = (0_usize, 0_usize);
        count_units(&self.tree(), &mut us, &mut all);
        2 * us > all
    }
}

fn count_units(tree: &Tree, us: &mut usize, all: &mut usize) {
    const US: [&str; 18] = [
        "gal",
        "qt",
        "fl oz",
        "lb",
        "oz",
        "°F",
        "Δ°F",
        "psi",
        "psi gauge",
        "inHg",
        "in",
        "ft",
        "ft²",
        "gal/h",
        "gal/min",
        "gal/d",
        "lb/h",
        "Btu/h",
    ];
    match tree {
        Tree::Map(map) => {
            for (key, value) in map {
                match value {
                    Tree::Text(symbol) if key == "unit" => {
                        *all += 1;
                        *us += usize::from(US.contains(&symbol.as_str()));
                    }
                    other => count_units(other, us, all),
                }
            }
        }
        Tree::List(list) => list.iter().for_each(|tree| count_units(tree, us, all)),
        _ => {}
    }
}
