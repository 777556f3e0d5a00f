// Columns of station pressures: made by naming the kind of reading, taken where columns are.

import assert from "node:assert/strict";
import { before, test } from "node:test";

import init, { air, day, StationPressure, StationPressures, sucrose } from "sugaring";
import { bar_gauge, deg_c, hpa, kpa, metre } from "sugaring/units";

const READINGS = [96.5, 97.1, 101.3];
const oneByOne = () =>
  READINGS.map((reading) => sucrose.boilingTemperature(66.9, StationPressure.measured(kpa(reading))).to(deg_c));

before(() => init());

test("each reading of a column is a station", () => {
  for (const column of [READINGS, Float64Array.from(READINGS)]) {
    const stations = air.StationPressure.measured(kpa(column));
    assert.ok(stations instanceof StationPressures && stations instanceof air.StationPressures);
    assert.deepEqual([...sucrose.boilingTemperature(66.9, stations).to(deg_c)], oneByOne());
    const strengths = [0, 30, 66.9];
    const rises = sucrose.boilingPointElevation(strengths, stations).value;
    strengths.forEach((strength, lane) => {
      const one = sucrose.boilingPointElevation(strength, StationPressure.measured(kpa(READINGS[lane])));
      assert.equal(rises[lane], one.value);
    });
  }
  const stations = StationPressure.measured(hpa([965, 971]));
  assert.equal(sucrose.boilingTemperature(66.9, stations).value.length, 2);
  assert.equal(air.altimeterSetting(stations, metre(410)).value.length, 2);
});

test("the first bad reading is named", () => {
  const stations = StationPressure.measured(kpa([96.5, 965, 9.65]));
  assert.throws(() => sucrose.boilingTemperature(66.9, stations), {
    message: "station = 965 kPa is outside 50 to 110 kPa; 965 hPa is 96.5 kPa: write hpa(965) (index 1; 2 of 3)",
    argument: "station",
    index: 1,
  });
  const holes = sucrose.boilingTemperature(66.9, stations, { on_error: "nan" }).value;
  assert.deepEqual([...holes].map(Number.isNaN), [false, true, true]);
  assert.throws(() => sucrose.boilingTemperature([66.9], stations), { kind: "inconsistent", argument: "station" });
});

test("a column says what it is, and crosses to workers", () => {
  const stations = StationPressure.measured(kpa(READINGS));
  assert.deepEqual([stations.origin, stations.uncertainty.value], ["measured", 0.1]);
  assert.deepEqual(stations.pressure.to(kpa), READINGS);
  assert.ok(Object.isFrozen(stations));
  assert.deepEqual([...sucrose.boilingTemperature(66.9, structuredClone(stations)).to(deg_c)], oneByOne());
  assert.throws(() => new StationPressures(), TypeError);
});

test("one pressure is one pressure", () => {
  const stations = StationPressure.measured(kpa(READINGS));
  assert.throws(() => StationPressure.withUncertainty(stations, kpa(0.1)), { name: "SugaringError" });
  assert.throws(() => StationPressure.fromAltitude(metre([1, 2])), { name: "SugaringError" });
  assert.throws(() => StationPressure.measured(bar_gauge([0.97])), { kind: "wrong_dimension", argument: "pressure" });
  assert.throws(() => day.plan({ air: stations }), { name: "SugaringError" });
});
