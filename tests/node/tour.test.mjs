// The tour's ten lines and its slips, as a user types them.

import assert from "node:assert/strict";
import { test } from "node:test";

import init, { SugaringError, StationPressure, air, catalogue, day, sucrose, units } from "sugaring";
import { bar_gauge, deg_c, kg_per_m3, kpa, litre, metre } from "sugaring/units";

await init();

const says = (call, kind, text) => {
  assert.throws(call, (error) => {
    assert.ok(error instanceof SugaringError && error instanceof Error, String(error));
    assert.equal(error.name, "SugaringError");
    assert.equal(error.message, text);
    assert.equal(error.kind, kind);
    return true;
  });
};

const demo = () => ({
  air: { station_pressure: "96.5 kPa", altitude: "410 m" },
  sap: [
    { name: "upper tank", volume: "170 L", brix: 1.8, temperature: "3 °C" },
    { name: "lower tank", volume: "95 L", brix: 2.3, temperature: "5 °C" },
  ],
  membrane: {
    element: { flow: "0.9 m³/d", pressure: "4.1 bar gauge", temperature: "25 °C", salt: "500 mg/L", recovery: "15 %", rejection: "97 %" },
    parallel: 2,
    pressure: "7.6 bar gauge",
    run: { recirculate_until: { brix: 4 } },
  },
  evaporator: { pan: { length: "1.22 m", width: "0.61 m" } },
  target: { brix: 66.9 },
  samples: 0,
});

test("ten lines", () => {
  assert.equal(sucrose.density(66.9, deg_c(20)).to(kg_per_m3).toFixed(2), "1328.19");
  const page = `${day.plan({
    air: { altitude: metre(410) },
    sap: [{ volume: litre(265), brix: 1.98, temperature: deg_c(4) }],
    evaporator: { pan: { length: metre(0.61), width: metre(1.22) } },
    target: { brix: 66.9 },
  })}`;
  assert.match(page, /265 L of sap at 1\.98 °Bx {2}-> {2}19\.9 kg at 26\.6 °Bx, enough for 5\.95 L\nof syrup \(5\.3 to 6\.6\)/);
});

test("slips of a call", () => {
  const station = StationPressure.measured(kpa(96.5));
  says(
    () => sucrose.brixFromBoiling(deg_c(217), station),
    "out_of_range",
    "temperature = 217 °C is outside 60 to 132 °C; 217 °F is 102.8 °C: write deg_f(217)",
  );
  says(
    () => air.StationPressure.measured(bar_gauge(0.97)),
    "wrong_dimension",
    "pressure = 0.97 bar gauge is a gauge pressure; an absolute one is needed: a barometer's 970 hPa is hpa(970)",
  );
  says(() => sucrose.density(NaN, deg_c(20)), "not_finite", "brix = NaN is not a finite number");
  says(
    () => sucrose.density([2, 2, 2], deg_c([4, 5, -30])),
    "out_of_range",
    "temperature = -30 °C is outside 0 to 100 °C (index 2; 1 of 3)",
  );
  says(() => sucrose.density(66.9, 20), "wrong_dimension", "temperature = 20 needs a unit: write deg_c(20) or deg_f(20)");
});

test("slips of a day", () => {
  const refused = (change, kind, text) => {
    const inputs = demo();
    change(inputs);
    says(() => day.plan(inputs), kind, text);
    says(() => day.plan(JSON.stringify(inputs)), kind, text);
  };
  refused(
    (inputs) => (inputs.membrane.element.recovery = 15),
    "out_of_range",
    'membrane.element.recovery = 15 is outside 0.01 to 0.8; 15 % is written percent(15), "15 %" or 0.15',
  );
  refused(
    (inputs) => (inputs.air.station_pressure = "30.02 inHg"),
    "inconsistent",
    "air.station_pressure = 101.659 kPa does not fit altitude = 410 m; it looks like an altimeter setting, which means 96.82 kPa here: write altimeter_setting",
  );
  refused(
    (inputs) => (inputs.membrane.run.recirculate_until.brix = 12),
    "unreachable",
    "membrane.run.recirculate_until.brix = 12 °Bx cannot be reached; at 7.6 bar gauge and 3.716 °C the osmotic limit is 9.866 °Bx, and 9.373 °Bx takes 7.122 h: aim lower, or use a rig rated for more pressure",
  );
  refused(
    (inputs) => (inputs.sap[0].volume = "40 gall"),
    "unknown_unit",
    'sap[0].volume has the unknown unit "gall"; nearest: gal (US gallon), imp gal',
  );
  refused(
    (inputs) => (inputs.sap[0].mass = "180 kg"),
    "inconsistent",
    "sap[0].mass = 180 kg does not fit volume = 170 L; 170 L at 1.8 °Bx and 3 °C is 171.2 kg: give one of them",
  );
  refused(
    (inputs) => (inputs.membrane.presure = "7 bar gauge"),
    "unknown_name",
    'membrane has the unknown name "presure"; nearest: pressure',
  );
});

test("an error has its fields, and JSON brings it back", () => {
  try {
    sucrose.density(66.9, deg_c([20, 180]));
    assert.fail("no error");
  } catch (error) {
    const { kind, argument, value, unit, range, hint, index, count, reference } = error;
    assert.deepEqual(
      { kind, argument, value, unit, range, hint, index, count },
      {
        kind: "out_of_range",
        argument: "temperature",
        value: 180,
        unit: "°C",
        range: [0, 100],
        hint: "180 °F is 82.22 °C: write deg_f(180)",
        index: 1,
        count: 1,
      },
    );
    assert.match(reference, /^ICUMSA SPS-4/);
    const back = SugaringError.from(JSON.parse(JSON.stringify(error)));
    assert.ok(back instanceof SugaringError);
    assert.equal(back.message, error.message);
    assert.deepEqual({ ...back }, { ...error });
  }
});

test("what is listed can be called", async () => {
  assert.equal(catalogue.functions().length, catalogue.relations().length);
  assert.ok(catalogue.errorKinds().some(({ name }) => name === "internal"));
  for (const unit of catalogue.units()) {
    assert.equal(units[unit.word].symbol, unit.symbol);
    assert.equal(units[unit.word](3).unit, unit.symbol);
  }
  assert.equal((await catalogue.schema("day_inputs")).title, "DayInputs");
  await assert.rejects(catalogue.schema("day_input"), { kind: "unknown_name" });
});
