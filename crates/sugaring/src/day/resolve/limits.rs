//! Ranges of the day's inputs: what a plan accepts. Those without a source are our choice.

pub(crate) static STATION_PRESSURE: Range = Range::new("station_pressure", &table::kpa, 60.0, 105.0);
pub(crate) static ALTIMETER_SETTING: Range = Range::new("altimeter_setting", &table::kpa, 90.0, 110.0);
pub(crate) static SEA_LEVEL_PRESSURE: Range = Range::new("sea_level_pressure", &table::kpa, 90.0, 110.0);
pub(crate) static ALTITUDE: Range = Range::new("altitude", &table::metre, -500.0, 5000.0);
pub(crate) static AIR_TEMPERATURE: Range = Range::new("air_temperature", &table::deg_c, -50.0, 50.0);
pub(crate) static WATER_BOILS_AT: Range = Range::new("water_boils_at", &table::deg_c, 80.0, 102.0);

pub(crate) static SAP_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(crate) static SAP_MASS: Range = Range::new("mass", &table::kg, 0.001, 1.5e6);
pub(crate) static SAP_BRIX: Range = Range::new("brix", &table::deg_brix, 0.5, 30.0);
use crate::{relation::Range, units::table};

/// Of its uncertainty alone; its own lower limit is computed.
pub(crate) static SAP_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -15.0, 40.0);
/// The lower limit of a sap's temperature is its freezing point, which is computed.
pub(crate) const SAP_WARMEST: f64 = 40.0;

pub(crate) static RATED_FLOW: Range = Range::new("flow", &table::cubic_metre_per_day, 0.01, 100.0);
pub(crate) static RATED_PRESSURE: Range = Range::new("pressure", &table::bar_gauge, 0.5, 70.0);
pub(crate) static RATED_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 45.0);
pub(crate) static SALT: Range = Range::new("salt", &table::mg_per_litre, 0.0, 35_000.0);
pub(crate) static RATED_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.01, 0.8);
pub(crate) static REJECTION: Range = Range::new("rejection", &table::fraction, 0.5, 1.0);
pub(crate) static PERMEANCE: Range = Range::new("permeance", &table::litre_per_h_bar, 0.01, 1000.0);
pub(crate) static PRESSURE_LIMIT: Range = Range::new("pressure_limit", &table::bar_gauge, 0.0, 70.0);
pub(crate) static RIG_PRESSURE: Range = Range::new("pressure", &table::bar_gauge, 0.0, 70.0);
pub(crate) static PUMP_FLOW: Range = Range::new("flow", &table::litre_per_h, 1.0, 1e6);
pub(crate) static PUMP_EFFICIENCY: Range = Range::new("efficiency", &table::fraction, 0.01, 1.0);
pub(crate) static PUMP_POWER: Range = Range::new("power", &table::kw, 0.001, 100.0);
pub(crate) static FILM_FACTOR: Range = Range::new("film_factor", &table::fraction, 0.1, 4.0);
pub(crate) static RETENTION: Range = Range::new("retention", &table::fraction, 0.5, 1.0);
pub(crate) static ELEMENT_DROP: Range = Range::new("element_drop", &table::bar, 0.0, 2.0);
pub(crate) static PREFILTER_DROP: Range = Range::new("prefilter_drop", &table::bar, 0.0, 2.0);
pub(crate) static BACK_PRESSURE: Range = Range::new("back_pressure", &table::bar, 0.0, 2.0);
pub(crate) static RIG_HOLD_UP: Range = Range::new("hold_up", &table::litre, 0.0, 100.0);
pub(crate) static RINSE: Range = Range::new("rinse", &table::fraction, 0.0, 1.0);
pub(crate) static AIM_BRIX: Range = Range::new("brix", &table::deg_brix, 0.5, 60.0);
pub(crate) static AIM_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(crate) static AIM_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.001, 0.99);
pub(crate) static AIM_DURATION: Range = Range::new("duration", &table::hours, 0.01, 240.0);
pub(crate) static PASS_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.01, 0.95);

pub(crate) static PAN_LENGTH: Range = Range::new("length", &table::metre, 0.05, 20.0);
pub(crate) static PAN_WIDTH: Range = Range::new("width", &table::metre, 0.05, 20.0);
pub(crate) static RUNNING_DEPTH: Range = Range::new("running_depth", &table::mm, 5.0, 500.0);
pub(crate) static LEAST_DEPTH: Range = Range::new("least_depth", &table::mm, 5.0, 500.0);
pub(crate) static WATER_ADDED: Range = Range::new("added", &table::kg_per_h, 0.1, 1e5);
pub(crate) static WATER_TEMPERATURE: Range = Range::new("feed_temperature", &table::deg_c, 0.0, 100.0);
pub(crate) static LEVEL_DROP: Range = Range::new("level_drop", &table::kg_per_h, 0.1, 1e5);
pub(crate) static PAN_POWER: Range = Range::new("power", &table::kw, 0.1, 1e5);
pub(crate) static LEFT_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(crate) static LEFT_BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 70.0);
pub(crate) static LEFT_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 100.0);

/// Of their uncertainty alone; the fuel room checks the values.
pub(crate) static MOISTURE: Range = Range::new("moisture", &table::fraction, 0.0, 0.6);
pub(crate) static EFFICIENCY: Range = Range::new("efficiency", &table::fraction, 0.05, 1.0);

pub(crate) static FINISHING_HEAT: Range = Range::new("heat", &table::kw, 0.1, 100.0);
pub(crate) static CAPACITY: Range = Range::new("capacity", &table::litre, 0.1, 10_000.0);
pub(crate) static TARGET_BRIX: Range = Range::new("brix", &table::deg_brix, 50.0, 70.0);
pub(crate) static GUARD: Range = Range::new("guard", &table::deg_brix, 0.0, 3.0);
pub(crate) static NON_SUCROSE_RISE: Range = Range::new("non_sucrose_rise", &table::delta_c, 0.0, 1.0);
pub(crate) static SUGAR_LOST: Range = Range::new("sugar_lost", &table::fraction, 0.0, 0.2);

pub(crate) static LABEL: Range = Range::new("volume", &table::ml, 10.0, 250_000.0);
pub(crate) static BRIMFUL: Range = Range::new("brimful", &table::ml, 10.0, 300_000.0);
pub(crate) static CONTAINER_MASS: Range = Range::new("mass", &table::kg, 0.001, 1000.0);
pub(crate) static CONTAINER_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -30.0, 100.0);
pub(crate) static FILL_TEMPERATURE: Range = Range::new("fill_temperature", &table::deg_c, 82.0, 93.0);

/// Draws: more would fill the memory of a browser.
pub(crate) const MOST_SAMPLES: u32 = 1_000_000;
