// Quantities and errors between threads, and between two copies of the package.

import assert from "node:assert/strict";
import { test } from "node:test";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";

import init, { StationPressure, SugaringError, sucrose } from "sugaring";
import { deg_c, deg_f, isQuantity, kelvin, kg_per_m3, kpa, quantity } from "sugaring/units";

await init();

const WORKER = `
  import { parentPort, workerData } from "node:worker_threads";
  import { initSync, sucrose } from "sugaring";
  import { kg_per_m3 } from "sugaring/units";
  initSync();
  const { brix, temperature } = workerData;
  const density = sucrose.density(brix, temperature);
  try {
    sucrose.density(brix, { value: 180, unit: "°C" });
  } catch (error) {
    parentPort.postMessage({ density, bits: density.to(kg_per_m3), error: error.toJSON() });
  }
`;

test("a worker takes quantities and hands them back, errors too", async () => {
  // Text has no folder of its own: the package goes by its full address.
  const address = new URL(`data:text/javascript,${encodeURIComponent(WORKER.replaceAll(/from "sugaring(\/\w+)?"/g, resolved))}`);
  const worker = new Worker(address, { workerData: { brix: [0, 66.9], temperature: deg_c(20) } });
  const told = await new Promise((take, fail) => worker.once("message", take).once("error", fail));
  await worker.terminate();
  const here = sucrose.density([0, 66.9], deg_c(20)).to(kg_per_m3);
  assert.deepEqual(told.bits, here);
  assert.deepEqual(quantity(told.density).to(kg_per_m3), here);
  const error = SugaringError.from(told.error);
  assert.deepEqual([error.kind, error.index, error.count, error.range], ["out_of_range", 0, 2, [0, 100]]);
});

function resolved(_, entry = "") {
  return `from "${import.meta.resolve(`sugaring${entry}`)}"`;
}

test("two copies of the package exchange quantities to the last bit", async () => {
  const folder = process.env.SUGARING_WITH_FAULT;
  assert.ok(folder, "SUGARING_WITH_FAULT names the other copy");
  const from = (name) => import(pathToFileURL(`${folder}/${name}`).href);
  const [{ default: start, sucrose: other, StationPressure: Station }, units] = [await from("index.js"), await from("units.js")];
  await start();
  assert.ok(isQuantity(units.deg_c(20)));
  assert.equal(sucrose.density(66.9, units.deg_c(20)).to(kg_per_m3), other.density(66.9, deg_c(20)).to(units.kg_per_m3));
  const [ours, theirs] = [StationPressure.fromBoilingWater(deg_f(209.5)), Station.fromBoilingWater(units.deg_f(209.5))];
  const boils = sucrose.boilingTemperature(66.9, theirs);
  assert.equal(boils.to(kelvin), sucrose.boilingTemperature(66.9, ours).to(kelvin));
  assert.equal(boils.to(units.kelvin), other.boilingTemperature(66.9, ours).to(kelvin));
  assert.equal(other.brixFromBoiling(boils, ours), sucrose.brixFromBoiling(boils, theirs));
  assert.deepEqual(sucrose.density([1, 2], units.deg_f([60, 70])).to(kg_per_m3), other.density([1, 2], deg_f([60, 70])).to(kg_per_m3));
  assert.throws(() => sucrose.boilingTemperature(66.9, units.kpa(96.5)), { kind: "wrong_dimension" });
  assert.throws(() => kpa(1).to(units.deg_c), { kind: "wrong_dimension" });
});
