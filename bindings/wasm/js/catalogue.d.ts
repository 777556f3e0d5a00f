import type { Quantity } from "./quantity.js";
import type { ErrorKind } from "./error.js";
import type { Dimension } from "./quantity.js";

/** Limits of an argument, in the unit people read and in SI. */
export interface Limits {
  readonly unit: string;
  readonly low: number;
  readonly high: number;
  readonly low_si: number;
  readonly high_si: number;
}

/** Where a relation comes from. */
export type SourceKind = "published" | "derived" | "common_practice" | "from_memory";

/** A kind of error. */
export interface KindRow {
  readonly name: ErrorKind;
  readonly meaning: string;
  /** How its text begins, with … for what differs. */
  readonly begins: string;
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
  readonly source_kind: SourceKind;
  readonly accuracy: string;
}

/** What a function covers. */
export interface Relation {
  readonly name: string;
  readonly inputs: readonly (Limits & { readonly argument: string })[];
  readonly output: string;
  readonly source: string;
  readonly source_kind: SourceKind;
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

/** What density is lawful where: data that was seen on a day, and no advice. */
export interface JurisdictionRow {
  readonly key: string;
  readonly name: string;
  readonly law: string;
  /** The least, °Bx, inclusive. */
  readonly min: number;
  /** The most, °Bx, inclusive, where the rule has one. */
  readonly max: number | null;
  /** The temperature that the rule names; it matters for the instrument alone. */
  readonly reference_temperature: Quantity<"temperature"> | null;
  /** Whether it prescribes a chart: `instrument.chart`. */
  readonly has_chart: boolean;
  readonly note: string;
  /** When the text was seen; what it said later is not known. */
  readonly seen: string;
  readonly source: string;
}

/** A usual size, from `low` to `high`; both the same where there is one figure. */
export interface Typical {
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** What an instrument at hand usually shows, and how surely: what to take where nobody tested it. */
export interface InstrumentRow {
  readonly key: string;
  readonly name: string;
  /** The steps in which it is read, where there is a usual one. */
  readonly resolution?: Typical;
  /** One standard deviation of what it says. */
  readonly uncertainty: Typical;
  /** What an uncertainty is counted in. */
  readonly of: string;
  readonly source: string;
}

/** What instruments at hand usually show, and how surely. */
export declare function instruments(): readonly InstrumentRow[];
/** What density is lawful where; check the local rule. */
export declare function jurisdictions(): readonly JurisdictionRow[];
/** The functions of numbers. */
export declare function functions(): readonly FunctionRow[];
/** What each of the functions covers. */
export declare function relations(): readonly Relation[];
/** Every unit. */
export declare function units(): readonly UnitRow[];
/** Every kind of error, what it means and how its text begins. */
export declare function errorKinds(): readonly KindRow[];
/** The names of the JSON Schemas, each with its content by `schema`. */
export declare function schemas(): readonly ("day_inputs" | "day_plan")[];
/** The version of the results: the same inputs give the same bits under the same version. */
export declare function numbers(): string;
/** The JSON Schema of the inputs or the plan of a day. */
export declare function schema(name: "day_inputs" | "day_plan"): Promise<Record<string, unknown>>;
