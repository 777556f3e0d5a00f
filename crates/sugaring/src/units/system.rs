use crate::error::Error;

/// The units of a page or a card.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum System {
    /// As most inputs were; on a card, °F and °C side by side.
    #[default]
    AsGiven,
    /// Gallons, pounds, °F, inches.
    Us,
    /// Litres, kilograms, °C, millimetres.
    Metric,
}

impl System {
    /// Every system, by its name in data and other languages.
    pub const NAMES: [(&'static str, Self); 3] =
        [("as_given", Self::AsGiven), ("us", Self::Us), ("metric", Self::Metric)];

    /// The system of that name.
    ///
    /// # Errors
    /// Unknown name.
    ///
    /// ```
    /// use sugaring::units::System;
    /// assert_eq!(System::named("us"), Ok(System::Us));
    /// let error = System::named("metrik").unwrap_err();
    /// assert_eq!(error.to_string(), "system has the unknown name \"metrik\"; nearest: metric");
    /// ```
    pub fn named(name: &str) -> Result<Self, Error> {
        let found = Self::NAMES.into_iter().find(|(known, _)| *known == name);
        let names = || Self::NAMES.into_iter().map(|(known, _)| known);
        found
            .map(|(_, system)| system)
            .ok_or_else(|| Error::unknown_name("system", name, names()))
    }
}
