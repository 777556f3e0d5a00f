// What the package offers, whichever way its module comes.

import { SugaringError } from "./error.js";
import { finishingPoint, legal } from "./finishing.js";
import { functions } from "./functions.js";
import { brixFromScale, onScale } from "./scale.js";
import { StationPressure, StationPressures } from "./station_pressure.js";
import * as own from "./uncertainty.js";

export { SugaringError, StationPressure, StationPressures };
export { Quantity } from "./quantity.js";
export * as catalogue from "./catalogue.js";
export * as day from "./day.js";
export * as instrument from "./instrument.js";
export * as units from "./units.js";

export const air = Object.freeze({ ...functions("air"), StationPressure, StationPressures });
export const finish = Object.freeze({ ...functions("finish"), finishingPoint, legal });
export const membrane = functions("membrane");
export const sucrose = Object.freeze({ ...functions("sucrose"), onScale, brixFromScale });
export const uncertainty = Object.freeze({ ...functions("uncertainty"), ...own });
export const water = functions("water");
