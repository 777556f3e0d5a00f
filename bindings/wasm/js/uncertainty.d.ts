import type { Data, Dimension, Plain, Quantity } from "./quantity.js";
import type { Station } from "./station_pressure.js";

/** What a difference of two such values is. */
type Difference = number | Quantity | Data<Dimension>;

/** How values spread about the one given; the uncertainty is a standard one in each. */
export type Distribution = "normal" | "rectangular" | "triangular" | "arcsine";

/** One input of a model: its value, its standard uncertainty, and what else is known of its spread. */
export interface Spread {
  readonly value: number | Quantity | Data<Dimension>;
  /** The unit of a value that is a number. */
  readonly unit?: string;
  /** In steps of the value's unit, or a quantity: of a temperature a difference. */
  readonly uncertainty?: Difference;
  /** What it is called among the contributions. */
  readonly name?: string;
  readonly distribution?: Distribution;
  /** Inputs of one cause move together: the same thermometer used twice. */
  readonly cause?: string;
  /** How well the uncertainty is known: of a mean of n readings n − 1. */
  readonly degrees_of_freedom?: number;
  /** Coefficients with other inputs, by their names. */
  readonly correlation?: { readonly [name: string]: number };
}

/** Inputs in order, or by name; numbers and quantities are known, a station pressure brings its uncertainty. */
export type Inputs =
  | readonly (number | Quantity | Spread | Station)[]
  | { readonly [name: string]: number | Quantity | Spread | Station };

/** A function of the inputs, which get what was given; a function of this library is called by its name. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type Model = (...inputs: any[]) => number | Quantity | Float64Array | Quantity<Dimension, Float64Array>;

/** The part that one input, or one shared cause, has in an uncertainty. */
export interface Contribution {
  /** Name of the input, or of the cause that several share. */
  readonly name: string;
  /** Change of the result with the input, in their units; not of a shared cause. */
  readonly sensitivity?: number;
  /** Effect of one standard uncertainty, with its sign. */
  readonly uncertainty: number | Quantity;
  /** Share of the variance; shares add up to 1, and beside a correlation one may be negative. */
  readonly share: number;
  /** Whether one of the two steps was refused, and the effect is that of the other. */
  readonly one_sided: boolean;
}

/** A result with its standard uncertainty to first order, and where that comes from; frozen. */
export interface Propagated {
  readonly value: number | Quantity;
  readonly uncertainty: number | Quantity;
  /** Effective degrees of freedom (Welch and Satterthwaite). */
  readonly degrees_of_freedom: number;
  /** The largest first. */
  readonly contributions: readonly Contribution[];
}

/** What many draws of a result show; frozen. */
export interface Sampled {
  /** Mean of the draws. */
  readonly value: number | Quantity;
  /** Their standard deviation. */
  readonly uncertainty: number | Quantity;
  /** The interval that leaves 2.5 % of the draws at either side. */
  readonly low: number | Quantity;
  readonly high: number | Quantity;
  /** The shortest interval that holds 95 % of the draws. */
  readonly shortest_low: number | Quantity;
  readonly shortest_high: number | Quantity;
  readonly median: number | Quantity;
  /** How many draws there were. */
  readonly samples: number;
  /** The draws, rising, in the unit of `value`; not enumerable, so that JSON leaves them out. */
  readonly values: Float64Array;
}

/** What several readings of one truth say together; frozen. */
export interface Combined {
  readonly value: number | Quantity;
  readonly uncertainty: number | Quantity;
  /** The largest difference of two readings, in its own standard uncertainty. */
  readonly z: number;
  /** Whether that is at most 2. */
  readonly agree: boolean;
}

/** A straight line y = a + b (x − x0), and how well it is known; frozen. */
export interface Line {
  readonly intercept: number;
  readonly slope: number;
  readonly covariance: readonly [readonly [number, number], readonly [number, number]];
  /** Standard deviation of the points about it. */
  readonly residual_deviation: number;
  readonly degrees_of_freedom: number;
  /** Where the intercept is its height. */
  readonly reference: number;
  /** The least and the greatest x of the points. */
  readonly low: number;
  readonly high: number;
}

/**
 * How uncertain inputs make the result of `model` uncertain, to first order, and how much each has a part in it. Near a
 * turning point first order is too small: there `monteCarlo` decides.
 *
 * @throws SugaringError
 */
export function propagate(model: Model, inputs: Inputs): Propagated;

/**
 * How uncertain inputs make the result of `model` uncertain, by drawing the inputs many times; the same seed gives the
 * same bits in every language.
 *
 * @param options.seed a whole number from 0 on
 * @param options.samples how many draws; or until so many digits of the uncertainty, or the ends of the interval, are sure
 * @param options.progress called with the share done, 0 to 1; false stops the work
 * @throws SugaringError
 */
export function monteCarlo(
  model: Model,
  inputs: Inputs,
  options: {
    seed: number;
    samples: number | { readonly digits: number } | { readonly until: number };
    progress?: (share: number) => boolean | void;
  },
): Sampled;

/** Two or more readings of one truth as one, weighted by the inverse square of their uncertainties. @throws SugaringError */
export function combine(readings: readonly Spread[]): Combined;

/** The straight line through points by least squares. @throws SugaringError */
export function lineFit(x: readonly number[] | Float64Array, y: readonly number[] | Float64Array, options: { x0: number }): Line;

/** The probability that a measured truth is no less than `minimum`. @throws SugaringError */
export function probabilityAtLeast(value: Spread, minimum: Plain<"brix"> | Quantity): number;

export declare const Propagated: {
  /** How many standard uncertainties to either side hold the truth with `coverage`. */
  coverageFactor(propagated: Propagated, coverage: number): number;
  /** The interval that holds the truth with `coverage`. */
  interval(propagated: Propagated, coverage: number): { readonly low: number | Quantity; readonly high: number | Quantity };
};

export declare const Sampled: {
  /** The interval that holds the truth with `coverage` and leaves as much below as above. */
  interval(sampled: Sampled, coverage: number): { readonly low: number | Quantity; readonly high: number | Quantity };
  /** The shortest interval that holds the truth with `coverage`. */
  shortest(sampled: Sampled, coverage: number): { readonly low: number | Quantity; readonly high: number | Quantity };
  /** Share of the draws that are no less than `limit`. */
  probabilityAtLeast(sampled: Sampled, limit: number | Quantity): number;
};

export declare const Line: {
  /** Its height at `x`, with the standard uncertainty that intercept and slope make together. */
  at(line: Line, x: number): { readonly value: number; readonly uncertainty: number };
  /** Correlation of intercept and slope. */
  correlation(line: Line): number;
};
