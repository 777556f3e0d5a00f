//! The Python face: an environment of its own, the wheel, its tests, the source distribution.

pub(crate) use steps::{all, inner_loop};

mod sdist;
mod steps;
mod venv;
