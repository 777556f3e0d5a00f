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
}

impl Dimension {
    /// Every dimension.
    pub const ALL: [Self; 24] = [
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
        }
    }

    /// Whether a bare number is accepted: °Brix, ratios (as fractions) and counts.
    #[must_use]
    pub const fn is_plain(self) -> bool {
        matches!(self, Self::Brix | Self::Ratio | Self::Count)
    }
}
