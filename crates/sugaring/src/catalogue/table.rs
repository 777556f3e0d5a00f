//! The one table of the public functions of numbers, and what the core makes of it.

#![expect(
    clippy::indexing_slicing,
    reason = "the table's loops run over columns that were just cut to one length"
)]

use super::function::{Argument, Function, Kind, arity, fits, taken};
use crate::{
    air::StationPressure,
    lanes::widest,
    units::{
        ApparentRelativeDensity2020, Baume2020, Baume6060F, Brix, Concentration, Conductivity, Density, Energy,
        EnergyPerMass, Flow, GaugePressure, Length, Pressure, Ratio, RelativeDensity204, RelativeDensity2020,
        RelativeDensity6060F, SpecificHeat, Temperature, TemperatureDifference, Time, Value, Viscosity, Volume,
    },
};

/// Hands the public functions of numbers to the macro `$callback`, as
/// `module { /// summary, name(argument: Type, ...) -> Type = RELATION; ... } ...`. Where speed matters the relation is
/// followed, behind a comma, by the bare formula in SI; or, behind an arrow, by a function of whole columns within the
/// limits, which leaves NaN where the public function is to be asked again.
///
/// A summary is the first paragraph of the function's documentation.
#[doc(hidden)]
#[macro_export]
macro_rules! surface {
    ($callback:path) => {
        $callback! {
            water {
                /// Absolute pressure at which water of `temperature` boils.
                saturation_pressure(temperature: Temperature)
                    -> Pressure = SATURATION_PRESSURE, saturation_pressure_at;
                /// Temperature at which water boils under the absolute `pressure`: the inverse of
                /// `saturation_pressure`.
                saturation_temperature(pressure: Pressure) -> Temperature = SATURATION_TEMPERATURE, saturation_temperature_within;
                /// Heat that turns boiling water of `temperature` into steam of the same temperature.
                latent_heat(temperature: Temperature) -> EnergyPerMass = LATENT_HEAT, latent_heat_at;
                /// Density of boiling water.
                saturated_liquid_density(temperature: Temperature) -> Density = SATURATED_LIQUID_DENSITY;
                /// Density of the steam over boiling water.
                saturated_vapour_density(temperature: Temperature) -> Density = SATURATED_VAPOUR_DENSITY;
                /// Density of liquid water.
                density(temperature: Temperature) -> Density = DENSITY, density_at;
                /// Specific heat of liquid water.
                specific_heat(temperature: Temperature) -> SpecificHeat = SPECIFIC_HEAT, specific_heat_at;
                /// Heat that warms liquid water from 0 °C to `temperature`; negative below.
                enthalpy(temperature: Temperature) -> EnergyPerMass = ENTHALPY, enthalpy_at;
                /// Viscosity of liquid water.
                viscosity(temperature: Temperature) -> Viscosity = VISCOSITY, viscosity_at;
                /// Thermal conductivity of liquid water.
                thermal_conductivity(temperature: Temperature) -> Conductivity = THERMAL_CONDUCTIVITY, thermal_conductivity_at;
            }
            air {
                /// Pressure of the standard atmosphere at a geometric `altitude`.
                pressure_at_altitude(altitude: Length) -> Pressure = PRESSURE_AT_ALTITUDE;
                /// Geometric altitude at which the standard atmosphere has `pressure`: the inverse of
                /// `pressure_at_altitude`.
                altitude_at_pressure(pressure: Pressure) -> Length = ALTITUDE_AT_PRESSURE;
                /// Altimeter setting that an airport or a home weather station at `altitude` reports under this
                /// station pressure: to compare with a report.
                altimeter_setting(station: StationPressure, altitude: Length) -> Pressure = ALTIMETER_SETTING;
                /// Mean sea level pressure that a weather map shows where this is the station pressure.
                sea_level_pressure(station: StationPressure, altitude: Length, air_temperature: Temperature)
                    -> Pressure = SEA_LEVEL_PRESSURE;
            }
            sucrose {
                /// True density of a sucrose solution.
                density(brix: Brix, temperature: Temperature) -> Density = DENSITY, density_at;
                /// °Brix of a sucrose solution of true `density` at `temperature`: the inverse of `density`.
                brix_from_density(density: Density, temperature: Temperature)
                    -> Brix = BRIX_FROM_DENSITY => brixes_from_density;
                /// Dissolved sugar per volume of solution.
                sugar_per_volume(brix: Brix, temperature: Temperature) -> Concentration = SUGAR_PER_VOLUME, sugar_per_volume_at;
                /// What a scale shows of a volume of the solution, weighed in air.
                weight_in_air(brix: Brix, temperature: Temperature) -> Density = WEIGHT_IN_AIR, weight_in_air_at;
                /// Refractive index of a sucrose solution for yellow sodium light, against air.
                refractive_index(brix: Brix, temperature: Temperature) -> f64 = REFRACTIVE_INDEX, refractive_index_at;
                /// °Brix of the sucrose solution of this refractive `index` at `temperature`: the inverse of
                /// `refractive_index`.
                brix_from_refractive_index(index: f64, temperature: Temperature)
                    -> Brix = BRIX_FROM_REFRACTIVE_INDEX => brixes_from_refractive_index;
                /// Share of the hot volume that is gone when the solution has cooled.
                contraction(brix: Brix, hot: Temperature, cold: Temperature) -> Ratio = CONTRACTION, contraction_at;
                /// Specific heat of a sucrose solution, anchored on water's own.
                specific_heat(brix: Brix, temperature: Temperature) -> SpecificHeat = SPECIFIC_HEAT, specific_heat_at;
                /// Specific heat of a sucrose solution as Bubnik prints it, with 4.1868 kJ/(kg K) for water.
                specific_heat_bubnik(brix: Brix, temperature: Temperature)
                    -> SpecificHeat = SPECIFIC_HEAT_BUBNIK, specific_heat_bubnik_at;
                /// Heat that warms a sucrose solution from 0 °C to `temperature`, its strength unchanged.
                enthalpy(brix: Brix, temperature: Temperature) -> EnergyPerMass = ENTHALPY, enthalpy_at;
                /// Heat that takes a sucrose solution from one temperature to another, its strength unchanged;
                /// negative on cooling.
                heat_to_warm(brix: Brix, from_temperature: Temperature, to_temperature: Temperature)
                    -> EnergyPerMass = HEAT_TO_WARM, heat_to_warm_at;
                /// Viscosity of a sucrose solution.
                viscosity(brix: Brix, temperature: Temperature) -> Viscosity = VISCOSITY, viscosity_at;
                /// Viscosity of syrup by the published form of Génotelle.
                viscosity_genotelle(brix: Brix, temperature: Temperature)
                    -> Viscosity = VISCOSITY_GENOTELLE, viscosity_genotelle_at;
                /// Thermal conductivity of a sucrose solution.
                thermal_conductivity(brix: Brix, temperature: Temperature)
                    -> Conductivity = THERMAL_CONDUCTIVITY, thermal_conductivity_at;
                /// °Brix of a solution saturated with sucrose.
                solubility(temperature: Temperature) -> Brix = SOLUBILITY, solubility_at;
                /// Temperature at which a sucrose solution is saturated: the inverse of `solubility`.
                saturation_temperature(brix: Brix) -> Temperature = SATURATION_TEMPERATURE => saturation_temperatures;
                /// Sucrose per water, over what saturation would hold at this temperature: above 1 crystals can grow.
                supersaturation(brix: Brix, temperature: Temperature) -> f64 = SUPERSATURATION, supersaturation_at;
                /// Water activity of a sucrose solution: the share of pure water's vapour pressure that it has.
                water_activity(brix: Brix, temperature: Temperature) -> f64 = WATER_ACTIVITY => water_activities;
                /// Osmotic coefficient of a sucrose solution: how far its water activity lies from that of an ideal
                /// one.
                osmotic_coefficient(brix: Brix, temperature: Temperature)
                    -> f64 = OSMOTIC_COEFFICIENT, osmotic_coefficient_at;
                /// Osmotic pressure of a sucrose solution.
                osmotic_pressure(brix: Brix, temperature: Temperature) -> Pressure = OSMOTIC_PRESSURE, osmotic_pressure_at;
                /// °Brix of the sucrose solution that has this osmotic `pressure`: the ceiling of a membrane. The
                /// inverse of `osmotic_pressure`.
                brix_from_osmotic_pressure(pressure: Pressure, temperature: Temperature)
                    -> Brix = BRIX_FROM_OSMOTIC_PRESSURE => brixes_from_osmotic_pressure;
                /// Temperature at which a sucrose solution boils under the `station` pressure.
                boiling_temperature(brix: Brix, station: StationPressure)
                    -> Temperature = BOILING_TEMPERATURE => boiling_temperatures;
                /// How far a sucrose solution boils above pure water at the same `station` pressure.
                boiling_point_elevation(brix: Brix, station: StationPressure)
                    -> TemperatureDifference = BOILING_POINT_ELEVATION => boiling_point_elevations;
                /// °Brix of the sucrose solution that boils at `temperature` under the `station` pressure: the
                /// inverse of `boiling_temperature`.
                brix_from_boiling(temperature: Temperature, station: StationPressure)
                    -> Brix = BRIX_FROM_BOILING => brixes_from_boiling;
                /// Absolute pressure under which a sucrose solution boils at `temperature`.
                pressure_from_boiling(brix: Brix, temperature: Temperature)
                    -> Pressure = PRESSURE_FROM_BOILING => pressures_from_boiling;
                /// Heat that takes 1 kg of water as vapour out of a solution that boils already under the `station`
                /// pressure.
                heat_of_evaporation(brix: Brix, station: StationPressure)
                    -> EnergyPerMass = HEAT_OF_EVAPORATION => heats_of_evaporation;
                /// Excess enthalpy of the water in a sucrose solution over pure water's, per mass of water: the heat of
                /// dilution, which is negative.
                excess_enthalpy_of_water(brix: Brix, temperature: Temperature)
                    -> EnergyPerMass = EXCESS_ENTHALPY_OF_WATER, excess_enthalpy_of_water_at;
                /// Temperature at which ice begins to form in a sucrose solution.
                freezing_temperature(brix: Brix) -> Temperature = FREEZING_TEMPERATURE => freezing_temperatures;
                /// °Brix of the liquid that is left under ice at `temperature`: the inverse of
                /// `freezing_temperature`.
                brix_from_freezing(temperature: Temperature) -> Brix = BRIX_FROM_FREEZING => brixes_from_freezing;
            }
            scale {
                /// Degrees Baumé of a sucrose solution, solution and water at 20 °C.
                baume_20_20(brix: Brix) -> Baume2020 = BAUME_20_20;
                /// °Brix of a sucrose solution from degrees Baumé, solution and water at 20 °C.
                brix_from_baume_20_20(value: Baume2020) -> Brix = BRIX_FROM_BAUME_20_20;
                /// Degrees Baumé of a sucrose solution, solution and water at 60 °F.
                baume_60_60_f(brix: Brix) -> Baume6060F = BAUME_60_60_F;
                /// °Brix of a sucrose solution from degrees Baumé, solution and water at 60 °F.
                brix_from_baume_60_60_f(value: Baume6060F) -> Brix = BRIX_FROM_BAUME_60_60_F;
                /// Relative density of a sucrose solution, solution and water at 20 °C.
                relative_density_20_20(brix: Brix) -> RelativeDensity2020 = RELATIVE_DENSITY_20_20;
                /// °Brix of a sucrose solution from its relative density, solution and water at 20 °C.
                brix_from_relative_density_20_20(value: RelativeDensity2020) -> Brix = BRIX_FROM_RELATIVE_DENSITY_20_20;
                /// Relative density of a sucrose solution, solution and water at 60 °F.
                relative_density_60_60_f(brix: Brix) -> RelativeDensity6060F = RELATIVE_DENSITY_60_60_F;
                /// °Brix of a sucrose solution from its relative density, solution and water at 60 °F.
                brix_from_relative_density_60_60_f(value: RelativeDensity6060F)
                    -> Brix = BRIX_FROM_RELATIVE_DENSITY_60_60_F;
                /// Relative density of a sucrose solution at 20 °C to water at 4 °C.
                relative_density_20_4(brix: Brix) -> RelativeDensity204 = RELATIVE_DENSITY_20_4;
                /// °Brix of a sucrose solution from its relative density at 20 °C to water at 4 °C.
                brix_from_relative_density_20_4(value: RelativeDensity204) -> Brix = BRIX_FROM_RELATIVE_DENSITY_20_4;
                /// Relative density of a sucrose solution and water at 20 °C, both weighed in air.
                apparent_relative_density_20_20(brix: Brix)
                    -> ApparentRelativeDensity2020 = APPARENT_RELATIVE_DENSITY_20_20;
                /// °Brix of a sucrose solution from its relative density at 20 °C, weighed in air.
                brix_from_apparent_relative_density_20_20(value: ApparentRelativeDensity2020)
                    -> Brix = BRIX_FROM_APPARENT_RELATIVE_DENSITY_20_20;
            }
            membrane {
                /// Osmotic pressure of the NaCl water on which elements are rated.
                test_water_osmotic_pressure(salt: Concentration, temperature: Temperature)
                    -> Pressure = TEST_WATER_OSMOTIC_PRESSURE;
                /// Energy a pump draws.
                pump_energy(pressure: GaugePressure, feed: Flow, duration: Time, efficiency: Ratio)
                    -> Energy = PUMP_ENERGY;
            }
            finish {
                /// How much to fill hot so that the label's contents are there when cold.
                hot_fill(label: Volume, brix: Brix, fill_temperature: Temperature) -> Volume = HOT_FILL;
            }
            uncertainty {
                /// Standard uncertainty of an indication that is read to the nearest `step`.
                from_resolution(step: f64) -> f64 = FROM_RESOLUTION;
                /// Standard uncertainty of a value that lies within ± `half_width`, anywhere alike.
                from_limits(half_width: f64) -> f64 = FROM_LIMITS;
                /// How many standard deviations above the mean a normal value lies with `probability` below it.
                normal_quantile(probability: Ratio) -> f64 = NORMAL_QUANTILE;
                /// Probability that a normal value lies below `deviations` standard deviations above the mean.
                normal_probability(deviations: f64) -> Ratio = NORMAL_PROBABILITY;
                /// How many standard uncertainties above the mean a value of Student's distribution lies with `probability` below it.
                t_quantile(probability: Ratio, degrees_of_freedom: f64) -> f64 = T_QUANTILE;
                /// How many standard uncertainties to either side hold the truth with `coverage`.
                coverage_factor(coverage: Ratio, degrees_of_freedom: f64) -> f64 = COVERAGE_FACTOR;
                /// How far above a minimum to aim, so that the truth meets it with `confidence`.
                guard_band(uncertainty: f64, confidence: Ratio) -> f64 = GUARD_BAND;
            }
        }
    };
}

macro_rules! rows {
    ($($module:ident { $(
        $(#[doc = $doc:literal])+
        $name:ident($($argument:ident: $type:ident),+) -> $result:ident = $relation:ident
            $(, $kernel:ident)? $(=> $lanes:ident)?;
    )+ })+) => {
        // Each row fits its function, or this line says which does not.
        $($( const _: fn($($type),+) -> Result<$result, crate::Error> = crate::$module::$name; )+)+

        #[doc(hidden)]
        pub mod rows { $(
            pub mod $module { $(
                pub mod $name {
                    use super::super::super::*;

                    pub static ROW: Function = Function {
                        module: stringify!($module),
                        name: stringify!($name),
                        summary: concat!($($doc),+).trim_ascii(),
                        arguments: &[$( Argument { name: stringify!($argument), kind: kind!($type) } ),+],
                        result: <$result as Value>::DIMENSION,
                        relation: &crate::$module::$relation,
                        call: |si| {
                            let [$($argument),+] = *si else {
                                return Err(arity(&ROW, si.len()));
                            };
                            one!(crate::$module::$name, $($argument: $type),+)
                        },
                        lanes: |si, out| {
                            let [$($argument),+] = *si else {
                                return out.len();
                            };
                            $( let $argument = &$argument[..out.len()]; )+
                            fast!([$($kernel)? $(=> $lanes)?] $module, si, out, $($argument),+);
                            let mut refused = 0;
                            for i in 0..out.len() {
                                again!([$($lanes)?] out[i]);
                                $( let $argument = $argument[i]; )+
                                out[i] = one!(crate::$module::$name, $($argument: $type),+).unwrap_or_else(|_| {
                                    refused += 1;
                                    f64::NAN
                                });
                            }
                            refused
                        },
                    };
                }
            )+ }
        )+ }

        pub(super) static FUNCTIONS: &[&Function] = &[$($( &rows::$module::$name::ROW, )+)+];
    };
}

macro_rules! kind {
    (StationPressure) => {
        Kind::Station
    };
    ($type:ident) => {
        Kind::Quantity(<$type as Value>::DIMENSION)
    };
}

/// The public function, of numbers in SI.
macro_rules! one {
    ($function:path, $($argument:ident: $type:ident),+) => {
        (|| {
            $( let $argument = taken::<$type>(&ROW, stringify!($argument), $argument)?; )+
            $function($($argument),+).map(Value::si)
        })()
    };
}

/// Every lane within the limits: a loop without a branch.
macro_rules! fast {
    ([] $($rest:tt)*) => {};
    ([$kernel:ident] $module:ident, $si:ident, $out:ident, $($argument:ident),+) => {
        widest! {
            fn each($($argument: &[f64],)+ out: &mut [f64]) {
                $( let $argument = &$argument[..out.len()]; )+
                for i in 0..out.len() {
                    out[i] = crate::$module::$kernel($($argument[i]),+);
                }
            }
        }
        if fits(ROW.relation, $si, $out.len()) {
            each($($argument,)+ $out);
            return 0;
        }
    };
    ([=> $lanes:ident] $module:ident, $si:ident, $out:ident, $($argument:ident),+) => {
        if fits(ROW.relation, $si, $out.len()) {
            crate::$module::$lanes($($argument,)+ $out);
        } else {
            $out.fill(f64::NAN);
        }
    };
}

/// Passes over what the function of columns has answered already.
macro_rules! again {
    ([] $lane:expr) => {};
    ([$lanes:ident] $lane:expr) => {
        if !$lane.is_nan() {
            continue;
        }
    };
}

surface!(rows);

#[cfg(test)]
mod tests {
    use crate::{
        catalogue::{Kind, functions},
        error::ErrorKind,
        units::Dimension,
    };
    use alloc::{format, vec, vec::Vec};
    use proptest::prelude::*;

    #[test]
    fn rows_and_relations_name_the_same_arguments() {
        for function in functions() {
            let named: Vec<_> = function.relation.inputs.iter().map(|range| range.argument).collect();
            let taken: Vec<_> = function.arguments.iter().map(|argument| argument.name).collect();
            assert_eq!(taken, named, "{function:?}");
            assert_eq!(
                function.relation.name,
                format!("{}::{}", function.module, function.name)
            );
            assert_eq!(function.relation.output.dimension, function.result, "{function:?}");
            for (argument, range) in function.arguments.iter().zip(function.relation.inputs) {
                assert_eq!(argument.kind.dimension(), range.unit.dimension, "{function:?}");
            }
        }
    }

    #[test]
    fn a_brix_is_refused_by_the_limits_of_the_function() {
        let density = &super::rows::sucrose::density::ROW;
        let error = density.value(&[120.0, 293.15]).unwrap_err();
        assert_eq!(error.to_string(), "brix = 120 °Bx is outside 0 to 85 °Bx");
        let error = density.value(&[66.9]).unwrap_err();
        assert_eq!((error.kind(), error.argument()), (ErrorKind::Missing, "temperature"));
        assert_eq!(density.arguments[0].kind, Kind::Quantity(Dimension::Brix));
    }

    #[test]
    fn columns_of_the_wrong_shape_are_refused_as_a_whole() {
        let density = &super::rows::sucrose::density::ROW;
        let mut out = [0.0; 3];
        assert_eq!(density.block(&[&[1.0; 3], &[290.0; 2]], &mut out), 3);
        assert!(out.iter().all(|x| x.is_nan()));
        assert_eq!(density.block(&[&[1.0; 3]], &mut out), 3);
        assert_eq!(density.block(&[&[1.0; 3], &[290.0; 4]], &mut out), 0);
    }

    /// Whole blocks, parts of one, none: each lane has the bits of its value, with the widest instructions there are.
    #[test]
    fn columns_of_every_length_have_the_bits_of_their_values() {
        for function in functions() {
            let ranges = function.relation.inputs;
            let mut columns = vec![Vec::new(); ranges.len()];
            for lane in 0..200_u32 {
                for ((index, range), column) in (0_u32..).zip(ranges).zip(&mut columns) {
                    let (low, high) = range.limits_si();
                    // Both limits at either end of the columns, and steps that no other argument takes.
                    let share = match (lane / 2_u32.pow(index)) % 2 {
                        end if lane < 16 => f64::from(end),
                        _ => (f64::from(lane * (2 * index + 7)) / 199.0).fract(),
                    };
                    column.push(low + share * (high - low));
                }
            }
            let values: Vec<f64> = (0..200)
                .map(|lane| {
                    let si: Vec<f64> = columns.iter().map(|column| column[lane]).collect();
                    function.value(&si).unwrap_or(f64::NAN)
                })
                .collect();
            for length in 0..=200 {
                let slices: Vec<&[f64]> = columns.iter().map(|column| &column[..length]).collect();
                let mut out = vec![0.0; length];
                let refused = function.block(&slices, &mut out);
                let missing = values[..length].iter().filter(|x| x.is_nan()).count();
                assert_eq!(refused, missing, "{function:?} {length}");
                for (lane, (a, b)) in out.iter().zip(&values).enumerate() {
                    assert_eq!(a.to_bits(), b.to_bits(), "{function:?} {length} {lane}");
                }
            }
        }
    }

    proptest! {
        /// In range, at a limit, outside, not finite: the lanes of a block are the values.
        #[test]
        fn a_block_has_the_bits_of_its_values(
            row in 0..functions().len(),
            lanes in prop::collection::vec(prop::array::uniform4(-0.05..1.05_f64), 1..9),
            odd in prop::option::of((0_usize..9, 0_usize..4, any::<f64>())),
        ) {
            let function = functions()[row];
            let mut columns = vec![Vec::new(); function.arguments.len()];
            for (lane, shares) in lanes.iter().enumerate() {
                for (index, range) in function.relation.inputs.iter().enumerate() {
                    let (low, high) = range.limits_si();
                    let inside = low + shares[index].clamp(0.0, 1.0) * (high - low);
                    let share = if lane % 2 == 0 { inside } else { low + shares[index] * (high - low) };
                    columns[index].push(match odd {
                        Some((at, of, x)) if at == lane && of == index => x,
                        _ => share,
                    });
                }
            }
            let slices: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
            let mut out = vec![0.0; lanes.len()];
            let refused = function.block(&slices, &mut out);
            let values: Vec<f64> = (0..lanes.len())
                .map(|lane| {
                    let si: Vec<f64> = columns.iter().map(|column| column[lane]).collect();
                    function.value(&si).unwrap_or(f64::NAN)
                })
                .collect();
            prop_assert_eq!(refused, values.iter().filter(|x| x.is_nan()).count());
            for (a, b) in out.iter().zip(&values) {
                prop_assert_eq!(a.to_bits(), b.to_bits());
            }
        }
    }
}
