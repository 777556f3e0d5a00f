/** What went wrong, as one word. */
export type ErrorKind =
  | "out_of_range"
  | "not_finite"
  | "wrong_dimension"
  | "unknown_unit"
  | "unknown_name"
  | "missing"
  | "unreadable"
  | "inconsistent"
  | "unreachable"
  | "no_convergence"
  | "cancelled"
  | "internal";

/** The one error: its message names the input, its value, what is wrong and a hint; its fields give the same as data. */
export declare class SugaringError extends Error {
  constructor(message: string, fields?: Partial<ErrorFields>, options?: { cause?: unknown });
  readonly kind: ErrorKind;
  /** The offending argument, or the path of the offending input. */
  readonly argument: string;
  /** The offending number in `unit`; NaN where the offence is no number. */
  readonly value: number;
  readonly unit: string;
  /** The inclusive limits, in `unit`. */
  readonly range?: readonly [number, number];
  /** What to do about it. */
  readonly hint?: string;
  /** Where the limit comes from. */
  readonly reference?: string;
  /** Of a column: the first index that was refused. */
  readonly index?: number;
  /** Of a column: how many were refused. */
  readonly count?: number;
  /** What JSON and structured cloning may carry. */
  toJSON(): Record<string, unknown>;
  /** The error that `toJSON` described, in another thread or at another time. */
  static from(data: unknown): SugaringError;
}

/** The fields of an error. */
export interface ErrorFields {
  kind: ErrorKind;
  argument: string;
  value: number;
  unit: string;
  range: readonly [number, number];
  hint: string;
  reference: string;
  index: number;
  count: number;
}
