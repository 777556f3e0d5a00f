// Instruments: frozen data, columns, and what a plan makes of them; the answers themselves are judged by the vectors.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { SugaringError, air, day, instrument } from "sugaring";
import { baume_20_20, deg_c, deg_f, gal, kelvin, kpa, metre } from "sugaring/units";

await init();
const { Hydrometer, Refractometer, Thermometer, Barometer } = instrument;

function refused(call) {
  try {
    call();
  } catch (error) {
    assert.ok(error instanceof SugaringError, String(error));
    return error;
  }
  return assert.fail("nothing was refused");
}

test("they are frozen data, and survive JSON", () => {
  const hydrometer = Hydrometer.brix(deg_f(60), { resolution: 0.5 });
  assert.ok(Object.isFrozen(hydrometer) && Object.isFrozen(hydrometer.hydrometer));
  const again = JSON.parse(JSON.stringify(hydrometer));
  assert.deepEqual(again.hydrometer.calibrated_at, { value: 60, unit: "°F" });
  assert.equal(Hydrometer.reading(again, 66.9, deg_f(211)), Hydrometer.reading(hydrometer, 66.9, deg_f(211)));
  assert.equal(Hydrometer.truth(structuredClone(again), 59.5, deg_f(211)).value.toFixed(1), "67.4");
});

test("columns have the bits of single values", () => {
  const hydrometer = Hydrometer.onScale(baume_20_20, deg_f(60));
  const shown = Float64Array.from({ length: 40 }, (_, index) => index * 0.9);
  const at = deg_c(Float64Array.from(shown, (_, index) => index * 2));
  const column = Hydrometer.truth(hydrometer, shown, at, { on_error: "nan" });
  shown.forEach((reading, index) => {
    const one = Hydrometer.truth(hydrometer, reading, kelvin(at.to(kelvin)[index]), { on_error: "nan" });
    assert.ok(Object.is(one.value, column.value[index]) && Object.is(one.uncertainty, column.uncertainty[index]));
  });
  const truths = Thermometer.truth(Thermometer.plain(), deg_c([99, 100]));
  assert.deepEqual([...truths.value.to(deg_c)].map((t) => t.toFixed(6)), ["99.000000", "100.000000"]);
  assert.deepEqual([...Thermometer.reading(Thermometer.plain(), deg_c([99, 100])).to(deg_c)].map(Math.round), [99, 100]);
});

test("the first refused lane is named", () => {
  const hydrometer = Hydrometer.brix(deg_f(60));
  const error = refused(() => Hydrometer.truth(hydrometer, [59, 300, 400], deg_f(211)));
  assert.equal(error.message, "reading = 300 °Bx is outside -15 to 100 °Bx (index 1; 2 of 3)");
  assert.equal(refused(() => Hydrometer.truth(hydrometer, [59, "300"], deg_f(211))).index, 1);
  refused(() => Hydrometer.truth(hydrometer, [59, 60], deg_f([211])));
  refused(() => Hydrometer.truth(hydrometer, 59, deg_f(211), { on_error: "none" }));
});

test("what is odd is refused", () => {
  const hydrometer = Hydrometer.brix(deg_f(60));
  const texts = [
    [() => Hydrometer.truth(), "instrument is missing"],
    [() => Hydrometer.truth(hydrometer), "reading is missing"],
    [() => Hydrometer.truth(hydrometer, 59), "temperature is missing"],
    [() => Hydrometer.truth(hydrometer, 59, 20), "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)"],
    [() => Hydrometer.truth({}, 59, deg_f(211)), "instrument is missing; one of hydrometer is needed"],
    [() => Hydrometer.truth(Thermometer.plain(), 59, deg_f(211)), 'instrument has the unknown name "thermometer"; known: hydrometer'],
    [() => Hydrometer.brix(deg_f(60), { ofset: 1 }), 'options has the unknown name "ofset"; nearest: offset'],
    [() => Hydrometer.onScale(gal, deg_f(60)), 'scale has the unknown name "gal"'],
    [() => Hydrometer.onScale("baume", deg_f(60)), 'scale has the unknown name "baume"'],
    [() => Thermometer.zeroedInBoilingWater(deg_f(211), kpa(96.5)), "station = 96.5 kPa is an absolute pressure"],
    [() => Refractometer.compensated(deg_c(10)), "high is missing"],
    [() => Hydrometer.twoPoint(hydrometer, { reading: 0 }, { reading: 1 }), "low.brix is missing"],
    [() => Hydrometer.truth(new Proxy({}, { get: () => { throw new Error("mine"); } }), 59, deg_f(211)), "instrument"],
  ];
  for (const [call, text] of texts) {
    const { message } = refused(call);
    assert.ok(message.startsWith(text), `${message} | ${text}`);
  }
});

test("a barometer gives a station pressure", () => {
  const parlour = Barometer.setToSeaLevel(metre(410));
  const station = air.StationPressure.measured(kpa(96.5));
  const shown = Barometer.reading(parlour, station);
  const truth = Barometer.truth(parlour, shown);
  assert.ok(truth instanceof air.StationPressure);
  assert.equal(truth.pressure.to(kpa).toFixed(6), "96.500000");
  assert.equal(truth.origin, "altimeter_setting");
});

test("a plan takes them as they are", () => {
  const plan = day.plan({
    air: { altitude: metre(410) },
    sap: [{ volume: "265 L", brix: 1.98, temperature: deg_c(4) }],
    evaporator: { pan: { length: "0.61 m", width: "1.22 m" } },
    finishing: { heat: "3 kW" },
    target: { brix: 66.9 },
    instruments: { "double paper": Hydrometer.onScale(baume_20_20, deg_f(60)) },
    samples: 0,
  });
  assert.equal(plan.marks[0].reading.toFixed(2), "31.99");
  assert.match(plan.page(), /Baumé scale 20\/20 °C for 60 °F/);
});
