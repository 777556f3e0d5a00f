// The one instance of the module: started once, replaced after a trap.

import * as glue from "./glue.js";
import { SugaringError, internal, notReady } from "./error.js";
import { ROWS, UNITS } from "./surface.js";

let ready = false;
let starting;

// Compiles and starts the module that `source()` gives, once; a start that failed may be tried again.
export function start(source) {
  starting ??= (async () => {
    try {
      const module = await compiled(await source());
      if (!ready) run(module);
    } catch (error) {
      starting = undefined;
      throw error;
    }
  })();
  return starting;
}

// The same without waiting; `source()` gives bytes or a compiled module.
export function startSync(source) {
  if (ready) return;
  const given = source();
  run(given instanceof WebAssembly.Module ? given : new WebAssembly.Module(given));
}

async function compiled(source) {
  if (source instanceof WebAssembly.Module) return source;
  if (typeof Response === "function" && source instanceof Response) {
    if (!source.ok) throw new SugaringError(`source = ${source.status} cannot be read`, { kind: "unreadable", argument: "source" });
    return WebAssembly.compile(await source.arrayBuffer());
  }
  if (typeof source === "string" || source instanceof URL) return WebAssembly.compile(await fetched(source));
  return WebAssembly.compile(source);
}

async function fetched(address) {
  const url = new URL(address, globalThis.location?.href);
  // A file on disk: fetch does not take it, and an import of node's modules would trouble bundlers.
  const files = url.protocol === "file:" && globalThis.process?.getBuiltinModule?.("node:fs/promises");
  if (files) return files.readFile(url);
  const response = await fetch(url);
  if (!response.ok) throw new SugaringError(`source = ${response.status} cannot be read`, { kind: "unreadable", argument: "source" });
  return response.arrayBuffer();
}

function run(module) {
  glue.initSync({ module });
  const rows = ROWS.map(([module, name]) => `${module}.${name}`).join(" ");
  const words = UNITS.map(([word]) => word).join(" ");
  if (glue.rows() !== rows || glue.units() !== words) {
    throw new SugaringError("the module is of another build than its JavaScript", { kind: "internal" });
  }
  ready = true;
}

// Whether the core can be asked.
export function isReady() {
  return ready;
}

// What `work` answers from the core; a trap costs the instance, not the page.
export function guarded(work) {
  if (!ready) throw notReady();
  try {
    return work(glue);
  } catch (fault) {
    throw fallen(fault);
  }
}

// For the hot path: the core's functions, behind a check that costs nothing.
export function core() {
  if (!ready) throw notReady();
  return glue;
}

// What came out of a call to the core: its own refusals pass; all else is a trap, and the instance is gone.
export function fallen(fault) {
  if (fault instanceof SugaringError) return fault;
  forget();
  glue.__wbg_reset_state();
  return internal(fault);
}

// The error of a call that answered NaN or nothing.
export function refusal() {
  const text = glue.last_error();
  if (text === undefined) return internal();
  const fields = JSON.parse(text);
  return new SugaringError(fields.message, fields);
}

// A slip that was met here, in the core's words.
export function refused(what, argument, shown = "", other = "", cause = undefined) {
  return guarded(() => {
    glue.refuse(what, argument, shown, other);
    const error = refusal();
    if (cause !== undefined) error.cause = cause;
    return error;
  });
}

// The core's buffer: four columns of arguments and one of results, as views that are made anew when memory moved.
let views;

export function columns() {
  if (views === undefined || views.out.length === 0) {
    const address = glue.buffer();
    const lanes = glue.lanes();
    const memory = glue.linear_memory();
    const view = (index) => new Float64Array(memory.buffer, address + index * lanes * 8, lanes);
    views = { lanes, given: [view(0), view(1), view(2), view(3)], out: view(4) };
  }
  return views;
}

function forget() {
  views = undefined;
}
