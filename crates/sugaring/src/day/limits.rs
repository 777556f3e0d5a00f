//! Ranges of the day's inputs: what a plan accepts. Those without a source are our choice.

use crate::{relation::Range, units::table};

pub(super) static STATION_PRESSURE: Range = Range::new("station_pressure", &table::kpa, 60.0, 105.0);
pub(super) static ALTIMETER_SETTING: Range = Range::new("altimeter_setting", &table::kpa, 90.0, 110.0);
pub(super) static SEA_LEVEL_PRESSURE: Range = Range::new("sea_level_pressure", &table::kpa, 90.0, 110.0);
pub(super) static ALTITUDE: Range = Range::new("altitude", &table::metre, -500.0, 5000.0);
pub(super) static AIR_TEMPERATURE: Range = Range::new("air_temperature", &table::deg_c, -50.0, 50.0);
pub(super) static WATER_BOILS_AT: Range = Range::new("water_boils_at", &table::deg_c, 80.0, 102.0);

pub(super) static SAP_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(super) static SAP_MASS: Range = Range::new("mass", &table::kg, 0.001, 1.5e6);
pub(super) static SAP_BRIX: Range = Range::new("brix", &table::deg_brix, 0.5, 30.0);
/// Of its uncertainty alone; its own lower limit is computed.
pub(super) static SAP_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -15.0, 40.0);
/// The lower limit of a sap's temperature is its freezing point, which is computed.
pub(super) const SAP_WARMEST: f64 = 40.0;

pub(super) static RATED_FLOW: Range = Range::new("flow", &table::cubic_metre_per_day, 0.01, 100.0);
pub(super) static RATED_PRESSURE: Range = Range::new("pressure", &table::bar_gauge, 0.5, 70.0);
pub(super) static RATED_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 45.0);
pub(super) static SALT: Range = Range::new("salt", &table::mg_per_litre, 0.0, 35_000.0);
pub(super) static RATED_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.01, 0.8);
pub(super) static REJECTION: Range = Range::new("rejection", &table::fraction, 0.5, 1.0);
pub(super) static PERMEANCE: Range = Range::new("permeance", &table::litre_per_h_bar, 0.01, 1000.0);
pub(super) static PRESSURE_LIMIT: Range = Range::new("pressure_limit", &table::bar_gauge, 0.0, 70.0);
pub(super) static RIG_PRESSURE: Range = Range::new("pressure", &table::bar_gauge, 0.0, 70.0);
pub(super) static PUMP_FLOW: Range = Range::new("flow", &table::litre_per_h, 1.0, 1e6);
pub(super) static PUMP_EFFICIENCY: Range = Range::new("efficiency", &table::fraction, 0.01, 1.0);
pub(super) static PUMP_POWER: Range = Range::new("power", &table::kw, 0.001, 100.0);
pub(super) static FILM_FACTOR: Range = Range::new("film_factor", &table::fraction, 0.1, 4.0);
pub(super) static RETENTION: Range = Range::new("retention", &table::fraction, 0.5, 1.0);
pub(super) static ELEMENT_DROP: Range = Range::new("element_drop", &table::bar, 0.0, 2.0);
pub(super) static PREFILTER_DROP: Range = Range::new("prefilter_drop", &table::bar, 0.0, 2.0);
pub(super) static BACK_PRESSURE: Range = Range::new("back_pressure", &table::bar, 0.0, 2.0);
pub(super) static RIG_HOLD_UP: Range = Range::new("hold_up", &table::litre, 0.0, 100.0);
pub(super) static RINSE: Range = Range::new("rinse", &table::fraction, 0.0, 1.0);
pub(super) static AIM_BRIX: Range = Range::new("brix", &table::deg_brix, 0.5, 60.0);
pub(super) static AIM_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(super) static AIM_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.001, 0.99);
pub(super) static AIM_DURATION: Range = Range::new("duration", &table::hours, 0.01, 240.0);
pub(super) static PASS_RECOVERY: Range = Range::new("recovery", &table::fraction, 0.01, 0.95);

pub(super) static PAN_LENGTH: Range = Range::new("length", &table::metre, 0.05, 20.0);
pub(super) static PAN_WIDTH: Range = Range::new("width", &table::metre, 0.05, 20.0);
pub(super) static RUNNING_DEPTH: Range = Range::new("running_depth", &table::mm, 5.0, 500.0);
pub(super) static LEAST_DEPTH: Range = Range::new("least_depth", &table::mm, 5.0, 500.0);
pub(super) static WATER_ADDED: Range = Range::new("added", &table::kg_per_h, 0.1, 1e5);
pub(super) static WATER_TEMPERATURE: Range = Range::new("feed_temperature", &table::deg_c, 0.0, 100.0);
pub(super) static LEVEL_DROP: Range = Range::new("level_drop", &table::kg_per_h, 0.1, 1e5);
pub(super) static PAN_POWER: Range = Range::new("power", &table::kw, 0.1, 1e5);
pub(super) static LEFT_VOLUME: Range = Range::new("volume", &table::litre, 0.001, 1e6);
pub(super) static LEFT_BRIX: Range = Range::new("brix", &table::deg_brix, 0.0, 70.0);
pub(super) static LEFT_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, 0.0, 100.0);

/// Of their uncertainty alone; the fuel room checks the values.
pub(super) static MOISTURE: Range = Range::new("moisture", &table::fraction, 0.0, 0.6);
pub(super) static EFFICIENCY: Range = Range::new("efficiency", &table::fraction, 0.05, 1.0);

pub(super) static FINISHING_HEAT: Range = Range::new("heat", &table::kw, 0.1, 100.0);
pub(super) static CAPACITY: Range = Range::new("capacity", &table::litre, 0.1, 10_000.0);
pub(super) static TARGET_BRIX: Range = Range::new("brix", &table::deg_brix, 50.0, 70.0);
pub(super) static GUARD: Range = Range::new("guard", &table::deg_brix, 0.0, 3.0);
pub(super) static NON_SUCROSE_RISE: Range = Range::new("non_sucrose_rise", &table::delta_c, 0.0, 1.0);
pub(super) static SUGAR_LOST: Range = Range::new("sugar_lost", &table::fraction, 0.0, 0.2);

pub(super) static LABEL: Range = Range::new("volume", &table::ml, 10.0, 250_000.0);
pub(super) static BRIMFUL: Range = Range::new("brimful", &table::ml, 10.0, 300_000.0);
pub(super) static CONTAINER_MASS: Range = Range::new("mass", &table::kg, 0.001, 1000.0);
pub(super) static CONTAINER_TEMPERATURE: Range = Range::new("temperature", &table::deg_c, -30.0, 100.0);
pub(super) static FILL_TEMPERATURE: Range = Range::new("fill_temperature", &table::deg_c, 82.0, 93.0);

/// Draws: more would fill the memory of a browser.
pub(super) const MOST_SAMPLES: u32 = 1_000_000;
