// How uncertain inputs make a result uncertain: of the functions here by their names, of others by calling them.

import { ask, revived } from "./ask.js";
import { encoded } from "./data.js";
import { SugaringError } from "./error.js";
import { nameOf } from "./functions.js";
import { picking } from "./options.js";
import { heldOf, isOurs, numberOf, quantityOf, unitNamed, units } from "./quantity.js";
import { guarded, refusal, refused } from "./runtime.js";
import { shown } from "./shown.js";
import { stationData, stationFromData } from "./station_pressure.js";

// To first order, with the part that each input has.
export function propagate(model, inputs) {
  const { data, forms } = taken(inputs);
  const name = nameOf(model);
  if (name !== undefined) return ask("uncertainty.propagate", { function: name, inputs: data });
  const called = calling(model, forms);
  const json = encoded(data, "inputs");
  return settled(called, guarded((core) => core.propagate(called.model, json, called.unit)), (json) => revived(JSON.parse(json)));
}

// By many draws.
export function monteCarlo(model, inputs, options) {
  const { seed, samples, progress } = picking(options, ["seed", "samples", "progress"]);
  if (progress !== undefined && typeof progress !== "function") {
    throw refused("unreadable", "progress", shown(progress), "a function is needed");
  }
  const watch = progress && watched(progress);
  const { data, forms } = taken(inputs);
  const name = nameOf(model);
  const json = encoded({ inputs: data, seed, samples, ...(name === undefined ? {} : { function: name }) });
  const called = name === undefined ? calling(model, forms) : {};
  const found = guarded((core) => {
    return name === undefined ? core.monte_carlo(called.model, json, called.unit, watch) : core.monte_carlo_of(json, watch);
  });
  if (watch?.thrown) throw watch.thrown.error;
  return settled(called, found, ([json, values]) => {
    const made = { ...revived(JSON.parse(json)) };
    Object.defineProperty(made, "values", { value: values });
    return Object.freeze(made);
  });
}

// What the callback throws must not pass through the core; it is kept, and the work stopped.
function watched(progress) {
  const watch = (share) => {
    try {
      return progress(share);
    } catch (error) {
      watch.thrown = { error };
      return false;
    }
  };
  return watch;
}

// The inputs as the core reads them, and how each is handed to a model.
function taken(inputs) {
  if (inputs === undefined) throw refused("missing", "inputs");
  const listed = Array.isArray(inputs);
  if (!listed && Object.prototype.toString.call(inputs) !== "[object Object]") {
    throw refused("unreadable", "inputs", shown(inputs), "a list, or keys with inputs, is needed");
  }
  const entries = listed ? inputs.map((input) => [undefined, input]) : Object.entries(inputs);
  const read = entries.map(([name, input], index) => one(name, input, listed ? `inputs[${index}]` : `inputs.${name}`));
  return { data: read.map(({ data }) => data), forms: read.map(({ form }) => form) };
}

const plain = (number) => number;

function one(name, input, path) {
  const named = name === undefined ? {} : { name };
  const station = stationData(input);
  if (station !== undefined) {
    const pa = unitNamed("pa");
    const { pressure, uncertainty, origin } = station;
    const form = (number) => stationFromData({ pressure: quantityOf(number, pa), uncertainty: quantityOf(uncertainty.value, pa), origin });
    return { data: { ...named, value: pressure.value, unit: "pa", uncertainty: uncertainty.value }, form };
  }
  if (typeof input === "number") return { data: { ...named, value: input }, form: plain };
  if (typeof input !== "object" || input === null) {
    throw refused("unreadable", path, shown(input), "a number, a quantity or a measured value is needed");
  }
  const spread = isOurs(input) ? { value: input } : { ...input };
  const unit = isOurs(spread.value) ? heldOf(spread.value) : typeof spread.unit === "string" ? unitNamed(spread.unit) : undefined;
  const data = { ...named, ...spread, value: exact(spread.value) };
  if (spread.uncertainty !== undefined) data.uncertainty = exact(spread.uncertainty);
  return { data, form: unit === undefined ? plain : (number) => quantityOf(number, unit) };
}

// A quantity with the very number it holds.
function exact(value) {
  if (!isOurs(value)) return value;
  const number = numberOf(value);
  return typeof number === "number" ? { value: number, unit: heldOf(value).word } : value;
}

// A function of the caller's own, as the core calls it: numbers in, a number out, nothing thrown.
function calling(model, forms) {
  if (typeof model !== "function") throw refused("unreadable", "model", shown(model), "a function of the inputs is needed");
  const called = { thrown: undefined, held: undefined };
  called.model = (numbers) => {
    // After what is no refusal of the library nothing is tried again.
    if (called.thrown !== undefined && !(called.thrown.error instanceof SugaringError)) return NaN;
    try {
      return number(model(...numbers.map((number, index) => forms[index](number))), called);
    } catch (error) {
      called.thrown = { error };
      return NaN;
    }
  };
  called.unit = () => called.held?.index ?? -1;
  return called;
}

// An answer in the unit of the first one.
function number(answer, called) {
  if (isOurs(answer) && typeof numberOf(answer) === "number") {
    called.held ??= unitNamed(answer.unit);
    return answer.to(units[called.held.index]);
  }
  if (typeof answer === "number" && called.held === undefined) return answer;
  const needed = called.held === undefined ? "a number or a quantity" : called.held.article;
  throw refused("unreadable", "model", shown(answer), `${needed} is needed`);
}

// A result, or what the model threw.
function settled(called, found, made) {
  const thrown = called.thrown?.error;
  if (thrown !== undefined && (found === undefined || !(thrown instanceof SugaringError))) throw thrown;
  if (found === undefined) throw refusal();
  return made(found);
}

// Readings of one truth as one.
export function combine(readings) {
  if (readings === undefined) throw refused("missing", "readings");
  if (!Array.isArray(readings)) throw refused("unreadable", "readings", shown(readings), "a list is needed");
  return ask("uncertainty.combine", { readings: readings.map(measured) });
}

function measured(reading) {
  if (typeof reading !== "object" || reading === null) return reading;
  return { ...reading, value: exact(reading.value), uncertainty: exact(reading.uncertainty) };
}

// The straight line through points.
export function lineFit(x, y, options) {
  const { x0 } = picking(options, ["x0"]);
  return ask("uncertainty.line_fit", { x, y, x0 });
}

// The probability that a measured truth is no less than `minimum`.
export function probabilityAtLeast(value, minimum) {
  return ask("uncertainty.probability_at_least", { value: value === undefined ? undefined : measured(value), minimum });
}

export const Line = Object.freeze({
  at: (line, x) => ask("Line.at", { line, x }),
  correlation: (line) => ask("Line.correlation", { line }),
});

export const Propagated = Object.freeze({
  coverageFactor: (propagated, coverage) => ask("Propagated.coverage_factor", { propagated: core(propagated), coverage }),
  interval: (propagated, coverage) => ask("Propagated.interval", { propagated: core(propagated), coverage }),
});

// What an interval needs to know of it.
function core(propagated) {
  if (propagated === undefined) throw refused("missing", "propagated");
  const { value, uncertainty, degrees_of_freedom } = propagated;
  return { value: exact(value), uncertainty: exact(uncertainty), degrees_of_freedom };
}

export const Sampled = Object.freeze({
  interval: (sampled, coverage) => ends(sampled, coverage, false),
  shortest: (sampled, coverage) => ends(sampled, coverage, true),
  probabilityAtLeast(sampled, limit) {
    const unit = unitOfResult(sampled);
    const bare = unit === undefined ? limit : limit?.to?.(units[unit.index]);
    if (typeof bare !== "number") throw refused("unreadable", "limit", shown(limit), "a value of the kind of the result is needed");
    const found = guarded((core) => core.sampled_at_least(drawn(sampled), bare));
    if (found === undefined) throw refusal();
    return found;
  },
});

function ends(sampled, coverage, shortest) {
  const found = guarded((core) => core.sampled_interval(drawn(sampled), typeof coverage === "number" ? coverage : NaN, shortest));
  if (found === undefined) throw refusal();
  const unit = unitOfResult(sampled);
  const [low, high] = Array.from(found, (end) => (unit === undefined ? end : quantityOf(end, unit)));
  return Object.freeze({ low, high });
}

function unitOfResult({ value }) {
  return isOurs(value) ? heldOf(value) : undefined;
}

function drawn(sampled) {
  const values = sampled?.values;
  if (!(values instanceof Float64Array)) throw refused("missing", "sampled.values");
  return values;
}
