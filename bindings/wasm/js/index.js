// The package with its module inside: nothing to fetch, nothing to configure.

import { bytes } from "./inline.js";
import { start, startSync } from "./runtime.js";

export * from "./facade.js";

// Makes the functions ready; runs once, however often it is called.
export default function init(source = undefined) {
  return start(() => source ?? bytes());
}

// The same without waiting, where that is allowed: Node, workers, tests.
export function initSync(source = undefined) {
  startSync(() => source ?? bytes());
}
