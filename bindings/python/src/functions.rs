//! The property functions: one row of the core's table, one function here, all through [`call`].

use pyo3::{IntoPyObjectExt, prelude::*, types::PyString};
use sugaring::{
    Error,
    catalogue::{self, Function},
    units::Unit,
};

use crate::{
    columns,
    guard::guarded,
    quantity::{self, Quantity},
    raise::raise,
    station::StationPressure,
    stations::StationPressures,
    take::{self, Number, Taken},
};

/// One function of the table; the first two arguments are positional, the rest keywords.
macro_rules! define {
    ($module:ident $name:ident $a:ident $($b:ident $($c:ident)*)?) => {
        #[doc = include_str!(concat!("../docs/", stringify!($module), ".", stringify!($name), ".txt"))]
        #[pyfunction]
        #[pyo3(signature = ($a, $($b,)? /, *, $($($c,)*)? on_error = None))]
        pub(super) fn $name<'py>(
            py: Python<'py>,
            $a: &Bound<'py, PyAny>,
            $($b: &Bound<'py, PyAny>, $($c: &Bound<'py, PyAny>,)*)?
            on_error: Option<&Bound<'py, PyAny>>,
        ) -> PyResult<Py<PyAny>> {
            call(py, &catalogue::rows::$module::$name::ROW, [$a, $($b, $($c,)*)?], on_error)
        }
    };
}

/// A module a row of modules, with what it registers.
macro_rules! python_functions {
    ($($module:ident { $(
        $(#[doc = $doc:literal])+
        $name:ident($($argument:ident: $type:ident),+) -> $result:ident = $relation:ident
            $(, $kernel:ident)? $(=> $lanes:ident)?;
    )+ })+) => {
        $( mod $module {
            use super::*;

            $( define!($module $name $($argument)+); )+

            pub(super) fn register(parent: &Bound<'_, PyModule>) -> PyResult<()> {
                let module = PyModule::new(parent.py(), concat!("sugaring.", stringify!($module)))?;
                module.gil_used(false)?;
                module.setattr("__doc__", include_str!(concat!("../docs/", stringify!($module), ".txt")))?;
                $( module.add_function(wrap_pyfunction!($name, &module)?)?; )+
                parent.add(stringify!($module), module)
            }
        } )+

        pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
            $( $module::register(module)?; )+
            let air = module.getattr("air")?.cast_into::<PyModule>()?;
            air.add_class::<StationPressure>()?;
            air.add_class::<StationPressures>()?;
            // The density scales are called through their words.
            module.delattr("scale")?;
            crate::uncertainty::register(&module.getattr("uncertainty")?.cast_into::<PyModule>()?)?;
            crate::finishing::register(&module.getattr("finish")?.cast_into::<PyModule>()?)?;
            crate::scale::register(&module.getattr("sucrose")?.cast_into::<PyModule>()?)
        }
    };
}

sugaring::surface!(python_functions);

/// Takes the arguments of `row`, calls it for numbers or columns, and gives the result its unit.
pub(crate) fn call<const N: usize>(
    py: Python<'_>,
    row: &'static Function,
    arguments: [&Bound<'_, PyAny>; N],
    on_error: Option<&Bound<'_, PyAny>>,
) -> PyResult<Py<PyAny>> {
    guarded(py, || {
        let nan = nan_on_error(py, on_error)?;
        let mut si = [0.0; N];
        let mut columns = false;
        let mut taken: [Option<Taken>; N] = [const { None }; N];
        for (((slot, place), any), argument) in taken.iter_mut().zip(&mut si).zip(arguments).zip(row.arguments) {
            let found = take::argument(any, argument)?;
            match found.number {
                Number::Scalar(number) => *place = quantity::si(number, found.unit),
                Number::Column(_) => columns = true,
            }
            *slot = Some(found);
        }
        if columns {
            let taken: Vec<Taken> = taken.into_iter().flatten().collect();
            let column = columns::call(py, row, &taken, nan)?;
            return with_unit(py, row, Number::Column(column));
        }
        match row.value(&si) {
            Ok(si) => with_unit(py, row, Number::Scalar(si)),
            Err(_) if nan => with_unit(py, row, Number::Scalar(f64::NAN)),
            Err(error) => Err(raise(py, &error)),
        }
    })
}

/// A result in SI: a bare number where its dimension is plain, else a quantity shown in the relation's unit.
fn with_unit(py: Python<'_>, row: &'static Function, number: Number) -> PyResult<Py<PyAny>> {
    if row.result.is_plain() {
        return number.object(py);
    }
    Quantity::result(number, Unit::base(row.result), row.relation.output).into_py_any(py)
}

/// Whether refused values become NaN.
fn nan_on_error(py: Python<'_>, on_error: Option<&Bound<'_, PyAny>>) -> PyResult<bool> {
    let Some(given) = on_error else {
        return Ok(false);
    };
    match given.cast::<PyString>() {
        Ok(text) if text.to_string_lossy() == "nan" => Ok(true),
        Ok(text) => Err(raise(
            py,
            &Error::unknown_name("on_error", &text.to_string_lossy(), ["nan"]),
        )),
        Err(_) => Err(raise(
            py,
            &Error::foreign("on_error", &quantity::described(given), "\"nan\""),
        )),
    }
}
