// The one error: its text names the input, its value, what is wrong and a hint; its fields give the same as data.

const FIELDS = ["kind", "argument", "value", "unit", "range", "hint", "reference", "index", "count"];

export class SugaringError extends Error {
  constructor(message, fields = {}, options = undefined) {
    super(message, options);
    this.kind = fields.kind ?? "internal";
    this.argument = fields.argument ?? "";
    this.value = number(fields.value);
    this.unit = fields.unit ?? "";
    this.range = fields.range == null ? undefined : Object.freeze(fields.range.map(number));
    this.hint = fields.hint ?? undefined;
    this.reference = fields.reference ?? undefined;
    this.index = fields.index ?? undefined;
    this.count = fields.count ?? undefined;
  }

  // What structured cloning and JSON keep of an error; a number that JSON does not know goes as its name.
  toJSON() {
    const fields = { name: this.name, message: this.message };
    for (const key of FIELDS) {
      if (this[key] !== undefined) fields[key] = this[key];
    }
    fields.value = plain(this.value);
    if (this.range) fields.range = this.range.map(plain);
    return fields;
  }

  // The error that `toJSON` described, in another thread or at another time.
  static from(data) {
    return new SugaringError(String(data?.message ?? ""), data ?? {});
  }
}

Object.defineProperty(SugaringError.prototype, "name", { value: "SugaringError", configurable: true, writable: true });

// The same error with the place in its column: which lane was refused first, and how many of all.
export function inColumn(error, index, count, lanes) {
  const text = `${error.message} (index ${index}; ${count} of ${lanes})`;
  return new SugaringError(text, { ...error, index, count }, { cause: error.cause });
}

// Made here, because the core cannot tell any more.
export function internal(cause) {
  return new SugaringError("a fault in sugaring, please report it", { kind: "internal" }, { cause });
}

// Made here, because the core is not there yet.
export function notReady() {
  return new SugaringError("init is missing; write await init() before the first call", {
    kind: "missing",
    argument: "init",
    hint: "write await init() before the first call",
  });
}

function number(value) {
  return value == null ? NaN : Number(value);
}

function plain(value) {
  return Number.isFinite(value) ? value : String(value);
}
