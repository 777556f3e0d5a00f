//! Unit words: `gal(40)` makes a quantity, `.to(gal)` reads one.

use pyo3::{
    exceptions::PyKeyError,
    prelude::*,
    sync::PyOnceLock,
    types::{PyGenericAlias, PyTuple, PyType},
};
use sugaring::units::{self, table::ALL};

use crate::{guard::guarded, quantity::Quantity, take};

/// A unit word. It makes a quantity of a number or a column, `gal(40)`, and reads one, `volume.to(gal)`.
#[pyclass(frozen, module = "sugaring", name = "Unit")]
#[derive(Debug)]
pub(crate) struct Unit {
    pub(crate) unit: &'static units::Unit,
}

#[pymethods]
impl Unit {
    #[classattr]
    fn __array_ufunc__() -> Option<bool> {
        None
    }

    #[pyo3(signature = (value, /))]
    fn __call__(&self, py: Python<'_>, value: &Bound<'_, PyAny>) -> PyResult<Quantity> {
        guarded(py, || {
            let number = take::number(value, self.unit.word)?;
            Ok(Quantity::given(number, self.unit))
        })
    }

    /// The word, as it is written in a program.
    #[getter]
    fn word(&self) -> &'static str {
        self.unit.word
    }

    /// The symbol, as it stands in texts and JSON; empty for plain numbers.
    #[getter]
    fn symbol(&self) -> &'static str {
        self.unit.symbol
    }

    /// What it measures, such as "volume".
    #[getter]
    fn dimension(&self) -> &'static str {
        self.unit.dimension.name()
    }

    /// Other spellings that texts may use.
    #[getter]
    fn aliases<'py>(&self, py: Python<'py>) -> PyResult<Bound<'py, PyTuple>> {
        PyTuple::new(py, self.unit.aliases)
    }

    /// What defines its factor.
    #[getter]
    fn definition(&self) -> &'static str {
        self.unit.definition
    }

    /// zero, times, over and offset of (x − zero) · times / over + offset, the number in SI.
    #[getter]
    fn numbers(&self) -> [f64; 4] {
        self.unit.numbers()
    }

    fn __repr__(&self) -> &'static str {
        self.unit.word
    }

    fn __str__(&self) -> &'static str {
        self.unit.symbol
    }

    fn __hash__(&self) -> usize {
        index(self.unit)
    }

    fn __eq__(&self, other: &Bound<'_, PyAny>) -> bool {
        other.cast::<Self>().is_ok_and(|other| other.get().unit == self.unit)
    }

    fn __copy__(slf: Bound<'_, Self>) -> Bound<'_, Self> {
        slf
    }

    fn __deepcopy__<'py>(slf: Bound<'py, Self>, _memo: &Bound<'py, PyAny>) -> Bound<'py, Self> {
        slf
    }

    fn __reduce__<'py>(&self, py: Python<'py>) -> PyResult<(Bound<'py, PyAny>, (&'static str,))> {
        let word = py.import("sugaring._sugaring")?.getattr("_unit")?;
        Ok((word, (self.unit.word,)))
    }

    #[classmethod]
    fn __class_getitem__<'py>(
        class: &Bound<'py, PyType>,
        item: &Bound<'py, PyAny>,
    ) -> PyResult<Bound<'py, PyGenericAlias>> {
        PyGenericAlias::new(class.py(), class.as_any(), item)
    }
}

/// The place of a unit in the table.
pub(crate) fn index(unit: &'static units::Unit) -> usize {
    let same = |known: &&units::Unit| std::ptr::eq(*known, unit);
    ALL.iter().position(same).unwrap_or_default()
}

/// The unit word of a unit of the core.
pub(crate) fn word<'py>(py: Python<'py>, unit: &'static units::Unit) -> PyResult<Bound<'py, Unit>> {
    static WORDS: PyOnceLock<Vec<Py<Unit>>> = PyOnceLock::new();
    let words = WORDS.get_or_try_init(py, || {
        ALL.iter()
            .map(|unit| Py::new(py, Unit { unit }))
            .collect::<PyResult<_>>()
    })?;
    match words.get(index(unit)) {
        Some(word) => Ok(word.bind(py).clone()),
        None => Err(PyKeyError::new_err(unit.word)),
    }
}

/// The unit word `word`; for `sugaring.units` and for reading back.
#[pyfunction(name = "_unit")]
pub(crate) fn named<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, Unit>> {
    match ALL.iter().find(|unit| unit.word == name) {
        Some(unit) => word(py, unit),
        None => Err(PyKeyError::new_err(name.to_owned())),
    }
}

pub(crate) fn register(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(named, module)?)
}
