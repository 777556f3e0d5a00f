// Density scales by their words, and headings of columns.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { sucrose } from "sugaring";
import { baume_20_20, baume_60_60_f, deg_f, heading, kg_per_m3, litre, measured, parse, relative_density_20_20 } from "sugaring/units";

await init();

test("the pair of the trade, there and back", () => {
  assert.equal(sucrose.onScale(66.9, baume_20_20).to(baume_20_20).toFixed(3), "36.025");
  assert.equal(sucrose.onScale(66.9, baume_60_60_f).to(baume_60_60_f).toFixed(2), "36.12");
  assert.equal(sucrose.brixFromScale(baume_20_20(36)).toFixed(2), "66.85");
  const marks = sucrose.onScale([0, 2, 66.9, 85], baume_60_60_f);
  assert.deepEqual(Array.from(sucrose.brixFromScale(marks), (x) => x.toFixed(9)), ["0.000000000", "2.000000000", "66.900000000", "85.000000000"]);
  const [mark] = [sucrose.onScale(66.9, baume_20_20)];
  assert.equal(sucrose.brixFromScale(structuredClone(mark)), sucrose.brixFromScale(mark));
  assert.equal(parse(`${mark}`).to(baume_20_20), mark.value);
  assert.deepEqual(measured(baume_20_20(36), 0.1), { value: 36, unit: "°Bé 20/20", uncertainty: 0.1 });
});

test("slips are refused with the core's texts", () => {
  const said = [
    [() => sucrose.brixFromScale(baume_20_20(66.9)), "value = 66.9 °Bé 20/20 is outside 0 to 44.9 °Bé 20/20; 66.9 °Bx is 36.03 °Bé 20/20: is it °Brix already?"],
    [() => sucrose.brixFromScale(kg_per_m3(1328)), "value = 1328 kg/m³ is a density; a degree Baumé (20/20 °C) is needed"],
    [() => sucrose.brixFromScale({ value: 1328, unit: "kg/m³" }), "value = 1328 kg/m³ is a density; a degree Baumé (20/20 °C) is needed"],
    [() => sucrose.brixFromScale(36), "value = 36 needs a unit: write baume_20_20(36)"],
    [() => sucrose.brixFromScale(), "value is missing"],
    [() => sucrose.onScale(90, baume_20_20), "brix = 90 °Bx is outside 0 to 85 °Bx"],
    [() => sucrose.brixFromScale(relative_density_20_20([1.1, 0.9])), "value = 0.9 SG 20/20 is outside 1 to 1.4486 SG 20/20 (index 1; 1 of 2)"],
  ];
  for (const [call, message] of said) assert.throws(call, { name: "SugaringError", message });
  assert.throws(() => sucrose.onScale(66.9, litre), { kind: "unknown_name", argument: "scale" });
  assert.throws(() => sucrose.onScale(66.9, "baume"), { kind: "unreadable" });
  assert.ok(Number.isNaN(sucrose.brixFromScale(relative_density_20_20([1.1, 0.9]), { on_error: "nan" })[1]));
});

test("headings name a column and its unit", () => {
  assert.deepEqual(heading("temp [°F]"), { name: "temp", unit: deg_f });
  assert.deepEqual(heading("note"), { name: "note", unit: undefined });
  assert.throws(() => heading("sap [gall]"), { kind: "unknown_unit", message: 'sap has the unknown unit "gall"; nearest: gal (US gallon), imp gal' });
  assert.throws(() => heading(3), { kind: "unreadable" });
});
