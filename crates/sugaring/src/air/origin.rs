//! The kinds of reading a station pressure comes from.

/// How a [`StationPressure`](super::StationPressure) was come by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Origin {
    /// A barometer in the sugarhouse, not adjusted to sea level.
    Measured,
    /// An altimeter setting and the altitude.
    AltimeterSetting,
    /// A sea level pressure, the altitude and the temperature of the air.
    SeaLevel,
    /// The altitude alone: the weather is unknown.
    Altitude,
    /// The temperature at which plain water boils there.
    BoilingWater,
}

impl Origin {
    /// Every origin.
    pub const ALL: [Self; 5] = [
        Self::Measured,
        Self::AltimeterSetting,
        Self::SeaLevel,
        Self::Altitude,
        Self::BoilingWater,
    ];

    /// The origin's name in data and other languages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Measured => "measured",
            Self::AltimeterSetting => "altimeter_setting",
            Self::SeaLevel => "sea_level",
            Self::Altitude => "altitude",
            Self::BoilingWater => "boiling_water",
        }
    }

    /// The origin of that name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|origin| origin.name() == name)
    }

    /// Standard uncertainty of the pressure where nobody says better, Pa.
    pub(super) const fn uncertainty(self) -> f64 {
        match self {
            Self::Measured | Self::AltimeterSetting => 100.0,
            Self::SeaLevel => 200.0,
            // 3.5 kPa per kelvin, of a thermometer that repeats within 0.1 K.
            Self::BoilingWater => 350.0,
            Self::Altitude => 800.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_origin_has_its_name_and_uncertainty() {
        let names: Vec<_> = Origin::ALL.iter().map(|o| (o.name(), o.uncertainty())).collect();
        assert_eq!(
            names,
            [
                ("measured", 100.0),
                ("altimeter_setting", 100.0),
                ("sea_level", 200.0),
                ("altitude", 800.0),
                ("boiling_water", 350.0)
            ]
        );
    }
}
