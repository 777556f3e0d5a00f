// Holds a build of the package against the stored vectors, in Node and in the browser alike.

const view = new DataView(new ArrayBuffer(8));

export function bits(text) {
  view.setBigUint64(0, BigInt(`0x${text}`));
  return view.getFloat64(0);
}

export function hex(number) {
  view.setFloat64(0, number);
  return view.getBigUint64(0).toString(16).padStart(16, "0");
}

// Bit for bit; every NaN is the same NaN.
export function same(one, other) {
  return Number.isNaN(one) ? Number.isNaN(other) : Object.is(one, other);
}

// `functions.txt`: each line as one call, and the lines of a function as columns.
export function judgeFunctions(sugaring, text) {
  const { catalogue, units, air } = sugaring;
  const rows = new Map(catalogue.functions().map((row) => [`${row.module}.${row.name}`, row]));
  const base = (dimension) => {
    const unit = catalogue.units().find((known) => known.dimension === dimension && known.numbers.join() === "0,1,1,0");
    return units[unit.word];
  };
  const plain = new Set(["brix", "ratio", "count"]);
  const report = { functions: 0, vectors: 0, lanes: 0, misses: [] };
  const miss = (line, seen) => report.misses.push(`${line}: ${seen}`);

  const byFunction = new Map();
  for (const line of text.split("\n")) {
    if (line === "" || line.startsWith("#")) continue;
    const [name, given, result] = line.split(" ");
    const entry = { line, given: given.split(",").map(bits), result };
    byFunction.set(name, [...(byFunction.get(name) ?? []), entry]);
  }
  for (const [name, lines] of byFunction) {
    const row = rows.get(name);
    if (row === undefined) {
      miss(name, "is not in the catalogue");
      continue;
    }
    report.functions += 1;
    const kinds = row.arguments.map(({ kind }) => kind);
    const call = (values, options) => {
      const [first, second, ...rest] = values;
      const keys = Object.fromEntries(rest.map((value, index) => [row.arguments[index + 2].name, value]));
      const all = { ...keys, ...options };
      const positional = values.length > 1 ? [first, second] : [first];
      const more = Object.keys(all).length ? [all] : [];
      const found = called(sugaring, row)(...positional, ...more);
      return plain.has(row.result) ? found : found.to(base(row.result));
    };
    const made = (kind, value) => {
      if (kind === "station_pressure") return air.StationPressure.measured(units.pa(value));
      return plain.has(kind) ? value : base(kind)(value);
    };

    for (const { line, given, result } of lines) {
      report.vectors += 1;
      try {
        const found = call(given.map((value, index) => made(kinds[index], value)));
        if (!same(found, result.startsWith("!") ? undefined : bits(result))) miss(line, hex(found));
      } catch (error) {
        const seen = `!${error.kind}:${error.argument}`;
        if (seen !== result) miss(line, `${seen} ${error.message}`);
      }
    }

    const columns = kinds.map((kind, index) => made(kind, Float64Array.from(lines, ({ given }) => given[index])));
    const found = call(columns, { on_error: "nan" });
    lines.forEach(({ line, result }, lane) => {
      report.lanes += 1;
      const wanted = result.startsWith("!") ? NaN : bits(result);
      if (!same(found[lane], wanted)) miss(line, `lane ${hex(found[lane])}`);
    });

    // One station pressure for a whole column.
    const station = kinds.indexOf("station_pressure");
    const groups = new Map();
    for (const entry of station < 0 ? [] : lines) {
      const key = hex(entry.given[station]);
      groups.set(key, [...(groups.get(key) ?? []), entry]);
    }
    for (const group of groups.values()) {
      const columns = kinds.map((kind, index) => {
        const column = Float64Array.from(group, ({ given }) => given[index]);
        return made(kind, index === station ? column[0] : column);
      });
      const found = call(columns, { on_error: "nan" });
      group.forEach(({ line, result }, lane) => {
        const wanted = result.startsWith("!") ? NaN : bits(result);
        if (!same(found[lane], wanted)) miss(line, `lane ${hex(found[lane])} of one station`);
      });
    }
  }
  return report;
}

// `calls.jsonl`: everything else. `stored(path)` gives the text of a file from the top folder.
export function judgeCalls(sugaring, text, stored) {
  const report = { calls: 0, misses: [] };
  for (const line of text.split("\n").filter((line) => line !== "")) {
    const wanted = JSON.parse(line);
    report.calls += 1;
    for (const answer of answers(sugaring, wanted, stored)) {
      const misses = differences(wanted, answer, stored);
      if (misses.length > 0) report.misses.push(`${wanted.call} ${JSON.stringify(wanted.args).slice(0, 200)}: ${misses.join("; ")}`);
    }
  }
  return report;
}

// `edges.jsonl`: every argument at and beyond its limits, alone and as the middle lane of a column.
export function judgeEdges(sugaring, text) {
  const report = { edges: 0, columns: 0, misses: [] };
  const lines = text.split("\n").filter((line) => line !== "").map((line) => JSON.parse(line));
  const miss = (line, misses) => report.misses.push(`${line.call} ${line.edge} of ${line.moved}: ${misses.join("; ")}`);
  let inside;
  for (const line of lines) {
    if (line.moved === null) inside = line;
    report.edges += 1;
    const misses = differences(line, attempt(() => asked(sugaring, line)));
    if (misses.length > 0) miss(line, misses);
    // A station pressure is no column, and neither is what makes one.
    if (line.moved === null || line.call.startsWith("StationPressure.") || line.args[line.moved].station) continue;
    report.columns += 1;
    const others = ({ args }) => JSON.stringify(args.filter((_, index) => index !== line.moved));
    // Where limits hang on the other arguments, the outer lanes lie at the edge too.
    const outer = others(inside) === others(line) ? inside : line;
    const lanes = [outer, line, outer];
    const { number, ...unit } = line.args[line.moved];
    const column = { ...unit, numbers: lanes.map(({ args }) => args[line.moved].number) };
    const wanted = { call: line.call, args: line.args.with(line.moved, column) };
    const index = lanes.findIndex(({ error }) => error !== undefined);
    if (index < 0) {
      wanted.result = lanes.map(({ result }) => result);
    } else {
      const count = lanes.filter(({ error }) => error !== undefined).length;
      wanted.error = { ...line.error, index, count, text: `${line.error.text} (index ${index}; ${count} of 3)` };
    }
    const found = differences(wanted, attempt(() => asked(sugaring, wanted)));
    const holes = { ...wanted, error: undefined, result: lanes.map(({ result }) => result ?? hex(NaN)) };
    found.push(...differences(holes, attempt(() => asked(sugaring, holes, { on_error: "nan" }))));
    if (found.length > 0) miss(line, ["as a column", ...found]);
  }
  return report;
}

// `asks.jsonl`: the functions that take or give more than numbers, through the facade.
export function judgeAsks(sugaring, text) {
  const report = { asks: 0, misses: [] };
  for (const line of text.split("\n").filter((line) => line !== "")) {
    const wanted = JSON.parse(line);
    report.asks += 1;
    const answer = attempt(() => data(sugaring, ofData(sugaring, wanted)));
    const misses = differences({ ...wanted, call: "ask" }, answer);
    if (misses.length > 0) report.misses.push(`${line.slice(0, 300)}: ${misses.join("; ")}`);
  }
  return report;
}

const SELF = new Set(["instrument", "propagated", "sampled", "line"]);
const OPTIONAL = new Set(["temperatures", "name", "offset", "zero", "resolution", "uncertainty", "glass_expansion", "span", "emergent_stem", "chart"]);

function ofData(sugaring, { ask, given }) {
  const [kind, method] = ask.split(".");
  const camel = method.replace(/_(\w)/g, (_, letter) => letter.toUpperCase());
  const values = Object.entries(given).map(([name, value]) => [name, built(sugaring, name, value)]);
  const room = sugaring[kind] ?? sugaring.instrument[kind] ?? sugaring.uncertainty[kind];
  // The methods of what is data take it first.
  const own = (name) => !(kind in sugaring) && (SELF.has(name) || (kind === "DensityChart" && name === "chart"));
  const whom = values.filter(([name]) => own(name)).map(([, value]) => value);
  const rest = values.filter(([name]) => !own(name));
  const first = rest.slice(0, 2).filter(([name]) => !OPTIONAL.has(name));
  const named = rest.filter((entry) => !first.includes(entry));
  const last = named.length > 0 ? [Object.fromEntries(named)] : [];
  if (kind === "uncertainty" && rest[0][0] === "function") {
    // The function of the table itself stands for its name.
    const { function: name, inputs, ...options } = Object.fromEntries(rest);
    const [module, own] = name.split(".");
    const row = sugaring.catalogue.functions().find((row) => row.module === module && row.name === own);
    return room[camel](sugaring[module][row.jsName], inputs, ...(Object.keys(options).length > 0 ? [options] : []));
  }
  return room[camel](...whom, ...first.map(([, value]) => value), ...last);
}

// The argument that a line has as data.
function built(sugaring, name, value) {
  if (name === "scale") return sugaring.units[value];
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((item) => built(sugaring, "", item));
  const { bits: text, unit, ...others } = value;
  if (text !== undefined) return bits(text);
  if (unit !== undefined && Object.keys(others).length === 1) return sugaring.units[unit](built(sugaring, "", others.value));
  const inner = Object.fromEntries(Object.entries(value).map(([key, part]) => [key, built(sugaring, key === "scale" ? "" : key, part)]));
  return name === "station" ? { ...inner, pressure: inner.pressure, uncertainty: inner.uncertainty } : inner;
}

// An answer as the line has it.
function data(sugaring, answer) {
  const { Quantity, StationPressure } = sugaring;
  if (answer instanceof StationPressure) {
    const { pressure, uncertainty, origin } = answer;
    const pa = (quantity) => ({ value: quantity.to(sugaring.units.pa), unit: "pa" });
    return { pressure: pa(pressure), uncertainty: pa(uncertainty), origin };
  }
  if (answer instanceof Quantity) {
    const word = sugaring.catalogue.units().find((unit) => unit.symbol === answer.unit).word;
    return { value: answer.value, unit: word };
  }
  if (typeof answer?.toSvg === "function") {
    const all = (of) => Object.fromEntries(["as_given", "us", "metric"].map((system) => [system, of(system)]));
    return { data: data(sugaring, { ...answer }), pages: all(answer.page), csv: answer.toCsv(), svgs: all(answer.toSvg) };
  }
  if (Array.isArray(answer)) return answer.map((item) => data(sugaring, item));
  if (typeof answer !== "object" || answer === null) return answer;
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, data(sugaring, value)]));
}

function* answers(sugaring, wanted, stored) {
  if (wanted.call !== "day.plan") {
    yield attempt(() => asked(sugaring, wanted));
    return;
  }
  const [given] = wanted.args;
  const json = typeof given === "string" ? given : stored(given.file);
  yield attempt(() => sugaring.day.plan(json));
  if (wanted.json !== false) yield attempt(() => sugaring.day.plan(JSON.parse(json)));
}

function attempt(ask) {
  try {
    return { answer: ask() };
  } catch (error) {
    return { error };
  }
}

function asked(sugaring, { call, args, unit }, options) {
  const { units } = sugaring;
  if (call === "unit") return args.map((word) => units[word]);
  if (call === "units.parse") {
    const found = units.parse(args[0]);
    const { symbol } = sugaring.catalogue.units().find(({ word }) => word === unit) ?? {};
    return { value: found.value, unit: found.unit, text: found.toString(), again: units.parse(found.toString()), symbol };
  }
  const values = args.map((argument) => made(sugaring, argument));
  const [module, name] = call.split(".");
  const camel = name.replace(/_(\w)/g, (_, letter) => letter.toUpperCase());
  const named = (keys) => Object.fromEntries(keys.map((key, index) => [key, values[index + 2]]));
  if (module === "StationPressure") {
    const rest = values.length > 2 ? [named(["air_temperature"])] : [];
    const { pressure, uncertainty, origin } = sugaring.air.StationPressure[camel](...values.slice(0, 2), ...rest);
    return { origin, pressure: pressure.to(units.pa), uncertainty: uncertainty.to(units.pa) };
  }
  const row = sugaring.catalogue.functions().find((known) => known.module === module && known.name === name);
  const keys = row.arguments.slice(2).map((argument) => argument.name);
  const last = keys.length || options ? [{ ...named(keys), ...options }] : [];
  const found = called(sugaring, row)(...values.slice(0, 2), ...last);
  if (typeof found === "number" || found instanceof Float64Array) return found;
  const base = sugaring.catalogue.units().find((unit) => unit.dimension === row.result && unit.numbers.join() === "0,1,1,0");
  return found.to(units[base.word]);
}

// The function behind a row; the density scales are called through their words.
function called({ sucrose, units, ...modules }, { module, name, jsName }) {
  if (module !== "scale") return { sucrose, ...modules }[module][jsName];
  if (name.startsWith("brix_from_")) return sucrose.brixFromScale;
  return (brix, options) => sucrose.onScale(brix, units[name], options);
}

function made({ air, units }, argument) {
  if (typeof argument === "string") return argument;
  if (argument.station !== undefined) return air.StationPressure.measured(units.pa(bits(argument.station)));
  const value = argument.number === undefined ? argument.numbers.map(bits) : bits(argument.number);
  return argument.unit === undefined ? value : units[argument.unit](value);
}

function differences(wanted, { answer, error }, stored) {
  const found = [];
  const hold = (what, seen, should) => {
    if (seen !== should) found.push(`${what} is ${seen}, not ${should}`);
  };
  if (wanted.error !== undefined) {
    if (error === undefined) return ["no error"];
    const { kind, argument, text, value, unit, range, hint, index, count } = wanted.error;
    hold("kind", error.kind, kind);
    hold("argument", error.argument, argument);
    hold("text", error.message, text);
    hold("value", hex(error.value + 0 === error.value ? error.value : NaN), hex(bits(value)));
    hold("unit", error.unit, unit);
    hold("range", error.range?.map(hex).join(), range?.join() ?? undefined);
    hold("hint", error.hint, hint ?? undefined);
    hold("index", error.index, index);
    hold("count", error.count, count);
    return found;
  }
  if (error !== undefined) return [`${error.name} ${error.message}`];
  switch (wanted.call) {
    case "unit": {
      const [word, si] = answer;
      wanted.given.forEach((text, index) => hold("si", hex(word(bits(text)).to(si)), wanted.si[index]));
      wanted.from.forEach((text, index) => hold("read", hex(si(bits(text)).to(word)), wanted.read[index]));
      return found;
    }
    case "units.parse": {
      hold("number", hex(answer.value), wanted.number);
      hold("symbol", answer.unit, answer.symbol);
      hold("text", answer.text, wanted.text);
      hold("number again", hex(answer.again.value), wanted.number);
      hold("symbol again", answer.again.unit, answer.symbol);
      return found;
    }
    case "ask": {
      const marked = (value) => {
        if (typeof value !== "object" || value === null) return value;
        if (Array.isArray(value)) return value.map(marked);
        if (value.bits !== undefined) return bits(value.bits);
        return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, marked(inner)]));
      };
      hold("answer", deepSame(marked(wanted.answer), answer, "answer"), "");
      return found;
    }
    case "day.plan": {
      hold("plan", deepSame(JSON.parse(stored(wanted.plan)), answer), "");
      for (const [system, path] of Object.entries(wanted.pages)) hold(`page ${system}`, answer.page(system), stored(path));
      return found;
    }
    default:
      if (wanted.pressure !== undefined) {
        hold("origin", answer.origin, wanted.origin);
        hold("pressure", hex(answer.pressure), wanted.pressure);
        hold("uncertainty", hex(answer.uncertainty), wanted.uncertainty);
      } else if (Array.isArray(wanted.result)) {
        hold("result", Array.from(answer, hex).join(), wanted.result.join());
      } else {
        hold("result", hex(answer), wanted.result);
      }
      return found;
  }
}

// The path of the first difference of two trees of data, "" where there is none; numbers by their bits.
export function deepSame(wanted, seen, path = "plan") {
  if (typeof wanted === "number") return typeof seen === "number" && same(wanted, seen) ? "" : path;
  if (typeof wanted !== "object" || wanted === null) return wanted === seen ? "" : path;
  if (typeof seen !== "object" || seen === null) return path;
  const keys = new Set([...Object.keys(wanted), ...Object.keys(seen)]);
  for (const key of keys) {
    const found = deepSame(wanted[key], seen[key], `${path}.${key}`);
    if (found !== "") return found;
  }
  return "";
}
