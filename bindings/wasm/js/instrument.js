// Instruments: frozen data that a plan takes as it is; what they show, what that means, and the mark to look for.

import { ask } from "./ask.js";
import { through } from "./instrument_columns.js";
import { camelCase } from "./functions.js";
import { picking } from "./options.js";
import { unitOf } from "./quantity.js";
import { refused } from "./runtime.js";
import { shown } from "./shown.js";
import { stationFromData } from "./station_pressure.js";

const MARKS = ["offset", "resolution", "uncertainty"];
const FLOAT = ["glass_expansion", "span", ...MARKS];
const PRISM = ["zero", "resolution", "uncertainty"];
const READ = ["emergent_stem", "resolution", "uncertainty"];

// A constructor of `kind`: what is given in order (the first two), and by name.
function making(kind, name, order, named) {
  return [camelCase(name), (...values) => ask(`${kind}.${name}`, given(values, order, named))];
}

// A method of `kind`: the instrument, then as a constructor.
function method(kind, name, order, named = []) {
  const call = (instrument, ...values) => ask(`${kind}.${name}`, { instrument: held(instrument), ...given(values, order, named) });
  return [camelCase(name), call];
}

// The same that takes columns.
function column(kind, name, order) {
  const call = (instrument, ...values) => {
    const { on_error, ...picked } = given(values, order, ["on_error"]);
    return through(kind, name, held(instrument), picked, on_error);
  };
  return [name, call];
}

function given(values, order, named) {
  const positional = order.slice(0, 2);
  const options = [...order.slice(2), ...named];
  const picked = options.length > 0 ? picking(values[positional.length], options) : {};
  return { ...Object.fromEntries(positional.map((name, index) => [name, worded(name, values[index])])), ...picked };
}

// A unit word stands for its scale.
function worded(name, value) {
  return name === "scale" && typeof value === "function" ? unitOf(value).word : value;
}

function held(instrument) {
  if (instrument === undefined) throw refused("missing", "instrument");
  return instrument;
}

const group = (...entries) => Object.freeze(Object.fromEntries(entries));

export const Hydrometer = group(
  making("Hydrometer", "brix", ["calibrated_at"], FLOAT),
  making("Hydrometer", "on_scale", ["scale", "calibrated_at"], FLOAT),
  making("Hydrometer", "density", ["calibrated_at"], FLOAT),
  method("Hydrometer", "zeroed", ["reading", "brix", "temperature"]),
  method("Hydrometer", "two_point", ["low", "high"]),
  column("Hydrometer", "truth", ["reading", "temperature"]),
  column("Hydrometer", "reading", ["brix", "temperature"]),
);

export const Refractometer = group(
  making("Refractometer", "compensated", ["low", "high"], PRISM),
  making("Refractometer", "uncompensated", [], PRISM),
  method("Refractometer", "zeroed_in_water", ["reading", "prism"]),
  method("Refractometer", "set_to_zero_at", ["prism"]),
  method("Refractometer", "two_point", ["low", "high"]),
  column("Refractometer", "truth", ["reading", "prism"]),
  column("Refractometer", "reading", ["brix", "prism"]),
);

export const Thermometer = group(
  making("Thermometer", "plain", [], ["offset", ...READ]),
  making("Thermometer", "zeroed_in_boiling_water", ["reading", "station"], READ),
  making("Thermometer", "two_point", ["ice", "boiling", "station"], READ),
  making("Thermometer", "line", ["line"], READ),
  column("Thermometer", "truth", ["reading"]),
  column("Thermometer", "reading", ["temperature"]),
);

// The card of marks: frozen data with its pages, its CSV and its SVG.
export function card(target, instrument, options) {
  const { temperatures, name, chart } = picking(options, ["temperatures", "name", "chart"]);
  const { data, pages, csv, svgs } = ask("instrument.card", { target, instrument: held(instrument), temperatures, name, chart });
  const made = { ...data };
  const of = (written) => (system = "as_given") => bySystem(written, system);
  Object.defineProperties(made, {
    page: { value: of(pages) },
    toSvg: { value: of(svgs) },
    toCsv: { value: () => csv },
    toString: { value: () => pages.as_given },
  });
  return Object.freeze(made);
}

function bySystem(written, system) {
  if (typeof system === "string" && Object.hasOwn(written, system)) return written[system];
  if (typeof system === "string") throw refused("unknown_name", "system", system, Object.keys(written).join(" "));
  throw refused("unreadable", "system", shown(system), `one of ${Object.keys(written).join(", ")} is needed`);
}

// The density chart of a jurisdiction: frozen data.
export function chart(jurisdiction) {
  return ask("instrument.chart", { jurisdiction });
}

export const DensityChart = group([
  "mark",
  (chart, temperature) => {
    if (chart === undefined) throw refused("missing", "chart");
    return ask("DensityChart.mark", { chart, temperature });
  },
]);

const truthOf = method("Barometer", "truth", ["reading"])[1];

export const Barometer = group(
  making("Barometer", "station", [], MARKS),
  making("Barometer", "set_to_sea_level", ["altitude"], MARKS),
  method("Barometer", "zeroed", ["reading", "station"]),
  method("Barometer", "reading", ["station"]),
  ["truth", (instrument, reading) => stationFromData(truthOf(instrument, reading))],
);
