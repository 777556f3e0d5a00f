//! The card of marks, charts and jurisdictions.

use alloc::vec::Vec;

use super::{table::Answer, uncertainty::measured_here};
use crate::{
    catalogue, finish,
    form::Tree,
    instrument::{self, DensityChart, Instrument, InstrumentRow, Reading},
    units::{self, Brix, Quantity, System, Temperature, Unit, Value, table},
};

pub(super) const ANSWERS: &[Answer] = &[
    ("instrument.card", |given| {
        let instrument = Instrument::read(&given.node("instrument")?)?;
        let temperatures: Vec<Temperature> = match given.optional_node("temperatures") {
            None => Vec::new(),
            Some(_) => given.list("temperatures")?,
        };
        let mut card = instrument::card(given.value("target")?, &instrument, &temperatures)?;
        if let Some(name) = given.optional_text("name")? {
            card = card.with_name(name);
        }
        if let Some(jurisdiction) = given.optional_text("chart")? {
            card = card.with_chart(&instrument::chart(jurisdiction)?)?;
        }
        let by_system =
            |written: &dyn Fn(System) -> Tree| Tree::map(System::NAMES.map(|(name, system)| (name, written(system))));
        Ok(Tree::map([
            ("data", card.to_tree()),
            ("pages", by_system(&|system| Tree::from(card.page(system)))),
            ("csv", Tree::from(card.to_csv())),
            ("svgs", by_system(&|system| Tree::from(card.to_svg(system)))),
        ]))
    }),
    ("instrument.chart", |given| {
        Ok(of_chart(&instrument::chart(given.text("jurisdiction")?)?))
    }),
    ("DensityChart.mark", |given| {
        let node = given.node("chart")?;
        let chart = instrument::chart(node.required("jurisdiction")?.text(80)?)?;
        let mark = chart.mark(given.value("temperature")?)?;
        Ok(Tree::map([("brix", shown(mark.brix)), ("baume", shown(mark.baume))]))
    }),
    ("finish.legal", |given| {
        let (measured, _) = measured_here(&given.node("brix")?)?;
        let brix = Brix::from_si(measured.value)?;
        let found = finish::legal(units::measured(brix, measured.uncertainty), given.text("jurisdiction")?)?;
        Ok(found.to_tree())
    }),
    ("catalogue.instruments", |_| {
        Ok(catalogue::instruments().iter().map(InstrumentRow::to_tree).collect())
    }),
    ("catalogue.jurisdictions", |_| {
        let rows = catalogue::jurisdictions().iter().map(|row| {
            Tree::map([
                ("key", Tree::from(row.key)),
                ("name", Tree::from(row.name)),
                ("law", Tree::from(row.law)),
                ("min", Tree::Number(row.min.get())),
                ("max", row.max.map_or(Tree::Null, |max| Tree::Number(max.get()))),
                (
                    "reference_temperature",
                    row.reference_temperature().map_or(Tree::Null, |t| of(t, &table::deg_c)),
                ),
                ("has_chart", Tree::Bool(row.has_chart)),
                ("note", Tree::from(row.note)),
                ("seen", Tree::from(row.seen)),
                ("source", Tree::from(alloc::format!("{}", row.source))),
            ])
        });
        Ok(rows.collect())
    }),
];

fn of_chart(chart: &DensityChart) -> Tree {
    let rows = chart.rows().iter().map(|row| {
        let mark = row.mark();
        Tree::map([
            ("temperature", of(row.temperature(), &table::deg_f)),
            ("brix", shown(mark.brix)),
            ("baume", shown(mark.baume)),
        ])
    });
    Tree::map([
        ("jurisdiction", Tree::from(chart.jurisdiction)),
        ("name", Tree::from(chart.name)),
        ("law", Tree::from(chart.law)),
        ("seen", Tree::from(chart.seen)),
        ("target", Tree::Number(chart.target.get())),
        ("calibrated_at", of(chart.calibrated_at(), &table::deg_f)),
        ("rows", rows.collect()),
        ("source", Tree::from(alloc::format!("{}", chart.source))),
        ("advice", Tree::from(chart.advice)),
    ])
}

fn shown(reading: Reading) -> Tree {
    Tree::Number(reading.get())
}

/// A temperature that was typed in `unit`.
fn of(temperature: Temperature, unit: &'static Unit) -> Tree {
    let value = crate::digits::rounded_to(unit.from_si(temperature.si()), 9);
    Tree::Quantity(Quantity::new(value, unit))
}
