//! A fault on purpose, in the build under test.

use pyo3::prelude::*;

use crate::guard::guarded;

/// Panics as a fault of the core would.
#[pyfunction]
pub(crate) fn fault(py: Python<'_>) -> PyResult<()> {
    #[expect(clippy::panic, reason = "this is what it is for")]
    guarded(py, || panic!("on purpose"))
}
