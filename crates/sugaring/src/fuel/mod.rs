//! Fuel: wood, cord, propane, efficiency.
