//! Columns in blocks: so few lanes at a time that all they need stays in the nearest cache, one step for every lane
//! before the next step, no branch inside.

/// Lanes of a block.
pub(crate) const LANES: usize = 64;

/// What every lane of a block knows of one quantity.
pub(crate) type Lanes = [f64; LANES];

/// Compiles a function for wider instructions too, and calls what the processor has: under the feature `dispatch`.
///
/// The bits are the same: nothing in the source asks for a fused multiply-add, and Rust never fuses by itself.
macro_rules! widest {
    ($($function:tt)*) => {
        #[cfg_attr(
            feature = "dispatch",
            multiversion::multiversion(targets(
                "x86_64+avx512f+avx512bw+avx512cd+avx512dq+avx512vl+avx2+fma+bmi2",
                "x86_64+avx2+fma+bmi2",
            ))
        )]
        $($function)*
    };
}

pub(crate) use widest;

/// Block `index` of a column; the last is filled up with `idle`.
#[inline(always)]
pub(crate) fn block_of(column: &[f64], index: usize, idle: f64) -> Lanes {
    let lanes = column.chunks(LANES).nth(index).unwrap_or_default();
    if let Some(whole) = lanes.first_chunk() {
        return *whole;
    }
    let mut block = [idle; LANES];
    block.iter_mut().zip(lanes).for_each(|(to, from)| *to = *from);
    block
}

/// Writes the lanes that `out`, a block or the last part of one, has.
#[inline(always)]
pub(crate) fn spill(found: &Lanes, out: &mut [f64]) {
    if let Some(whole) = out.first_chunk_mut() {
        *whole = *found;
    } else {
        out.iter_mut().zip(found).for_each(|(to, from)| *to = *from);
    }
}
