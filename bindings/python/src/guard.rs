//! A panic of the core becomes an error of kind `internal`.

use std::{
    any::Any,
    panic::{AssertUnwindSafe, catch_unwind},
};

use pyo3::prelude::*;

use crate::raise;

/// Runs an entry; nothing is kept between entries, so that what a panic left half done is gone with it.
pub(crate) fn guarded<T>(py: Python<'_>, entry: impl FnOnce() -> PyResult<T>) -> PyResult<T> {
    match catch_unwind(AssertUnwindSafe(entry)) {
        Ok(result) => result,
        Err(payload) => Err(raise::internal(py, said(payload.as_ref()))),
    }
}

/// What a panic said.
pub(crate) fn said(payload: &(dyn Any + Send)) -> &str {
    payload
        .downcast_ref::<&str>()
        .copied()
        .or_else(|| payload.downcast_ref::<String>().map(String::as_str))
        .unwrap_or_default()
}
