// The unit words, and what makes quantities of texts and data.

import { encoded } from "./data.js";
import { heldOf, isOurs, noNumber, numberOf, quantityOf, units, wrongDimension } from "./quantity.js";
import { RANGE, elsewhere } from "./reading.js";
import { guarded, refusal, refused } from "./runtime.js";
import { shown } from "./shown.js";
import { ROWS } from "./surface.js";
import * as words from "./words.js";

export { isQuantity } from "./quantity.js";
export * from "./words.js";

// The quantity of a text such as "40 gal".
export function parse(text) {
  if (typeof text !== "string") throw refused("unreadable", "text", shown(text), 'a text such as "40 gal" is needed');
  return told(guarded((core) => core.parse(text)));
}

// Name and unit word of a column's heading such as "temp [°F]"; without brackets there is no unit.
export function heading(text) {
  if (typeof text !== "string") throw refused("unreadable", "text", shown(text), 'a heading such as "temp [°F]" is needed');
  const read = guarded((core) => core.heading(text));
  if (read === undefined) throw refusal();
  const end = read.lastIndexOf("\n");
  const index = read.slice(end + 1);
  return Object.freeze({ name: read.slice(0, end), unit: index === "" ? undefined : words[units[index].word] });
}

// The quantity of plain data: what a worker sent, or a figure of a plan.
export function quantity(data) {
  if (isOurs(data)) return data;
  return elsewhere(data) ?? told(guarded((core) => core.quantity("quantity", encoded(data, "quantity", RANGE))));
}

function told(read) {
  if (read === undefined) throw refusal();
  return quantityOf(read[0], units[read[1]]);
}

// What a difference of two values measures, where that is something else.
const DIFFERENCES = { temperature: "temperature_difference", gauge_pressure: "pressure" };
const scales = ROWS.flatMap(([module, name]) => (module === "scale" ? [name] : []));

// A value with its standard uncertainty, as a plan takes it.
export function measured(value, uncertainty) {
  const [number, unit] = single("value", value);
  const [steps, stepsUnit] = single("uncertainty", uncertainty);
  const dimension = DIFFERENCES[unit.dimension] ?? (scales.includes(unit.dimension) ? "ratio" : unit.dimension);
  const plain = unit.plain && stepsUnit.plain;
  if (stepsUnit.dimension !== dimension && !plain) {
    throw wrongDimension(quantityOf(steps, stepsUnit), units.find((known) => known.dimension === dimension));
  }
  // The uncertainty is written in steps of the value's unit.
  const step = units.find((known) => known.dimension === dimension && known.times === unit.times && known.over === unit.over);
  const size = step === stepsUnit ? steps : step.fromSi(stepsUnit.toSi(steps));
  return Object.freeze(unit.symbol === "" ? { value: number, uncertainty: size } : { value: number, unit: unit.symbol, uncertainty: size });
}

// An amount of the user's own currency per a quantity.
export function price(amount, per) {
  if (typeof amount !== "number") throw noNumber("amount", amount);
  const [number, unit] = single("per", per);
  return Object.freeze({ amount, per: quantityOf(number, unit) });
}

// The number and unit of a quantity; bare numbers are plain ones.
function single(argument, value) {
  const plain = units.find((unit) => unit.symbol === "");
  if (typeof value === "number") return [value, plain];
  const given = isOurs(value) ? value : quantity(value);
  const unit = units.find((known) => known.symbol === given.unit);
  if (typeof given.value !== "number") throw noNumber(argument, given.value);
  return [given.value, unit];
}
