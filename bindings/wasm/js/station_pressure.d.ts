import type { Column, Data, Quantity, Symbols, Taken, TakenColumn } from "./quantity.js";

/** How a station pressure was come by. */
export type Origin = "measured" | "altimeter_setting" | "sea_level" | "altitude" | "boiling_water";

/** The absolute pressure where the pan stands, 50 to 110 kPa, and how it was come by; frozen. */
export declare class StationPressure {
  private constructor();
  /** From a barometer in the sugarhouse that is not adjusted to sea level. */
  static measured(pressure: Taken<"pressure">): StationPressure;
  /** From a column of such readings. */
  static measured(pressure: TakenColumn<"pressure">): StationPressures;
  /** From the number that an airport or a home weather station shows. */
  static fromAltimeterSetting(setting: Taken<"pressure">, altitude: Taken<"length">): StationPressure;
  /** From the weather map's pressure, reduced to sea level. */
  static fromSeaLevel(
    pressure: Taken<"pressure">,
    altitude: Taken<"length">,
    options: { air_temperature: Taken<"temperature"> },
  ): StationPressure;
  /** From the altitude alone: the standard atmosphere, without the weather. */
  static fromAltitude(altitude: Taken<"length">): StationPressure;
  /** From the temperature at which plain water boils, here and now: the best. */
  static fromBoilingWater(temperature: Taken<"temperature">): StationPressure;
  /** The same pressure with another standard uncertainty. */
  static withUncertainty(station: Station, uncertainty: Taken<"pressure">): StationPressure;
  readonly pressure: Quantity<"pressure">;
  /** Standard uncertainty. */
  readonly uncertainty: Quantity<"pressure">;
  readonly origin: Origin;
}

/** A station pressure, or what structured cloning left of one. */
export type Station =
  | StationPressure
  | { readonly pressure: Data<"pressure">; readonly uncertainty: Data<"pressure">; readonly origin: Origin };

/** A column of a barometer's readings, where a function takes columns; the range is checked when it is called. Frozen. */
export declare class StationPressures {
  private constructor();
  readonly pressure: Quantity<"pressure", Column>;
  /** Standard uncertainty of each. */
  readonly uncertainty: Quantity<"pressure">;
  readonly origin: "measured";
}

/** A station pressure, a column of them, or what structured cloning left of either. */
export type StationColumn =
  | Station
  | StationPressures
  | {
      readonly pressure: { readonly value: Column; readonly unit: Symbols["pressure"] };
      readonly uncertainty: Data<"pressure">;
      readonly origin: "measured";
    };
