import type { Column, Options, Plain, Quantity, Taken, TakenColumn, Word } from "./quantity.js";
import type { Station, StationPressure } from "./station_pressure.js";

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
    readonly offset: number;
    readonly two_point?: readonly [Point<number>, Point<number>];
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
