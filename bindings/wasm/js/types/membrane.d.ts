// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

/**
 * Osmotic pressure of the NaCl water on which elements are rated.
 *
 * Source: common practice, no source.
 *
 * @param salt 0 to 35000 mg/L
 * @param temperature 0 to 40 °C
 * @returns In kPa; accuracy: low by 5 % at 250 mg/L, 4 % at 500, 2 % at 2000 (Pitzer, computed)
 * @throws SugaringError
 */
export function testWaterOsmoticPressure(salt: Taken<"concentration">, temperature: Taken<"temperature">, options?: Options): Quantity<"pressure">;
export function testWaterOsmoticPressure(salt: TakenColumn<"concentration">, temperature: TakenColumn<"temperature">, options?: Options): Quantity<"pressure", Float64Array>;

/**
 * Energy a pump draws.
 *
 * Source: definition of hydraulic work.
 *
 * @param pressure 0 to 70 bar gauge
 * @param feed 0 to 1000000 L/h
 * @param options.duration 0 to 10000 h
 * @param options.efficiency 0.05 to 1.0
 * @returns In kWh; accuracy: as the efficiency
 * @throws SugaringError
 */
export function pumpEnergy(pressure: Taken<"gauge_pressure">, feed: Taken<"flow">, options: { duration: Taken<"time">; efficiency: Plain<"ratio">; on_error?: "nan" }): Quantity<"energy">;
export function pumpEnergy(pressure: TakenColumn<"gauge_pressure">, feed: TakenColumn<"flow">, options: { duration: TakenColumn<"time">; efficiency: PlainColumn<"ratio">; on_error?: "nan" }): Quantity<"energy", Float64Array>;
