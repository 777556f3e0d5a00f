//! The core for JavaScript: numbers in SI and JSON across the border, nothing that needs freeing.
//!
//! Every function answers a plain value; where the core refused, a number is NaN or a text is absent, and
//! `last_error` tells why. The facade in `js/` gives the names, units and types.
#![forbid(unsafe_code)]
#![expect(
    unreachable_pub,
    reason = "what crosses the border must be public, though nobody names it in Rust"
)]

mod ask;
#[cfg(feature = "fault")]
mod fault;
mod finishing;
mod functions;
mod lanes;
mod plan;
mod reading;
mod refusal;
mod station;
mod uncertainty;
