// Uncertainties: models of one's own, draws and their intervals, refusals; answers by name are judged by the vectors.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { SugaringError, air, instrument, sucrose, uncertainty } from "sugaring";
import { deg_c, deg_f, delta_c, kelvin, kg_per_m3, kpa } from "sugaring/units";

await init();
const { propagate, monteCarlo, combine, lineFit, probabilityAtLeast, Propagated, Sampled, Line } = uncertainty;
const inputs = { strength: { value: 66.9, uncertainty: 0.15 }, cup: { value: deg_c(25), uncertainty: delta_c(0.5) } };

function refused(call) {
  try {
    call();
  } catch (error) {
    assert.ok(error instanceof SugaringError, String(error));
    return error;
  }
  return assert.fail("nothing was refused");
}

test("a function here and a function of one's own agree to the bit", () => {
  const named = propagate(sucrose.density, inputs);
  const own = propagate((strength, cup) => sucrose.density(strength, cup), inputs);
  assert.equal(own.value.to(kg_per_m3), named.value.to(kg_per_m3));
  assert.ok(Math.abs(own.uncertainty.to(kg_per_m3) / named.uncertainty.to(kg_per_m3) - 1) < 1e-12);
  assert.deepEqual(own.contributions.map(({ name }) => name), ["strength", "cup"]);
  assert.ok(Object.isFrozen(own) && Object.isFrozen(own.contributions[0]));
  const { low, high } = Propagated.interval(named, 0.95);
  assert.equal((high.to(kg_per_m3) - low.to(kg_per_m3)).toFixed(3), (2 * 1.959963985 * named.uncertainty.to(kg_per_m3)).toFixed(3));
});

test("plain numbers, a shared cause, correlations", () => {
  const difference = propagate((a, b) => a - b, [
    { value: 3, uncertainty: 0.4, cause: "dial" },
    { value: 1, uncertainty: 0.4, cause: "dial" },
  ]);
  assert.deepEqual([difference.value, difference.uncertainty], [2, 0]);
  const sum = propagate((a, b) => a + b, [
    { name: "a", value: 3, uncertainty: 0.3 },
    { name: "b", value: 1, uncertainty: 0.4, correlation: { a: -0.5 } },
  ]);
  assert.ok(Math.abs(sum.uncertainty - Math.sqrt(0.09 + 0.16 - 0.12)) < 1e-15);
  assert.equal(propagate(() => 7, []).uncertainty, 0);
});

test("one thermometer for boiling water and the finish cancels its own offset", () => {
  const dial = (value) => ({ value: deg_f(value), uncertainty: delta_c(0.8), cause: "dial" });
  const strength = (water, finish) => sucrose.brixFromBoiling(finish, air.StationPressure.fromBoilingWater(water));
  const shared = propagate(strength, [dial(209.5), dial(217)]);
  const apart = propagate(strength, [dial(209.5), dial(217)].map(({ cause, ...own }) => own));
  assert.ok(shared.uncertainty < 0.1 && apart.uncertainty > 4, `${shared.uncertainty} ${apart.uncertainty}`);
});

test("draws have the bits of a seed, and intervals", () => {
  const one = monteCarlo((strength, cup) => sucrose.density(strength, cup), inputs, { seed: 5, samples: 2000 });
  const two = monteCarlo(sucrose.density, inputs, { seed: 5, samples: 2000 });
  assert.deepEqual([...one.values], [...two.values]);
  assert.equal(one.samples, 2000);
  assert.equal(one.values.length, 2000);
  const wide = Sampled.interval(one, 0.95);
  assert.equal(wide.low.to(kg_per_m3), one.low.to(kg_per_m3));
  const short = Sampled.shortest(one, 0.95);
  assert.equal(short.high.to(kg_per_m3), one.shortest_high.to(kg_per_m3));
  assert.equal(Sampled.probabilityAtLeast(one, one.low) > 0.97, true);
  assert.equal(JSON.parse(JSON.stringify(one)).values, undefined);
});

test("work can be watched and stopped", () => {
  const shares = [];
  monteCarlo(sucrose.density, inputs, { seed: 1, samples: 20000, progress: (share) => void shares.push(share) });
  assert.ok(shares.length > 10 && shares.length < 130 && shares.at(-1) === 1);
  const error = refused(() => monteCarlo((a) => a, [{ value: 1, uncertainty: 1 }], { seed: 1, samples: 20000, progress: () => false }));
  assert.equal(error.kind, "cancelled");
  assert.throws(() => monteCarlo(() => { throw new RangeError("mine"); }, [1], { seed: 1, samples: 100 }), RangeError);
  assert.throws(() => propagate(() => { throw new RangeError("mine"); }, [1]), RangeError);
});

test("readings combine, lines are fitted, limits weighed", () => {
  const hydrometer = instrument.Hydrometer.truth(instrument.Hydrometer.brix(deg_f(60)), 59, deg_f(211));
  const both = combine([hydrometer, { value: 66.5, uncertainty: 0.12 }]);
  assert.ok(both.agree && both.uncertainty < 0.12 && both.value > 66.5);
  const line = lineFit([0, 10, 20, 30], Float64Array.from([0.1, 0, 0.3, 0.4]), { x0: 20 });
  assert.equal(Line.at(line, 25).value.toFixed(3), "0.320");
  assert.ok(Math.abs(Line.correlation(line)) <= 1);
  assert.equal(probabilityAtLeast({ value: 67.1, uncertainty: 0.15 }, 66.9).toFixed(3), "0.909");
  const warm = combine([{ value: deg_c(20), uncertainty: delta_c(1) }, { value: kelvin(294.15), uncertainty: delta_c(1) }]);
  assert.equal(warm.value.to(deg_c).toFixed(6), "20.500000");
});

test("a station pressure brings its own uncertainty", () => {
  const station = air.StationPressure.measured(kpa(96.5));
  const own = propagate((station) => sucrose.boilingTemperature(66.9, station), { barometer: station });
  const named = propagate(sucrose.boilingTemperature, [66.9, station]);
  assert.equal(own.contributions[0].name, "barometer");
  assert.ok(Math.abs(own.uncertainty.to(delta_c) - named.uncertainty.to(delta_c)) < 1e-12);
});

test("what is odd is refused", () => {
  const texts = [
    [() => propagate(sucrose.density), "inputs is missing"],
    [() => propagate(sucrose.density, [66.9]), "temperature is missing"],
    [() => propagate(sucrose.density, [66.9, 20]), "temperature = 20 needs a unit"],
    [() => propagate("density", [66.9, deg_c(20)]), 'model = "density" cannot be read'],
    [() => propagate((x) => x, ["66.9"]), 'inputs[0] = "66.9" cannot be read'],
    [() => propagate((x) => x, [{ value: 1, uncertainty: -1 }]), "input 1.uncertainty = -1 is outside 0 to 1e300"],
    [() => propagate((x) => x, [{ value: 1, uncertainty: Infinity }]), "input 1.uncertainty = infinity is not a finite number"],
    [() => propagate((x) => x, [{ value: 1, uncertinty: 1 }]), 'inputs[0] has the unknown name "uncertinty"; nearest: uncertainty'],
    [() => propagate(() => "1", [1]), 'model = "1" cannot be read'],
    [() => propagate(() => NaN, [1]), "model = NaN is not a finite number"],
    [() => propagate((w) => sucrose.density(w, deg_c(20)), [{ value: 99, uncertainty: 0.1 }]), "brix = 99 °Bx is outside 0 to 85 °Bx"],
    [() => monteCarlo(sucrose.density, inputs, { samples: 1000 }), "seed is missing"],
    [() => monteCarlo(sucrose.density, inputs, { seed: 1, samples: 1 }), "samples = 1 is outside 100 to 10000000"],
    [() => combine(), "readings is missing"],
    [() => lineFit([1, 1, 1], [1, 2, 3], { x0: 0 }), "x = 1 does not fit a line"],
    [() => Sampled.interval({ value: 1 }, 0.95), "sampled.values is missing"],
  ];
  for (const [call, text] of texts) {
    const { message } = refused(call);
    assert.ok(message.startsWith(text), `${message} | ${text}`);
  }
});
