// One argument of a function, in all the forms in which a quantity comes.

import { encoded } from "./data.js";
import { fromElsewhere, heldOf, isOurs, numberOf, quantityOf, unitNamed, units } from "./quantity.js";
import { guarded, refusal, refused } from "./runtime.js";
import { isColumn } from "./shown.js";

// What figures of a plan carry beside value and unit.
export const RANGE = new Set(["low", "high", "median"]);

export class Argument {
  constructor(name, [dimension, , , plain]) {
    Object.assign(this, { name, dimension, plain: plain === 1 });
  }

  // The number in SI of the usual value; undefined where more must be looked at.
  quick(value) {
    if (typeof value === "number") return this.plain ? value : undefined;
    if (!isOurs(value)) return undefined;
    const held = heldOf(value);
    const number = numberOf(value);
    return held.dimension === this.dimension && typeof number === "number" ? held.toSi(number) : undefined;
  }

  // A number in SI, or a column with its unit; everything else is refused.
  read(value) {
    const si = this.quick(value);
    if (si !== undefined) return { si };
    if (value === undefined) throw refused("missing", this.name);
    return this.column(value) ?? { si: this.number(value) };
  }

  // A number in SI; columns are refused as well.
  single(value) {
    if (value === undefined) throw refused("missing", this.name);
    return this.quick(value) ?? this.number(value);
  }

  column(value) {
    if (this.plain && isColumn(value)) return { numbers: value };
    const quantity = isOurs(value) ? value : elsewhere(value);
    if (quantity === undefined) return undefined;
    const numbers = numberOf(quantity);
    const unit = heldOf(quantity);
    if (unit.dimension !== this.dimension) {
      const first = typeof numbers === "number" ? numbers : numbers[0];
      this.number({ value: typeof first === "number" ? first : 0, unit: unit.word });
    }
    return typeof numbers === "number" ? { si: unit.toSi(numbers) } : { numbers, unit };
  }

  // As the core reads data.
  number(value) {
    const json = encoded(value, this.name, RANGE);
    const read = guarded((core) => core.argument(this.name, this.dimension, json));
    if (read === undefined) throw refusal();
    return units[read[1]].toSi(read[0]);
  }
}

// A quantity of another copy of this package, or plain data whose value is a column.
export function elsewhere(data) {
  try {
    const quantity = fromElsewhere(data);
    if (quantity !== undefined) return quantity;
    const { value, unit } = data;
    const known = typeof unit === "string" && isColumn(value) ? unitNamed(unit) : undefined;
    return known && quantityOf(value, known);
  } catch {
    // Whatever it is, the core is asked next and says what is wrong.
    return undefined;
  }
}
