// The lists from which forms, tables and documentation are made.

import { ask } from "./ask.js";
import { FUNCTIONS, KINDS, NUMBERS, SCHEMAS, SPELLINGS } from "./catalogue_data.js";
import { camelCase } from "./functions.js";
import { units as rows } from "./quantity.js";
import { refused } from "./runtime.js";

// The functions of numbers, with what each covers.
export function functions() {
  return FUNCTIONS.map(([module, name, summary, inputs, result, unit, source, source_kind, accuracy]) =>
    frozen({
      module,
      name,
      jsName: camelCase(name),
      summary,
      arguments: inputs.map(([name, kind, ...limits]) => ({ name, kind, ...limited(limits) })),
      result,
      unit,
      source,
      source_kind,
      accuracy,
    }),
  );
}

// What each of the functions covers: the limits of its inputs, its source and accuracy.
export function relations() {
  return FUNCTIONS.map(([module, name, , inputs, , output, source, source_kind, accuracy]) =>
    frozen({
      name: `${module}::${name}`,
      inputs: inputs.map(([argument, , ...limits]) => ({ argument, ...limited(limits) })),
      output,
      source,
      source_kind,
      accuracy,
    }),
  );
}

// Every unit.
export function units() {
  return rows.map(({ word, symbol, dimension, zero, times, over, offset }, index) => {
    const [aliases, definition] = SPELLINGS[index];
    return frozen({ word, symbol, dimension, aliases: [...aliases], definition, numbers: [zero, times, over, offset] });
  });
}

// What density is lawful where; check the local rule.
export function jurisdictions() {
  return ask("catalogue.jurisdictions", {});
}

// What instruments at hand usually show, and how surely.
export function instruments() {
  return ask("catalogue.instruments", {});
}

// Every kind of error, what it means and how its text begins.
export function errorKinds() {
  return KINDS.map(([name, meaning, begins]) => frozen({ name, meaning, begins }));
}

// The version of the results: the same inputs give the same bits under the same version.
export function numbers() {
  return NUMBERS;
}

// The names of the JSON Schemas.
export function schemas() {
  return Object.keys(SCHEMAS);
}

// The JSON Schema of "day_inputs" or "day_plan"; fetched when it is asked for.
export async function schema(name) {
  const load = Object.hasOwn(SCHEMAS, name) ? SCHEMAS[name] : undefined;
  if (load === undefined) throw refused("unknown_name", "schema", String(name), Object.keys(SCHEMAS).join(" "));
  return (await load()).default;
}

// As people read them, and in SI.
function limited([unit, low, high, low_si, high_si]) {
  return { unit, low, high, low_si, high_si };
}

function frozen(data) {
  for (const value of Object.values(data)) {
    if (typeof value === "object" && value !== null) frozen(value);
  }
  return Object.freeze(data);
}
