import type { Options, Plain, PlainColumn, Quantity, Taken, TakenColumn, Word } from "./quantity.js";

/** The density scales, by the words that make and read them. */
export type DensityScale =
  | "baume_20_20"
  | "baume_60_60_f"
  | "relative_density_20_20"
  | "relative_density_60_60_f"
  | "relative_density_20_4"
  | "apparent_relative_density_20_20";

/**
 * Where a sucrose solution stands on a density scale, `onScale(66.9, baume_20_20)`. The temperatures of solution and
 * water are part of the scale's word; syrup standards print the pairs of `baume_20_20`.
 *
 * @param brix 0 to 85 °Bx
 * @param scale the word of a density scale
 * @returns On that scale.
 *
 * @throws SugaringError
 */
export function onScale<S extends DensityScale>(brix: Plain<"brix">, scale: Word<S>, options?: Options): Quantity<S>;
export function onScale<S extends DensityScale>(
  brix: PlainColumn<"brix">,
  scale: Word<S>,
  options?: Options,
): Quantity<S, Float64Array>;

/**
 * °Brix of the sucrose solution that stands at `value` on a density scale: the inverse of `onScale`.
 *
 * @param value from the mark of water to that of 85 °Bx
 * @returns In °Bx.
 *
 * @throws SugaringError
 */
export function brixFromScale(value: Taken<DensityScale>, options?: Options): number;
export function brixFromScale(value: TakenColumn<DensityScale>, options?: Options): Float64Array;
