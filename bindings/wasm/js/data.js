// An object as the text that the core reads. Walked here, so that what JSON would bend or drop is met with its path.
//
// Own enumerable keys count, as for JSON; a key with undefined is left out; keys that are symbols are not seen.

import { shown } from "./shown.js";
import { refused } from "./runtime.js";

const DEEPEST = 64;
const MOST = 1_000_000;
// Before a text that stands for a number JSON does not know; a text that begins so itself has it twice.
const MARK = "\u0001";
const NEEDED = "a number, a quantity, a text, a list or keys with values is needed";

// The text of `value`, whose errors name `path`; `skip` are keys of the outermost object that are passed over.
export function encoded(value, path = "", skip = undefined) {
  return encode(value, path, { ancestors: [], seen: 0 }, skip);
}

function encode(value, path, walk, skip) {
  if (++walk.seen > MOST) throw foreign(path, shown(value), `at most ${MOST} values in all is needed`);
  switch (typeof value) {
    case "string":
      return text(value);
    case "number":
      return number(value);
    case "boolean":
      return String(value);
    case "object":
      return value === null ? "null" : nested(value, path, walk, skip);
    case "undefined":
      return "null";
    default:
      throw foreign(path, shown(value), NEEDED);
  }
}

function nested(value, path, walk, skip) {
  if (walk.ancestors.includes(value)) throw refused("unreadable", path || "inputs", shown(value), "it contains itself");
  if (walk.ancestors.length >= DEEPEST) {
    throw refused("unreadable", path || "inputs", shown(value), `the data is nested more than ${DEEPEST} levels deep`);
  }
  walk.ancestors.push(value);
  const list = got(path, () => (Array.isArray(value) || ArrayBuffer.isView(value) ? value.length : undefined));
  const written = list === undefined ? keys(value, path, walk, skip) : items(value, list, path, walk);
  walk.ancestors.pop();
  return written;
}

function items(list, length, path, walk) {
  if (!(length <= MOST)) throw foreign(path, shown(list), `a list of at most ${MOST} items is needed`);
  const written = [];
  for (let index = 0; index < length; index++) {
    const inner = `${path}[${index}]`;
    written.push(encode(got(inner, () => list[index]), inner, walk));
  }
  return `[${written.join(",")}]`;
}

function keys(map, path, walk, skip) {
  const kind = got(path, () => Object.prototype.toString.call(map));
  if (kind !== "[object Object]") throw foreign(path, shown(map), NEEDED);
  const written = [];
  for (const key of got(path, () => Object.keys(map))) {
    if (skip?.has(key)) continue;
    const inner = path === "" ? key : `${path}.${key}`;
    const value = got(inner, () => map[key]);
    if (value !== undefined) written.push(`${wellFormed(key)}:${encode(value, inner, walk)}`);
  }
  return `{${written.join(",")}}`;
}

// What a getter or a proxy gives; what it throws becomes the cause of an error with the path.
function got(path, get) {
  try {
    return get();
  } catch (cause) {
    throw refused("unreadable", path || "inputs", "something that throws", "give plain data", cause);
  }
}

function foreign(path, what, needed) {
  return refused("unreadable", path || "inputs", what, needed);
}

function number(value) {
  if (Number.isFinite(value) && !Object.is(value, -0)) return String(value);
  return JSON.stringify(MARK + (Object.is(value, -0) ? "-0" : value));
}

function text(value) {
  return wellFormed(value.startsWith(MARK) ? MARK + value : value);
}

// Half of a character is none that UTF-8 can carry.
function wellFormed(value) {
  return JSON.stringify(value.toWellFormed?.() ?? value);
}
