// A number, or a column of them, with its unit; and the words that make and read it.

import { SugaringError } from "./error.js";
import { guarded, isReady, refusal } from "./runtime.js";
import { DIMENSIONS, UNITS } from "./surface.js";
import { isColumn, shown } from "./shown.js";

const BRAND = Symbol.for("sugaring.quantity");

// A unit as data; `plain` where a bare number needs none.
class Unit {
  constructor([word, symbol, dimension, zero, times, over, offset], index) {
    const [name, article, base, plain] = DIMENSIONS[dimension];
    Object.assign(this, { index, word, symbol, zero, times, over, offset, dimension: name, article, base, plain: plain === 1 });
    Object.freeze(this);
  }

  toSi(x) {
    return ((x - this.zero) * this.times) / this.over + this.offset;
  }

  fromSi(x) {
    return ((x - this.offset) * this.over) / this.times + this.zero;
  }
}

export const units = UNITS.map((row, index) => new Unit(row, index));

const named = new Map(units.flatMap((unit) => [[unit.symbol, unit], [unit.word, unit]]));
named.set("", named.get("fraction"));

// The unit of a symbol or a word.
export function unitNamed(text) {
  return named.get(text);
}

// The SI unit of a unit's dimension.
export function baseOf(unit) {
  return units[unit.base];
}

let numberOf, heldOf, isOurs;

export class Quantity {
  #number;
  #held;
  #shown;

  // `number` in the unit `held`, read as `shown` where nothing else is asked for.
  constructor(number, held, shown) {
    if (!(held instanceof Unit)) throw new TypeError("a quantity is made by a unit word");
    this.#number = number;
    this.#held = held;
    this.#shown = shown;
    if (typeof number === "number") {
      this.value = held === shown ? number : shown.fromSi(held.toSi(number));
    } else if (held === shown) {
      this.value = number;
    } else {
      // A column is converted when somebody looks.
      let value;
      const get = () => (value ??= converted(number, held, shown));
      Object.defineProperty(this, "value", { get, enumerable: true });
    }
    this.unit = shown.symbol;
    Object.freeze(this);
  }

  // The number in another unit of its dimension.
  to(word) {
    const unit = unitOf(word);
    const held = this.#held;
    if (unit === held) return this.#number;
    if (unit.dimension !== held.dimension) throw wrongDimension(this, unit);
    if (unit === this.#shown) return this.value;
    return typeof this.#number === "number" ? unit.fromSi(held.toSi(this.#number)) : converted(this.#number, held, unit);
  }

  toString() {
    const value = this.value;
    const text = typeof value === "number" ? digits(value) : `[${Array.from(value, digits).join(", ")}]`;
    return this.unit === "" ? text : `${text} ${this.unit}`;
  }

  toJSON() {
    const value = this.value;
    return { value: typeof value === "number" ? value : Array.from(value), unit: this.unit };
  }

  // Text is given; a number would drop the unit.
  [Symbol.toPrimitive](hint) {
    if (hint === "string") return this.toString();
    const text = `${this} is ${this.#shown.article}`;
    const needed = `a bare number is needed: write .to(${this.#shown.word})`;
    throw new SugaringError(`${text}; ${needed}`, { kind: "wrong_dimension", hint: needed, unit: this.unit });
  }

  // For another copy of this package, whose class is not ours: the number in SI.
  get [BRAND]() {
    return typeof this.#number === "number" ? this.#held.toSi(this.#number) : converted(this.#number, this.#held, baseOf(this.#held));
  }

  static {
    numberOf = (quantity) => quantity.#number;
    heldOf = (quantity) => quantity.#held;
    isOurs = (value) => typeof value === "object" && value !== null && #number in value;
  }
}

export { heldOf, isOurs, numberOf };

// A result of the core: `number` in SI, read in `shown`.
export function result(number, shown) {
  return new Quantity(number, units[shown.base], shown);
}

// `value`, a number or a column, in `unit`.
export function quantityOf(value, unit) {
  return new Quantity(value, unit, unit);
}

// A quantity of another copy of this package, with the very bits of its number.
export function fromElsewhere(value) {
  const si = value[BRAND];
  const unit = si === undefined ? undefined : unitNamed(value.unit);
  return unit === undefined ? undefined : new Quantity(si, baseOf(unit), unit);
}

const words = new WeakMap();

// A unit word: makes a quantity of a number, and reads one.
export function word(index) {
  const unit = units[index];
  const make = (value) => {
    if (typeof value === "number" || isColumn(value)) return new Quantity(value, unit, unit);
    throw noNumber(unit.word, value);
  };
  Object.defineProperties(make, {
    name: { value: unit.word },
    symbol: { value: unit.symbol, enumerable: true },
    dimension: { value: unit.dimension, enumerable: true },
    toString: { value: () => unit.word },
  });
  words.set(make, unit);
  return Object.freeze(make);
}

// The unit behind a word.
export function unitOf(given) {
  const unit = words.get(given) ?? (given instanceof Unit ? given : undefined) ?? elsewhere(given);
  if (unit === undefined) throw noUnit(given);
  return unit;
}

// A word of another copy of this package.
function elsewhere(given) {
  return typeof given === "function" ? named.get(given.name) : undefined;
}

function converted(numbers, from, to) {
  const out = new Float64Array(numbers.length);
  for (let i = 0; i < out.length; i++) out[i] = typeof numbers[i] === "number" ? to.fromSi(from.toSi(numbers[i])) : NaN;
  return out;
}

// As the core writes numbers: the shortest digits that read back.
export function digits(value) {
  if (typeof value !== "number") return shown(value);
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (Number.isFinite(size) && (size < 1e-6 || size >= 1e15)) return value.toExponential().replace("e+", "e");
  return Number.isNaN(value) ? "NaN" : Number.isFinite(value) ? String(value) : value > 0 ? "inf" : "-inf";
}

// Whether it is a quantity, also one of another copy of this package.
export function isQuantity(value) {
  return isOurs(value) || (typeof value === "object" && value !== null && BRAND in value);
}

// Unit words work before the core is there; what they refuse is then told here, as the core would.
export function wrongDimension(quantity, unit) {
  const held = units.find((known) => known.symbol === quantity.unit);
  const value = quantity.value;
  if (isReady() && typeof value === "number") {
    return guarded((core) => {
      core.wrong_dimension(held.index, value, unit.dimension);
      return refusal();
    });
  }
  const hint = `${unit.article} is needed`;
  const fields = { kind: "wrong_dimension", value, unit: quantity.unit, hint };
  return new SugaringError(`${typeof value === "number" ? quantity : held.symbol} is ${held.article}; ${hint}`, fields);
}

export function noNumber(argument, value) {
  const hint = "a number is needed";
  const fields = { kind: "unreadable", argument, hint };
  return new SugaringError(`${argument} = ${shown(value)} cannot be read; ${hint}`, fields);
}

function noUnit(value) {
  const hint = "a unit word such as litre is needed";
  const fields = { kind: "unreadable", argument: "unit", hint };
  return new SugaringError(`unit = ${shown(value)} cannot be read; ${hint}`, fields);
}
