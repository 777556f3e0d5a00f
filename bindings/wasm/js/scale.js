// Density scales: one pair of functions, whose row is found by the scale's word.

import { camelCase, functions } from "./functions.js";
import { heldOf, isOurs, unitNamed, unitOf } from "./quantity.js";
import { elsewhere } from "./reading.js";
import { refused } from "./runtime.js";
import { ROWS } from "./surface.js";

const rows = functions("scale");
const scales = ROWS.flatMap(([module, name]) => (module === "scale" && !name.startsWith("brix_from_") ? [name] : []));

// Where a solution stands on the scale of a word.
export function onScale(brix, scale, options) {
  const { word } = unitOf(scale);
  if (!scales.includes(word)) throw refused("unknown_name", "scale", word, scales.join(" "));
  return rows[camelCase(word)](brix, options);
}

// The inverse: the scale is that of the value.
export function brixFromScale(value, options) {
  return rows[camelCase(`brix_from_${scaleOf(value)}`)](value, options);
}

// What is on no scale is refused by the first.
function scaleOf(value) {
  const quantity = isOurs(value) ? value : elsewhere(value);
  const unit = quantity === undefined ? named(value) : heldOf(quantity);
  return scales.includes(unit?.word) ? unit.word : scales[0];
}

function named(value) {
  return typeof value === "object" && value !== null && typeof value.unit === "string" ? unitNamed(value.unit) : undefined;
}
