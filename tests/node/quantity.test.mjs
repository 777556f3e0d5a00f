// Quantities: frozen, read with a unit, plain after a journey.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { Quantity, StationPressure, air, day, sucrose } from "sugaring";
import { deg_c, deg_f, delta_c, delta_f, gal, isQuantity, kg_per_m3, kpa, litre, measured, parse, percent, price, psi, psi_gauge, quantity } from "sugaring/units";

await init();

test("number and unit stay as given", () => {
  assert.equal(gal(40).to(gal), 40);
  assert.equal(gal(40).to(litre).toFixed(4), "151.4165");
  assert.equal(`${gal(40)}`, "40 gal");
  assert.equal(JSON.stringify({ tank: gal(40) }), '{"tank":{"value":40,"unit":"gal"}}');
  assert.deepEqual({ ...gal(40) }, { value: 40, unit: "gal" });
  assert.ok(gal(40) instanceof Quantity && isQuantity(gal(40)) && !isQuantity({ value: 40, unit: "gal" }));
});

test("a quantity cannot be changed, added or compared", () => {
  const tank = gal(40);
  assert.ok(Object.isFrozen(tank));
  assert.throws(() => {
    "use strict";
    tank.value = 41;
  }, TypeError);
  for (const slip of [() => tank + 1, () => tank < 41, () => +tank, () => tank * 2, () => Math.max(tank)]) {
    assert.throws(slip, { kind: "wrong_dimension" });
  }
  assert.throws(() => tank.to(kpa), { kind: "wrong_dimension", message: "40 gal is a volume; an absolute pressure is needed" });
  assert.throws(() => new Quantity(40, "gal", "gal"), TypeError);
});

test("a journey through structured cloning or JSON keeps the meaning", () => {
  for (const travelled of [structuredClone(deg_c(20)), JSON.parse(JSON.stringify(deg_c(20)))]) {
    assert.deepEqual(travelled, { value: 20, unit: "°C" });
    assert.equal(sucrose.density(66.9, travelled).to(kg_per_m3), sucrose.density(66.9, deg_c(20)).to(kg_per_m3));
    assert.equal(quantity(travelled).to(deg_f), 68);
  }
  const station = StationPressure.fromAltitude(parse("410 m"));
  const travelled = structuredClone(station);
  assert.equal(travelled.origin, "altitude");
  assert.equal(sucrose.boilingTemperature(66.9, travelled).to(deg_c), sucrose.boilingTemperature(66.9, station).to(deg_c));
});

test("a result keeps the very bits of the core, whatever it is shown in", () => {
  const station = air.StationPressure.measured(kpa(96.5));
  const boils = sucrose.boilingTemperature(66.9, station);
  assert.equal(boils.unit, "°C");
  assert.equal(sucrose.brixFromBoiling(boils, station).toFixed(9), "66.900000000");
  assert.ok(Object.is(boils.value, boils.to(deg_c)));
});

test("an uncertainty is written in steps of the value's unit", () => {
  const sizes = [
    [measured(deg_f(60), delta_c(0.5)), 0.9],
    [measured(deg_f(60), delta_f(0.7)), 0.7],
    [measured(deg_c(20), delta_f(0.9)), 0.5],
    [measured(psi_gauge(110), psi(2)), 2],
    [measured(gal(40), gal(0.3)), 0.3],
    [measured(percent(35), 0.01), 1],
    [measured(66.9, 0.1), 0.1],
  ];
  for (const [{ uncertainty }, wanted] of sizes) assert.equal(uncertainty, wanted);
});

test("figures of a plan are quantities again", () => {
  const plan = day.plan({
    air: { altitude: "410 m" },
    sap: [{ volume: measured(litre(265), litre(3)), brix: measured(1.98, 0.1), temperature: "4 °C" }],
    evaporator: { pan: { length: "0.61 m", width: "1.22 m" }, fuel: { price: price(280, parse("1 cord")) } },
    target: { brix: 66.9 },
    samples: 50,
  });
  const { syrup: volume } = plan.totals.to_finish;
  assert.ok(volume.low < volume.value && volume.value < volume.high);
  assert.equal(quantity(volume).to(litre), volume.value);
  assert.equal(plan.inputs.sap[0].volume.uncertainty, 3);
  assert.ok(Object.isFrozen(plan) && Object.isFrozen(plan.totals.hours));
  assert.deepEqual(structuredClone({ ...plan }), JSON.parse(JSON.stringify(plan)));
  assert.match(plan.page("us"), /gal/);
});

test("columns come as they are used", () => {
  const same = [...sucrose.density([0, 30, 60], deg_c(20)).to(kg_per_m3)];
  const wide = new Float64Array([9, 0, 30, 60, 9]);
  for (const column of [Float64Array.of(0, 30, 60), Uint8Array.of(0, 30, 60), wide.subarray(1, 4), Object.freeze([0, 30, 60])]) {
    assert.deepEqual([...sucrose.density(column, deg_c(20)).to(kg_per_m3)], same);
    assert.deepEqual([...sucrose.density(column, deg_c([20, 20, 20])).to(kg_per_m3)], same);
  }
  const reversed = Float64Array.of(60, 30, 0).reverse();
  assert.deepEqual([...sucrose.density(reversed, deg_f([68, 68, 68])).to(kg_per_m3)], same);
  assert.equal(sucrose.density([], deg_c(20)).to(kg_per_m3).length, 0);
  const long = new Float64Array(100_001).fill(30);
  const found = sucrose.density(long, deg_c(20)).to(kg_per_m3);
  assert.ok(found.every((rho) => rho === same[1]) && found.length === long.length);
  const holes = sucrose.brixFromDensity(kg_per_m3([1000, 3000, 1100]), deg_c(20), { on_error: "nan" });
  assert.deepEqual([...holes].map(Number.isNaN), [false, true, false]);
});
