// Columns of readings through one instrument.

import { ask } from "./ask.js";
import { encoded } from "./data.js";
import { inColumn } from "./error.js";
import { allocated, common, owned } from "./functions.js";
import { isOurs, numberOf, result, unitNamed } from "./quantity.js";
import { Argument, elsewhere } from "./reading.js";
import { guarded, refusal, refused } from "./runtime.js";
import { isColumn, shown } from "./shown.js";
import { DIMENSIONS } from "./surface.js";

const argument = (name, dimension) => new Argument(name, DIMENSIONS.find(([known]) => known === dimension));
const OWN_MARKS = { reading: argument("reading", "ratio"), brix: argument("brix", "brix") };
const TEMPERATURES = Object.fromEntries(["reading", "temperature", "prism"].map((name) => [name, argument(name, "temperature")]));

// What `kind.name` answers to numbers, or to columns of them.
export function through(kind, name, instrument, given, onError) {
  if (onError !== undefined && onError !== "nan") {
    throw refused("unknown_name", "on_error", typeof onError === "string" ? onError : shown(onError), "nan");
  }
  const lenient = onError === "nan";
  const warm = kind === "Thermometer";
  const columns = Object.entries(given).map(([key, value]) => {
    const reader = (warm || !(key in OWN_MARKS) ? TEMPERATURES : OWN_MARKS)[key];
    return { reader, value, column: isLong(value) ? reader.column(value) : undefined };
  });
  if (!columns.some(({ column }) => column?.numbers !== undefined)) {
    return orNaN(() => ask(`${kind}.${name}`, { instrument, ...given }), lenient, name, warm);
  }
  const lanes = columns.map(({ reader, value, column }) => {
    if (column?.numbers === undefined) return { si: reader.single(value), reader };
    return { source: column.numbers, numbers: owned(column.numbers, reader), unit: column.unit, reader };
  });
  return inLanes(kind, name, instrument, lanes, lenient);
}

// Whether it is a column, or a quantity of one.
function isLong(value) {
  const quantity = isOurs(value) ? value : elsewhere(value);
  return quantity === undefined ? isColumn(value) : typeof numberOf(quantity) !== "number";
}

function inLanes(kind, name, instrument, lanes, lenient) {
  const count = common({ given: lanes.map(({ reader }) => reader) }, lanes);
  const flat = allocated(count * lanes.length, lanes[0].reader.name);
  lanes.forEach(({ si, numbers, unit }, place) => {
    const view = flat.subarray(place * count, (place + 1) * count);
    if (numbers === undefined) view.fill(si);
    else for (let i = 0; i < count; i++) view[i] = unit === undefined ? numbers[i] : unit.toSi(numbers[i]);
  });
  const json = encoded(instrument, "instrument");
  const found = guarded((core) => core.ask_lanes(`${kind}.${name}`, json, flat, lanes.length));
  if (found === undefined) throw refusal();
  const first = found.subarray(0, count).findIndex((number) => number !== number);
  if (first >= 0 && !lenient) {
    const bad = found.subarray(0, count).filter((number) => number !== number).length;
    throw inColumn(refusalAt(kind, name, instrument, lanes, flat, count, first), first, bad, count);
  }
  const [value, uncertainty] = [found.slice(0, count), found.slice(count)];
  if (kind === "Thermometer") {
    const temperature = result(value, unitNamed("deg_c"));
    return name === "reading" ? temperature : Object.freeze({ value: temperature, uncertainty: result(uncertainty, unitNamed("delta_c")) });
  }
  return name === "reading" ? value : Object.freeze({ value, uncertainty });
}

// Why the lane `index` was refused.
function refusalAt(kind, name, instrument, lanes, flat, count, index) {
  const lane = {};
  for (const [place, { reader, source }] of lanes.entries()) {
    if (source !== undefined && typeof source[index] !== "number") {
      return refused("unreadable", reader.name, shown(source[index]), "a number is needed");
    }
    const number = flat[place * count + index];
    lane[reader.name] = reader.plain ? number : { value: number, unit: "kelvin" };
  }
  try {
    ask(`${kind}.${name}`, { instrument, ...lane });
  } catch (error) {
    return error;
  }
  return refusal();
}

function orNaN(call, lenient, name, warm) {
  try {
    return call();
  } catch (error) {
    if (!lenient || error.kind === "internal") throw error;
    const nothing = warm ? result(NaN, unitNamed("deg_c")) : NaN;
    return name === "reading" ? nothing : Object.freeze({ value: nothing, uncertainty: warm ? result(NaN, unitNamed("delta_c")) : NaN });
  }
}
