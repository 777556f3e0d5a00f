//! Sucrose solutions against printed tables, independent models, and the printed equations in 40 digits.

use sugaring::{Error, air::StationPressure, sucrose, units::*, water};
use sugaring_tests::{Row, judge, limits};

const DERIVED: &str = include_str!("../derived/sucrose_equations.csv");

/// kg/mol.
const SUCROSE: f64 = 0.342_296_5;
/// J/(mol K).
const GAS: f64 = 8.314_462_618_153_24;

macro_rules! table {
    ($name:literal in $folder:literal, $relation:expr) => {
        judge(
            concat!($name, ".csv"),
            include_str!(concat!("../", $folder, "/", $name, ".csv")),
            $relation,
        )
    };
}

fn strength(row: &Row) -> Result<Brix, Error> {
    brix(row.number("brix_pct"))
}

/// °Brix of a molality in mol per kg of water.
fn of_molality(molality: f64) -> Result<Brix, Error> {
    brix(100.0 * molality * SUCROSE / (1.0 + molality * SUCROSE))
}

fn temperature(row: &Row) -> Temperature {
    deg_c(row.number("temp_c"))
}

// Water activity.

#[test]
fn water_activity_of_other_equations() {
    table!("activity_water_activity" in "derived", |row| {
        sucrose::water_activity(strength(row)?, temperature(row)).map(Some)
    });
}

#[test]
fn water_activity_as_measured() {
    table!("activity_measured" in "published", |row| {
        sucrose::water_activity(strength(row)?, temperature(row)).map(Some)
    });
}

#[test]
fn osmotic_coefficients() {
    let relation = |row: &Row| {
        let solution = of_molality(row.number("molality_mol_kg"))?;
        sucrose::osmotic_coefficient(solution, temperature(row)).map(Some)
    };
    table!("activity_osmotic_coefficient_25c" in "published", relation);
    table!("activity_isopiestic_1961" in "derived", relation);
}

/// The heat of dilution is no function of its own: `L₁ = −R T² ∂ln a_w/∂T` (Gibbs and Helmholtz).
#[test]
fn heat_of_dilution_is_the_slope_of_the_activity() {
    table!("activity_partial_enthalpy" in "published", |row| {
        let solution = of_molality(row.number("molality_mol_kg"))?;
        let middle = row.number("temp_c");
        let ln = |celsius| Ok::<_, Error>(sucrose::water_activity(solution, deg_c(celsius))?.ln());
        let slope = ln(middle + 0.5)? - ln(middle - 0.5)?;
        Ok(Some(-GAS * (middle + 273.15).powi(2) * slope))
    });
}

// Boiling.

/// Offered from 50 to 110 kPa; outside, the same equation through its closed form, solved here.
fn elevation(row: &Row) -> Result<Option<f64>, Error> {
    let (solution, pressure) = (strength(row)?, kpa(row.number("pressure_kpa")));
    if let Ok(station) = StationPressure::measured(pressure) {
        let rise = sucrose::boiling_point_elevation(solution, station)?;
        return Ok(Some(rise.get::<delta_c>()));
    }
    let water = water::saturation_temperature(pressure)?.get::<deg_c>();
    let (mut low, mut high) = (water, 132.0);
    while high - low > 1e-9 {
        let middle = 0.5 * (low + high);
        if sucrose::pressure_from_boiling(solution, deg_c(middle))? < pressure {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(Some(low - water))
}

#[test]
fn boiling_point_elevations() {
    table!("boiling_elevation_1atm" in "published", elevation);
    table!("boiling_elevation_by_pressure" in "derived", elevation);
    table!("boiling_measured" in "derived", elevation);
}

// Osmotic pressure.

fn osmotic_pressure(row: &Row) -> Result<Option<f64>, Error> {
    let warm = temperature(row);
    let solution = match row.text("quantity") {
        "osmotic_pressure_m" => of_molality(row.number("molality_mol_kg"))?,
        "osmotic_pressure_gl" => of_concentration(row.number("conc_g_l"), warm)?,
        "osmotic_pressure" => strength(row)?,
        other => panic!("{}: {other} is not judged", row.place()),
    };
    let pressure = sucrose::osmotic_pressure(solution, warm)?;
    Ok(Some(match row.text("unit") {
        "atm" => pressure.get::<atm>(),
        "kPa" => pressure.get::<kpa>(),
        other => panic!("{}: {other} is not judged", row.place()),
    }))
}

fn of_concentration(gram_per_l: f64, warm: Temperature) -> Result<Brix, Error> {
    let (mut low, mut high) = (0.0, 85.0);
    while high - low > 1e-10 {
        let middle = 0.5 * (low + high);
        if sucrose::sugar_per_volume(brix(middle)?, warm)?.get::<gram_per_litre>() < gram_per_l {
            low = middle;
        } else {
            high = middle;
        }
    }
    brix(low)
}

#[test]
fn osmotic_pressures() {
    table!("osmotic_pressure" in "published", osmotic_pressure);
    table!("osmotic_pressure_pfeffer" in "derived", osmotic_pressure);
}

// Freezing.

fn depression(row: &Row) -> Result<Option<f64>, Error> {
    Ok(Some(-sucrose::freezing_temperature(strength(row)?)?.get::<deg_c>()))
}

#[test]
fn freezing_points() {
    table!("freezing_depression_crc" in "published", depression);
    table!("freezing_depression_pickering" in "published", depression);
}

/// The water activity that ice keeps is that of the liquid under it; colder than −11.67 °C no strength is offered.
#[test]
fn ice_line() {
    table!("freezing_ice_water" in "published", |row| {
        if row.number("temp_c") < -11.66 {
            return Ok(None);
        }
        let liquid = sucrose::brix_from_freezing(temperature(row))?;
        Ok(Some(sucrose::water_activity(liquid, temperature(row))?.ln()))
    });
}

// Density.

fn density(row: &Row) -> Result<Option<f64>, Error> {
    let density = sucrose::density(strength(row)?, temperature(row))?;
    Ok(Some(density.get::<kg_per_m3>()))
}

/// Over water of the same equation and temperature.
fn relative_density(solution: Brix, warm: Temperature) -> Result<Option<f64>, Error> {
    let water = sucrose::density(brix(0.0)?, warm)?;
    Ok(Some((sucrose::density(solution, warm)? / water).get::<fraction>()))
}

#[test]
fn densities() {
    table!("sucrose_density_15_20_plato" in "published", density);
    table!("sucrose_density_20c_nbs" in "published", density);
    table!("sucrose_density_independent_model" in "derived", density);
}

#[test]
fn relative_densities() {
    table!("sucrose_density_gerlach" in "published", |row| relative_density(strength(row)?, temperature(row)));
    table!("sucrose_relative_density_2020" in "published", |row| relative_density(strength(row)?, deg_c(20.0)));
}

#[test]
fn contraction_of_hot_syrup() {
    table!("sucrose_expansion" in "derived", |row| {
        let (hot, cold) = (deg_c(row.number("hot_c")), deg_c(row.number("cold_c")));
        Ok(Some(sucrose::contraction(strength(row)?, hot, cold)?.get::<percent>()))
    });
}

// Heat, viscosity, solubility.

/// Lyle's and Janovskii's formulas are held against Bubnik's, as the table says.
#[test]
fn specific_heats() {
    table!("sucrose_heat_capacity" in "published", |row| {
        let (solution, warm) = (strength(row)?, temperature(row));
        assert!((row.number("purity_pct") - 100.0).abs() < 1e-9, "{}", row.place());
        let heat = match row.text("relation") {
            "water_anchored" => sucrose::specific_heat(solution, warm)?,
            "bubnik" | "lyle" | "janovskii" => sucrose::specific_heat_bubnik(solution, warm)?,
            other => panic!("{}: {other} is not judged", row.place()),
        };
        Ok(Some(heat.get::<kj_per_kg_k>()))
    });
}

fn viscosity(row: &Row) -> Result<Option<f64>, Error> {
    Ok(Some(
        sucrose::viscosity(strength(row)?, temperature(row))?.get::<mpa_s>(),
    ))
}

#[test]
fn viscosities() {
    table!("sucrose_viscosity" in "published", viscosity);
    table!("sucrose_viscosity_independent_model" in "derived", viscosity);
}

#[test]
fn solubilities() {
    table!("sucrose_solubility" in "published", |row| Ok(Some(sucrose::solubility(temperature(row))?.get())));
}

// Limits. Inverses that end at a strength find their limits themselves; their corners are tested beside the code.

#[test]
fn limits_hold_as_written() {
    let (syrup, warm) = (|| brix(50.0), || deg_c(20.0));
    let station = || StationPressure::measured(kpa(96.5));
    macro_rules! of_strength_and_temperature {
        ($($relation:ident $function:ident;)+) => { $(
            limits(&sucrose::$relation, 0, |b| sucrose::$function(Brix::from_si(b)?, warm()));
            limits(&sucrose::$relation, 1, |t| sucrose::$function(syrup()?, kelvin(t)));
        )+ };
    }
    of_strength_and_temperature! {
        DENSITY density;
        SUGAR_PER_VOLUME sugar_per_volume;
        WATER_ACTIVITY water_activity;
        OSMOTIC_COEFFICIENT osmotic_coefficient;
        OSMOTIC_PRESSURE osmotic_pressure;
        SPECIFIC_HEAT specific_heat;
        SPECIFIC_HEAT_BUBNIK specific_heat_bubnik;
        ENTHALPY enthalpy;
        VISCOSITY viscosity;
        SUPERSATURATION supersaturation;
    }
    limits(&sucrose::CONTRACTION, 1, |t| {
        sucrose::contraction(syrup()?, kelvin(t), warm())
    });
    limits(&sucrose::CONTRACTION, 2, |t| {
        sucrose::contraction(syrup()?, warm(), kelvin(t))
    });
    limits(&sucrose::HEAT_TO_WARM, 1, |t| {
        sucrose::heat_to_warm(syrup()?, kelvin(t), warm())
    });
    limits(&sucrose::HEAT_TO_WARM, 2, |t| {
        sucrose::heat_to_warm(syrup()?, warm(), kelvin(t))
    });
    limits(&sucrose::PRESSURE_FROM_BOILING, 0, |b| {
        sucrose::pressure_from_boiling(Brix::from_si(b)?, deg_c(90.0))
    });
    limits(&sucrose::PRESSURE_FROM_BOILING, 1, |t| {
        sucrose::pressure_from_boiling(syrup()?, kelvin(t))
    });
    limits(&sucrose::BOILING_TEMPERATURE, 0, |b| {
        sucrose::boiling_temperature(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::BOILING_POINT_ELEVATION, 0, |b| {
        sucrose::boiling_point_elevation(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::HEAT_OF_EVAPORATION, 0, |b| {
        sucrose::heat_of_evaporation(Brix::from_si(b)?, station()?)
    });
    limits(&sucrose::FREEZING_TEMPERATURE, 0, |b| {
        sucrose::freezing_temperature(Brix::from_si(b)?)
    });
    limits(&sucrose::SOLUBILITY, 0, |t| sucrose::solubility(kelvin(t)));
}

// The printed equations.

#[test]
fn printed_equations_in_many_digits() {
    judge("sucrose_equations.csv", DERIVED, equation);
}

fn equation(row: &Row) -> Result<Option<f64>, Error> {
    let solution = || strength(row);
    let warm = || temperature(row);
    let station = || StationPressure::measured(pa(row.number("pressure_pa")));
    Ok(Some(match row.text("relation") {
        "density" => sucrose::density(solution()?, warm())?.get::<kg_per_m3>(),
        "brix_from_density" => sucrose::brix_from_density(kg_per_m3(row.number("density_kg_m3")), warm())?.get(),
        "sugar_per_volume" => sucrose::sugar_per_volume(solution()?, warm())?.get::<gram_per_litre>(),
        "water_activity" => sucrose::water_activity(solution()?, warm())?,
        "osmotic_coefficient" => sucrose::osmotic_coefficient(solution()?, warm())?,
        "osmotic_pressure" => sucrose::osmotic_pressure(solution()?, warm())?.get::<pa>(),
        "brix_from_osmotic_pressure" => {
            sucrose::brix_from_osmotic_pressure(pa(row.number("pressure_pa")), warm())?.get()
        }
        "boiling_temperature" => sucrose::boiling_temperature(solution()?, station()?)?.get::<kelvin>(),
        "boiling_point_elevation" => sucrose::boiling_point_elevation(solution()?, station()?)?.get::<delta_c>(),
        "brix_from_boiling" => sucrose::brix_from_boiling(warm(), station()?)?.get(),
        "pressure_from_boiling" => sucrose::pressure_from_boiling(solution()?, warm())?.get::<pa>(),
        "heat_of_evaporation" => sucrose::heat_of_evaporation(solution()?, station()?)?.get::<joule_per_kg>(),
        "freezing_temperature" => sucrose::freezing_temperature(solution()?)?.get::<kelvin>(),
        "brix_from_freezing" => sucrose::brix_from_freezing(warm())?.get(),
        "specific_heat" => sucrose::specific_heat(solution()?, warm())?.get::<joule_per_kg_k>(),
        "specific_heat_bubnik" => sucrose::specific_heat_bubnik(solution()?, warm())?.get::<joule_per_kg_k>(),
        "enthalpy" => sucrose::enthalpy(solution()?, warm())?.get::<joule_per_kg>(),
        "viscosity" => sucrose::viscosity(solution()?, warm())?.get::<pascal_s>(),
        "solubility" => sucrose::solubility(warm())?.get(),
        "saturation_temperature" => sucrose::saturation_temperature(solution()?)?.get::<kelvin>(),
        "supersaturation" => sucrose::supersaturation(solution()?, warm())?,
        other => panic!("{}: {other} is not judged", row.place()),
    }))
}
