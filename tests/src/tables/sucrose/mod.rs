//! Sucrose solutions against printed tables, independent models, and the printed equations in 40 digits.

use sugaring::{
    Error,
    units::{Brix, Temperature, brix, deg_c},
};

use super::{Table, table::table};
use crate::Row;

mod body;
mod equations;
mod scales;
mod solution;

pub(super) static TABLES: [Table; 34] = [
    table!("derived" "activity_water_activity" solution::water_activity),
    table!("published" "activity_measured" solution::water_activity),
    table!("published" "activity_osmotic_coefficient_25c" solution::osmotic_coefficient),
    table!("derived" "activity_isopiestic_1961" solution::osmotic_coefficient),
    table!("published" "activity_partial_enthalpy" solution::heat_of_dilution),
    table!("published" "boiling_elevation_1atm" solution::elevation),
    table!("derived" "boiling_elevation_by_pressure" solution::elevation),
    table!("derived" "boiling_measured" solution::elevation),
    table!("published" "osmotic_pressure" solution::osmotic_pressure),
    table!("derived" "osmotic_pressure_pfeffer" solution::osmotic_pressure),
    table!("published" "freezing_depression_crc" solution::depression),
    table!("published" "freezing_depression_pickering" solution::depression),
    table!("published" "freezing_ice_water" solution::ice_line),
    table!("published" "sucrose_density_15_20_plato" body::density),
    table!("published" "sucrose_density_20c_nbs" body::density),
    table!("derived" "sucrose_density_independent_model" body::density),
    table!("published" "sucrose_density_gerlach" body::relative_density),
    table!("published" "sucrose_relative_density_2020" scales::relative_density_at_20),
    table!("published" "pack_weight_per_gallon" body::weight),
    table!("derived" "sucrose_expansion" body::contraction),
    table!("published" "sucrose_heat_capacity" body::specific_heat),
    table!("published" "sucrose_viscosity" body::viscosity),
    table!("derived" "sucrose_viscosity_independent_model" body::viscosity),
    table!("published" "sucrose_solubility" body::solubility),
    table!("published" "sucrose_refractive_index_20c" body::refractive_index),
    table!("published" "refractometer_oiv_correction" body::refractometer_correction),
    table!("published" "refractometer_1936_correction" body::refractometer_correction),
    table!("published" "sucrose_refractometer_temperature" body::refractometer_correction),
    table!("published" "baume_145" scales::trade_pairs),
    table!("published" "sucrose_baume_from_brix" scales::baume),
    table!("published" "sucrose_baume_scale" scales::baume_as_relative_density),
    table!("published" "baume_apparent_rd_20_20" scales::apparent),
    table!("derived" "sucrose_brix_from_apparent_density" scales::strength_of_apparent),
    table!("derived" "sucrose_equations" equations::equation),
];

fn strength(row: &Row) -> Result<Brix, Error> {
    brix(row.number("brix_pct"))
}

fn temperature(row: &Row) -> Temperature {
    deg_c(row.number("temp_c"))
}
