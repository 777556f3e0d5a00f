// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

/**
 * Absolute pressure at which water of `temperature` boils.
 *
 * Source: IAPWS R7-97(2012), equation 30, table 34.
 *
 * @param temperature 0 to 373.946 °C
 * @returns In kPa; accuracy: 0.02 % of IAPWS-95; 0.0076 % from 0 to 130 °C
 * @throws SugaringError
 */
export function saturationPressure(temperature: Taken<"temperature">, options?: Options): Quantity<"pressure">;
export function saturationPressure(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * Temperature at which water boils under the absolute `pressure`: the inverse of `saturation_pressure`.
 *
 * Source: IAPWS R7-97(2012), equation 31, table 34.
 *
 * @param pressure 0.6112126 to 22064.001 kPa
 * @returns In °C; accuracy: 0.00023 K from 60 to 110 kPa
 * @throws SugaringError
 */
export function saturationTemperature(pressure: Taken<"pressure">, options?: Options): Quantity<"temperature">;
export function saturationTemperature(pressure: TakenColumn<"pressure">, options?: Options): Quantity<"temperature", Float64Array>;

/**
 * Heat that turns boiling water of `temperature` into steam of the same temperature.
 *
 * Source: IAPWS SR1-86(1992), equations 1 to 7.
 *
 * @param temperature 0.01 to 373.946 °C
 * @returns In kJ/kg; accuracy: 0.38 kJ/kg of IAPWS-95 at 0 °C, 0.22 kJ/kg from 25 to 130 °C
 * @throws SugaringError
 */
export function latentHeat(temperature: Taken<"temperature">, options?: Options): Quantity<"energy_per_mass">;
export function latentHeat(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"energy_per_mass", Float64Array>;

/**
 * Density of boiling water.
 *
 * Source: IAPWS SR1-86(1992), equation 2.
 *
 * @param temperature 0.01 to 373.946 °C
 * @returns In kg/m³; accuracy: as the release states
 * @throws SugaringError
 */
export function saturatedLiquidDensity(temperature: Taken<"temperature">, options?: Options): Quantity<"density">;
export function saturatedLiquidDensity(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"density", Float64Array>;

/**
 * Density of the steam over boiling water.
 *
 * Source: IAPWS SR1-86(1992), equation 3.
 *
 * @param temperature 0.01 to 373.946 °C
 * @returns In kg/m³; accuracy: as the release states
 * @throws SugaringError
 */
export function saturatedVapourDensity(temperature: Taken<"temperature">, options?: Options): Quantity<"density">;
export function saturatedVapourDensity(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"density", Float64Array>;

/**
 * Density of liquid water.
 *
 * Source: IAPWS SR6-08(2011), equation 2, tables 1 and 2.
 *
 * @param temperature -20 to 110 °C
 * @returns In kg/m³; accuracy: 1 ppm from 0 to 40 °C, 0.003 % near 100 °C (release, from memory)
 * @throws SugaringError
 */
export function density(temperature: Taken<"temperature">, options?: Options): Quantity<"density">;
export function density(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"density", Float64Array>;

/**
 * Specific heat of liquid water.
 *
 * Source: IAPWS SR6-08(2011), equation 1, tables 1 and 2.
 *
 * @param temperature -20 to 110 °C
 * @returns In kJ/(kg K); accuracy: 0.1 % (release, from memory)
 * @throws SugaringError
 */
export function specificHeat(temperature: Taken<"temperature">, options?: Options): Quantity<"specific_heat">;
export function specificHeat(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"specific_heat", Float64Array>;

/**
 * Heat that warms liquid water from 0 °C to `temperature`; negative below.
 *
 * Source: IAPWS SR6-08(2011), equation 1, tables 1 and 2.
 *
 * @param temperature -20 to 110 °C
 * @returns In kJ/kg; accuracy: 0.1 %, as the specific heat it integrates
 * @throws SugaringError
 */
export function enthalpy(temperature: Taken<"temperature">, options?: Options): Quantity<"energy_per_mass">;
export function enthalpy(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"energy_per_mass", Float64Array>;

/**
 * Viscosity of liquid water.
 *
 * Source: IAPWS SR6-08(2011), equation 7, table 3.
 *
 * @param temperature -20 to 110 °C
 * @returns In mPa·s; accuracy: 1 %, 0.17 % from 20 to 25 °C (release, from memory)
 * @throws SugaringError
 */
export function viscosity(temperature: Taken<"temperature">, options?: Options): Quantity<"viscosity">;
export function viscosity(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"viscosity", Float64Array>;

/**
 * Thermal conductivity of liquid water.
 *
 * Source: IAPWS SR6-08(2011), equation 8, table 3.
 *
 * @param temperature -20 to 110 °C
 * @returns In W/(m K); accuracy: 1.5 % (release, from memory)
 * @throws SugaringError
 */
export function thermalConductivity(temperature: Taken<"temperature">, options?: Options): Quantity<"conductivity">;
export function thermalConductivity(temperature: TakenColumn<"temperature">, options?: Options): Quantity<"conductivity", Float64Array>;
