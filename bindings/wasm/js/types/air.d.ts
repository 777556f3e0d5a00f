// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

export { StationPressure, StationPressures } from "../station_pressure.js";

/**
 * Pressure of the standard atmosphere at a geometric `altitude`.
 *
 * Source: U.S. Standard Atmosphere 1976, geometric altitude to geopotential, lowest layer.
 *
 * @param altitude -500 to 11000 m
 * @returns In kPa; accuracy: 2 kPa of the real pressure, the weather
 * @throws SugaringError
 */
export function pressureAtAltitude(altitude: Taken<"length">, options?: Options): Quantity<"pressure">;
export function pressureAtAltitude(altitude: TakenColumn<"length">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * Geometric altitude at which the standard atmosphere has `pressure`: the inverse of `pressure_at_altitude`.
 *
 * Source: U.S. Standard Atmosphere 1976, geometric altitude to geopotential, lowest layer.
 *
 * @param pressure 22.6985 to 107.4781 kPa
 * @returns In m; accuracy: 170 m of the real altitude, the weather
 * @throws SugaringError
 */
export function altitudeAtPressure(pressure: Taken<"pressure">, options?: Options): Quantity<"length">;
export function altitudeAtPressure(pressure: TakenColumn<"pressure">, options?: Options): Quantity<"length", Float64Array>;

/**
 * Altimeter setting that an airport or a home weather station at `altitude` reports under this station pressure: to compare with a report.
 *
 * Source: Smithsonian Meteorological Tables, constants of the U.S. Standard Atmosphere 1976, altimeter setting.
 *
 * @param station 50 to 110 kPa
 * @param altitude -500 to 5000 m
 * @returns In kPa; accuracy: 0.1 kPa, and 0.012 kPa for each metre of error in the altitude
 * @throws SugaringError
 */
export function altimeterSetting(station: Station, altitude: Taken<"length">, options?: Options): Quantity<"pressure">;
export function altimeterSetting(station: StationColumn, altitude: TakenColumn<"length">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * Mean sea level pressure that a weather map shows where this is the station pressure.
 *
 * Source: hydrostatic equation of dry air with the lapse rate of the U.S. Standard Atmosphere 1976.
 *
 * @param station 50 to 110 kPa
 * @param altitude -500 to 5000 m
 * @param options.air_temperature -50 to 50 °C
 * @returns In kPa; accuracy: 0.2 kPa
 * @throws SugaringError
 */
export function seaLevelPressure(station: Station, altitude: Taken<"length">, options: { air_temperature: Taken<"temperature">; on_error?: "nan" }): Quantity<"pressure">;
export function seaLevelPressure(station: StationColumn, altitude: TakenColumn<"length">, options: { air_temperature: TakenColumn<"temperature">; on_error?: "nan" }): Quantity<"pressure", Float64Array>;
