use alloc::{string::String, vec::Vec};
use core::fmt;

use super::{Because, Container, PackedRow, Rest};
use crate::{
    digits, math,
    units::{Temperature, Value, Volume, table},
};

/// What to mind when packing; `Display` is its text.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum PackingRemark {
    /// The container cools the syrup below 82 °C.
    ColdContainer {
        /// What it is called.
        name: String,
        /// Its temperature.
        temperature: Temperature,
        /// Where both settle.
        settled: Temperature,
        /// What the container needs first.
        glass_needed: Temperature,
        /// Or what to fill at, where that is not above 93 °C.
        fill_needed: Option<Temperature>,
    },
    /// Syrup is left because the containers are used up.
    Stock {
        /// What they hold, at 20 °C.
        held: Volume,
        /// What is left over.
        left: Volume,
    },
    /// Whether the hot fill runs over was not checked.
    BrimfulUnknown {
        /// What it is called.
        name: String,
    },
    /// Whether the container cools the syrup too far was not checked.
    CoolingUnknown {
        /// What it is called.
        name: String,
    },
}

impl PackingRemark {
    /// The remark's name in data.
    #[must_use]
    pub const fn key(&self) -> &'static str {
        match self {
            Self::ColdContainer { .. } => "cold_container",
            Self::Stock { .. } => "stock",
            Self::BrimfulUnknown { .. } => "brimful_unknown",
            Self::CoolingUnknown { .. } => "cooling_unknown",
        }
    }

    pub(super) fn of(rows: &[PackedRow], rest: &Rest, containers: &[Container]) -> Vec<Self> {
        let mut remarks = Vec::new();
        let mut held = 0.0;
        for row in rows {
            let Some(container) = containers.get(row.container) else {
                continue;
            };
            held += f64::from(row.count) * container.volume.si();
            let name = || container.name.clone();
            match (row.settled, row.glass_needed) {
                (None, _) => remarks.push(Self::CoolingUnknown { name: name() }),
                (Some(settled), Some(glass_needed)) => remarks.push(Self::ColdContainer {
                    name: name(),
                    temperature: container.temperature,
                    settled,
                    glass_needed,
                    fill_needed: row.fill_needed,
                }),
                (Some(_), None) => {}
            }
            if row.headspace.is_none() {
                remarks.push(Self::BrimfulUnknown { name: name() });
            }
        }
        if rest.because == Because::StockUsedUp {
            remarks.push(Self::Stock {
                held: crate::units::cubic_metre(held),
                left: rest.volume,
            });
        }
        remarks
    }
}

impl fmt::Display for PackingRemark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let celsius = |t: &Temperature| table::deg_c.from_si(t.si());
        match self {
            Self::ColdContainer {
                name,
                temperature,
                settled,
                glass_needed,
                fill_needed,
            } => {
                write!(
                    f,
                    "a {name} at {} °C settles at {:.1} °C: warm it to {} °C",
                    digits::significant(celsius(temperature), 3),
                    celsius(settled),
                    math::ceil(celsius(glass_needed))
                )?;
                match fill_needed {
                    Some(fill) => write!(f, ", or fill at {:.1} °C", celsius(fill)),
                    None => Ok(()),
                }
            }
            Self::Stock { held, left } => {
                let litres = |si| digits::significant(table::litre.from_si(si), 3);
                write!(
                    f,
                    "the containers hold {} L of {} L: {} L are left over",
                    litres(held.si()),
                    litres(held.si() + left.si()),
                    litres(left.si())
                )
            }
            Self::BrimfulUnknown { name } => write!(
                f,
                "whether the {name} holds the hot fill is not checked: brimful is not given"
            ),
            Self::CoolingUnknown { name } => write!(
                f,
                "how far the {name} cools the syrup is not checked: its mass or the heat of its material is not known"
            ),
        }
    }
}
