// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

export { brixFromScale, onScale } from "../scale.js";

/**
 * True density of a sucrose solution.
 *
 * Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.
 *
 * @param brix 0 to 85 °Bx
 * @param temperature 0 to 100 °C
 * @returns In kg/m³; accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C
 * @throws SugaringError
 */
export function density(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"density">;
export function density(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"density", Float64Array>;

/**
 * °Brix of a sucrose solution of true `density` at `temperature`: the inverse of `density`.
 *
 * Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.
 *
 * @param density 950 to 1460 kg/m³
 * @param temperature 0 to 100 °C
 * @returns In °Bx; accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C
 * @throws SugaringError
 */
export function brixFromDensity(density: Taken<"density">, temperature: Taken<"temperature">, options?: Options): number;
export function brixFromDensity(density: TakenColumn<"density">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Dissolved sugar per volume of solution.
 *
 * Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.
 *
 * @param brix 0 to 85 °Bx
 * @param temperature 0 to 100 °C
 * @returns In g/L; accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C
 * @throws SugaringError
 */
export function sugarPerVolume(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"concentration">;
export function sugarPerVolume(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"concentration", Float64Array>;

/**
 * What a scale shows of a volume of the solution, weighed in air.
 *
 * Source: density of ICUMSA SPS-4, weighed in air of 1.2 kg/m³ with brass of 8400 kg/m³ as NBS Circular 440 does.
 *
 * @param brix 0 to 85 °Bx
 * @param temperature 0 to 100 °C
 * @returns In kg/m³; accuracy: 10 to 30 °C: 0.1 kg/m³ to 35 °Bx, 0.4 to 78 °Bx, 0.9 to 85 °Bx; 0.25 at best from 0 to 10 and 30 to 55 °C; 1.5 above 55 °C
 * @throws SugaringError
 */
export function weightInAir(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"density">;
export function weightInAir(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"density", Float64Array>;

/**
 * Refractive index of a sucrose solution for yellow sodium light, against air.
 *
 * Source: Lorentz and Lorenz mixing on the density; sucrose by least squares to OIV-MA-AS2-02 Tables I and II and to the ICUMSA table (from memory), water by IAPWS R9-97.
 *
 * @param brix 0 to 85 °Bx
 * @param temperature 5 to 60 °C
 * @returns A number; accuracy: at 20 °C 0.00001 to 30 °Bx, 0.00003 to 75 °Bx; the correction for temperature 0.02 °Bx from 10 to 17 °C, 0.05 °Bx elsewhere to 40 °C; not checked above
 * @throws SugaringError
 */
export function refractiveIndex(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): number;
export function refractiveIndex(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * °Brix of the sucrose solution of this refractive `index` at `temperature`: the inverse of `refractive_index`.
 *
 * Source: Lorentz and Lorenz mixing on the density; sucrose by least squares to OIV-MA-AS2-02 Tables I and II and to the ICUMSA table (from memory), water by IAPWS R9-97.
 *
 * @param index 1.32 to 1.51
 * @param temperature 5 to 60 °C
 * @returns In °Bx; accuracy: at 20 °C 0.00001 to 30 °Bx, 0.00003 to 75 °Bx; the correction for temperature 0.02 °Bx from 10 to 17 °C, 0.05 °Bx elsewhere to 40 °C; not checked above
 * @throws SugaringError
 */
export function brixFromRefractiveIndex(index: Plain<"ratio">, temperature: Taken<"temperature">, options?: Options): number;
export function brixFromRefractiveIndex(index: PlainColumn<"ratio">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Share of the hot volume that is gone when the solution has cooled.
 *
 * Source: ICUMSA SPS-4 in Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), p. 164.
 *
 * @param brix 0 to 85 °Bx
 * @param hot 0 to 100 °C
 * @param options.cold 0 to 100 °C
 * @returns In %; accuracy: 0.12 % of the volume above 55 °C
 * @throws SugaringError
 */
export function contraction(brix: Plain<"brix">, hot: Taken<"temperature">, options: { cold: Taken<"temperature">; on_error?: "nan" }): number;
export function contraction(brix: PlainColumn<"brix">, hot: TakenColumn<"temperature">, options: { cold: TakenColumn<"temperature">; on_error?: "nan" }): Float64Array;

/**
 * Specific heat of a sucrose solution, anchored on water's own.
 *
 * Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.
 *
 * @param brix 0 to 80 °Bx
 * @param temperature 0 to 110 °C
 * @returns In kJ/(kg K); accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C
 * @throws SugaringError
 */
export function specificHeat(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"specific_heat">;
export function specificHeat(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"specific_heat", Float64Array>;

/**
 * Specific heat of a sucrose solution as Bubnik prints it, with 4.1868 kJ/(kg K) for water.
 *
 * Source: Bubnik, Kadlec, Urban, Bruhns, Sugar Technologists Manual (1995), specific heat of sucrose solutions.
 *
 * @param brix 0 to 80 °Bx
 * @param temperature 0 to 110 °C
 * @returns In kJ/(kg K); accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C
 * @throws SugaringError
 */
export function specificHeatBubnik(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"specific_heat">;
export function specificHeatBubnik(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"specific_heat", Float64Array>;

/**
 * Heat that warms a sucrose solution from 0 °C to `temperature`, its strength unchanged.
 *
 * Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.
 *
 * @param brix 0 to 80 °Bx
 * @param temperature 0 to 110 °C
 * @returns In kJ/kg; accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C
 * @throws SugaringError
 */
export function enthalpy(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"energy_per_mass">;
export function enthalpy(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"energy_per_mass", Float64Array>;

/**
 * Heat that takes a sucrose solution from one temperature to another, its strength unchanged; negative on cooling.
 *
 * Source: Bubnik, Kadlec, Urban, Bruhns (1995), with the water of IAPWS SR6-08(2011) in place of 4.1868.
 *
 * @param brix 0 to 80 °Bx
 * @param from_temperature 0 to 110 °C
 * @param options.to_temperature 0 to 110 °C
 * @returns In kJ/kg; accuracy: 1 % to 20 °Bx, 3 % at 40 °Bx, 6 % at 67 °Bx below 50 °C, 12 % at 67 °Bx and 100 °C
 * @throws SugaringError
 */
export function heatToWarm(brix: Plain<"brix">, from_temperature: Taken<"temperature">, options: { to_temperature: Taken<"temperature">; on_error?: "nan" }): Quantity<"energy_per_mass">;
export function heatToWarm(brix: PlainColumn<"brix">, from_temperature: TakenColumn<"temperature">, options: { to_temperature: TakenColumn<"temperature">; on_error?: "nan" }): Quantity<"energy_per_mass", Float64Array>;

/**
 * Viscosity of a sucrose solution.
 *
 * Source: least squares to CRC Handbook rows at 20 °C, Bingham and Jackson 1918, Supplement to NBS Circular 440 (1958), on the water of IAPWS SR6-08(2011).
 *
 * @param brix 0 to 75 °Bx
 * @param temperature 0 to 100 °C
 * @returns In mPa·s; accuracy: 0.35 % at 20 °C, 3 % elsewhere to 70 °Bx, 8 % to 75 °Bx
 * @throws SugaringError
 */
export function viscosity(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"viscosity">;
export function viscosity(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"viscosity", Float64Array>;

/**
 * Viscosity of syrup by the published form of Génotelle.
 *
 * Source: Mathlouthi and Génotelle 1995, viscosity of pure sucrose solutions.
 *
 * @param brix 55 to 75 °Bx
 * @param temperature 20 to 40 °C
 * @returns In mPa·s; accuracy: 2.5 %
 * @throws SugaringError
 */
export function viscosityGenotelle(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"viscosity">;
export function viscosityGenotelle(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"viscosity", Float64Array>;

/**
 * Thermal conductivity of a sucrose solution.
 *
 * Source: Llano 2005, as a public module cites it, liquor properties.
 *
 * @param brix 0 to 70 °Bx
 * @param temperature 0 to 80 °C
 * @returns In W/(m K); accuracy: 1.5 %
 * @throws SugaringError
 */
export function thermalConductivity(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"conductivity">;
export function thermalConductivity(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"conductivity", Float64Array>;

/**
 * °Brix of a solution saturated with sucrose.
 *
 * Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.
 *
 * @param temperature -13 to 100 °C
 * @returns In °Bx; accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation
 * @throws SugaringError
 */
export function solubility(temperature: Taken<"temperature">, options?: Options): number;
export function solubility(temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Temperature at which a sucrose solution is saturated: the inverse of `solubility`.
 *
 * Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.
 *
 * @param brix 63.653 to 82.65 °Bx
 * @returns In °C; accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation
 * @throws SugaringError
 */
export function saturationTemperature(brix: Plain<"brix">, options?: Options): Quantity<"temperature">;
export function saturationTemperature(brix: PlainColumn<"brix">, options?: Options): Quantity<"temperature", Float64Array>;

/**
 * Sucrose per water, over what saturation would hold at this temperature: above 1 crystals can grow.
 *
 * Source: Vavrinecz 1962 (name from memory), as printed by Bubnik and Kadlec 1995, solubility of sucrose in water.
 *
 * @param brix 0 to 85 °Bx
 * @param temperature -13 to 100 °C
 * @returns A number; accuracy: 0.15 °Bx to 80 °C, 0.3 °Bx above, of the strength at saturation
 * @throws SugaringError
 */
export function supersaturation(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): number;
export function supersaturation(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Water activity of a sucrose solution: the share of pure water's vapour pressure that it has.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 85 °Bx
 * @param temperature -15 to 132 °C
 * @returns A number; accuracy: 0.002 to 70 °Bx, 0.004 to 85 °Bx
 * @throws SugaringError
 */
export function waterActivity(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): number;
export function waterActivity(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Osmotic coefficient of a sucrose solution: how far its water activity lies from that of an ideal one.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 85 °Bx
 * @param temperature -15 to 132 °C
 * @returns A number; accuracy: at 25 °C: 0.006 to 2 mol/kg, 0.003 above
 * @throws SugaringError
 */
export function osmoticCoefficient(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): number;
export function osmoticCoefficient(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Osmotic pressure of a sucrose solution.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 60 °Bx
 * @param temperature 0 to 50 °C
 * @returns In bar; accuracy: 1 % to 30 °Bx, 2 % to 45 °Bx, 3.5 % to 60 °Bx, of the pressure
 * @throws SugaringError
 */
export function osmoticPressure(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"pressure">;
export function osmoticPressure(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * °Brix of the sucrose solution that has this osmotic `pressure`: the ceiling of a membrane. The inverse of `osmotic_pressure`.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param pressure 0 to 162 bar
 * @param temperature 0 to 50 °C
 * @returns In °Bx; accuracy: 1 % to 30 °Bx, 2 % to 45 °Bx, 3.5 % to 60 °Bx, of the pressure
 * @throws SugaringError
 */
export function brixFromOsmoticPressure(pressure: Taken<"pressure">, temperature: Taken<"temperature">, options?: Options): number;
export function brixFromOsmoticPressure(pressure: TakenColumn<"pressure">, temperature: TakenColumn<"temperature">, options?: Options): Float64Array;

/**
 * Temperature at which a sucrose solution boils under the `station` pressure.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 85 °Bx
 * @param station 50 to 110 kPa
 * @returns In °C; accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower)
 * @throws SugaringError
 */
export function boilingTemperature(brix: Plain<"brix">, station: Station, options?: Options): Quantity<"temperature">;
export function boilingTemperature(brix: PlainColumn<"brix">, station: StationColumn, options?: Options): Quantity<"temperature", Float64Array>;

/**
 * How far a sucrose solution boils above pure water at the same `station` pressure.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 85 °Bx
 * @param station 50 to 110 kPa
 * @returns In Δ°C; accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower)
 * @throws SugaringError
 */
export function boilingPointElevation(brix: Plain<"brix">, station: Station, options?: Options): Quantity<"temperature_difference">;
export function boilingPointElevation(brix: PlainColumn<"brix">, station: StationColumn, options?: Options): Quantity<"temperature_difference", Float64Array>;

/**
 * °Brix of the sucrose solution that boils at `temperature` under the `station` pressure: the inverse of `boiling_temperature`.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param temperature 60 to 132 °C
 * @param station 50 to 110 kPa
 * @returns In °Bx; accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower)
 * @throws SugaringError
 */
export function brixFromBoiling(temperature: Taken<"temperature">, station: Station, options?: Options): number;
export function brixFromBoiling(temperature: TakenColumn<"temperature">, station: StationColumn, options?: Options): Float64Array;

/**
 * Absolute pressure under which a sucrose solution boils at `temperature`.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 85 °Bx
 * @param temperature 60 to 132 °C
 * @returns In kPa; accuracy: the rise within 0.10 K to 70 °Bx, 0.15 K to 80 °Bx, 0.35 K to 85 °Bx (one source 1.0 K lower)
 * @throws SugaringError
 */
export function pressureFromBoiling(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"pressure">;
export function pressureFromBoiling(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * Heat that takes 1 kg of water as vapour out of a solution that boils already under the `station` pressure.
 *
 * Source: enthalpies of IAPWS SR1-86(1992) and the heat of dilution of the water activity.
 *
 * @param brix 0 to 85 °Bx
 * @param station 50 to 110 kPa
 * @returns In kJ/kg; accuracy: 0.3 kJ/kg of the water, 20 % of the heat of dilution (12.8 kJ/kg at 66.9 °Bx)
 * @throws SugaringError
 */
export function heatOfEvaporation(brix: Plain<"brix">, station: Station, options?: Options): Quantity<"energy_per_mass">;
export function heatOfEvaporation(brix: PlainColumn<"brix">, station: StationColumn, options?: Options): Quantity<"energy_per_mass", Float64Array>;

/**
 * Excess enthalpy of the water in a sucrose solution over pure water's, per mass of water: the heat of dilution, which is negative.
 *
 * Source: slope of the water activity with temperature, fitted to the heats of dilution of Gucker, Pickard and Planck 1939 (from memory).
 *
 * @param brix 0 to 85 °Bx
 * @param temperature -15 to 132 °C
 * @returns In kJ/kg; accuracy: 20 % to 2 mol/kg (40 °Bx); no data above
 * @throws SugaringError
 */
export function excessEnthalpyOfWater(brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): Quantity<"energy_per_mass">;
export function excessEnthalpyOfWater(brix: PlainColumn<"brix">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"energy_per_mass", Float64Array>;

/**
 * Temperature at which ice begins to form in a sucrose solution.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param brix 0 to 60 °Bx
 * @returns In °C; accuracy: 0.02 K to 15 °Bx, 0.05 K to 36 °Bx, 0.10 K to 57 °Bx
 * @throws SugaringError
 */
export function freezingTemperature(brix: Plain<"brix">, options?: Options): Quantity<"temperature">;
export function freezingTemperature(brix: PlainColumn<"brix">, options?: Options): Quantity<"temperature", Float64Array>;

/**
 * °Brix of the liquid that is left under ice at `temperature`: the inverse of `freezing_temperature`.
 *
 * Source: least squares of a Margules form to osmotic coefficients (Robinson and Stokes), freezing points (CRC, Pickering), heats of dilution (Gucker) and boiling points (Starzak and Peacock 1997).
 *
 * @param temperature -11.666 to 0 °C
 * @returns In °Bx; accuracy: 0.02 K to 15 °Bx, 0.05 K to 36 °Bx, 0.10 K to 57 °Bx
 * @throws SugaringError
 */
export function brixFromFreezing(temperature: Taken<"temperature">, options?: Options): number;
export function brixFromFreezing(temperature: TakenColumn<"temperature">, options?: Options): Float64Array;
