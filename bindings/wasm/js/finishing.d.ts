import type { Plain, Quantity, Taken } from "./quantity.js";
import type { Station } from "./station_pressure.js";

/** Where syrup is done today. */
export interface FinishingPoint {
  /** What a perfect thermometer shows when the syrup is done. */
  readonly temperature: Quantity<"temperature">;
  /** That above boiling water: what to add to the boiling water of today's thermometer. */
  readonly elevation: Quantity<"temperature_difference">;
  /** Where plain water boils here and now. */
  readonly water_boils_at: Quantity<"temperature">;
  /** Standard uncertainty of `temperature`, from the pressure and from the boiling relation. */
  readonly uncertainty: Quantity<"temperature_difference">;
}

/**
 * The temperature at which syrup of `target` boils at today's pressure. Draw off by the thermometer, accept by the
 * hydrometer: 0.1 K is half a °Brix. A thermometer that is zeroed in plain boiling water beside the pan needs no
 * barometer: add `elevation` to what it showed.
 *
 * @param target °Brix of the finished syrup, 50 to 85 °Bx
 * @param station 50 to 110 kPa
 * @param options.non_sucrose_rise rise of what is not sucrose, 0 to 1 Δ°C; 0.1 to 0.25 for maple, left out 0
 *
 * @throws SugaringError
 */
export function finishingPoint(
  target: Plain<"brix">,
  station: Station,
  options?: { non_sucrose_rise?: Taken<"temperature_difference"> },
): FinishingPoint;

/** How syrup stands to a rule. */
export interface Legality {
  /** Whether what was measured lies within the limits, themselves included. */
  readonly legal: boolean;
  /** On which side of them it lies. */
  readonly density: string;
  readonly brix: number;
  /** How far above the least, °Bx; below it negative. */
  readonly margin: number;
  /** How far below the most, where the rule has one. */
  readonly room?: number;
  /** Probability that the truth lies within. */
  readonly probability: number;
  readonly too_thin: number;
  readonly too_thick: number;
  readonly jurisdiction: string;
  readonly law: string;
  readonly advice: string;
  /** The same in a sentence. */
  readonly text: string;
}

/** Whether syrup is lawful, by how much, and how surely: data that was seen on a day, and no advice. @throws SugaringError */
export function legal(brix: { readonly value: number; readonly uncertainty: number }, jurisdiction: string): Legality;
