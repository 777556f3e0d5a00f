// Written by `cargo xtask surface`.

import type { Column, Options, Plain, PlainColumn, Quantity, Taken, TakenColumn } from "../quantity.js";
import type { Station, StationColumn } from "../station_pressure.js";

export * from "../uncertainty.js";

/**
 * Standard uncertainty of an indication that is read to the nearest `step`.
 *
 * Source: JCGM 100:2008, F.2.2.1.
 *
 * @param step 0 to 1e300
 * @returns A number; accuracy: exact for readings that fall anywhere within the step
 * @throws SugaringError
 */
export function fromResolution(step: Plain<"ratio">, options?: Options): number;
export function fromResolution(step: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * Standard uncertainty of a value that lies within ± `half_width`, anywhere alike.
 *
 * Source: JCGM 100:2008, 4.3.7, equation 7.
 *
 * @param half_width 0 to 1e300
 * @returns A number; accuracy: exact for a rectangular distribution
 * @throws SugaringError
 */
export function fromLimits(half_width: Plain<"ratio">, options?: Options): number;
export function fromLimits(half_width: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * How many standard deviations above the mean a normal value lies with `probability` below it.
 *
 * Source: Wichura 1988, Algorithm AS 241, Applied Statistics 37, 477-484, routine PPND16.
 *
 * @param probability 1e-300 to 0.999999999999999
 * @returns A number; accuracy: 1 part in 1e15
 * @throws SugaringError
 */
export function normalQuantile(probability: Plain<"ratio">, options?: Options): number;
export function normalQuantile(probability: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * Probability that a normal value lies below `deviations` standard deviations above the mean.
 *
 * Source: NIST Digital Library of Mathematical Functions, 7.17.
 *
 * @param deviations -1e300 to 1e300
 * @returns A number; accuracy: 1 part in 1e14
 * @throws SugaringError
 */
export function normalProbability(deviations: Plain<"ratio">, options?: Options): number;
export function normalProbability(deviations: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * How many standard uncertainties above the mean a value of Student's distribution lies with `probability` below it.
 *
 * Source: JCGM 100:2008, G.3, table G.2.
 *
 * @param probability 1e-300 to 0.999999999999999
 * @param degrees_of_freedom 1 to 1000000.0
 * @returns A number; accuracy: 1 part in 1e12
 * @throws SugaringError
 */
export function tQuantile(probability: Plain<"ratio">, degrees_of_freedom: Plain<"ratio">, options?: Options): number;
export function tQuantile(probability: PlainColumn<"ratio">, degrees_of_freedom: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * How many standard uncertainties to either side hold the truth with `coverage`.
 *
 * Source: JCGM 100:2008, G.3.2, G.4.1 note 1.
 *
 * @param coverage 0.0001 to 0.9999
 * @param degrees_of_freedom 1 to 1e300
 * @returns A number; accuracy: 1 part in 1e12
 * @throws SugaringError
 */
export function coverageFactor(coverage: Plain<"ratio">, degrees_of_freedom: Plain<"ratio">, options?: Options): number;
export function coverageFactor(coverage: PlainColumn<"ratio">, degrees_of_freedom: PlainColumn<"ratio">, options?: Options): Float64Array;

/**
 * How far above a minimum to aim, so that the truth meets it with `confidence`.
 *
 * Source: JCGM 106:2012, 8.3.2.
 *
 * @param uncertainty 0 to 1e300
 * @param confidence 0.5 to 0.999999999999999
 * @returns A number; accuracy: 1 part in 1e15, for a normal distribution
 * @throws SugaringError
 */
export function guardBand(uncertainty: Plain<"ratio">, confidence: Plain<"ratio">, options?: Options): number;
export function guardBand(uncertainty: PlainColumn<"ratio">, confidence: PlainColumn<"ratio">, options?: Options): Float64Array;
