// The functions that take or give more than numbers: data in, data out, by name.

import { encoded } from "./data.js";
import { heldOf, isOurs, numberOf, quantityOf, unitNamed } from "./quantity.js";
import { guarded, refusal } from "./runtime.js";
import { stationData } from "./station_pressure.js";

const MARK = "\u0001";

// What the core answers to `name`, of arguments by name; one that is undefined is left out.
export function ask(name, given) {
  const json = encoded(Object.fromEntries(Object.entries(given).map(([key, value]) => [key, exact(value)])));
  const answer = guarded((core) => core.ask(name, json));
  if (answer === undefined) throw refusal();
  return revived(JSON.parse(answer));
}

// Quantities with the very number they hold, station pressures as their data.
function exact(value) {
  if (!isOurs(value)) return stationData(value) ?? value;
  const number = numberOf(value);
  return typeof number === "number" ? { value: number, unit: heldOf(value).word } : value;
}

// Frozen data; `{value, unit}` and nothing else is a quantity, a marked text a number that JSON does not know.
export function revived(data) {
  if (typeof data === "string") return data.startsWith(MARK) ? Number(data.slice(1)) : data;
  if (typeof data !== "object" || data === null) return data;
  if (Array.isArray(data)) return Object.freeze(data.map(revived));
  const { value, unit, ...rest } = data;
  if (typeof value === "number" && typeof unit === "string" && Object.keys(rest).length === 0) {
    return quantityOf(value, unitNamed(unit));
  }
  return Object.freeze(Object.fromEntries(Object.entries(data).map(([key, inner]) => [key, revived(inner)])));
}
