// The functions of numbers, by the table: values by value or in columns, checked and converted on the way in.

import { inColumn } from "./error.js";
import { picking } from "./options.js";
import { result, units } from "./quantity.js";
import { Argument } from "./reading.js";
import { columns, core, fallen, guarded, refusal, refused } from "./runtime.js";
import { shown } from "./shown.js";
import { StationArgument } from "./station_pressure.js";
import { DIMENSIONS, ROWS } from "./surface.js";

const STATION = -1;

// The functions of a module, by their names here.
export function functions(module) {
  const entries = ROWS.flatMap((row, index) => (row[0] === module ? [made(row, index)] : []));
  return Object.freeze(Object.fromEntries(entries));
}

// The name in the table of a function of this module; undefined of any other.
export function nameOf(call) {
  return typeof call === "function" ? tableNames.get(call) : undefined;
}

const tableNames = new WeakMap();

// `brix_from_density` is `brixFromDensity` here.
export function camelCase(name) {
  return name.replace(/_(\w)/g, (_, letter) => letter.toUpperCase());
}

function made([module, name, names, kinds, output], row) {
  const unit = units[output];
  const given = names.map((argument, index) => {
    return kinds[index] === STATION ? new StationArgument(argument) : new Argument(argument, DIMENSIONS[kinds[index]]);
  });
  const answer = unit.plain ? (number) => number : (number) => result(number, unit);
  const table = { row, name: `${module}.${name}`, given, answer };
  const own = camelCase(name);
  const call = [one, two, more, more][names.length - 1](table);
  Object.defineProperty(call, "name", { value: own });
  tableNames.set(call, table.name);
  return [own, call];
}

function one(table) {
  const { row, given, answer } = table;
  const [first] = given;
  return (a, options) => {
    const x = first.quick(a);
    if (x === undefined || options !== undefined) return looked(table, [a], options);
    return answer(tried(() => core().call1(row, x)));
  };
}

function two(table) {
  const { row, given, answer } = table;
  const [first, second] = given;
  return (a, b, options) => {
    const x = first.quick(a);
    const y = second.quick(b);
    if (x === undefined || y === undefined || options !== undefined) return looked(table, [a, b], options);
    return answer(tried(() => core().call2(row, x, y)));
  };
}

function more(table) {
  const rest = table.given.slice(2).map((argument) => argument.name);
  return (a, b, options) => {
    const picked = picking(options, [...rest, "on_error"]);
    return read(table, [a, b, ...rest.map((name) => picked[name])], picked.on_error);
  };
}

function tried(call) {
  let number;
  try {
    number = call();
  } catch (fault) {
    throw fallen(fault);
  }
  if (number !== number) throw refusal();
  return number;
}

// The long way: options, columns, data in other forms, and what is none of them.
function looked(table, values, options) {
  return read(table, values, picking(options, ["on_error"]).on_error);
}

function read(table, values, onError) {
  if (onError !== undefined && onError !== "nan") throw refused("unknown_name", "on_error", bare(onError), "nan");
  const lenient = onError === "nan";
  const given = table.given.map((argument, index) => argument.read(values[index]));
  if (given.some(({ numbers }) => numbers !== undefined)) return table.answer(inColumns(table, given, lenient));
  const si = given.map((argument) => argument.si);
  return table.answer(lenient ? orNaN(() => valued(table.row, si)) : valued(table.row, si));
}

function bare(text) {
  return typeof text === "string" ? text : shown(text);
}

function valued(row, si) {
  return tried(() => {
    const glue = core();
    return [glue.call1, glue.call2, glue.call3, glue.call4][si.length - 1](row, ...si);
  });
}

function orNaN(call) {
  try {
    return call();
  } catch (error) {
    if (error.kind === "internal") throw error;
    return NaN;
  }
}

function inColumns(table, read, lenient) {
  const given = read.map(({ si, numbers, unit }, index) => ({ si, unit, numbers: owned(numbers, table.given[index]), source: numbers }));
  const lanes = common(table, given);
  const out = allocated(lanes, table.given[0].name);
  let [count, first] = [0, -1];
  guarded((core) => {
    const block = columns().lanes;
    for (let start = 0; start < lanes; start += block) {
      const length = Math.min(block, lanes - start);
      const views = columns();
      given.forEach((column, index) => fill(views.given[index], column, start, length));
      const bad = core.block(table.row, length);
      const results = columns().out;
      for (let i = 0; i < length; i++) {
        out[start + i] = results[i];
        if (bad > 0 && first < 0 && results[i] !== results[i]) first = start + i;
      }
      count += bad;
    }
  });
  if (count > 0 && !lenient) throw inColumn(refusalAt(table, given, first), first, count, lanes);
  return out;
}

// Numbers that nobody's code runs for when they are read: a typed array as it is, else a copy.
export function owned(numbers, argument) {
  if (numbers === undefined || ArrayBuffer.isView(numbers)) return numbers;
  const own = allocated(numbers.length, argument.name);
  try {
    for (let i = 0; i < own.length; i++) own[i] = typeof numbers[i] === "number" ? numbers[i] : NaN;
  } catch (cause) {
    throw refused("unreadable", argument.name, "something that throws", "give plain data", cause);
  }
  return own;
}

export function allocated(length, name) {
  try {
    return new Float64Array(length);
  } catch (cause) {
    throw refused("unreadable", name, `a column of ${length} numbers`, "give it in parts", cause);
  }
}

export function common(table, given) {
  let lanes;
  given.forEach(({ numbers }, index) => {
    if (numbers === undefined) return;
    if (lanes === undefined) {
      lanes = { length: numbers.length, name: table.given[index].name };
    } else if (lanes.length !== numbers.length) {
      const other = `${lanes.name} = ${lanes.length} numbers`;
      throw refused("inconsistent", table.given[index].name, `${numbers.length} numbers`, other);
    }
  });
  return lanes.length;
}

// A block of a column, in SI; a single number fills the lanes once.
function fill(view, { si, unit, numbers }, start, length) {
  if (numbers === undefined) {
    if (start === 0) view.fill(si, 0, length);
  } else if (unit === undefined) {
    for (let i = 0; i < length; i++) view[i] = numbers[start + i];
  } else {
    for (let i = 0; i < length; i++) view[i] = unit.toSi(numbers[start + i]);
  }
}

// Why the lane `index` was refused.
function refusalAt(table, given, index) {
  const si = [];
  for (const [place, { si: single, source, unit, numbers }] of given.entries()) {
    const argument = table.given[place];
    if (numbers === undefined) {
      si.push(single);
    } else if (typeof source[index] !== "number") {
      return refused("unreadable", argument.name, shown(source[index]), "a number is needed");
    } else {
      si.push(unit === undefined ? numbers[index] : unit.toSi(numbers[index]));
    }
  }
  try {
    valued(table.row, si);
  } catch (error) {
    return error;
  }
  return refusal();
}
