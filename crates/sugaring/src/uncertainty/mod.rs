//! How sure a result is: propagation, Monte Carlo, combination, lines, limits, quantiles.
//!
//! A [`Spread`] is one input of a model; [`propagate()`] takes the model for a straight line about it and says which
//! input matters most, [`monte_carlo()`] draws the inputs and needs no line. Both take any function of numbers, of
//! this library or not.
//!
//! Random numbers come from one generator and become other than uniform through quantile functions, so that the same
//! seed gives the same bits everywhere.
//!
//! Of the guides (JCGM 100, 101 and 106) the formulas and worked examples were seen or computed again; the numbers of
//! clauses beyond those of the examples are from memory.

pub use combined::{Combined, combine};
pub use conformity::{GUARD_BAND, guard_band, probability_at_least};
pub use coverage::{COVERAGE_FACTOR, coverage_factor};
pub use first_order::{Contribution, ModelValue, Propagated, propagate};
pub use limits::{FROM_LIMITS, FROM_RESOLUTION, from_limits, from_resolution};
pub use line::{Line, line_fit};
pub use monte_carlo::{Samples, monte_carlo, monte_carlo_columns, monte_carlo_watched};
pub use normal::{NORMAL_PROBABILITY, NORMAL_QUANTILE, normal_probability, normal_quantile};
pub use sampled::Sampled;
pub use spread::{Distribution, Spread};
pub use student::{T_QUANTILE, t_quantile};

pub(crate) use draws::Draws;
pub(crate) use normal::normal_probability_at;
pub(crate) use order::quantile;

mod causes;
mod combined;
mod conformity;
mod coverage;
mod draws;
mod first_order;
mod limits;
mod line;
mod monte_carlo;
mod normal;
mod order;
mod sampled;
mod sampler;
mod spread;
mod student;
