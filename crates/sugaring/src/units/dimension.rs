/// What kind of thing a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[expect(missing_docs, reason = "the names say it")]
pub enum Dimension {
    Volume,
    Mass,
    Temperature,
    TemperatureDifference,
    Pressure,
    GaugePressure,
    Length,
    Area,
    Time,
    Flow,
    MassFlow,
    Power,
    Energy,
    Density,
    Concentration,
    EnergyPerMass,
    SpecificHeat,
    Viscosity,
    Conductivity,
    Permeance,
    PerKelvin,
    Ratio,
    Brix,
    Count,
    Baume2020,
    Baume6060F,
    RelativeDensity2020,
    RelativeDensity6060F,
    RelativeDensity204,
    ApparentRelativeDensity2020,
}

impl Dimension {
    /// Every dimension.
    pub const ALL: [Self; 30] = [
        Self::Volume,
        Self::Mass,
        Self::Temperature,
        Self::TemperatureDifference,
        Self::Pressure,
        Self::GaugePressure,
        Self::Length,
        Self::Area,
        Self::Time,
        Self::Flow,
        Self::MassFlow,
        Self::Power,
        Self::Energy,
        Self::Density,
        Self::Concentration,
        Self::EnergyPerMass,
        Self::SpecificHeat,
        Self::Viscosity,
        Self::Conductivity,
        Self::Permeance,
        Self::PerKelvin,
        Self::Ratio,
        Self::Brix,
        Self::Count,
        Self::Baume2020,
        Self::Baume6060F,
        Self::RelativeDensity2020,
        Self::RelativeDensity6060F,
        Self::RelativeDensity204,
        Self::ApparentRelativeDensity2020,
    ];

    /// The dimension in words, with its article: "a gauge pressure".
    #[must_use]
    pub const fn article_name(self) -> &'static str {
        match self {
            Self::Volume => "a volume",
            Self::Mass => "a mass",
            Self::Temperature => "a temperature",
            Self::TemperatureDifference => "a difference of temperatures",
            Self::Pressure => "an absolute pressure",
            Self::GaugePressure => "a gauge pressure",
            Self::Length => "a length",
            Self::Area => "an area",
            Self::Time => "a time",
            Self::Flow => "a flow",
            Self::MassFlow => "a mass flow",
            Self::Power => "a power",
            Self::Energy => "an energy",
            Self::Density => "a density",
            Self::Concentration => "a concentration",
            Self::EnergyPerMass => "an energy per mass",
            Self::SpecificHeat => "a specific heat",
            Self::Viscosity => "a viscosity",
            Self::Conductivity => "a thermal conductivity",
            Self::Permeance => "a permeance",
            Self::PerKelvin => "a coefficient per kelvin",
            Self::Ratio => "a ratio",
            Self::Brix => "a °Brix",
            Self::Count => "a count",
            Self::Baume2020 => "a degree Baumé (20/20 °C)",
            Self::Baume6060F => "a degree Baumé (60/60 °F)",
            Self::RelativeDensity2020 => "a relative density (20/20 °C)",
            Self::RelativeDensity6060F => "a relative density (60/60 °F)",
            Self::RelativeDensity204 => "a relative density (20/4 °C)",
            Self::ApparentRelativeDensity2020 => "a relative density in air (20/20 °C)",
        }
    }

    /// The dimension's name in data, such as `gauge_pressure`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Volume => "volume",
            Self::Mass => "mass",
            Self::Temperature => "temperature",
            Self::TemperatureDifference => "temperature_difference",
            Self::Pressure => "pressure",
            Self::GaugePressure => "gauge_pressure",
            Self::Length => "length",
            Self::Area => "area",
            Self::Time => "time",
            Self::Flow => "flow",
            Self::MassFlow => "mass_flow",
            Self::Power => "power",
            Self::Energy => "energy",
            Self::Density => "density",
            Self::Concentration => "concentration",
            Self::EnergyPerMass => "energy_per_mass",
            Self::SpecificHeat => "specific_heat",
            Self::Viscosity => "viscosity",
            Self::Conductivity => "conductivity",
            Self::Permeance => "permeance",
            Self::PerKelvin => "per_kelvin",
            Self::Ratio => "ratio",
            Self::Brix => "brix",
            Self::Count => "count",
            Self::Baume2020 => "baume_20_20",
            Self::Baume6060F => "baume_60_60_f",
            Self::RelativeDensity2020 => "relative_density_20_20",
            Self::RelativeDensity6060F => "relative_density_60_60_f",
            Self::RelativeDensity204 => "relative_density_20_4",
            Self::ApparentRelativeDensity2020 => "apparent_relative_density_20_20",
        }
    }

    /// Whether a bare number is accepted: °Brix, ratios (as fractions) and counts.
    #[must_use]
    pub const fn is_plain(self) -> bool {
        matches!(self, Self::Brix | Self::Ratio | Self::Count)
    }

    /// Whether its values are places on a scale, which neither add nor scale: temperatures, gauge pressures, density
    /// scales.
    #[must_use]
    pub const fn is_point(self) -> bool {
        matches!(self, Self::Temperature | Self::GaugePressure) || self.is_density_scale()
    }

    /// Whether it is a density scale, which a [`Scale`](super::Scale) makes.
    #[must_use]
    pub const fn is_density_scale(self) -> bool {
        matches!(
            self,
            Self::Baume2020
                | Self::Baume6060F
                | Self::RelativeDensity2020
                | Self::RelativeDensity6060F
                | Self::RelativeDensity204
                | Self::ApparentRelativeDensity2020
        )
    }
}
