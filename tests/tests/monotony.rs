//! Relations that have no inverse rise or fall throughout, where physics says so.

use sugaring::{Error, Range, Relation, sucrose, units::*, water};
use sugaring_tests::sweep::{at, is_monotone, station};

type Sweep = (
    &'static str,
    &'static Relation,
    usize,
    bool,
    fn(f64, &[f64]) -> Result<f64, Error>,
);

/// Relations of water that have no inverse, and whether they rise with the argument of that place.
fn sweeps_of_water() -> Vec<Sweep> {
    vec![
        ("latent_heat", &water::LATENT_HEAT, 0, false, |t, _| {
            Ok(water::latent_heat(deg_c(t))?.get::<joule_per_kg>())
        }),
        (
            "saturated_liquid_density",
            &water::SATURATED_LIQUID_DENSITY,
            0,
            false,
            |t, _| {
                // From 5 °C on: it is densest at 4.
                let warm = 5.0 + t * (373.946 - 5.0) / 373.946;
                Ok(water::saturated_liquid_density(deg_c(warm))?.get::<kg_per_m3>())
            },
        ),
        (
            "saturated_vapour_density",
            &water::SATURATED_VAPOUR_DENSITY,
            0,
            true,
            |t, _| Ok(water::saturated_vapour_density(deg_c(t))?.get::<kg_per_m3>()),
        ),
        ("enthalpy of water", &water::ENTHALPY, 0, true, |t, _| {
            Ok(water::enthalpy(deg_c(t))?.get::<joule_per_kg>())
        }),
        ("viscosity of water", &water::VISCOSITY, 0, false, |t, _| {
            Ok(water::viscosity(deg_c(t))?.get::<pascal_s>())
        }),
        (
            "thermal_conductivity of water",
            &water::THERMAL_CONDUCTIVITY,
            0,
            true,
            |t, _| Ok(water::thermal_conductivity(deg_c(t))?.get::<w_per_m_k>()),
        ),
    ]
}

/// Those of sucrose.
fn sweeps_of_sucrose() -> Vec<Sweep> {
    vec![
        ("sugar_per_volume", &sucrose::SUGAR_PER_VOLUME, 0, true, |b, o| {
            Ok(sucrose::sugar_per_volume(brix(b)?, deg_c(o[0]))?.get::<gram_per_litre>())
        }),
        ("specific_heat", &sucrose::SPECIFIC_HEAT, 0, false, |b, o| {
            Ok(sucrose::specific_heat(brix(b)?, deg_c(o[0]))?.get::<joule_per_kg_k>())
        }),
        ("enthalpy", &sucrose::ENTHALPY, 1, true, |t, o| {
            Ok(sucrose::enthalpy(brix(o[0])?, deg_c(t))?.get::<joule_per_kg>())
        }),
        ("viscosity by strength", &sucrose::VISCOSITY, 0, true, |b, o| {
            Ok(sucrose::viscosity(brix(b)?, deg_c(o[0]))?.get::<pascal_s>())
        }),
        ("viscosity by temperature", &sucrose::VISCOSITY, 1, false, |t, o| {
            Ok(sucrose::viscosity(brix(o[0])?, deg_c(t))?.get::<pascal_s>())
        }),
        (
            "viscosity_genotelle by strength",
            &sucrose::VISCOSITY_GENOTELLE,
            0,
            true,
            |b, o| Ok(sucrose::viscosity_genotelle(brix(b)?, deg_c(o[0]))?.get::<pascal_s>()),
        ),
        (
            "viscosity_genotelle by temperature",
            &sucrose::VISCOSITY_GENOTELLE,
            1,
            false,
            |t, o| Ok(sucrose::viscosity_genotelle(brix(o[0])?, deg_c(t))?.get::<pascal_s>()),
        ),
        ("weight_in_air", &sucrose::WEIGHT_IN_AIR, 0, true, |b, o| {
            Ok(sucrose::weight_in_air(brix(b)?, deg_c(o[0]))?.get::<kg_per_m3>())
        }),
        (
            "refractive_index by temperature",
            &sucrose::REFRACTIVE_INDEX,
            1,
            false,
            |t, o| sucrose::refractive_index(brix(o[0])?, deg_c(t)),
        ),
        (
            "thermal_conductivity",
            &sucrose::THERMAL_CONDUCTIVITY,
            0,
            false,
            |b, o| Ok(sucrose::thermal_conductivity(brix(b)?, deg_c(o[0]))?.get::<w_per_m_k>()),
        ),
        ("supersaturation", &sucrose::SUPERSATURATION, 0, true, |b, o| {
            sucrose::supersaturation(brix(b)?, deg_c(o[0]))
        }),
        ("water_activity", &sucrose::WATER_ACTIVITY, 0, false, |b, o| {
            sucrose::water_activity(brix(b)?, deg_c(o[0]))
        }),
        (
            "boiling_point_elevation",
            &sucrose::BOILING_POINT_ELEVATION,
            0,
            true,
            |b, o| Ok(sucrose::boiling_point_elevation(brix(b)?, station(o[0])?)?.get::<delta_c>()),
        ),
        (
            "pressure_from_boiling",
            &sucrose::PRESSURE_FROM_BOILING,
            1,
            true,
            |t, o| Ok(sucrose::pressure_from_boiling(brix(o[0])?, deg_c(t))?.get::<kpa>()),
        ),
    ]
}

#[test]
fn other_relations_are_monotone() {
    for (name, relation, index, rises, call) in sweeps_of_water().into_iter().chain(sweeps_of_sucrose()) {
        let range = &relation.inputs[index];
        let others: Vec<&Range> = relation.inputs.iter().filter(|other| *other != range).collect();
        for share in [0.0, 0.35, 0.775, 1.0] {
            let others: Vec<f64> = others.iter().map(|range| at(range, share)).collect();
            let values = (0..=2000).map(|n| call(at(range, f64::from(n) / 2000.0), &others).unwrap());
            is_monotone(name, rises, values);
        }
    }
}
