import type { DayInputs, DayPlan as PlanData } from "./types/day_data.js";

export type * from "./types/day_data.js";

/** Units of a page: as most inputs were given, US, or metric. */
export type System = "as_given" | "us" | "metric";

/** The plan: frozen data, and its pages. */
export interface Plan extends PlanData {
  /** The page to carry into the sugarhouse. */
  page(system?: System): string;
  /** The page in the units given. */
  toString(): string;
}

/** The day's plan: sap through membrane, pan and finish into bottles. */
export declare function plan(
  inputs: DayInputs | string,
  options?: {
    /** Called with the share done, 0 to 1; false stops the work. */
    progress?: (share: number) => unknown;
  },
): Plan;
