use alloc::format;
use core::fmt;

use super::{Reading, reading};
use crate::{
    error::Error,
    jurisdiction::{CHECK_LOCAL_RULE, JurisdictionRow},
    relation::{Range, Source},
    units::{Brix, Temperature, Value, deg_f, table},
};

/// The density chart that a jurisdiction prescribes, as it is printed.
///
/// It is law where it is adopted, and it is not the equation of [`Hydrometer::reading`](super::Hydrometer::reading):
/// Vermont's asks for up to 0.33 °Bx less between about 80 and 190 °F, so that syrup which just meets it there is near
/// 66.6 °Bx. The two are never mixed; a [`Card`](super::Card) shows one beside the other.
///
/// # Errors
/// Unknown name, with the nearest; missing where the jurisdiction has no chart.
/// # Source
/// As [`DensityChart::source`] says.
/// # Examples
/// ```
/// use sugaring::{instrument::chart, units::*};
/// let vermont = chart("vermont")?;
/// let mark = vermont.mark(deg_f(120.0))?;
/// assert_eq!((format!("{:.1}", mark.brix), format!("{:.2}", mark.baume)), ("63.8".into(), "34.50".into()));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::instrument::chart;
/// assert_eq!(
///     chart("maine").unwrap_err().to_string(),
///     "chart is missing; the rule of Maine states a density, no chart: 66 to 69 °Bx",
/// );
/// ```
pub fn chart(jurisdiction: &str) -> Result<DensityChart, Error> {
    let row = JurisdictionRow::named(jurisdiction)?;
    match CHARTS.iter().find(|chart| chart.jurisdiction == row.key) {
        Some(chart) => Ok(*chart),
        None => Err(Error::missing("chart").with_hint(match row.max {
            Some(max) => format!(
                "the rule of {} states a density, no chart: {} to {max}",
                row.name,
                row.min.get()
            ),
            None => format!(
                "the rule of {} states a density, no chart: {} or more",
                row.name, row.min
            ),
        })),
    }
}

/// A printed chart of what a hydrometer must show, at least, in syrup of each temperature: data, with its law.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct DensityChart {
    /// Key of the jurisdiction, as in [`catalogue::jurisdictions`](crate::catalogue::jurisdictions).
    pub jurisdiction: &'static str,
    /// Name of the jurisdiction.
    pub name: &'static str,
    /// The law that prescribes it.
    pub law: &'static str,
    /// When it was seen.
    pub seen: &'static str,
    /// What the syrup is held to be, by the law.
    pub target: Brix,
    /// Where the figures come from.
    pub source: Source,
    /// What to do before relying on it.
    pub advice: &'static str,
    /// °F for which the instruments are made.
    fahrenheit: f64,
    rows: &'static [ChartRow],
    span: Range,
}

impl DensityChart {
    /// The rows as printed, from cold to hot.
    #[must_use]
    pub const fn rows(&self) -> &'static [ChartRow] {
        self.rows
    }

    /// The temperature at which the hydrometers it is meant for are true.
    #[must_use]
    pub fn calibrated_at(&self) -> Temperature {
        deg_f(self.fahrenheit)
    }

    /// What the chart asks a hydrometer to show, at least, in syrup of `temperature`.
    ///
    /// r = r₁ + (r₂ − r₁) (t − t₁)/(t₂ − t₁) between the printed rows, for °Brix and °Baumé each
    ///
    /// | symbol | meaning | unit | range |
    /// |---|---|---|---|
    /// | t | temperature of the syrup | °F | 50 to 209 |
    /// | r | mark | °Bx or °Bé | 59 to 67.4, 32 to 36.25 |
    ///
    /// # Errors
    /// Out of range beyond the first and the last row, or not finite.
    /// # Source
    /// The chart; the straight line between rows is ours.
    /// # Examples
    /// ```
    /// use sugaring::{instrument::chart, units::*};
    /// let mark = chart("vermont")?.mark(deg_f(115.0))?;
    /// assert_eq!(format!("{:.2}", mark.brix), "64.05");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    /// ```
    /// # use sugaring::{instrument::chart, units::*};
    /// let hot = chart("vermont")?.mark(deg_f(211.0));
    /// assert_eq!(hot.unwrap_err().to_string(), "temperature = 211 °F is outside 50 to 209 °F");
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn mark(&self, temperature: Temperature) -> Result<ChartMark, Error> {
        let si = self
            .span
            .check(temperature.si())
            .map_err(|e| e.with_reference(self.source))?;
        let fahrenheit = table::deg_f.from_si(si);
        let after = self.rows.iter().position(|row| row.fahrenheit >= fahrenheit);
        let after = after.unwrap_or(self.rows.len().saturating_sub(1));
        let row = |index: usize| self.rows.get(index).copied().unwrap_or(NO_ROW);
        let (low, high) = (row(after.saturating_sub(1)), row(after));
        let width = high.fahrenheit - low.fahrenheit;
        let share = if width > 0.0 {
            (fahrenheit - low.fahrenheit) / width
        } else {
            0.0
        };
        let between = |low: f64, high: f64| reading(low + (high - low) * share);
        Ok(ChartMark {
            brix: between(low.brix, high.brix),
            baume: between(low.baume, high.baume),
        })
    }
}

impl fmt::Display for DensityChart {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "chart of {}, law where it is adopted: {}", self.name, self.advice)
    }
}

/// A printed row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChartRow {
    fahrenheit: f64,
    brix: f64,
    baume: f64,
}

impl ChartRow {
    /// Temperature of the syrup.
    #[must_use]
    pub fn temperature(&self) -> Temperature {
        deg_f(self.fahrenheit)
    }

    /// The marks at it.
    #[must_use]
    pub const fn mark(&self) -> ChartMark {
        ChartMark {
            brix: reading(self.brix),
            baume: reading(self.baume),
        }
    }
}

/// What a chart asks for, on either scale.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ChartMark {
    /// On a scale in °Brix.
    pub brix: Reading,
    /// On a scale in °Baumé of modulus 145.
    pub baume: Reading,
}

const NO_ROW: ChartRow = row(f64::NAN, f64::NAN, f64::NAN);

const fn row(fahrenheit: f64, brix: f64, baume: f64) -> ChartRow {
    ChartRow {
        fahrenheit,
        brix,
        baume,
    }
}

static CHARTS: &[DensityChart] = &[DensityChart {
    jurisdiction: "vermont",
    name: "Vermont",
    law: "maple products regulation: packaged syrup has at least the density that the chart gives for its temperature",
    seen: "2026-11, in a reprint of 2014; the rule itself as quoted by others",
    target: Brix::trusted(66.9),
    source: Source::Published {
        text: "Vermont's density chart for hydrometers calibrated at 60 °F, as reprinted with an instrument in 2014",
        at: "18 rows, 50 to 209 °F",
    },
    advice: CHECK_LOCAL_RULE,
    fahrenheit: 60.0,
    rows: &VERMONT,
    span: Range::new("temperature", &table::deg_f, 50.0, 209.0),
}];

/// °F, °Bx, °Bé of modulus 145, as printed.
static VERMONT: [ChartRow; 18] = [
    row(50.0, 67.4, 36.25),
    row(60.0, 66.9, 36.0),
    row(70.0, 66.4, 35.75),
    row(80.0, 65.9, 35.5),
    row(90.0, 65.4, 35.25),
    row(100.0, 64.8, 35.0),
    row(110.0, 64.3, 34.75),
    row(120.0, 63.8, 34.5),
    row(130.0, 63.3, 34.25),
    row(140.0, 62.8, 34.0),
    row(149.0, 62.3, 33.75),
    row(158.0, 61.8, 33.5),
    row(167.0, 61.4, 33.25),
    row(176.0, 60.9, 33.0),
    row(185.0, 60.4, 32.75),
    row(193.0, 60.0, 32.5),
    row(202.0, 59.6, 32.25),
    row(209.0, 59.0, 32.0),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::deg_c;
    use alloc::string::ToString;
    use proptest::prelude::*;

    #[test]
    fn printed_rows_come_back() {
        for chart in CHARTS {
            for printed in chart.rows() {
                let found = chart.mark(printed.temperature()).unwrap();
                assert!((found.brix.get() - printed.brix).abs() < 1e-9, "{}", printed.fahrenheit);
                assert!(
                    (found.baume.get() - printed.baume).abs() < 1e-9,
                    "{}",
                    printed.fahrenheit
                );
            }
            assert!(
                chart
                    .rows()
                    .windows(2)
                    .all(|pair| pair[0].fahrenheit < pair[1].fahrenheit)
            );
            assert!(chart.rows().windows(2).all(|pair| pair[0].brix > pair[1].brix));
            let ends = (
                chart.rows()[0].fahrenheit,
                chart.rows()[chart.rows().len() - 1].fahrenheit,
            );
            assert_eq!((chart.span.low, chart.span.high), ends);
        }
    }

    #[test]
    fn what_is_no_chart_is_said() {
        let said = |name| chart(name).unwrap_err().to_string();
        assert_eq!(
            said("vermon"),
            "jurisdiction has the unknown name \"vermon\"; nearest: vermont"
        );
        assert_eq!(
            said("ontario"),
            "chart is missing; the rule of Ontario states a density, no chart: 66 °Bx or more"
        );
        assert_eq!(
            chart("Vermont").unwrap().mark(deg_c(f64::NAN)).unwrap_err().to_string(),
            "temperature = NaN is not a finite number"
        );
    }

    proptest! {
        #[test]
        fn any_temperature_is_taken(kelvin in any::<f64>()) {
            let _ = chart("vermont").unwrap().mark(crate::units::kelvin(kelvin));
        }

        #[test]
        fn hotter_asks_for_less(fahrenheit in 50.0..208.0_f64, step in 1e-3..1.0_f64) {
            let at = |f| chart("vermont").unwrap().mark(deg_f(f)).unwrap();
            prop_assert!(at(fahrenheit).brix > at(fahrenheit + step).brix);
            prop_assert!(at(fahrenheit).baume > at(fahrenheit + step).baume);
        }
    }
}
