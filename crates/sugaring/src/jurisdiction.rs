//! Where which density is lawful, as data beside the physics.
//!
//! Facts as they were seen, none of them legal advice: rules change, and the local one decides.

use crate::{
    error::Error,
    relation::Source,
    units::{Brix, Temperature, deg_c, table},
};

/// What to do before relying on a row.
pub const CHECK_LOCAL_RULE: &str = "check your local rule";

/// One place's rule on the density of packaged syrup.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct JurisdictionRow {
    /// Its name in data, such as `new_york`.
    pub key: &'static str,
    /// Its name.
    pub name: &'static str,
    /// The law, and what of it.
    pub law: &'static str,
    /// The least, inclusive.
    pub min: Brix,
    /// The most, inclusive, where the rule has one.
    pub max: Option<Brix>,
    /// When the text was seen; what it said later is not known.
    pub seen: &'static str,
    /// What else the rule says about density; empty where nothing.
    pub note: &'static str,
    /// Whether it prescribes a chart: [`instrument::chart`](crate::instrument::chart).
    pub has_chart: bool,
    /// Where the figures come from.
    pub source: Source,
    celsius: Option<f64>,
}

impl JurisdictionRow {
    /// The temperature that the rule names. It matters for the instrument alone: mass per cent stays when syrup cools.
    #[must_use]
    pub fn reference_temperature(&self) -> Option<Temperature> {
        self.celsius.map(deg_c)
    }

    /// Every place that is known.
    #[must_use]
    pub fn all() -> &'static [Self] {
        ROWS
    }

    /// The row of a key or a name, in letters of either case.
    ///
    /// # Errors
    /// Unknown name, with the nearest; a place whose rule nobody has seen is not shipped as a guess.
    ///
    /// ```
    /// use sugaring::{finish::JurisdictionRow, units::brix};
    /// let vermont = JurisdictionRow::named("Vermont")?;
    /// assert_eq!((vermont.min, vermont.max), (brix(66.9)?, Some(brix(68.9)?)));
    /// assert_eq!(JurisdictionRow::named("New York")?.key, "new_york");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::finish::JurisdictionRow;
    /// assert_eq!(
    ///     JurisdictionRow::named("vermnt").unwrap_err().to_string(),
    ///     "jurisdiction has the unknown name \"vermnt\"; nearest: vermont",
    /// );
    /// assert_eq!(
    ///     JurisdictionRow::named("New Hampshire").unwrap_err().to_string(),
    ///     "jurisdiction has the unknown name \"New Hampshire\"; its rule was not seen: check your local rule, and give \
    ///      the °Brix it asks for",
    /// );
    /// ```
    pub fn named(name: &str) -> Result<&'static Self, Error> {
        let is = |known: &str| {
            let given = name.chars().map(|c| if c == ' ' || c == '-' { '_' } else { c });
            let known = known.chars().map(|c| if c == ' ' { '_' } else { c });
            given
                .flat_map(char::to_lowercase)
                .eq(known.flat_map(char::to_lowercase))
        };
        if let Some(row) = ROWS.iter().find(|row| is(row.key) || is(row.name)) {
            return Ok(row);
        }
        let error = Error::unknown_name("jurisdiction", name, ROWS.iter().map(|row| row.key));
        Err(if UNSEEN.iter().any(|known| is(known)) {
            error.with_hint("its rule was not seen: check your local rule, and give the °Brix it asks for")
        } else {
            error
        })
    }
}

/// Places whose rule is known at second hand only: a guess is no fact.
const UNSEEN: &[&str] = &["new_hampshire"];

const SEEN: &str = "2026-11";
const F60: f64 = table::deg_c.from_si(table::deg_f.to_si(60.0));

const fn row(key: &'static str, name: &'static str, law: &'static str, min: f64, max: f64) -> JurisdictionRow {
    JurisdictionRow {
        key,
        name,
        law,
        min: Brix::trusted(min),
        max: if max > 0.0 { Some(Brix::trusted(max)) } else { None },
        seen: SEEN,
        note: "",
        has_chart: false,
        source: Source::CommonPractice,
        celsius: None,
    }
}

/// What stands for a rule without an upper limit.
const NONE: f64 = 0.0;

/// The places, countries first. Superseded texts are left out.
static ROWS: &[JurisdictionRow] = &[
    JurisdictionRow {
        source: Source::Published {
            text: "21 CFR 168.140",
            at: "as quoted in 7 CFR 52.5961 (2015)",
        },
        ..row(
            "us",
            "United States",
            "standard of identity, 21 CFR 168.140",
            66.0,
            NONE,
        )
    },
    JurisdictionRow {
        celsius: Some(20.0),
        note: "the temperature was seen in a summary",
        source: Source::Published {
            text: "USDA Agricultural Marketing Service, grades and standards of maple syrup",
            at: "density",
        },
        ..row(
            "us_grade_a",
            "United States, Grade A",
            "Grade A and Processing, standards effective 2015-03-02",
            66.0,
            68.9,
        )
    },
    JurisdictionRow {
        celsius: Some(20.0),
        note: "by refractometer or hydrometer",
        source: Source::Published {
            text: "Canadian Food Inspection Agency, Canadian Grade Compendium, volume 7",
            at: "sections 3 and 4",
        },
        ..row(
            "canada",
            "Canada",
            "Grade A and Processing, Canadian Grade Compendium, volume 7",
            66.0,
            68.9,
        )
    },
    JurisdictionRow {
        celsius: Some(20.0),
        source: Source::FromMemory {
            text: "Quebec, P-29, r. 1, density of category A",
        },
        ..row("quebec", "Quebec", "category A, P-29, r. 1", 66.0, 68.9)
    },
    JurisdictionRow {
        seen: "2013",
        source: Source::Published {
            text: "Ontario, agriculture ministry's notes on maple syrup",
            at: "2013",
        },
        ..row("ontario", "Ontario", "provincial minimum", 66.0, NONE)
    },
    JurisdictionRow {
        celsius: Some(F60),
        note: "36 to 37 °Bé, modulus 145, or the chart",
        has_chart: true,
        source: Source::Published {
            text: "University of Vermont Extension",
            at: "quoting the rule",
        },
        ..row("vermont", "Vermont", "maple products regulation", 66.9, 68.9)
    },
    JurisdictionRow {
        source: Source::Published {
            text: "New York, 1 NYCRR",
            at: "270.1",
        },
        ..row("new_york", "New York", "1 NYCRR 270.1", 66.0, 68.9)
    },
    JurisdictionRow {
        celsius: Some(20.0),
        note: "the most becomes 68.9 on a contingency that the law names",
        source: Source::Published {
            text: "Maine, 7 MRSA",
            at: "892-A",
        },
        ..row("maine", "Maine", "7 MRSA 892-A", 66.0, 69.0)
    },
];

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;
    use proptest::prelude::*;

    #[test]
    fn every_row_says_where_it_comes_from() {
        for row in ROWS {
            assert!(!row.law.is_empty() && !row.seen.is_empty(), "{}", row.key);
            assert_ne!(row.source, Source::CommonPractice, "{}", row.key);
            assert!(row.max.is_none_or(|max| max > row.min), "{}", row.key);
            assert!(row.key.bytes().all(|b| b.is_ascii_lowercase() || b == b'_'));
            assert_eq!(JurisdictionRow::named(row.key), Ok(row));
            assert_eq!(JurisdictionRow::named(row.name), Ok(row));
        }
        assert_eq!(ROWS.iter().filter(|row| row.has_chart).count(), 1);
    }

    #[test]
    fn an_unknown_place_lists_those_that_are_known() {
        let said = JurisdictionRow::named("Atlantis").unwrap_err().to_string();
        assert!(said.contains("known: us, us_grade_a, canada"), "{said}");
    }

    proptest! {
        #[test]
        fn any_name_is_taken(name in ".*") {
            let _ = JurisdictionRow::named(&name);
        }
    }
}
