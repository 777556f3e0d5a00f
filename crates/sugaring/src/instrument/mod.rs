//! Instruments: reading to truth and back.
