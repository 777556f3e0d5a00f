// The day's plan: an object, or JSON, in; frozen data with its pages out.

import { encoded } from "./data.js";
import { picking } from "./options.js";
import { guarded, refusal, refused } from "./runtime.js";
import { shown } from "./shown.js";

const SYSTEMS = ["as_given", "us", "metric"];

export function plan(inputs, options) {
  const { progress } = picking(options, ["progress"]);
  if (progress !== undefined && typeof progress !== "function") {
    throw refused("unreadable", "progress", shown(progress), "a function is needed");
  }
  if (inputs === undefined) throw refused("missing", "inputs");
  const own = typeof inputs !== "string";
  const json = own ? encoded(inputs) : inputs;
  const watch = progress && watched(progress);
  const made = guarded((core) => core.day_plan(json, own, watch));
  if (watch?.thrown) throw watch.thrown.error;
  if (made === undefined) throw refusal();
  return withPages(made);
}

// What the callback throws must not pass through the core; it is kept, and the work stopped.
function watched(progress) {
  const watch = (share) => {
    try {
      return progress(share);
    } catch (error) {
      watch.thrown = { error };
      return false;
    }
  };
  return watch;
}

function withPages([json, ...pages]) {
  const plan = JSON.parse(json);
  const page = (system = "as_given") => {
    const index = SYSTEMS.indexOf(system);
    if (index < 0) throw unknownSystem(system);
    return pages[index];
  };
  Object.defineProperties(plan, {
    page: { value: page },
    toString: { value: () => pages[0] },
  });
  return frozen(plan);
}

function unknownSystem(system) {
  if (typeof system === "string") return refused("unknown_name", "system", system, SYSTEMS.join(" "));
  return refused("unreadable", "system", shown(system), `one of ${SYSTEMS.join(", ")} is needed`);
}

function frozen(data) {
  for (const value of Object.values(data)) {
    if (typeof value === "object" && value !== null) frozen(value);
  }
  return Object.freeze(data);
}
