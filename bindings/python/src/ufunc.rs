//! The loops that `NumPy` calls: the only unsafe code of the repository.
//!
//! A row of the table becomes a ufunc of 2k operands, k numbers and k places of their units in
//! [`ALL`]; the row itself is the loop's data. Numbers become SI as on the way of single numbers, 256 lanes at a
//! time go through the row's block, and refused lanes are NaN and counted.
#![expect(
    unsafe_code,
    reason = "NumPy hands a loop raw pointers and strides; every block says why it holds"
)]

use std::{
    cell::RefCell,
    ffi::{CString, c_char, c_int, c_void},
    panic::{AssertUnwindSafe, catch_unwind},
    ptr,
};

use numpy::npyffi::{NPY_TYPES, PY_UFUNC_API, npy_intp};
use pyo3::{exceptions::PyRuntimeError, prelude::*};
use sugaring::{
    catalogue::Function,
    units::{Unit, table::ALL},
};

use crate::{guard::said, quantity};

/// Lanes of a block.
const LANES: usize = 256;
/// Arguments of a row, at most.
const MOST: usize = 4;

/// What the loops of this thread have done since it was last asked.
#[derive(Debug, Default)]
pub(crate) struct Tally {
    pub(crate) lanes: u64,
    pub(crate) refused: u64,
    pub(crate) fault: Option<String>,
}

thread_local! {
    static TALLY: RefCell<Tally> = RefCell::default();
}

/// Reads the tally and begins a new one.
pub(crate) fn tally() -> Tally {
    TALLY.take()
}

/// The ufunc of a row; made once, and kept for good.
pub(crate) fn of_row(py: Python<'_>, row: &'static Function) -> PyResult<Py<PyAny>> {
    if row.arguments.len() > MOST {
        return Err(PyRuntimeError::new_err("a row has more arguments than a loop takes"));
    }
    let name = format!("{}_{}", row.module, row.name);
    let data: *const Function = row;
    ufunc(py, &name, 2 * row.arguments.len(), row_loop, data.cast_mut().cast())
}

/// The ufunc that converts: number, place of its unit, place of the unit wanted.
pub(crate) fn conversion(py: Python<'_>) -> PyResult<Py<PyAny>> {
    ufunc(py, "convert", 3, conversion_loop, ptr::null_mut())
}

type Loop = unsafe extern "C" fn(*mut *mut c_char, *mut npy_intp, *mut npy_intp, *mut c_void);

/// A ufunc of `inputs` doubles and one double out. What it points to is leaked: a ufunc lives as long as the process.
fn ufunc(py: Python<'_>, name: &str, inputs: usize, inner: Loop, data: *mut c_void) -> PyResult<Py<PyAny>> {
    let name: &'static _ = Box::leak(CString::new(name)?.into_boxed_c_str());
    let loops: &'static mut [Option<Loop>; 1] = Box::leak(Box::new([Some(inner)]));
    let data: &'static mut [*mut c_void; 1] = Box::leak(Box::new([data]));
    let double = c_char::try_from(NPY_TYPES::NPY_DOUBLE as c_int).unwrap_or_default();
    let types: &'static mut [c_char] = Box::leak(vec![double; inputs + 1].into_boxed_slice());
    let inputs = c_int::try_from(inputs).unwrap_or_default();
    // PyUFunc_None: no identity for reductions.
    let identity = -1;
    // SAFETY: the three arrays and the name live for good, hold one loop and one type for each operand, and the loop
    // has the signature that NumPy calls; the interpreter is attached, as `py` says.
    let made = unsafe {
        PY_UFUNC_API.PyUFunc_FromFuncAndData(
            py,
            loops.as_mut_ptr(),
            data.as_mut_ptr(),
            types.as_mut_ptr(),
            1,
            inputs,
            1,
            identity,
            name.as_ptr(),
            c"".as_ptr(),
            0,
        )
    };
    // SAFETY: a new reference to a ufunc, or null with the exception set.
    unsafe { Bound::from_owned_ptr_or_err(py, made) }.map(Bound::unbind)
}

/// An operand of a loop: where its first lane is, and how far apart the lanes are.
#[derive(Clone, Copy)]
struct Operand {
    start: *mut c_char,
    step: isize,
}

impl Operand {
    /// How far from the first lane `lane` is, in bytes.
    #[expect(clippy::cast_possible_wrap, reason = "lanes lie in memory, or have step 0")]
    fn offset(self, lane: usize) -> isize {
        self.step * lane as isize
    }

    /// # Safety
    /// `lane` is below the number of lanes for which NumPy gave this operand, an input of doubles.
    unsafe fn read(self, lane: usize) -> f64 {
        // SAFETY: by the caller.
        unsafe {
            self.start
                .wrapping_offset(self.offset(lane))
                .cast::<f64>()
                .read_unaligned()
        }
    }

    /// # Safety
    /// `lane` is below the number of lanes for which NumPy gave this operand, the output of doubles.
    unsafe fn write(self, lane: usize, value: f64) {
        // SAFETY: by the caller.
        unsafe {
            self.start
                .wrapping_offset(self.offset(lane))
                .cast::<f64>()
                .write_unaligned(value);
        }
    }

    /// Whether the lanes lie end to end.
    fn is_dense(self) -> bool {
        self.step.unsigned_abs() == size_of::<f64>() && self.step > 0
    }

    /// Writes `lanes` from `first` on.
    ///
    /// # Safety
    /// As [`Operand::write`], for `first` and all that follow.
    unsafe fn spill(self, first: usize, lanes: &[f64]) {
        if self.is_dense() {
            let to = self.start.wrapping_offset(self.offset(first)).cast::<u8>();
            // SAFETY: by the caller the lanes lie there, end to end; bytes need no alignment, and ours are apart.
            unsafe { ptr::copy_nonoverlapping(lanes.as_ptr().cast(), to, size_of_val(lanes)) };
            return;
        }
        for (offset, lane) in lanes.iter().enumerate() {
            // SAFETY: by the caller.
            unsafe { self.write(first + offset, *lane) };
        }
    }

    /// Fills `lanes` from `first` on.
    ///
    /// # Safety
    /// As [`Operand::read`], for `first` and all that follow.
    unsafe fn fill(self, first: usize, lanes: &mut [f64]) {
        if self.is_dense() {
            let from = self.start.wrapping_offset(self.offset(first)).cast::<u8>();
            // SAFETY: by the caller the lanes lie there, end to end; bytes need no alignment, and ours are apart.
            unsafe { ptr::copy_nonoverlapping(from, lanes.as_mut_ptr().cast(), size_of_val(lanes)) };
            return;
        }
        for (offset, lane) in lanes.iter_mut().enumerate() {
            // SAFETY: by the caller.
            *lane = unsafe { self.read(first + offset) };
        }
    }
}

/// # Safety
/// NumPy calls it with `args`, `steps` for 2k inputs and an output of doubles, and the row as data.
unsafe extern "C" fn row_loop(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    data: *mut c_void,
) {
    // SAFETY: `of_row` gave a row that lives for good; NumPy gives one number of lanes.
    let (row, lanes) = unsafe { (&*data.cast::<Function>(), usize::try_from(*dimensions).unwrap_or(0)) };
    let count = row.arguments.len().min(MOST);
    let operand = |index: usize| {
        // SAFETY: `index` is at most 2k, the output's; NumPy gives 2k + 1 of each.
        unsafe {
            Operand {
                start: *args.add(index),
                step: *steps.add(index),
            }
        }
    };
    let mut numbers = [operand(0); MOST];
    let mut units = [operand(0); MOST];
    for (index, (number, unit)) in numbers.iter_mut().zip(&mut units).take(count).enumerate() {
        (*number, *unit) = (operand(index), operand(count + index));
    }
    let out = operand(2 * count);
    watched(lanes, || {
        let mut columns = [[0.0; LANES]; MOST];
        let mut results = [0.0; LANES];
        let mut refused = 0;
        for first in (0..lanes).step_by(LANES) {
            let width = LANES.min(lanes - first);
            for ((column, number), unit) in columns.iter_mut().zip(numbers).zip(units).take(count) {
                let Some(column) = column.get_mut(..width) else {
                    continue;
                };
                // SAFETY: `first + width` is at most `lanes`.
                unsafe { number.fill(first, column) };
                // SAFETY: as above.
                unsafe { in_si(column, first, unit) };
            }
            let Some(results) = results.get_mut(..width) else {
                continue;
            };
            let [a, b, c, d] = columns.each_ref().map(|column| column.get(..width).unwrap_or_default());
            let all = [a, b, c, d];
            refused += row.block(all.get(..count).unwrap_or_default(), results);
            // SAFETY: `first + width` is at most `lanes`.
            unsafe { out.spill(first, results) };
        }
        refused
    })
    .unwrap_or_else(|| {
        // SAFETY: every lane below `lanes`.
        (0..lanes).for_each(|lane| unsafe { out.write(lane, f64::NAN) });
    });
}

/// Numbers into SI, by the unit at each lane; it is the same at all of them unless an engine spread it out.
///
/// # Safety
/// As [`Operand::fill`].
unsafe fn in_si(column: &mut [f64], first: usize, places: Operand) {
    if places.step == 0 {
        // SAFETY: by the caller; a column has a lane at least.
        match at(unsafe { places.read(first) }) {
            Some(unit) if quantity::is_si(unit) && unit.dimension.is_plain() => {}
            Some(unit) => unit.column_to_si(column),
            None => column.fill(f64::NAN),
        }
        return;
    }
    for (offset, lane) in column.iter_mut().enumerate() {
        // SAFETY: by the caller.
        let unit = at(unsafe { places.read(first + offset) });
        *lane = unit.map_or(f64::NAN, |unit| quantity::si(*lane, unit));
    }
}

/// # Safety
/// NumPy calls it with `args`, `steps` for three inputs and an output of doubles.
unsafe extern "C" fn conversion_loop(
    args: *mut *mut c_char,
    dimensions: *mut npy_intp,
    steps: *mut npy_intp,
    _data: *mut c_void,
) {
    // SAFETY: NumPy gives one number of lanes.
    let lanes = unsafe { usize::try_from(*dimensions).unwrap_or(0) };
    let operand = |index: usize| {
        // SAFETY: `index` is at most 3; NumPy gives four of each.
        unsafe {
            Operand {
                start: *args.add(index),
                step: *steps.add(index),
            }
        }
    };
    let (number, from, to, out) = (operand(0), operand(1), operand(2), operand(3));
    let convert = |number: f64, from: Option<&'static Unit>, to: Option<&'static Unit>| match (from, to) {
        (Some(from), Some(to)) => quantity::convert(number, from, to),
        _ => f64::NAN,
    };
    if lanes > 0 && from.step == 0 && to.step == 0 {
        // SAFETY: there is a lane.
        let (from, to) = unsafe { (at(from.read(0)), at(to.read(0))) };
        for lane in 0..lanes {
            // SAFETY: below `lanes`.
            unsafe { out.write(lane, convert(number.read(lane), from, to)) };
        }
        return;
    }
    for lane in 0..lanes {
        // SAFETY: below `lanes`.
        unsafe { out.write(lane, convert(number.read(lane), at(from.read(lane)), at(to.read(lane)))) };
    }
}

/// The unit at a place of the table, which crosses as a number.
fn at(place: f64) -> Option<&'static Unit> {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "an index that was made from usize"
    )]
    let index = place as usize;
    ALL.get(index).copied()
}

/// Runs a loop; counts its lanes, keeps what a panic said, and clears the flags that comparisons of NaN raise, of
/// which NumPy would warn. None after a panic.
fn watched(lanes: usize, run: impl FnOnce() -> usize) -> Option<()> {
    let done = catch_unwind(AssertUnwindSafe(run));
    let refused = *done.as_ref().unwrap_or(&lanes);
    TALLY.with_borrow_mut(|tally| {
        tally.lanes += lanes as u64;
        tally.refused += refused as u64;
        if let Err(payload) = &done {
            tally.fault = Some(said(payload.as_ref()).to_owned());
        }
    });
    if refused > 0 {
        // SAFETY: the interpreter is attached again for the call, which takes nothing and gives nothing.
        Python::attach(|py| unsafe { PY_UFUNC_API.PyUFunc_clearfperr(py) });
    }
    done.is_ok().then_some(())
}
