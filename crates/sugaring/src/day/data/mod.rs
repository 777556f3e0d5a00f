//! Inputs and plans as data: from a tree of keys, back to it, as JSON, as schemas, from the stations' own types.

#[cfg(feature = "schema")]
pub use schema::schemas;

pub(crate) use echo::instrument as echo_of_instrument;
pub(crate) use read::start_minutes;
#[cfg(feature = "schema")]
pub(crate) use schema::ByName;

mod echo;
#[cfg(feature = "json")]
mod json;
mod read;
#[cfg(feature = "schema")]
mod schema;
mod typed;
