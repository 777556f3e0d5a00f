//! Air pressure: station pressure and its kinds, the standard atmosphere.
