import type { Data, Dimension, Figure, Measured, Plain, PriceGiven, Quantity, QuantityData, Symbols, Taken, Word } from "./quantity.js";
import type { DensityScale } from "./scale.js";

export * from "./words.js";
export type { Column, Data, Figure, Given, Measured, Plain, PriceGiven, Quantity, Taken, Word } from "./quantity.js";

/** The quantity of a text such as "40 gal". */
export declare function parse(text: string): Quantity<Dimension>;

/** Name and unit of a column's heading such as "temp [°F]"; without brackets there is no unit. */
export declare function heading(text: string): { readonly name: string; readonly unit: Word<Dimension> | undefined };

/** The quantity of plain data: what a worker sent, or a figure of a plan. */
export declare function quantity<D extends Dimension>(data: Quantity<D> | Data<D> | Figure<D>): Quantity<D>;

/** Whether it is a quantity, also one of another copy of this package. */
export declare function isQuantity(value: unknown): value is Quantity<Dimension>;

/** What a difference of two values measures. */
export type Difference<D extends Dimension> = D extends "temperature"
  ? "temperature_difference"
  : D extends "gauge_pressure"
    ? "pressure"
    : D extends DensityScale
      ? "ratio"
      : D;

/** A value with its standard uncertainty, as a plan takes it. */
export declare function measured(value: number, uncertainty: number): Measured<"brix">;
export declare function measured<D extends Dimension>(value: Taken<D>, uncertainty: Plain<Difference<D>>): Measured<D>;

/** An amount of the user's own currency per a quantity: `price(280, cord(1))`. */
export declare function price(amount: number, per: Quantity<Dimension> | QuantityData): PriceGiven;
