//! The Python face of `sugaring`: it converts, calls and converts back. Physics, units, ranges and the texts of
//! errors stay in the core.
//!
//! Every entry runs under [`guard::guarded`], so that a fault of the core is an error and no panic; the one file with
//! `unsafe` code is [`ufunc`], the loops that `NumPy` calls.
#![deny(unsafe_code)]

use pyo3::prelude::*;

mod amounts;
mod arithmetic;
mod ask;
mod catalogue;
mod columns;
#[cfg(feature = "fault")]
mod fault;
mod finishing;
mod functions;
mod guard;
mod plan;
mod quantity;
mod raise;
mod scale;
mod shown;
mod station;
mod stations;
mod take;
mod tree;
mod ufunc;
mod uncertainty;
mod unit;

#[pymodule(gil_used = false)]
fn _sugaring(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add_class::<quantity::Quantity>()?;
    module.add_class::<unit::Unit>()?;
    functions::register(module)?;
    unit::register(module)?;
    quantity::register(module)?;
    amounts::register(module)?;
    raise::register(module)?;
    columns::register(module)?;
    plan::register(module)?;
    catalogue::register(module)?;
    ask::register(module)?;
    #[cfg(feature = "fault")]
    module.add_function(wrap_pyfunction!(fault::fault, module)?)?;
    // What is public is listed by the modules around this one.
    module.delattr("__all__")
}
