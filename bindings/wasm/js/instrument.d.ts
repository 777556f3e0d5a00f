import type { Column, Options, Plain, Quantity, Taken, TakenColumn, Word } from "./quantity.js";
import type { Station, StationPressure } from "./station_pressure.js";
import type { Line } from "./uncertainty.js";

/** °Brix with its standard uncertainty. */
export interface MeasuredBrix {
  readonly value: number;
  readonly uncertainty: number;
}

/** A column of °Brix, each with its standard uncertainty. */
export interface MeasuredColumn {
  readonly value: Float64Array;
  readonly uncertainty: Float64Array;
}

/** A temperature with its standard uncertainty, a difference of temperatures. */
export interface MeasuredTemperature<V extends number | Column = number> {
  readonly value: Quantity<"temperature", V>;
  readonly uncertainty: Quantity<"temperature_difference", V>;
}

/** A reading of something known, to calibrate by. */
export interface Check {
  /** What the instrument showed. */
  readonly reading: number;
  /** What it was. */
  readonly brix: number;
  /** Of the liquid and the glass, or of the prism. */
  readonly temperature: Taken<"temperature">;
}

/** One of two points of a calibration. */
export interface Point<T> {
  readonly shown: T;
  readonly expected: T;
}

/** A density scale's word. */
export type ScaleWord =
  | Word<"baume_20_20">
  | Word<"baume_60_60_f">
  | Word<"relative_density_20_20">
  | Word<"relative_density_60_60_f">
  | Word<"relative_density_20_4">
  | Word<"apparent_relative_density_20_20">;

/** A glass hydrometer: frozen data, as a plan's `instruments` have it. */
export interface Hydrometer {
  readonly hydrometer: {
    readonly scale: "brix" | "density" | ScaleWord["dimension"];
    readonly calibrated_at: Quantity<"temperature">;
    readonly glass_expansion: Quantity<"per_kelvin">;
    readonly offset?: number;
    readonly two_point?: readonly [Point<number>, Point<number>];
    readonly span?: { readonly low: number; readonly high: number };
    readonly resolution: number;
    readonly uncertainty: number;
  };
}

/** What may be known of a hydrometer, in marks of its own scale. */
export interface HydrometerOptions {
  /** Cubical expansion of its glass; 25e-6 per kelvin where nothing is said. */
  glass_expansion?: Taken<"per_kelvin">;
  /** What it shows too high. */
  offset?: number;
  /** The least and the greatest mark on its paper: readings beyond are refused, those on it believed. */
  span?: { readonly low: number; readonly high: number };
  /** Step it is read to. */
  resolution?: number;
  /** Standard uncertainty of its scale. */
  uncertainty?: number;
}

/** A glass hydrometer: what it shows in a liquid of known strength, and what the liquid is that it shows. */
export declare const Hydrometer: {
  /** With marks in °Brix, true at `calibrated_at`: 60 °F or 20 °C, as its paper says. */
  brix(calibrated_at: Taken<"temperature">, options?: HydrometerOptions): Hydrometer;
  /** With marks of a density scale such as `baume_20_20`, the scale of the trade's double papers. */
  onScale(scale: ScaleWord, calibrated_at: Taken<"temperature">, options?: HydrometerOptions): Hydrometer;
  /** With marks in kg/m³. */
  density(calibrated_at: Taken<"temperature">, options?: HydrometerOptions): Hydrometer;
  /** Corrected by one comparison: it showed `reading` in a liquid of `brix`. */
  zeroed(
    instrument: Hydrometer,
    reading: number,
    brix: Plain<"brix">,
    options: { temperature: Taken<"temperature"> },
  ): Hydrometer;
  /** Corrected by two comparisons; it is read between them only. */
  twoPoint(instrument: Hydrometer, low: Check, high: Check): Hydrometer;
  /** What the liquid is that shows `reading`; `temperature` is that of the liquid and the glass. @throws SugaringError */
  truth(instrument: Hydrometer, reading: number, temperature: Taken<"temperature">, options?: Options): MeasuredBrix;
  truth(
    instrument: Hydrometer,
    reading: number | Column,
    temperature: TakenColumn<"temperature">,
    options?: Options,
  ): MeasuredColumn;
  /** The mark that a liquid of `brix` shows: where it floats. @throws SugaringError */
  reading(instrument: Hydrometer, brix: Plain<"brix">, temperature: Taken<"temperature">, options?: Options): number;
  reading(
    instrument: Hydrometer,
    brix: number | Column,
    temperature: TakenColumn<"temperature">,
    options?: Options,
  ): Float64Array;
};

/** A refractometer: frozen data, as a plan's `instruments` have it. */
export interface Refractometer {
  readonly refractometer: {
    readonly compensated?: { readonly low: Quantity<"temperature">; readonly high: Quantity<"temperature"> };
    readonly uncompensated?: true;
    readonly zero?: number;
    readonly set_to_zero_at?: Quantity<"temperature">;
    readonly two_point?: readonly [Point<number>, Point<number>];
    readonly resolution: number;
    readonly uncertainty: number;
  };
}

/** What may be known of a refractometer, °Bx. */
export interface RefractometerOptions {
  /** What it shows in pure water. */
  zero?: number;
  /** Step it is read to. */
  resolution?: number;
  /** Standard uncertainty of its scale. */
  uncertainty?: number;
}

/** A refractometer with a scale in °Brix, true at 20 °C; the temperature is the prism's. */
export declare const Refractometer: {
  /** Corrects itself while its prism is between `low` and `high`; outside, its reading means nothing. */
  compensated(low: Taken<"temperature">, high: Taken<"temperature">, options?: RefractometerOptions): Refractometer;
  /** Without a correction of its own. */
  uncompensated(options?: RefractometerOptions): Refractometer;
  /** It showed `reading` in pure water. */
  zeroedInWater(instrument: Refractometer, reading: number, prism: Taken<"temperature">): Refractometer;
  /** Its screw was turned to 0 in pure water at `prism`. */
  setToZeroAt(instrument: Refractometer, prism: Taken<"temperature">): Refractometer;
  /** Corrected by two comparisons; it is read between them only. */
  twoPoint(instrument: Refractometer, low: Check, high: Check): Refractometer;
  /** What the liquid is that shows `reading`. @throws SugaringError */
  truth(instrument: Refractometer, reading: number, prism: Taken<"temperature">, options?: Options): MeasuredBrix;
  truth(
    instrument: Refractometer,
    reading: number | Column,
    prism: TakenColumn<"temperature">,
    options?: Options,
  ): MeasuredColumn;
  /** What it shows in a liquid of `brix`. @throws SugaringError */
  reading(instrument: Refractometer, brix: Plain<"brix">, prism: Taken<"temperature">, options?: Options): number;
  reading(
    instrument: Refractometer,
    brix: number | Column,
    prism: TakenColumn<"temperature">,
    options?: Options,
  ): Float64Array;
};

/** A thermometer: frozen data. */
export interface Thermometer {
  readonly thermometer: { readonly [key: string]: unknown };
}

/** What may be known of a thermometer. */
export interface ThermometerOptions {
  /** What it shows too high. */
  offset?: Taken<"temperature_difference">;
  /** The part of a glass thermometer's scale outside the liquid; mercury's expansion where nothing is said. */
  emergent_stem?: {
    readonly outside: Taken<"temperature_difference">;
    readonly temperature: Taken<"temperature">;
    readonly expansion?: Taken<"per_kelvin">;
  };
  /** Step it is read to. */
  resolution?: Taken<"temperature_difference">;
  /** Its standard uncertainty. */
  uncertainty?: Taken<"temperature_difference">;
}

/** A thermometer, whose whole sensitive length stands in the liquid. */
export declare const Thermometer: {
  /** Not tested, or known to show `offset` too high. */
  plain(options?: ThermometerOptions): Thermometer;
  /** It showed `reading` in plain boiling water, here and now: its offset of today. */
  zeroedInBoilingWater(
    reading: Taken<"temperature">,
    station: Station,
    options?: Omit<ThermometerOptions, "offset">,
  ): Thermometer;
  /** It showed `ice` in melting ice and `boiling` in plain boiling water. */
  twoPoint(
    ice: Taken<"temperature">,
    boiling: Taken<"temperature">,
    options: { station: Station } & Omit<ThermometerOptions, "offset">,
  ): Thermometer;
  /** It was compared at several temperatures: a line of corrections to add, kelvins over readings in °C. */
  line(line: Line, options?: Omit<ThermometerOptions, "offset">): Thermometer;
  /** What the temperature is when it shows `reading`. @throws SugaringError */
  truth(instrument: Thermometer, reading: Taken<"temperature">, options?: Options): MeasuredTemperature;
  truth(instrument: Thermometer, reading: TakenColumn<"temperature">, options?: Options): MeasuredTemperature<Float64Array>;
  /** What this one will show at `temperature`: the mark to look for. @throws SugaringError */
  reading(instrument: Thermometer, temperature: Taken<"temperature">, options?: Options): Quantity<"temperature">;
  reading(
    instrument: Thermometer,
    temperature: TakenColumn<"temperature">,
    options?: Options,
  ): Quantity<"temperature", Float64Array>;
};

/** A barometer: frozen data. */
export interface Barometer {
  readonly barometer: { readonly [key: string]: unknown };
}

/** What may be known of a barometer. */
export interface BarometerOptions {
  /** What it shows too high. */
  offset?: Taken<"pressure">;
  /** Step it is read to. */
  resolution?: Taken<"pressure">;
  /** Its standard uncertainty. */
  uncertainty?: Taken<"pressure">;
}

/** A barometer, as it shows the station pressure or as it is set to sea level. */
export declare const Barometer: {
  /** Shows the pressure where it hangs. */
  station(options?: BarometerOptions): Barometer;
  /** Was set by a weather report, and hangs at `altitude`. */
  setToSeaLevel(altitude: Taken<"length">, options?: BarometerOptions): Barometer;
  /** It showed `reading` where the pressure was `station`: from boiling water, say. */
  zeroed(instrument: Barometer, reading: Taken<"pressure">, station: Station): Barometer;
  /** The station pressure when it shows `reading`. @throws SugaringError */
  truth(instrument: Barometer, reading: Taken<"pressure">): StationPressure;
  /** What it shows where the pressure is `station`. @throws SugaringError */
  reading(instrument: Barometer, station: Station): Quantity<"pressure">;
};

/** °F or °C, or both: a card `as_given` shows both. */
export type System = "as_given" | "us" | "metric";

/** What an instrument shows at one temperature. */
export interface Mark {
  readonly temperature: Quantity<"temperature">;
  /** Rounded to what can be read, in the instrument's own marks. */
  readonly mark: number | Quantity;
  /** The number itself. */
  readonly reading: number | Quantity;
  /** Standard uncertainty of the syrup that shows it, °Bx. */
  readonly uncertainty?: number;
  /** What the chart beside it asks for. */
  readonly chart?: number | Quantity;
}

/** The card of marks for one instrument and one syrup; frozen. */
export interface Card {
  readonly name?: string;
  /** The syrup that is wanted, °Bx. */
  readonly target: number;
  readonly instrument: Hydrometer | Refractometer;
  readonly marks: readonly Mark[];
  readonly chart?: {
    readonly jurisdiction: string;
    readonly law: string;
    readonly seen: string;
    readonly target: number;
    readonly source: string;
    readonly advice: string;
  };
  /** What stands below the marks: how to read, what to take care of, what it rests on. */
  readonly notes: readonly string[];
  /** The card as text. */
  page(system?: System): string;
  /** The card as an SVG to print and to laminate. */
  toSvg(system?: System): string;
  /** The marks as CSV, units in the heading. */
  toCsv(): string;
  /** The page as given. */
  toString(): string;
}

/**
 * The card of marks: what `instrument` shows in syrup of `target` at each temperature it may be read at.
 *
 * @param options.temperatures without them every 10 °F or 5 °C that are usual
 * @param options.name what stands on top
 * @param options.chart a jurisdiction whose chart is put beside the marks, never in place of them
 *
 * @throws SugaringError
 */
export function card(
  target: Plain<"brix">,
  instrument: Hydrometer | Refractometer,
  options?: { temperatures?: readonly Taken<"temperature">[]; name?: string; chart?: string },
): Card;

/** The density chart that a jurisdiction prescribes: data, law where it is adopted, and not the equation; frozen. */
export interface DensityChart {
  readonly jurisdiction: string;
  readonly name: string;
  readonly law: string;
  /** When it was seen. */
  readonly seen: string;
  /** What syrup is held to be by the law, °Bx. */
  readonly target: number;
  /** Where the hydrometers it is meant for are true. */
  readonly calibrated_at: Quantity<"temperature">;
  /** As printed, from cold to hot. */
  readonly rows: readonly { readonly temperature: Quantity<"temperature">; readonly brix: number; readonly baume: number }[];
  readonly source: string;
  readonly advice: string;
}

/** The density chart of a jurisdiction; keys are listed by `catalogue.jurisdictions`. @throws SugaringError */
export function chart(jurisdiction: string): DensityChart;

export declare const DensityChart: {
  /** What the chart asks a hydrometer to show, at least; linear between rows, refused beyond them. @throws SugaringError */
  mark(chart: DensityChart, temperature: Taken<"temperature">): { readonly brix: number; readonly baume: number };
};
