//! Density scales: Baumé and relative density, each with its temperatures.

use sugaring::{
    Error, Relation, scale, sucrose,
    units::{
        OnScale, Scale, apparent_relative_density_20_20, baume_20_20, baume_60_60_f, brix, relative_density_20_4,
        relative_density_20_20, relative_density_60_60_f,
    },
};

use super::strength;
use crate::{
    Row,
    tables::{
        Figure,
        figure::{of, part_of},
    },
};

/// The mark of a strength, and the strength of a mark, on one scale.
fn there<S: Scale>(row: &Row) -> Result<f64, Error> {
    Ok(sucrose::on_scale::<S>(strength(row)?)?.get::<S>())
}

fn back<S: Scale>(value: OnScale<S>) -> Result<f64, Error> {
    Ok(sucrose::brix_from_scale(value)?.get())
}

pub(super) fn equation(row: &Row) -> Result<Option<(&'static Relation, f64)>, Error> {
    let mark = || row.number("mark");
    Ok(Some(match row.text("relation") {
        "baume_20_20" => (&scale::BAUME_20_20, there::<baume_20_20>(row)?),
        "baume_60_60_f" => (&scale::BAUME_60_60_F, there::<baume_60_60_f>(row)?),
        "relative_density_20_20" => (&scale::RELATIVE_DENSITY_20_20, there::<relative_density_20_20>(row)?),
        "relative_density_60_60_f" => (
            &scale::RELATIVE_DENSITY_60_60_F,
            there::<relative_density_60_60_f>(row)?,
        ),
        "relative_density_20_4" => (&scale::RELATIVE_DENSITY_20_4, there::<relative_density_20_4>(row)?),
        "apparent_relative_density_20_20" => (
            &scale::APPARENT_RELATIVE_DENSITY_20_20,
            there::<apparent_relative_density_20_20>(row)?,
        ),
        "brix_from_baume_20_20" => (&scale::BRIX_FROM_BAUME_20_20, back(baume_20_20(mark()))?),
        "brix_from_baume_60_60_f" => (&scale::BRIX_FROM_BAUME_60_60_F, back(baume_60_60_f(mark()))?),
        "brix_from_relative_density_20_20" => (
            &scale::BRIX_FROM_RELATIVE_DENSITY_20_20,
            back(relative_density_20_20(mark()))?,
        ),
        "brix_from_relative_density_60_60_f" => (
            &scale::BRIX_FROM_RELATIVE_DENSITY_60_60_F,
            back(relative_density_60_60_f(mark()))?,
        ),
        "brix_from_relative_density_20_4" => (
            &scale::BRIX_FROM_RELATIVE_DENSITY_20_4,
            back(relative_density_20_4(mark()))?,
        ),
        "brix_from_apparent_relative_density_20_20" => (
            &scale::BRIX_FROM_APPARENT_RELATIVE_DENSITY_20_20,
            back(apparent_relative_density_20_20(mark()))?,
        ),
        _ => return Ok(None),
    }))
}

/// Pairs as the trade and the laws print them: by relative density 20/20.
pub(super) fn trade_pairs(row: &Row) -> Result<Figure, Error> {
    let input = row.number("input");
    Ok(match row.text("direction") {
        "brix_to_baume" => {
            let marked = sucrose::on_scale::<baume_20_20>(brix(input)?)?;
            of(&scale::BAUME_20_20, marked.get::<baume_20_20>())
        }
        "baume_to_brix" => of(&scale::BRIX_FROM_BAUME_20_20, back(baume_20_20(input))?),
        other => panic!("{}: {other} is not judged", row.place()),
    })
}

pub(super) fn baume(row: &Row) -> Result<Figure, Error> {
    Ok(of(&scale::BAUME_20_20, there::<baume_20_20>(row)?))
}

pub(super) fn relative_density_at_20(row: &Row) -> Result<Figure, Error> {
    let marked = there::<relative_density_20_20>(row)?;
    Ok(of(&scale::RELATIVE_DENSITY_20_20, marked))
}

pub(super) fn apparent(row: &Row) -> Result<Figure, Error> {
    let marked = there::<apparent_relative_density_20_20>(row)?;
    Ok(of(&scale::APPARENT_RELATIVE_DENSITY_20_20, marked))
}

pub(super) fn strength_of_apparent(row: &Row) -> Result<Figure, Error> {
    let apparent = apparent_relative_density_20_20(row.number("apparent_sg_2020"));
    Ok(of(&scale::BRIX_FROM_APPARENT_RELATIVE_DENSITY_20_20, back(apparent)?))
}

/// From one scale to the other over the solution that stands at the mark.
pub(super) fn baume_as_relative_density(row: &Row) -> Result<Figure, Error> {
    let mark = baume_60_60_f(row.number("baume_145"));
    let strongest = sucrose::on_scale::<baume_60_60_f>(brix(85.0)?)?;
    if mark > strongest {
        return Ok(Figure::NotOffered("no solution of up to 85 °Bx stands there"));
    }
    let solution = sucrose::brix_from_scale(mark)?;
    let relative = sucrose::on_scale::<relative_density_60_60_f>(solution)?;
    Ok(part_of(
        &scale::BRIX_FROM_BAUME_60_60_F,
        "relative density of the solution at a mark",
        relative.get::<relative_density_60_60_f>(),
    ))
}
