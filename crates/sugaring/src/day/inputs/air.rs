//! Today's air.
use crate::{
    air::StationPressure,
    units::{Given, Length, Pressure, Temperature},
};

/// Today's air: one reading at least; the first that stands, in this order, is used, the others are checks.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema), schemars(deny_unknown_fields))]
pub struct Air {
    /// What plain water boils at, here, now: the best reading.
    pub water_boils_at: Option<Given<Temperature>>,
    /// A barometer in the sugarhouse, not adjusted to sea level.
    pub station_pressure: Option<Given<Pressure>>,
    /// The airport's or home station's number; needs the altitude.
    pub altimeter_setting: Option<Given<Pressure>>,
    /// The weather map's number; needs the altitude and the air temperature.
    pub sea_level_pressure: Option<Given<Pressure>>,
    /// Altitude of the sugarhouse; alone it leaves the weather out.
    pub altitude: Option<Given<Length>>,
    /// Mean temperature of the air over the last 12 hours.
    pub air_temperature: Option<Given<Temperature>>,
    /// How a typed pressure was come by.
    #[cfg_attr(feature = "schema", schemars(skip))]
    pub(crate) typed: Option<StationPressure>,
}

impl From<StationPressure> for Air {
    fn from(station: StationPressure) -> Self {
        Self {
            typed: Some(station),
            ..Self::default()
        }
    }
}
