// Where syrup is done: the numbers of the core, to the bit, and its refusals.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { air, finish } from "sugaring";
import { deg_c, delta_c, kelvin, kpa } from "sugaring/units";

await init();
const station = air.StationPressure.measured(kpa(96.5));

test("the day of the demo", () => {
  const done = finish.finishingPoint(66.9, station);
  // The same numbers stand in the tests of Rust and Python.
  assert.deepEqual(
    [done.temperature.to(kelvin), done.elevation.to(delta_c), done.water_boils_at.to(kelvin), done.uncertainty.to(delta_c)],
    [375.91873721720594, 4.155718884603004, 371.76301833260294, 0.06680367825163754],
  );
  assert.equal(done.temperature.to(deg_c).toFixed(1), "102.8");
  assert.ok(Object.isFrozen(done));
  const maple = finish.finishingPoint(66.9, structuredClone(station), { non_sucrose_rise: delta_c(0.2) });
  assert.ok(Math.abs(maple.temperature.to(kelvin) - done.temperature.to(kelvin) - 0.2) < 1e-12);
});

test("slips are refused with the core's texts", () => {
  const said = [
    [() => finish.finishingPoint(0.669, station), "target = 0.669 °Bx is outside 50 to 85 °Bx; 66.9 % is written 66.9"],
    [() => finish.finishingPoint(66.9, station, { non_sucrose_rise: delta_c(7) }), "non_sucrose_rise = 7 Δ°C is outside 0 to 1 Δ°C"],
    [() => finish.finishingPoint(NaN, station), "target = NaN is not a finite number"],
    [() => finish.finishingPoint(), "target is missing"],
    [() => finish.finishingPoint(66.9), "station is missing"],
  ];
  for (const [call, message] of said) assert.throws(call, { name: "SugaringError", message });
  assert.throws(() => finish.finishingPoint(66.9, kpa(96.5)), { argument: "station", kind: "wrong_dimension" });
  assert.throws(() => finish.finishingPoint(66.9, station, { rise: delta_c(1) }), { kind: "unknown_name" });
});
