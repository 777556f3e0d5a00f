// How a value from outside looks in an error; nothing here lets what is odd about it through.

const LONGEST = 40;

// Whether it is a column: an array, or a typed array of numbers.
export function isColumn(value) {
  if (isList(value)) return true;
  return ArrayBuffer.isView(value) && !(value instanceof DataView) && !isBig(value);
}

// A proxy that was revoked throws even here.
function isList(value) {
  try {
    return Array.isArray(value);
  } catch {
    return false;
  }
}

function isBig(value) {
  return value instanceof BigInt64Array || value instanceof BigUint64Array;
}

export function shown(value) {
  try {
    return told(value);
  } catch {
    return "something that throws";
  }
}

function told(value) {
  switch (typeof value) {
    case "string":
      return `"${clipped(value)}"`;
    case "bigint":
      return `${clipped(String(value))}n`;
    case "symbol":
      return "a symbol";
    case "function":
      return "a function";
    case "object":
      break;
    default:
      return String(value);
  }
  if (value === null) return "null";
  if (Array.isArray(value)) return value.length === 0 ? "[]" : "[…]";
  const kind = Object.prototype.toString.call(value).slice(8, -1);
  if (kind !== "Object") return `${/^[AEIOU]/.test(kind) ? "an" : "a"} ${clipped(kind)}`;
  const [key] = Object.keys(value);
  return key === undefined ? "{}" : `{"${clipped(key)}": …}`;
}

function clipped(text) {
  const points = Array.from(text.slice(0, 2 * LONGEST));
  const line = points.slice(0, LONGEST).map((point) => (/\p{Cc}/u.test(point) ? " " : point));
  return line.join("") + (points.length > LONGEST || text.length > 2 * LONGEST ? "…" : "");
}
