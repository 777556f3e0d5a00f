//! Instruments: reading to truth and back.
//!
//! What an instrument shows is a [`Reading`], what the syrup is a [`Brix`](crate::Brix): hot syrup of 66.9 °Bx floats
//! a hydrometer at 59. Each instrument turns one into the other, and says how well.
//!
//! ```
//! use sugaring::{instrument::{Hydrometer, reading}, units::*};
//! let hydrometer = Hydrometer::brix(deg_f(60.0))?;
//! let mark = hydrometer.reading(brix(66.9)?, deg_f(211.0))?;
//! assert_eq!(format!("{:.1}", mark.get()), "59.0");
//! let syrup = hydrometer.truth(reading(59.5), deg_f(211.0))?;
//! assert_eq!(format!("{:.1} ± {:.1}", syrup.value, syrup.uncertainty), "67.4 °Bx ± 0.3");
//! # Ok::<(), sugaring::Error>(())
//! ```

pub use any::Instrument;
pub use barometer::{BAROMETER, Barometer};
pub use card::{Card, Mark, card, usual_temperatures};
pub use chart::{ChartMark, ChartRow, DensityChart, chart};
pub use check::Check;
pub use hydrometer::{HYDROMETER, Hydrometer};
pub use reading::{Reading, reading};
pub use refractometer::{REFRACTOMETER, Refractometer};
pub use thermometer::{THERMOMETER, Thermometer};
pub use typical::{InstrumentRow, Of, Typical};

pub(crate) use correction::{Correction, Point};
pub(crate) use data::line_of_data;
pub(crate) use refractometer::{Compensation, Zero};

mod any;
mod barometer;
mod card;
mod chart;
mod check;
mod correction;
mod data;
mod graduation;
mod hydrometer;
mod reading;
mod refractometer;
mod thermometer;
mod typical;
