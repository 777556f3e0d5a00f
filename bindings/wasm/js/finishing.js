// Where syrup is done: several quantities at once.

import { ask } from "./ask.js";
import { picking } from "./options.js";
import { result, unitNamed } from "./quantity.js";
import { Argument } from "./reading.js";
import { guarded, refusal } from "./runtime.js";
import { stationOf } from "./station_pressure.js";
import { DIMENSIONS } from "./surface.js";

const argument = (name, dimension) => new Argument(name, DIMENSIONS.find(([known]) => known === dimension));
const TARGET = argument("target", "brix");
const RISE = argument("non_sucrose_rise", "temperature_difference");
const PASCAL = unitNamed("pa");

// The temperature at which syrup of `target` boils at today's pressure.
export function finishingPoint(target, station, options) {
  const { non_sucrose_rise } = picking(options, ["non_sucrose_rise"]);
  const brix = TARGET.single(target);
  const { pressure, uncertainty } = stationOf("station", station);
  const rise = non_sucrose_rise === undefined ? 0 : RISE.single(non_sucrose_rise);
  const found = guarded((core) => core.finishing_point(brix, pressure.to(PASCAL), uncertainty.to(PASCAL), rise));
  if (found === undefined) throw refusal();
  const [point, difference] = ["deg_c", "delta_c"].map(unitNamed);
  return Object.freeze({
    temperature: result(found[0], point),
    elevation: result(found[1], difference),
    water_boils_at: result(found[2], point),
    uncertainty: result(found[3], difference),
  });
}

// Whether syrup is lawful, and how surely.
export function legal(brix, jurisdiction) {
  return ask("finish.legal", { brix, jurisdiction });
}
