import type { ErrorKind } from "./error.js";
import type { Dimension } from "./quantity.js";

/** Limits of an argument, in the unit people read. */
export interface Limits {
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

/** A function of numbers, with what it covers. */
export interface FunctionRow {
  readonly module: string;
  readonly name: string;
  /** Its name in JavaScript. */
  readonly jsName: string;
  readonly summary: string;
  readonly arguments: readonly (Limits & { readonly name: string; readonly kind: Dimension | "station_pressure" })[];
  readonly result: Dimension;
  readonly unit: string;
  readonly source: string;
  readonly accuracy: string;
}

/** What a function covers. */
export interface Relation {
  readonly name: string;
  readonly inputs: readonly (Limits & { readonly argument: string })[];
  readonly output: string;
  readonly source: string;
  readonly accuracy: string;
}

/** A unit as data. */
export interface UnitRow {
  readonly word: string;
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly aliases: readonly string[];
  readonly definition: string;
  /** zero, times, over and offset of (x - zero) * times / over + offset, the number in SI. */
  readonly numbers: readonly [number, number, number, number];
}

/** The functions of numbers. */
export declare function functions(): readonly FunctionRow[];
/** What each of the functions covers. */
export declare function relations(): readonly Relation[];
/** Every unit. */
export declare function units(): readonly UnitRow[];
/** Every kind of error. */
export declare function errorKinds(): readonly ErrorKind[];
/** The version of the results: the same inputs give the same bits under the same version. */
export declare function numbers(): string;
/** The JSON Schema of the inputs or the plan of a day. */
export declare function schema(name: "day_inputs" | "day_plan"): Promise<Record<string, unknown>>;
