//! Rigs and sap to try things on.

use proptest::prelude::*;

use super::{Element, ElementRating, FactorModel, Polarisation, Pump, Rig};
use crate::{
    lot::{Lot, blend},
    units::{
        bar, bar_gauge, brix, cubic_metre_per_day, deg_c, fraction, kg, litre, litre_per_h, mg_per_litre, percent,
    },
};

pub(super) fn element() -> Element {
    Element::from_rating(&ElementRating {
        flow: cubic_metre_per_day(0.9),
        pressure: bar_gauge(4.1),
        temperature: deg_c(25.0),
        salt: mg_per_litre(500.0),
        recovery: percent(15.0),
        rejection: percent(97.0),
    })
    .unwrap()
}

/// Two residential elements side by side at 7.6 bar.
pub(super) fn rig() -> Rig {
    let pump = Pump::of_flow(litre_per_h(500.0)).unwrap();
    let rig = Rig::new(&element(), bar_gauge(7.6)).unwrap().with_parallel(2).unwrap();
    rig.with_pump(pump).unwrap()
}

/// Two tanks of an invented sugarbush.
pub(super) fn sap() -> Lot {
    let lot = |v, b, t| Lot::of_volume(litre(v), brix(b).unwrap(), deg_c(t)).unwrap();
    blend(&[lot(170.0, 1.8, 3.0), lot(95.0, 2.3, 5.0)]).unwrap()
}

pub(super) fn any_sap() -> impl Strategy<Value = Lot> {
    (1.0..1e5_f64, 0.3..8.0_f64, 0.0..40.0_f64)
        .prop_map(|(m, b, t)| Lot::of_mass(kg(m), brix(b).unwrap(), deg_c(t)).unwrap())
}

fn any_film() -> impl Strategy<Value = Polarisation> {
    prop_oneof![
        4 => (0.1..4.0_f64).prop_map(|factor| Polarisation::RatingAnchored { factor }),
        1 => (1.0..2.0_f64).prop_map(Polarisation::Modulus),
        1 => (0.1..50.0_f64).prop_map(|k| Polarisation::Coefficient(cubic_metre_per_day(k))),
        1 => Just(Polarisation::None),
    ]
}

fn any_factor() -> impl Strategy<Value = FactorModel> {
    prop_oneof![
        Just(FactorModel::Makers),
        (2000.0..4000.0_f64).prop_map(FactorModel::Single),
        Just(FactorModel::Viscosity),
        Just(FactorModel::PerDegree),
    ]
}

/// Rigs somebody could build.
pub(super) fn any_rig() -> impl Strategy<Value = Rig> {
    let element = (0.2..20.0_f64, 3.0..15.0_f64, 0.0..1500.0_f64, 0.05..0.5_f64);
    let size = (1.0..40.0_f64, 1..4_u32, 1..4_u32, 20.0..2000.0_f64);
    let loss = (
        prop_oneof![Just(0.0), 0.0..0.4_f64],
        0.0..0.4_f64,
        prop_oneof![Just(1.0), 0.6..1.0_f64],
    );
    (element, size, loss, any_film(), any_factor()).prop_map(|(e, s, l, film, factor)| {
        let element = Element::from_rating(&ElementRating {
            flow: cubic_metre_per_day(e.0),
            pressure: bar_gauge(e.1),
            temperature: deg_c(25.0),
            salt: mg_per_litre(e.2),
            recovery: fraction(e.3),
            rejection: fraction(0.97),
        });
        let pump = Pump::of_flow(litre_per_h(s.3 * f64::from(s.1))).unwrap();
        let rig = Rig::new(&element.unwrap(), bar_gauge(s.0)).unwrap();
        let rig = rig
            .with_parallel(s.1)
            .unwrap()
            .with_series(s.2)
            .unwrap()
            .with_pump(pump)
            .unwrap();
        let rig = rig
            .with_element_drop(bar(l.0))
            .unwrap()
            .with_back_pressure(bar(l.1))
            .unwrap();
        let rig = rig
            .with_retention(fraction(l.2))
            .unwrap()
            .with_polarisation(film)
            .unwrap();
        rig.with_temperature_model(factor).unwrap()
    })
}
