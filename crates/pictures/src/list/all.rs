use super::{air, sucrose, water};
use crate::plot::Plot;

/// Every picture, in the order of the book.
pub(crate) fn plots() -> Vec<Plot> {
    [sucrose::plots(), water::plots(), air::plots()]
        .into_iter()
        .flatten()
        .collect()
}
