// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

export { finishingPoint, legal, type FinishingPoint, type Legality } from "../finishing.js";

/**
 * How much to fill hot so that the label's contents are there when cold.
 *
 * Source: ratio of the densities of sucrose solutions.
 *
 * @param label 1 to 1000000000 mL
 * @param brix 50 to 85 °Bx
 * @param options.fill_temperature 20 to 100 °C
 * @returns In mL; accuracy: 0.12 % above 55 °C, as the density
 * @throws SugaringError
 */
export function hotFill(label: Taken<"volume">, brix: Plain<"brix">, options: { fill_temperature: Taken<"temperature">; on_error?: "nan" }): Quantity<"volume">;
export function hotFill(label: TakenColumn<"volume">, brix: PlainColumn<"brix">, options: { fill_temperature: TakenColumn<"temperature">; on_error?: "nan" }): Quantity<"volume", Float64Array>;
