//! Why no row sees the last digit of a coefficient.

/// File, constant or function, and why.
const WHY: &[(&str, &str, &str)] = &[
    (
        "water/latent.rs",
        "D, number 1",
        "α cancels in the latent heat; the heat of evaporation has only its change over the few kelvins of rise",
    ),
    (
        "water/latent.rs",
        "D, number 5",
        "its term, θ to the power of 54.5, is 1e-11 of the others below 132 °C",
    ),
    (
        "water/saturation.rs",
        "N9",
        "moves ϑ by 4e-17 K of some 370: less than rounding",
    ),
    (
        "water/saturation.rs",
        "N10",
        "moves ϑ by 3e-17 K of some 370; the vectors see rounding in rises of dilute sap, differences of near equals",
    ),
    ("sucrose/activity.rs", "GAS", "1e-15 of it; exact by the SI"),
    ("sucrose/boiling_point.rs", "block()", "fills lanes that nobody reads"),
    (
        "sucrose/boiling_point.rs",
        "start()",
        "where the solver starts: what it finds is fed back into the equation",
    ),
    (
        "sucrose/boiling_point.rs",
        "nearer()",
        "bends a step of the solver: what it finds is fed back into the equation",
    ),
    (
        "sucrose/solubility.rs",
        "saturation_temperature_near()",
        "where the solver starts: what it finds is fed back into the equation",
    ),
];

/// What is known of a place.
pub(crate) fn why(file: &str, name: &str) -> Option<&'static str> {
    let known = WHY
        .iter()
        .find(|(known_file, known_name, _)| *known_file == file && name.starts_with(known_name));
    known.map(|(_, _, why)| *why)
}
