//! Sucrose solutions: density, heat, viscosity, and one water activity behind boiling point, osmotic pressure and freezing point.
