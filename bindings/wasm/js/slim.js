// The package with its module apart: `sugaring.wasm` is fetched from beside this file, or given.

import { start, startSync } from "./runtime.js";

export * from "./facade.js";

// Makes the functions ready; runs once, however often it is called.
export default function init(source = undefined) {
  return start(() => source ?? new URL("./sugaring.wasm", import.meta.url));
}

// The same without waiting; `source` is bytes or a compiled module.
export function initSync(source) {
  startSync(() => source);
}
