// What should never come in: a typed error each, and the next call right.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { SugaringError, day, sucrose } from "sugaring";
import { deg_c, gal, kg_per_m3, litre, measured, metre, parse, price } from "sugaring/units";

// Before init, the words work and the functions say what is missing.
assert.throws(() => sucrose.density(66.9, deg_c(20)), { kind: "missing", argument: "init" });
assert.throws(() => day.plan({}), { kind: "missing", argument: "init" });
assert.equal(gal(40).to(litre).toFixed(1), "151.4");
await init();
await init();

const thrower = new Proxy({}, { get: () => { throw new TypeError("no"); }, ownKeys: () => { throw new TypeError("no"); } });
const getter = Object.defineProperty({}, "value", { enumerable: true, get: () => { throw new RangeError("gone"); } });
const revoked = (() => { const { proxy, revoke } = Proxy.revocable([], {}); revoke(); return proxy; })();
const cyclic = {};
cyclic.self = cyclic;
const deep = [...Array(200)].reduce((inner) => ({ inner }), {});
const ODD = {
  undefined: undefined,
  null: null,
  true: true,
  "a text": "20 °C",
  "a text without unit": "20",
  "an empty text": "",
  bigint: 20n,
  symbol: Symbol("20"),
  function: () => 20,
  class: class Twenty {},
  date: new Date(0),
  map: new Map([["value", 20]]),
  promise: Promise.resolve(20),
  boxed: new Number(20),
  dataview: new DataView(new ArrayBuffer(8)),
  bigints: new BigInt64Array(2),
  "a proxy that throws": thrower,
  "a getter that throws": getter,
  "a revoked proxy": revoked,
  cyclic,
  deep,
  "an empty object": {},
  "half a quantity": { value: 20 },
  "a wrong unit": { value: 20, unit: "kPa" },
  "an unknown unit": { value: 20, unit: "C" },
  "a key too many": { value: 20, unit: "°C", extra: 1 },
  "half a character": "\ud800",
  "a null character": "20\u0000",
  NaN: NaN,
  infinity: Infinity,
  "a list of texts": ["20 °C"],
  "a list of null": [null],
  "a list of true": [true],
  "nested lists": [[20]],
};

function refused(call, name) {
  try {
    call();
  } catch (error) {
    assert.ok(error instanceof SugaringError, `${name}: ${error?.stack ?? error}`);
    assert.notEqual(error.kind, "internal", `${name}: ${error.message}`);
    assert.ok(error.message.length > 0 && error.message.length < 800, name);
    JSON.stringify(error);
    return error;
  }
  return assert.fail(`${name} was taken`);
}

test("odd arguments of a function", () => {
  for (const [name, odd] of Object.entries(ODD)) {
    refused(() => sucrose.density(66.9, odd), `temperature: ${name}`);
    refused(() => sucrose.boilingTemperature(66.9, odd), `station: ${name}`);
    refused(() => sucrose.heatToWarm(2, deg_c(4), { to_temperature: odd }), `to_temperature: ${name}`);
    refused(() => sucrose.density(odd, deg_c(20)), `brix: ${name}`);
    refused(() => gal(odd).to(odd), `gal: ${name}`);
    if (odd !== undefined) {
      refused(() => sucrose.density(66.9, deg_c(20), name === "an empty object" ? { on_error: odd } : odd), `options: ${name}`);
    }
  }
  assert.equal(sucrose.density(66.9, deg_c(20)).to(kg_per_m3).toFixed(2), "1328.19");
});

test("what is wrong in a column is named with its place", () => {
  const error = refused(() => sucrose.density([2, null, 2, true], deg_c(20)), "holes");
  assert.deepEqual([error.index, error.count], [1, 2]);
  assert.match(error.message, /^brix = null cannot be read; .*\(index 1; 2 of 4\)$/);
  const holes = sucrose.density([2, null, 2, "2"], deg_c(20), { on_error: "nan" }).to(kg_per_m3);
  assert.deepEqual([...holes].map(Number.isNaN), [false, true, false, true]);
  const unequal = refused(() => sucrose.density([1, 2, 3], deg_c([4, 5])), "unequal");
  assert.equal(unequal.kind, "inconsistent");
  const sparse = [2];
  sparse.length = 3;
  assert.equal(refused(() => sucrose.density(sparse, deg_c(20)), "sparse").index, 1);
  refused(() => sucrose.density({ length: 2 ** 40 }, deg_c(20)), "array-like");
  refused(() => sucrose.density(new Array(2 ** 32 - 1), deg_c(20)), "huge");
});

test("unit words and texts", () => {
  for (const [name, odd] of Object.entries(ODD)) {
    if (typeof odd === "number" || /list/.test(name)) continue;
    refused(() => gal(odd), `gal: ${name}`);
    if (name !== "a text") refused(() => parse(odd), `parse: ${name}`);
    refused(() => price(odd, gal(1)), `price: ${name}`);
    refused(() => measured(litre(3), odd), `measured: ${name}`);
  }
  refused(() => parse("2,5 L"), "comma");
  refused(() => measured(litre(3), deg_c(3)), "uncertainty of another kind");
});

const least = () => ({
  air: { altitude: metre(410) },
  sap: [{ volume: litre(265), brix: 1.98, temperature: deg_c(4) }],
  evaporator: { pan: { length: metre(0.61), width: metre(1.22) } },
  target: { brix: 66.9 },
  samples: 0,
});

test("odd days", () => {
  for (const [name, odd] of Object.entries(ODD)) {
    refused(() => day.plan(odd), `inputs: ${name}`);
    if (odd === undefined) continue;
    const error = refused(() => day.plan({ ...least(), sap: [{ ...least().sap[0], volume: odd }] }), `volume: ${name}`);
    assert.match(error.argument, /^sap\[0\]\.volume/, `${name}: ${error.message}`);
    refused(() => day.plan({ ...least(), sap: odd }), `sap: ${name}`);
    if (typeof odd !== "string") refused(() => day.plan({ ...least(), title: odd }), `title: ${name}`);
    if (name !== "function" && name !== "class") refused(() => day.plan(least(), { progress: odd }), `progress: ${name}`);
  }
  assert.equal(day.plan({ ...least(), title: undefined, membrane: undefined }).totals.to_finish.brix.toFixed(1), "26.6");
  const error = refused(() => day.plan({ ...least(), sap: [{ ...least().sap[0], brix: NaN }] }), "NaN");
  assert.deepEqual([error.kind, error.argument], ["not_finite", "sap[0].brix"]);
  assert.equal(refused(() => day.plan({ ...least(), air: { altitude: getter } }), "getter").cause?.message, "gone");
});

test("frozen inputs, inherited keys and null prototypes", () => {
  const freeze = (data) => {
    if (typeof data === "object" && data !== null) Object.values(data).forEach(freeze);
    return Object.freeze(data);
  };
  assert.equal(day.plan(freeze(least())).samples, 0);
  const bare = Object.assign(Object.create(null), least());
  assert.equal(day.plan(bare).samples, 0);
  // Own keys count, as for JSON.
  assert.equal(refused(() => day.plan(Object.create(least())), "inherited").kind, "missing");
});

test("a plan can be watched and stopped", () => {
  const shares = [];
  const inputs = { ...least(), samples: 200 };
  day.plan(inputs, { progress: (share) => void shares.push(share) });
  assert.ok(shares.length > 10 && shares.length < 210 && shares.at(-1) <= 1);
  const error = refused(() => day.plan(inputs, { progress: (share) => share < 0.5 }), "stopped");
  assert.equal(error.kind, "cancelled");
  assert.throws(() => day.plan(inputs, { progress: () => { throw new RangeError("mine"); } }), { name: "RangeError", message: "mine" });
  // A callback may plan another day.
  assert.equal(day.plan(inputs, { progress: () => day.plan(least()).samples === 0 }).samples, 200);
});

test("a million calls take no memory", () => {
  const t = deg_c(20);
  const before = process.memoryUsage().arrayBuffers;
  for (let i = 0; i < 1e6; i++) sucrose.density(66.9, t);
  for (let i = 0; i < 1e4; i++) sucrose.density([1, 2], t, { on_error: "nan" });
  assert.ok(process.memoryUsage().arrayBuffers - before < 2 ** 22);
});
