//! Seeded draws and quantiles.
