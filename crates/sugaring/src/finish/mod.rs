//! The finish: finishing point, hot fill, containers.
