//! What a model is called through, and what it answers.

use numpy::{PyArray1, PyReadonlyArray1};
use pyo3::{
    IntoPyObjectExt,
    exceptions::PyValueError,
    prelude::*,
    types::{PyCFunction, PyTuple},
};
use std::cell::{Cell, RefCell};
use sugaring::{
    Error,
    air::Origin,
    catalogue::{self, Function, Kind},
    uncertainty::{self, Sampled, Samples},
    units::Unit,
};

use super::inputs::Inputs;
use crate::{
    quantity::{Quantity, convert, described},
    raise::raise,
    station::StationPressure,
    take::{self, Number},
};

/// A function of Python that is called with the inputs in their place.
pub(super) struct Model<'py> {
    pub(super) function: Bound<'py, PyAny>,
    pub(super) inputs: Inputs,
    /// The unit of the first answer; None of numbers.
    answer: Cell<Answer>,
    /// What the function raised.
    raised: RefCell<Option<PyErr>>,
    ended: Cell<bool>,
}

impl<'py> Model<'py> {
    pub(super) fn new(function: &Bound<'py, PyAny>, inputs: Inputs) -> PyResult<Self> {
        if let Some(error) = misfit(function, &inputs) {
            return Err(raise(function.py(), &error));
        }
        if !function.is_callable() {
            let error = Error::foreign("model", &described(function), "a function of the inputs");
            return Err(raise(function.py(), &error));
        }
        Ok(Self {
            function: function.clone(),
            inputs,
            answer: Cell::new(Answer::Unknown),
            raised: RefCell::new(None),
            ended: Cell::new(false),
        })
    }

    /// The unit of what it answered.
    pub(super) fn unit(&self) -> Option<&'static Unit> {
        match self.answer.get() {
            Answer::Quantity(unit) => Some(unit),
            Answer::Unknown | Answer::Number => None,
        }
    }

    /// What it raised instead of an answer, if that ended the work.
    pub(super) fn raised(&self) -> Option<PyErr> {
        self.raised.borrow_mut().take()
    }

    /// One call. A refusal of the library is remembered and may be passed over; anything else ends the work.
    pub(super) fn call(&self, numbers: &[f64]) -> Result<f64, Error> {
        if self.has_ended() {
            return Err(Error::missing("model"));
        }
        self.try_call(numbers).map_err(|raised| self.end(raised))
    }

    /// A call for a block of draws.
    pub(super) fn call_columns(&self, columns: &[&[f64]], out: &mut [f64]) -> Result<(), Error> {
        self.try_columns(columns, out).map_err(|raised| self.end(raised))
    }

    /// Whether something went wrong that is no refusal. A refusal is a ValueError of the function, as those of the
    /// library and of `math` are.
    pub(super) fn has_ended(&self) -> bool {
        self.ended.get()
    }

    fn end(&self, raised: PyErr) -> Error {
        self.raised.replace(Some(raised));
        Error::missing("model")
    }

    fn try_call(&self, numbers: &[f64]) -> PyResult<f64> {
        let py = self.function.py();
        let arguments = PyTuple::new(py, self.inputs.arguments(py, numbers)?)?;
        let answer = self.function.call1(arguments).inspect_err(|raised| {
            self.ended.set(!raised.is_instance_of::<PyValueError>(py));
        })?;
        self.read(&answer).inspect_err(|_| self.ended.set(true))
    }

    fn read(&self, answer: &Bound<'_, PyAny>) -> PyResult<f64> {
        let py = answer.py();
        if let Ok(quantity) = answer.cast::<Quantity>() {
            let unit = self.unit_of(quantity.get())?;
            return match quantity.get().number_in(py, unit)? {
                Number::Scalar(number) => Ok(number),
                Number::Column(_) => Err(raise(py, &Error::foreign("model", "<a column>", "one quantity"))),
            };
        }
        self.bare(py, answer)?;
        super::spread::plain(answer, "model")
    }

    fn try_columns(&self, columns: &[&[f64]], out: &mut [f64]) -> PyResult<()> {
        let py = self.function.py();
        let places = columns.iter().zip(&self.inputs.units).zip(&self.inputs.stations);
        let arguments = places.map(|((column, unit), station)| {
            let column = PyArray1::from_slice(py, column).into_any().unbind();
            let Some(unit) = unit else { return Ok(column) };
            let column = Quantity::given(Number::Column(column), unit);
            if station.is_some() {
                let class = py.get_type::<StationPressure>();
                return class.call_method1("measured", (column,)).map(Bound::unbind);
            }
            column.into_py_any(py)
        });
        let arguments: PyResult<Vec<Py<PyAny>>> = arguments.collect();
        let answer = self.function.call1(PyTuple::new(py, arguments?)?)?;
        let answer = if let Ok(quantity) = answer.cast::<Quantity>() {
            let unit = self.unit_of(quantity.get())?;
            quantity.get().number_in(py, unit)?
        } else {
            self.bare(py, &answer)?;
            take::number(&answer, "model")?
        };
        let column = match answer {
            Number::Scalar(number) => {
                out.fill(number);
                return Ok(());
            }
            Number::Column(column) => column,
        };
        let doubles = py
            .import("numpy")?
            .call_method1("ascontiguousarray", (column, "float64"))?;
        let doubles: PyReadonlyArray1<'_, f64> = doubles.extract()?;
        let doubles = doubles.as_slice()?;
        if doubles.len() == out.len() {
            out.copy_from_slice(doubles);
            return Ok(());
        }
        let shown = format!("{} numbers", doubles.len());
        let error = Error::inconsistent("model", &shown, &format!("columns of {}", out.len()));
        Err(raise(py, &error))
    }

    /// The unit of the first answer, which this must fit.
    fn unit_of(&self, quantity: &Quantity) -> PyResult<&'static Unit> {
        let py = self.function.py();
        match self.answer.get() {
            Answer::Unknown => {
                self.answer.set(Answer::Quantity(quantity.shown));
                Ok(quantity.shown)
            }
            Answer::Quantity(unit) if unit.dimension == quantity.dimension() => Ok(unit),
            Answer::Quantity(unit) => Err(raise(py, &quantity.unlike(unit.dimension).named("model"))),
            Answer::Number => Err(raise(
                py,
                &Error::foreign("model", quantity.shown.word, "a number, as the first answer was,"),
            )),
        }
    }

    fn bare(&self, py: Python<'_>, answer: &Bound<'_, PyAny>) -> PyResult<()> {
        if let Answer::Quantity(unit) = self.answer.get() {
            let error = Error::foreign("model", &described(answer), unit.dimension.article_name());
            return Err(raise(py, &error));
        }
        self.answer.set(Answer::Number);
        Ok(())
    }
}

/// What the first answer was, which the others must be too.
#[derive(Clone, Copy)]
enum Answer {
    Unknown,
    Number,
    Quantity(&'static Unit),
}

/// A function of the library's own table with inputs that it takes: it needs no Python.
pub(super) struct Row {
    row: &'static Function,
    pub(super) inputs: Inputs,
}

impl Row {
    pub(super) fn of(function: &Bound<'_, PyAny>, inputs: Inputs) -> Result<Self, Inputs> {
        match find(function) {
            Some(row) if fits(row, &inputs) => Ok(Self { row, inputs }),
            _ => Err(inputs),
        }
    }

    /// The unit of what it answers.
    pub(super) fn unit(&self) -> Option<&'static Unit> {
        Some(self.row.relation.output).filter(|_| !self.row.result.is_plain())
    }

    pub(super) fn call(&self, numbers: &[f64]) -> Result<f64, Error> {
        let mut si = [0.0; 4];
        for ((place, number), unit) in si.iter_mut().zip(numbers).zip(&self.inputs.units) {
            *place = of_unit(*number, *unit);
        }
        let si = si.get(..numbers.len()).unwrap_or_default();
        self.row.value(si).map(|result| self.out(result))
    }

    /// By blocks; a refusal is found again one draw at a time, which tells the draw.
    pub(super) fn monte_carlo(
        &self,
        seed: u64,
        samples: Samples,
        tick: &mut dyn FnMut(f64) -> bool,
    ) -> Result<Sampled, Error> {
        let spreads = &self.inputs.spreads;
        let refused = Cell::new(false);
        let block = |x: &[&[f64]], y: &mut [f64]| self.call_columns(x, y).inspect_err(|_| refused.set(true));
        let found = uncertainty::monte_carlo_columns(block, spreads, seed, samples, tick);
        if refused.get() {
            uncertainty::monte_carlo(|x| self.call(x), spreads, seed, samples)
        } else {
            found
        }
    }

    fn call_columns(&self, columns: &[&[f64]], out: &mut [f64]) -> Result<(), Error> {
        let si: Vec<Vec<f64>> = columns
            .iter()
            .zip(&self.inputs.units)
            .map(|(column, unit)| column.iter().map(|number| of_unit(*number, *unit)).collect())
            .collect();
        let lanes: Vec<&[f64]> = si.iter().map(Vec::as_slice).collect();
        if self.row.block(&lanes, out) > 0 {
            for lane in 0..out.len() {
                let numbers: Vec<f64> = columns.iter().filter_map(|column| column.get(lane).copied()).collect();
                self.call(&numbers)?;
            }
        }
        for y in out {
            *y = self.out(*y);
        }
        Ok(())
    }

    fn out(&self, si: f64) -> f64 {
        self.unit()
            .map_or(si, |unit| convert(si, Unit::base(self.row.result), unit))
    }
}

fn of_unit(number: f64, unit: Option<&'static Unit>) -> f64 {
    unit.map_or(number, |unit| unit.to_si(number))
}

/// What a function of the library says of another number of inputs than it takes.
pub(super) fn misfit(function: &Bound<'_, PyAny>, inputs: &Inputs) -> Option<Error> {
    let row = find(function).filter(|row| row.arguments.len() != inputs.spreads.len())?;
    let numbers: Vec<f64> = inputs.spreads.iter().map(uncertainty::Spread::value).collect();
    row.value(&numbers).err()
}

/// The names of the parameters of a model, where it has them.
pub(super) fn names(function: &Bound<'_, PyAny>) -> Vec<String> {
    if let Some(row) = find(function) {
        return row.arguments.iter().map(|argument| argument.name.to_owned()).collect();
    }
    let found = || -> PyResult<Vec<String>> {
        let code = function.getattr("__code__")?;
        let count: usize = code.getattr("co_argcount")?.extract()?;
        let mut names: Vec<String> = code.getattr("co_varnames")?.extract()?;
        names.truncate(count);
        Ok(names)
    };
    found().unwrap_or_default()
}

/// The row of a function of the table.
fn find(function: &Bound<'_, PyAny>) -> Option<&'static Function> {
    function.cast::<PyCFunction>().ok()?;
    let module = function.getattr("__module__").ok()?;
    let module: String = module.extract().ok()?;
    let module = module.strip_prefix("sugaring.")?;
    let name: String = function.getattr("__name__").ok()?.extract().ok()?;
    catalogue::functions()
        .iter()
        .copied()
        .find(|row| row.name == name && row.module == module)
}

fn fits(row: &Function, inputs: &Inputs) -> bool {
    let takes = |((argument, unit), station): ((&catalogue::Argument, Option<&'static Unit>), &Option<Origin>)| {
        let dimension = argument.kind.dimension();
        (argument.kind == Kind::Station) == station.is_some()
            && match unit {
                Some(unit) => unit.dimension == dimension,
                None => dimension.is_plain(),
            }
    };
    row.arguments.len() == inputs.units.len()
        && inputs.units.len() <= 4
        && row
            .arguments
            .iter()
            .zip(inputs.units.iter().copied())
            .zip(&inputs.stations)
            .all(takes)
}
