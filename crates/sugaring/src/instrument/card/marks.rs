use alloc::{format, string::String, vec::Vec};

use super::words::{clean, decimals};
use crate::{
    digits,
    error::Error,
    instrument::{DensityChart, Hydrometer, Instrument, Reading, reading},
    units::{Brix, Dimension, System, Temperature, Unit, Value, deg_c, deg_f, table},
};

/// The card of marks: what `instrument` shows in syrup of `target` at each of `temperatures`.
///
/// Each mark is [`Instrument::reading`], symbols and range as there, and is also given rounded to what can be read on
/// such a scale: 0.1 °Bx or °Bé, 0.001 in relative density, 1 kg/m³. Without temperatures the card has those of
/// [`usual_temperatures`] that the instrument covers: every 10 °F for one that is true at 60 °F, else every 5 °C.
///
/// # Errors
/// As [`Instrument::reading`], with the temperature's place in the list; inconsistent where the mark would lie beyond
/// the instrument's paper.
/// # Source
/// As [`Hydrometer::reading`] or [`Refractometer::reading`](crate::instrument::Refractometer::reading).
/// # Examples
/// ```
/// use sugaring::{instrument::{Hydrometer, card, chart}, units::*};
/// let hydrometer = Hydrometer::brix(deg_f(60.0))?.into();
/// let card = card(brix(66.9)?, &hydrometer, &[deg_f(211.0), deg_f(120.0)])?.with_chart(&chart("vermont")?)?;
/// let marks: Vec<f64> = card.marks.iter().map(|mark| mark.readable.get()).collect();
/// assert_eq!(marks, [59.0, 64.1]);
/// assert_eq!(card.marks[1].chart.map(|mark| mark.get()), Some(63.8));
/// assert!(card.to_string().contains("\n    211      99.4       59.0"));
/// assert!(card.to_svg(System::Us).starts_with("<svg"));
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{instrument::{Hydrometer, card}, units::*};
/// let hydrometer = Hydrometer::brix(deg_f(60.0))?.into();
/// assert_eq!(
///     card(brix(66.9)?, &hydrometer, &[deg_f(60.0), deg_c(211.0)]).unwrap_err().to_string(),
///     "temperatures[1] = 211 °C is outside 0 to 106 °C; 211 °F is 99.44 °C: write deg_f(211)",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn card(target: Brix, instrument: &Instrument, temperatures: &[Temperature]) -> Result<Card, Error> {
    let marks = if temperatures.is_empty() {
        usual_marks(target, instrument)?
    } else {
        let numbered = temperatures.iter().enumerate();
        let marked = numbered.map(|(index, t)| Mark::at(target, instrument, *t, index));
        marked.collect::<Result<_, _>>()?
    };
    Ok(Card {
        name: None,
        target,
        instrument: *instrument,
        marks,
        chart: None,
    })
}

/// What a card shows where nobody names temperatures, hottest first: 211 and 200 to 60 °F, or 100 to 15 °C.
///
/// ```
/// use sugaring::{instrument::usual_temperatures, units::*};
/// assert_eq!(usual_temperatures(System::Us)[0], deg_f(211.0));
/// assert_eq!(usual_temperatures(System::Metric).last(), Some(&deg_c(15.0)));
/// ```
#[must_use]
pub fn usual_temperatures(system: System) -> Vec<Temperature> {
    match system {
        // What syrup has in the cup, straight from the pan.
        System::Us | System::AsGiven => [deg_f(211.0)]
            .into_iter()
            .chain((6..=20).rev().map(|tens| deg_f(10.0 * f64::from(tens))))
            .collect(),
        System::Metric => (3..=20).rev().map(|fives| deg_c(5.0 * f64::from(fives))).collect(),
    }
}

/// A card of marks for one instrument and one syrup: a text by `Display` and [`Card::page`], and data.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Card {
    /// What stands on top: whose sugarhouse it hangs in, or which instrument it belongs to.
    pub name: Option<String>,
    /// The syrup that is wanted.
    pub target: Brix,
    /// The instrument it holds for, and no other.
    pub instrument: Instrument,
    /// The marks, in the order of the temperatures.
    pub marks: Vec<Mark>,
    /// The chart beside the marks.
    pub chart: Option<DensityChart>,
}

/// What the instrument shows at one temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Mark {
    /// Of syrup and glass; of the prism of a refractometer.
    pub temperature: Temperature,
    /// The mark, in the instrument's own unit.
    pub reading: Reading,
    /// The same, rounded to what can be read.
    pub readable: Reading,
    /// Standard uncertainty of the syrup that shows it, °Bx; `None` where the instrument's paper would not be believed.
    pub uncertainty: Option<f64>,
    /// What the chart asks for, on the same scale; `None` without one, and beyond its rows.
    pub chart: Option<Reading>,
}

impl Card {
    /// With a name on top. What cannot be printed is left out.
    #[must_use]
    pub fn with_name(mut self, name: &str) -> Self {
        let name = clean(name);
        self.name = (!name.is_empty()).then_some(name);
        self
    }

    /// With a state's chart *beside* the marks: never in place of them, and never mixed with them.
    ///
    /// # Errors
    /// Inconsistent where the chart is not meant for such an instrument: one of another scale than °Brix or °Baumé, or one
    /// that is true at another temperature.
    ///
    /// ```
    /// use sugaring::{instrument::{Hydrometer, card, chart}, units::*};
    /// let metric = Hydrometer::brix(deg_c(20.0))?.into();
    /// let refused = card(brix(66.9)?, &metric, &[])?.with_chart(&chart("vermont")?);
    /// assert_eq!(
    ///     refused.unwrap_err().to_string(),
    ///     "chart = vermont does not fit calibrated_at = 20 °C; it is made for hydrometers true at 60 °F",
    /// );
    /// # Ok::<(), sugaring::Error>(())
    /// ```
    pub fn with_chart(mut self, chart: &DensityChart) -> Result<Self, Error> {
        let unfit =
            |other: &str, hint: String| Err(Error::inconsistent("chart", chart.jurisdiction, other).with_hint(hint));
        let Instrument::Hydrometer(hydrometer) = &self.instrument else {
            return unfit("the refractometer", String::from("it is made for hydrometers"));
        };
        let scale = hydrometer.marking.unit();
        let baume = matches!(scale.dimension, Dimension::Baume2020 | Dimension::Baume6060F);
        if !baume && scale.dimension != Dimension::Brix {
            let other = format!("scale = {}", hydrometer.marking.name());
            return unfit(&other, String::from("it has marks in °Brix and °Baumé"));
        }
        let meant = chart.calibrated_at().si();
        if (hydrometer.float.calibrated_at - meant).abs() > SAME_CALIBRATION {
            let celsius = table::deg_c.from_si(hydrometer.float.calibrated_at);
            let other = format!("calibrated_at = {} °C", digits::significant(celsius, 4));
            let fahrenheit = digits::significant(table::deg_f.from_si(meant), 4);
            return unfit(&other, format!("it is made for hydrometers true at {fahrenheit} °F"));
        }
        for mark in &mut self.marks {
            let asked = chart.mark(mark.temperature).ok();
            mark.chart = asked.map(|asked| if baume { asked.baume } else { asked.brix });
        }
        self.chart = Some(*chart);
        Ok(self)
    }

    /// The unit of the marks.
    #[must_use]
    pub fn unit(&self) -> &'static Unit {
        unit(&self.instrument)
    }
}

impl Mark {
    fn at(target: Brix, instrument: &Instrument, temperature: Temperature, index: usize) -> Result<Self, Error> {
        let place = || format!("temperatures[{index}]");
        // A mark beyond the paper is told with its temperature, below.
        let unbounded = match *instrument {
            Instrument::Hydrometer(hydrometer) => Hydrometer {
                span: None,
                ..hydrometer
            }
            .into(),
            other @ Instrument::Refractometer(_) => other,
        };
        let shown = match unbounded.reading(target, temperature) {
            Ok(shown) => shown,
            Err(error) => {
                let name = if error.argument() == "brix" {
                    String::from("target")
                } else {
                    place()
                };
                return Err(error.named(&name));
            }
        };
        if let Instrument::Hydrometer(hydrometer) = instrument {
            on_paper(hydrometer, shown, temperature).map_err(|error| error.named(&place()))?;
        }
        Ok(Self {
            temperature,
            reading: shown,
            readable: readable(shown, unit(instrument)),
            uncertainty: instrument.truth(shown, temperature).ok().map(|truth| truth.uncertainty),
            chart: None,
        })
    }
}

/// The marks at those of the usual temperatures that the instrument covers.
fn usual_marks(target: Brix, instrument: &Instrument) -> Result<Vec<Mark>, Error> {
    let temperatures = usual_temperatures(usual_system(instrument));
    let numbered = temperatures.iter().enumerate();
    let tried = numbered.map(|(index, t)| Mark::at(target, instrument, *t, index));
    let (made, refused): (Vec<_>, Vec<_>) = tried.partition(Result::is_ok);
    match refused.into_iter().next() {
        Some(error) if made.is_empty() => Err(error.err().unwrap_or_else(|| Error::missing("temperatures"))),
        _ => Ok(made.into_iter().flatten().collect()),
    }
}

/// An instrument that is true at 60 °F hangs where people think in °F.
fn usual_system(instrument: &Instrument) -> System {
    match instrument {
        Instrument::Hydrometer(hydrometer) => {
            let away = hydrometer.float.calibrated_at - deg_f(60.0).si();
            if away.abs() < SAME_CALIBRATION {
                System::Us
            } else {
                System::Metric
            }
        }
        Instrument::Refractometer(_) => System::Metric,
    }
}

/// Papers state their temperature to a degree or so, K.
const SAME_CALIBRATION: f64 = 0.3;

pub(super) fn unit(instrument: &Instrument) -> &'static Unit {
    match instrument {
        Instrument::Hydrometer(hydrometer) => hydrometer.marking.unit(),
        Instrument::Refractometer(_) => &table::deg_brix,
    }
}

fn readable(shown: Reading, unit: &Unit) -> Reading {
    let text = digits::fixed(shown.get(), decimals(unit));
    reading(text.parse().unwrap_or(shown.get()))
}

fn on_paper(hydrometer: &Hydrometer, shown: Reading, temperature: Temperature) -> Result<(), Error> {
    let Some((low, high)) = hydrometer.span else {
        return Ok(());
    };
    if (low..=high).contains(&shown.get()) {
        return Ok(());
    }
    let unit = hydrometer.marking.unit();
    let celsius = table::deg_c.show(digits::rounded_to(table::deg_c.from_si(temperature.si()), 6));
    let paper = format!("span = {} to {}", digits::shortest(low), unit.show(high));
    let hint = format!("the mark is {} there", unit.show(digits::rounded_to(shown.get(), 4)));
    Err(Error::inconsistent("temperature", &celsius, &paper).with_hint(hint))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{
        instrument::{Refractometer, chart},
        units::{baume_20_20, brix, kelvin, relative_density_20_20},
    };
    use alloc::string::ToString;
    use proptest::prelude::*;

    fn syrup() -> Brix {
        brix(66.9).unwrap()
    }

    fn hydrometer() -> Hydrometer {
        Hydrometer::brix(deg_f(60.0)).unwrap()
    }

    #[test]
    fn the_hot_test_mark_stands_on_top() {
        let made = card(syrup(), &hydrometer().into(), &[]).unwrap();
        assert_eq!(made.marks.len(), 16);
        assert_eq!(made.marks[0].temperature, deg_f(211.0));
        assert_eq!(made.marks[0].readable, reading(59.0));
        assert_eq!(made.marks[15].readable, reading(66.9));
        let baume = Hydrometer::on_scale::<baume_20_20>(deg_f(60.0)).unwrap();
        let made = card(syrup(), &baume.into(), &[]).unwrap();
        assert_eq!(
            (made.marks[0].readable, made.marks[15].readable),
            (reading(32.0), reading(36.0))
        );
    }

    #[test]
    fn a_refractometer_gets_the_temperatures_it_works_at() {
        let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
        let made = card(syrup(), &hand.into(), &[]).unwrap();
        let at: Vec<f64> = made.marks.iter().map(|mark| mark.temperature.si() - 273.15).collect();
        assert_eq!(at, [30.0, 25.0, 20.0, 15.0]);
        let refused = card(syrup(), &hand.into(), &[deg_c(20.0), deg_c(85.0)]).unwrap_err();
        assert!(
            refused
                .to_string()
                .starts_with("temperatures[1] = 85 °C is outside 10 to 30 °C")
        );
    }

    #[test]
    fn what_does_not_fit_is_refused() {
        let said = |error: Error| error.to_string();
        let strong = card(brix(90.0).unwrap(), &hydrometer().into(), &[deg_c(20.0)]).unwrap_err();
        assert_eq!(said(strong), "target = 90 °Bx is outside 0 to 85 °Bx");
        let short = hydrometer().with_span(60.0, 70.0).unwrap();
        assert_eq!(
            said(card(syrup(), &short.into(), &[deg_f(211.0)]).unwrap_err()),
            "temperatures[0] = 99.4444 °C does not fit span = 60 to 70 °Bx; the mark is 59 °Bx there"
        );
        assert_eq!(
            card(syrup(), &short.into(), &[]).unwrap().marks[0].temperature,
            deg_f(190.0)
        );
        let vermont = chart("vermont").unwrap();
        let refused = |instrument: Instrument| {
            said(
                card(syrup(), &instrument, &[])
                    .unwrap()
                    .with_chart(&vermont)
                    .unwrap_err(),
            )
        };
        let hand = Refractometer::compensated(deg_c(10.0), deg_c(30.0)).unwrap();
        assert_eq!(
            refused(hand.into()),
            "chart = vermont does not fit the refractometer; it is made for hydrometers"
        );
        assert_eq!(
            refused(
                Hydrometer::on_scale::<relative_density_20_20>(deg_f(60.0))
                    .unwrap()
                    .into()
            ),
            "chart = vermont does not fit scale = relative_density_20_20; it has marks in °Brix and °Baumé"
        );
    }

    #[test]
    fn the_chart_stands_beside_and_changes_nothing() {
        let vermont = chart("vermont").unwrap();
        for instrument in [
            hydrometer().into(),
            Hydrometer::on_scale::<baume_20_20>(deg_f(60.0)).unwrap().into(),
        ] {
            let plain = card(syrup(), &instrument, &[]).unwrap();
            let beside = plain.clone().with_chart(&vermont).unwrap();
            for (mark, with) in plain.marks.iter().zip(&beside.marks) {
                assert_eq!((mark.reading, mark.readable), (with.reading, with.readable));
            }
            assert_eq!(beside.marks[0].chart, None, "211 °F is beyond its rows");
            assert!(beside.marks[1..].iter().all(|mark| mark.chart.is_some()));
        }
    }

    proptest! {
        #[test]
        fn marks_read_back_as_the_target(
            target in 0.0..84.0_f64, celsius in 0.0..106.0_f64, offset in -1.0..1.0_f64, baume in any::<bool>(),
        ) {
            let float = if baume { Hydrometer::on_scale::<baume_20_20>(deg_f(60.0)) } else { Hydrometer::brix(deg_f(60.0)) };
            let instrument = Instrument::from(float.unwrap().with_offset(offset).unwrap());
            let made = card(brix(target).unwrap(), &instrument, &[deg_c(celsius)]).unwrap();
            let mark = made.marks[0];
            prop_assert!((mark.readable.get() - mark.reading.get()).abs() <= 0.05 + 1e-9);
            if let Ok(truth) = instrument.truth(mark.reading, mark.temperature) {
                prop_assert!((truth.value.get() - target).abs() < 1e-8);
            }
            if let Ok(truth) = instrument.truth(mark.readable, mark.temperature) {
                let half_a_step = if baume { 0.12 } else { 0.06 };
                prop_assert!((truth.value.get() - target).abs() < half_a_step);
            }
        }

        #[test]
        fn anything_is_taken(
            target in any::<f64>(), temperatures in proptest::collection::vec(any::<f64>(), 0..5), name in ".*",
        ) {
            let temperatures: Vec<_> = temperatures.into_iter().map(kelvin).collect();
            let vermont = chart("vermont").unwrap();
            for instrument in [hydrometer().into(), Refractometer::uncompensated().into()] {
                let _ = card(Brix::trusted(target), &instrument, &temperatures);
                let Ok(made) = card(syrup(), &instrument, &[]) else { continue };
                let made = made.with_name(&name);
                let made = made.clone().with_chart(&vermont).unwrap_or(made);
                for system in [System::AsGiven, System::Us, System::Metric] {
                    prop_assert!(made.page(system).lines().all(|line| line.chars().count() <= 70));
                    prop_assert!(made.to_svg(system).ends_with("</svg>\n"));
                }
                let _ = (made.to_csv(), made.to_tree());
            }
        }
    }
}
