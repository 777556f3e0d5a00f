// Options of a call: one object, by name, and none unknown.

import { isOurs } from "./quantity.js";
import { refused } from "./runtime.js";
import { shown } from "./shown.js";

export function picking(options, known) {
  if (options === undefined) return {};
  const needed = `keys such as ${known[0]} are needed`;
  const given = attempted(() => Object.prototype.toString.call(options) === "[object Object]", needed);
  if (!given || isOurs(options)) throw refused("unreadable", "options", shown(options), needed);
  const picked = attempted(() => ({ ...options }), needed);
  for (const key of Object.keys(picked)) {
    if (!known.includes(key)) throw refused("unknown_name", "options", key, known.join(" "));
  }
  return picked;
}

// Proxies and getters of the caller may throw.
function attempted(look, needed) {
  try {
    return look();
  } catch (cause) {
    throw refused("unreadable", "options", "something that throws", needed, cause);
  }
}
