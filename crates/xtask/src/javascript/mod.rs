//! The JavaScript face: tools, the module, the package, its tests in Node and in a browser.

pub(crate) use steps::{all, inner_loop};

mod chromium;
mod node;
mod package;
mod steps;
