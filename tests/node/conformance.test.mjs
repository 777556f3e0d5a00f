// Every function and every stored call, equal to the last bit.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

import * as sugaring from "sugaring";

import { judgeAsks, judgeCalls, judgeEdges, judgeFunctions } from "./judge.mjs";

const stored = (path) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

test("the functions of numbers have the bits of the core", async () => {
  await sugaring.default();
  const report = judgeFunctions(sugaring, stored("tests/conformance/functions.txt"));
  console.log(`conformance: ${report.vectors} vectors and ${report.lanes} lanes of ${report.functions} functions`);
  assert.deepEqual(report.misses.slice(0, 20), []);
  assert.equal(report.functions, sugaring.catalogue.functions().length);
});

test("the catalogue is what the core says", () => {
  const { catalogue } = sugaring;
  const found = {
    functions: catalogue.functions().map(({ jsName, ...row }) => row),
    units: catalogue.units(),
    error_kinds: catalogue.errorKinds().filter(({ name }) => name !== "internal"),
    schemas: catalogue.schemas(),
    numbers: catalogue.numbers(),
  };
  const wanted = JSON.parse(stored("tests/conformance/catalogue.json"));
  assert.deepEqual(JSON.parse(JSON.stringify(found)), wanted);
  assert.deepEqual(catalogue.relations().map(({ name }) => name), wanted.functions.map((row) => `${row.module}::${row.name}`));
});

test("units, texts, stations, errors and days answer as the core does", async () => {
  await sugaring.default();
  const report = judgeCalls(sugaring, stored("tests/conformance/calls.jsonl"), stored);
  console.log(`conformance: ${report.calls} calls`);
  assert.deepEqual(report.misses.slice(0, 20), []);
});

test("every argument at and beyond its limits answers as the core does", async () => {
  await sugaring.default();
  const report = judgeEdges(sugaring, stored("tests/conformance/edges.jsonl"));
  console.log(`conformance: ${report.edges} edges, ${report.columns} of them as columns`);
  assert.deepEqual(report.misses.slice(0, 20), []);
  assert.ok(report.edges > 1000 && report.columns > 1000);
});

test("functions of more than numbers answer as the core does", async () => {
  await sugaring.default();
  const report = judgeAsks(sugaring, stored("tests/conformance/asks.jsonl"));
  console.log(`conformance: ${report.asks} asks`);
  assert.deepEqual(report.misses.slice(0, 20), []);
  assert.ok(report.asks >= 100);
});
