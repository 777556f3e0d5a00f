//! Water: the boiling line, latent heat, the liquid.
