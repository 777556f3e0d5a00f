//! Boiling, osmotic pressure, freezing and the heats are one water activity; dilute solutions are ideal.

use gauss_quad::GaussLegendre;
use proptest::prelude::*;
use sugaring::{air::StationPressure, sucrose, units::*, water};
use sugaring_tests::sweep::station;

const GAS: f64 = 8.314_462_618_153_24;
const WATER_MOLAR_MASS: f64 = 0.018_015_268;
const SUCROSE_MOLAR_MASS: f64 = 0.342_296_5;

/// °Brix of so many mol sucrose in a kg of water.
fn of_molality(molality: f64) -> Brix {
    brix(100.0 * molality * SUCROSE_MOLAR_MASS / (1.0 + molality * SUCROSE_MOLAR_MASS)).unwrap()
}

#[test]
fn dilute_solutions_are_ideal() {
    let molality = 1e-6;
    let weak = of_molality(molality);
    for celsius in [0.0, 4.0, 25.0, 50.0] {
        let coefficient = sucrose::osmotic_coefficient(weak, deg_c(celsius)).unwrap();
        assert!((coefficient - 1.0).abs() < 1e-6, "{celsius} {coefficient}");
        let density = water::density(deg_c(celsius)).unwrap().get::<kg_per_m3>();
        let ideal = GAS * (celsius + 273.15) * density;
        let pressure = sucrose::osmotic_pressure(of_molality(1e-7), deg_c(celsius))
            .unwrap()
            .get::<pa>();
        assert!((pressure / 1e-7 / ideal - 1.0).abs() < 1e-7, "{celsius} {pressure}");
    }
    // R T_f² M_w / ΔH.
    let cryoscopic = GAS * 273.15 * 273.15 * WATER_MOLAR_MASS / 6006.67;
    assert!((cryoscopic - 1.8606).abs() < 5e-5);
    let depression = -sucrose::freezing_temperature(of_molality(1e-4)).unwrap().get::<deg_c>();
    assert!((depression / 1e-4 / cryoscopic - 1.0).abs() < 1e-4, "{depression}");
    // M_w / (d ln p / dT), from the slope of the line itself; the ebullioscopic constant of real steam is 1.6 % higher.
    let station = StationPressure::measured(atm(1.0)).unwrap();
    let boils = water::saturation_temperature(atm(1.0)).unwrap().get::<deg_c>();
    let pressure = |celsius| water::saturation_pressure(deg_c(celsius)).unwrap().get::<pa>();
    let slope = (pressure(boils + 0.01) / pressure(boils - 0.01)).ln() / 0.02;
    let rise = sucrose::boiling_point_elevation(of_molality(1e-4), station)
        .unwrap()
        .get::<delta_c>();
    assert!((WATER_MOLAR_MASS / slope - 0.504_75).abs() < 5e-6);
    assert!((rise / 1e-4 * slope / WATER_MOLAR_MASS - 1.0).abs() < 1e-4, "{rise}");
}

fn ln_activity(strength: f64, celsius: f64) -> f64 {
    sucrose::water_activity(brix(strength).unwrap(), deg_c(celsius))
        .unwrap()
        .ln()
}

/// ln of the activity that ice keeps: heat of fusion, and the difference of specific heats of water and ice.
fn ln_ice(celsius: f64) -> f64 {
    let (heat, slope, bend, melts) = (6006.67, 38.24, -0.20, 273.15);
    let kelvin = celsius + melts;
    let a = heat - slope * melts + 0.5 * bend * melts * melts;
    let b = slope - bend * melts;
    (a * (1.0 / melts - 1.0 / kelvin) + b * (kelvin / melts).ln() + 0.5 * bend * (kelvin - melts)) / GAS
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// Where the solution boils, its vapour pressure by the one activity is that of the air.
    #[test]
    fn boiling_is_the_same_activity(strength in 0.0..=85.0_f64, kilopascal in 50.0..=110.0_f64) {
        let air = station(kilopascal).unwrap();
        let boils = sucrose::boiling_temperature(brix(strength).unwrap(), air).unwrap();
        let line = water::saturation_pressure(boils).unwrap().get::<kpa>().ln();
        let off = line + ln_activity(strength, boils.get::<deg_c>()) - kilopascal.ln();
        prop_assert!(off.abs() < 1e-12, "{off}");
    }

    #[test]
    fn osmotic_pressure_is_the_same_activity(strength in 0.0..=60.0_f64, celsius in 0.0..=50.0_f64) {
        let density = water::density(deg_c(celsius)).unwrap().get::<kg_per_m3>();
        let ideal = -GAS * (celsius + 273.15) * ln_activity(strength, celsius) * density / WATER_MOLAR_MASS;
        let pressure = sucrose::osmotic_pressure(brix(strength).unwrap(), deg_c(celsius)).unwrap().get::<pa>();
        // The logarithm of a number near 1 is known to 1e-16 only.
        let known = 1e-12 * pressure + 1e-15 * GAS * 323.15 * 1000.0 / WATER_MOLAR_MASS;
        prop_assert!((pressure - ideal * (1.0 + 0.5 * 4.6e-10 * ideal)).abs() < known, "{pressure}");
    }

    #[test]
    fn freezing_is_the_same_activity(strength in 0.0..=60.0_f64) {
        let freezes = sucrose::freezing_temperature(brix(strength).unwrap()).unwrap().get::<deg_c>();
        let off = ln_activity(strength, freezes) - ln_ice(freezes);
        prop_assert!(off.abs() < 1e-12, "{off}");
    }

    #[test]
    fn osmotic_coefficient_is_the_same_activity(strength in 1e-3..=85.0_f64, celsius in -15.0..=132.0_f64) {
        let molality = strength / 100.0 / ((1.0 - strength / 100.0) * SUCROSE_MOLAR_MASS);
        let found = sucrose::osmotic_coefficient(brix(strength).unwrap(), deg_c(celsius)).unwrap();
        let wanted = -ln_activity(strength, celsius) / (molality * WATER_MOLAR_MASS);
        prop_assert!((found - wanted).abs() < 1e-12 + 2e-16 / (molality * WATER_MOLAR_MASS), "{found} {wanted}");
    }

    /// Gibbs and Helmholtz: h^E = −R T² ∂ ln a_w / ∂T.
    #[test]
    fn excess_enthalpy_is_the_slope_of_the_activity(strength in 0.0..=85.0_f64, celsius in -14.9..=131.9_f64) {
        let excess = sucrose::excess_enthalpy_of_water(brix(strength).unwrap(), deg_c(celsius)).unwrap();
        let slope = (ln_activity(strength, celsius + 0.05) - ln_activity(strength, celsius - 0.05)) / 0.1;
        let wanted = -GAS * (celsius + 273.15).powi(2) * slope / WATER_MOLAR_MASS;
        prop_assert!((excess.get::<joule_per_kg>() - wanted).abs() < 0.1, "{excess:?} {wanted}");
    }

    /// q = L(t_sat) − Δh of the water up to T_b + c_p,v (T_b − t_sat) − L₁/M_w, the last by Gibbs and Helmholtz from the
    /// slope of the activity. The water's enthalpy at 0.1 MPa stands for that at saturation.
    #[test]
    fn heat_of_evaporation_is_what_its_parts_say(strength in 0.0..=85.0_f64, kilopascal in 50.0..=80.0_f64) {
        let air = station(kilopascal).unwrap();
        let boils = sucrose::boiling_temperature(brix(strength).unwrap(), air).unwrap().get::<deg_c>();
        prop_assume!(boils < 109.0);
        let water_boils = water::saturation_temperature(kpa(kilopascal)).unwrap().get::<deg_c>();
        let latent = water::latent_heat(deg_c(water_boils)).unwrap().get::<joule_per_kg>();
        let enthalpy = |celsius| water::enthalpy(deg_c(celsius)).unwrap().get::<joule_per_kg>();
        let slope = (ln_activity(strength, boils + 0.05) - ln_activity(strength, boils - 0.05)) / 0.1;
        let dilution = -GAS * (boils + 273.15).powi(2) * slope / WATER_MOLAR_MASS;
        let superheat = 2030.0 * (boils - water_boils);
        let parts = latent - (enthalpy(boils) - enthalpy(water_boils)) + superheat - dilution;
        let heat = sucrose::heat_of_evaporation(brix(strength).unwrap(), air).unwrap().get::<joule_per_kg>();
        prop_assert!((heat / parts - 1.0).abs() < 5e-5, "{strength} {kilopascal}: {heat} {parts}");
    }

    /// Quadrature of the specific heat; the printed enthalpy of water has its slope within 2e-5 J/(kg K).
    #[test]
    fn enthalpy_is_the_integral_of_the_specific_heat(
        strength in 0.0..=80.0_f64,
        from in 0.0..=110.0_f64,
        to in 0.0..=110.0_f64,
    ) {
        let rule = GaussLegendre::new(30.try_into().unwrap());
        let b = brix(strength).unwrap();
        let water_sum = rule.integrate(from, to, |t| water::specific_heat(deg_c(t)).unwrap().get::<joule_per_kg_k>());
        let enthalpy = |t| water::enthalpy(deg_c(t)).unwrap().get::<joule_per_kg>();
        prop_assert!((enthalpy(to) - enthalpy(from) - water_sum).abs() < 3e-5 * (to - from).abs() + 1e-6);
        let sum = rule.integrate(from, to, |t| sucrose::specific_heat(b, deg_c(t)).unwrap().get::<joule_per_kg_k>());
        let enthalpy = |t| sucrose::enthalpy(b, deg_c(t)).unwrap().get::<joule_per_kg>();
        prop_assert!((enthalpy(to) - enthalpy(from) - sum).abs() < 3e-5 * (to - from).abs() + 1e-6);
        let heat = sucrose::heat_to_warm(b, deg_c(from), deg_c(to)).unwrap().get::<joule_per_kg>();
        prop_assert!((heat - (enthalpy(to) - enthalpy(from))).abs() < 1e-9 * 460e3);
    }
}
