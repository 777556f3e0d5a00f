import type { Dimension, Symbols } from "./words.js";

export type { Dimension, Symbols };

/** Numbers in a row: an array, or a typed array. */
export type Column =
  | readonly number[]
  | Float64Array
  | Float32Array
  | Int8Array
  | Uint8Array
  | Uint8ClampedArray
  | Int16Array
  | Uint16Array
  | Int32Array
  | Uint32Array;

/** A number, or a column of them, with its unit; frozen. */
export declare class Quantity<D extends Dimension = Dimension, V extends number | Column = number> {
  private constructor();
  /** The number in `unit`. */
  readonly value: V;
  /** The symbol of the unit. */
  readonly unit: Symbols[D];
  /** The number in another unit of the same dimension. */
  to(word: Word<D>): V;
  /** The shortest digits that read back, and the symbol. */
  toString(): string;
  toJSON(): { value: V extends number ? number : number[]; unit: Symbols[D] };
  /** Text is given; a number would drop the unit and is refused. */
  [Symbol.toPrimitive](hint: string): string;
}

/** A unit word: makes quantities and reads them. */
export interface Word<D extends Dimension> {
  (value: number): Quantity<D>;
  <V extends Column>(value: V): Quantity<D, V>;
  readonly symbol: Symbols[D];
  readonly dimension: D;
}

/** A quantity as plain data, as JSON and workers hand it on. */
export interface Data<D extends Dimension> {
  readonly value: number;
  readonly unit: Symbols[D];
}

/** A quantity of any dimension as plain data. */
export interface QuantityData {
  readonly value: number;
  readonly unit: Symbols[Dimension];
}

/** An argument: a quantity, or its plain data. */
export type Taken<D extends Dimension> = Quantity<D> | Data<D>;
/** The same, or a column. */
export type TakenColumn<D extends Dimension> = Taken<D> | Quantity<D, number | Column> | Quantity<D, Column>;
/** An argument that may be a bare number: °Brix, a share, a count. */
export type Plain<D extends Dimension> = number | Taken<D>;
/** The same, or a column. */
export type PlainColumn<D extends Dimension> = number | Column | TakenColumn<D>;

/** Options of a function of numbers. */
export interface Options {
  /** NaN where a value is refused, instead of an error. */
  on_error?: "nan";
}

/** A value with its standard uncertainty. */
export type Measured<D extends Dimension> = D extends "brix" | "ratio" | "count"
  ? { readonly value: number; readonly unit?: Symbols[D]; readonly uncertainty: number }
  : { readonly value: number; readonly unit: Symbols[D]; readonly uncertainty: number };

/** An input of a day: a quantity, with or without uncertainty, or its text; °Brix, shares and counts as numbers too. */
export type Given<D extends Dimension> =
  | Taken<D>
  | Measured<D>
  | string
  | (D extends "brix" | "ratio" | "count" ? number : never);

/** A result of a plan: `low` and `high` hold 95 % of the draws. */
export interface Figure<D extends Dimension, U extends Symbols[D] = Symbols[D]> {
  readonly value: number;
  readonly unit: U;
  readonly low?: number;
  readonly high?: number;
  /** Where the value sits at one end of the range. */
  readonly median?: number;
}

/** An amount of the user's own currency per a quantity. */
export interface PriceGiven {
  readonly amount: number;
  readonly per: string | Quantity<Dimension> | QuantityData;
}
