//! The usual cautions, as data; local codes and licensed trades come first.
//!
//! A plan names cautions by key beside each step, and its page prints each once. They are common practice and
//! ministries' advice in our own words, no legal text.
//!
//! ```
//! use sugaring::safety;
//! let scald = safety::caution("scald").unwrap();
//! assert_eq!(scald.short(Some("103 °C")), "Syrup at 103 °C sticks and scalds.");
//! ```

use alloc::{string::String, vec::Vec};

/// A step of a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "snake_case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum StepKind {
    /// Sap through the membrane.
    Concentrate,
    /// Permeate through the rig, while the pan boils.
    Rinse,
    /// The big pan.
    Boil,
    /// The small pan.
    Finish,
    /// A batch made thinner or thicker.
    Mend,
    /// Hot through the filter.
    Filter,
    /// Hot into containers.
    Bottle,
}

impl StepKind {
    /// Every step, in the order of a day.
    pub const ALL: [Self; 7] = [
        Self::Concentrate,
        Self::Rinse,
        Self::Boil,
        Self::Finish,
        Self::Mend,
        Self::Filter,
        Self::Bottle,
    ];

    /// Its name in data.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Concentrate => "concentrate",
            Self::Rinse => "rinse",
            Self::Boil => "boil",
            Self::Finish => "finish",
            Self::Mend => "mend",
            Self::Filter => "filter",
            Self::Bottle => "bottle",
        }
    }

    const fn caution_keys(self) -> &'static [&'static str] {
        match self {
            Self::Concentrate => &["pressure", "mains_near_water", "keep_cold"],
            Self::Rinse => &["pressure", "cleaning_chemicals"],
            Self::Boil => &[
                "scald",
                "unattended_fire",
                "scorched_pan",
                "boil_over",
                "carbon_monoxide",
                "lead",
            ],
            Self::Finish => &["scald", "fuel_gas", "carbon_monoxide"],
            Self::Mend => &["scald"],
            Self::Filter => &["scald", "dust"],
            Self::Bottle => &["scald", "hot_glass", "food_safety"],
        }
    }
}

/// What to print beside a step; `fuel_gas` is for a gas burner alone.
///
/// ```
/// use sugaring::safety::{StepKind, cautions_for};
/// let keys: Vec<&str> = cautions_for(StepKind::Filter).iter().map(|c| c.key).collect();
/// assert_eq!(keys, ["scald", "dust"]);
/// ```
#[must_use]
pub fn cautions_for(step: StepKind) -> Vec<&'static Caution> {
    step.caution_keys().iter().filter_map(|key| caution(key)).collect()
}

/// One caution: what can happen, and what to do about it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub struct Caution {
    /// Its name in data, such as `carbon_monoxide`.
    pub key: &'static str,
    /// The whole of it, a few sentences.
    pub text: &'static str,
    short: &'static str,
}

impl Caution {
    /// The caution in one sentence, for a page; `syrup` is the temperature the syrup is finished at, as it is
    /// shown there, if it is known.
    #[must_use]
    pub fn short(&self, syrup: Option<&str>) -> String {
        let hot = syrup.map_or_else(
            || String::from("Boiling syrup"),
            |shown| alloc::format!("Syrup at {shown}"),
        );
        self.short.replace(SYRUP, &hot)
    }
}

/// What a page ends its cautions with.
pub const LOCAL_RULES: &str = "Local rules come first.";

/// Where [`Caution::short`] names the hot syrup.
const SYRUP: &str = "{syrup}";

/// The caution of a key; `None` where there is none.
#[must_use]
pub fn caution(key: &str) -> Option<&'static Caution> {
    ALL.iter().find(|caution| caution.key == key)
}

/// Every caution, in the order in which a page prints them.
pub static ALL: &[Caution] = &[
    Caution {
        key: "keep_cold",
        short: "Keep sap and concentrate cold, and boil them the same day.",
        text: "Sap is perishable, and concentrate spoils sooner than sap. Keep both cold and clean, and boil them the \
               day they are made. Ask what your local food rules say.",
    },
    Caution {
        key: "pressure",
        short: "Empty the rig of pressure before opening it.",
        text: "Never run the rig above the rating of its weakest part, be it housing, hose, element or pump. Vent it \
               and let all pressure off before you open anything. Never let a wetted element freeze or dry out.",
    },
    Caution {
        key: "cleaning_chemicals",
        short: "Never mix cleaners.",
        text: "Use only cleaners that the maker of the element allows, within the maker's limits of pH and \
               temperature. Acid and caustic burn skin and eyes: protect both, and never mix one with the other or \
               with bleach. Chlorine and other oxidisers destroy the membrane. Rinse until the water is neutral and \
               has no taste, and throw the first permeate and concentrate away.",
    },
    Caution {
        key: "mains_near_water",
        short: "Mains pump near water: ground-fault protection, licensed installer.",
        text: "A pump on mains power stands among water and steam. It needs ground-fault protection and a licensed \
               installer; the local electrical code decides.",
    },
    Caution {
        key: "unattended_fire",
        short: "Never leave a fired pan: a wood fire cannot be turned off.",
        text: "Stay with a fired pan. A wood fire cannot be turned off, so stop stoking well before the draw, and \
               finish small batches on a burner that can. Keep clear of the arch and the chimney whatever burns, and \
               catch the sparks; wet wood leaves creosote, which burns in the chimney. Light no fire with liquid \
               fuel. Ash stays hot for days. The local fire authority and code come first.",
    },
    Caution {
        key: "scorched_pan",
        short: "Never let a fired pan fall below its least depth.",
        text: "A pan that runs low over a fire scorches the syrup and then burns out. Keep its least depth, for most \
               pans 25 to 40 mm, and a bucket of sap at hand to save it.",
    },
    Caution {
        key: "boil_over",
        short: "Foam boils over.",
        text: "Foam climbs within seconds. Leave headroom, and keep a defoamer at hand that your trade allows: some are \
               allergens, and labels restrict others. Keep it, and every other fat and oil, away from open flame.",
    },
    Caution {
        key: "lead",
        short: "No lead solder, brass or old galvanised ware.",
        text: "Seams soldered before about 1995, bronze, brass, terneplate and old galvanised ware give lead to sap \
               and syrup. Replace them with food-grade parts.",
    },
    Caution {
        key: "carbon_monoxide",
        short: "No boiling in a closed room: carbon monoxide.",
        text: "Fires and burners give off carbon monoxide, which nobody can smell. Never boil in a closed building: \
               give the steam a way out and the fire its air, and hang up an alarm. Local building and fire codes come \
               first.",
    },
    Caution {
        key: "fuel_gas",
        short: "Gas outdoors, hoses checked for leaks.",
        text: "Keep gas cylinders outdoors, and check hoses and joints for leaks before you light the burner. Work on \
               gas and oil lines is for licensed trades, by the local code.",
    },
    Caution {
        key: "scald",
        short: "{syrup} sticks and scalds.",
        text: "Boiling syrup is hotter than boiling water, and it sticks. Keep children and bare skin away from it, \
               think before you lift a hot pan, and pour cold sap into hot syrup slowly: it steams up at once.",
    },
    Caution {
        key: "dust",
        short: "Filter aid is dust, do not breathe it.",
        text: "Filter aid is a fine mineral powder. Take a food-grade one, wear a respirator while you handle it dry, \
               and pour it without raising dust.",
    },
    Caution {
        key: "hot_glass",
        short: "Warm glass slowly.",
        text: "Cold glass may crack when hot syrup meets it, and it cools the syrup below the temperature that keeps \
               it. Warm it slowly, and use containers made for hot filling.",
    },
    Caution {
        key: "food_safety",
        short: "Fill and cap hot.",
        text: "Filter hot, and check the temperature again after the filter: below 82 °C the syrup may not keep. Cap at \
               once, and lay the container on its side, so that hot syrup reaches cap and neck. Opened syrup belongs in \
               the cold. Local food rules come first.",
    },
];

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::vec::Vec;

    #[test]
    fn every_key_has_one_caution() {
        let keys = [
            "pressure",
            "mains_near_water",
            "keep_cold",
            "cleaning_chemicals",
            "scald",
            "unattended_fire",
            "scorched_pan",
            "boil_over",
            "carbon_monoxide",
            "lead",
            "fuel_gas",
            "dust",
            "hot_glass",
            "food_safety",
        ];
        assert_eq!(ALL.len(), keys.len());
        for key in keys {
            assert_eq!(caution(key).map(|caution| caution.key), Some(key));
        }
        assert_eq!(caution("bears"), None);
    }

    #[test]
    fn texts_are_sentences() {
        for caution in ALL {
            let short = caution.short(None);
            assert!(short.chars().count() <= 70 && short.ends_with('.'), "{short}");
            assert!(!short.contains(['{', '}']), "{short}");
            assert!(
                caution.text.ends_with('.') && caution.text.len() > short.len(),
                "{}",
                caution.key
            );
            assert!(!caution.text.contains("  "), "{}", caution.key);
        }
        assert_eq!(
            caution("scald").unwrap().short(None),
            "Boiling syrup sticks and scalds."
        );
    }

    /// Where a trade or an authority decides, the caution says so.
    #[test]
    fn codes_and_trades_come_first() {
        let deferring: Vec<&str> = ALL
            .iter()
            .filter(|caution| caution.text.contains("local") || caution.text.contains("Local"))
            .map(|caution| caution.key)
            .collect();
        assert_eq!(
            deferring,
            [
                "keep_cold",
                "mains_near_water",
                "unattended_fire",
                "carbon_monoxide",
                "fuel_gas",
                "food_safety"
            ]
        );
    }

    #[test]
    fn every_step_has_its_cautions() {
        for step in StepKind::ALL {
            assert_eq!(cautions_for(step).len(), step.caution_keys().len(), "{step:?}");
        }
        let printed: Vec<_> = StepKind::ALL.iter().flat_map(|s| s.caution_keys()).collect();
        assert!(ALL.iter().all(|c| printed.contains(&&c.key)));
    }
}
