use crate::{
    error::Error,
    relation::{Range, Relation, Source},
    sucrose,
    units::{Brix, Si, Temperature, Value, Volume, table},
};

/// How much to fill hot so that the label's contents are there when cold.
///
/// `V_hot = V ρ(B, 20 °C) / ρ(B, T)`
///
/// | symbol | meaning | unit | range |
/// |---|---|---|---|
/// | V | contents on the label, at 20 °C | mL | 1 to 1e9 |
/// | B | °Brix of the syrup | °Bx | 50 to 85 |
/// | T | temperature of filling | °C | 20 to 100 |
///
/// By the scale it is ρ(B, 20 °C)·V, whatever the temperature.
///
/// # Errors
/// Out of range or not finite.
/// # Source
/// Declared contents hold at 68 °F (Vermont, 6 V.S.A. § 494(c)); density of [`sucrose::density`], 0.12 % above 55 °C.
/// # Examples
/// ```
/// use sugaring::{finish, units::*};
/// let hot = finish::hot_fill(ml(500.0), brix(66.9)?, deg_c(85.0))?;
/// assert_eq!(format!("{:.1}", hot.get::<ml>()), "514.9");
/// # Ok::<(), sugaring::Error>(())
/// ```
/// ```
/// # use sugaring::{finish, units::*};
/// assert_eq!(
///     finish::hot_fill(ml(500.0), brix(66.9)?, deg_c(185.0)).unwrap_err().to_string(),
///     "fill_temperature = 185 °C is outside 20 to 100 °C; 185 °F is 85 °C: write deg_f(185)",
/// );
/// # Ok::<(), sugaring::Error>(())
/// ```
pub fn hot_fill(label: Volume, brix: Brix, fill_temperature: Temperature) -> Result<Volume, Error> {
    let label = HOT_FILL.check(0, label.si())?;
    let brix = HOT_FILL.check(1, brix.get())?;
    let kelvin = HOT_FILL.check(2, fill_temperature.si())?;
    Ok(Volume::of_si(hot_fill_at(label, brix, kelvin)))
}

/// m³ to fill at `kelvin` for a label of `label` m³.
pub(crate) fn hot_fill_at(label: f64, brix: f64, kelvin: f64) -> f64 {
    label * sucrose::density_at(brix, REFERENCE) / sucrose::density_at(brix, kelvin)
}

/// What [`hot_fill`] covers.
pub static HOT_FILL: Relation = Relation {
    name: "finish::hot_fill",
    inputs: &[
        Range::new("label", &table::ml, 1.0, 1e9),
        Range::new("brix", &table::deg_brix, 50.0, 85.0),
        Range::new("fill_temperature", &table::deg_c, 20.0, 100.0),
    ],
    output: &table::ml,
    source: Source::Derived {
        text: "ratio of the densities of sucrose solutions",
    },
    accuracy: "0.12 % above 55 °C, as the density",
};

/// Where declared contents hold, K: 20 °C, that is 68 °F.
pub(super) const REFERENCE: f64 = 293.15;
