// The core panics on purpose, in a build of its own: what the caller sees, and that the next call is right.

import assert from "node:assert/strict";
import { test } from "node:test";
import { pathToFileURL } from "node:url";

const folder = process.env.SUGARING_WITH_FAULT;
assert.ok(folder, "SUGARING_WITH_FAULT names the package with a fault");
const from = (name) => import(pathToFileURL(`${folder}/${name}`).href);
const { default: init, SugaringError, sucrose, day } = await from("index.js");
const { guarded } = await from("runtime.js");
const { deg_c, kg_per_m3 } = await from("units.js");

test("a panic is an internal error, and the next call is right", async () => {
  await init();
  const right = sucrose.density(66.9, deg_c(20)).to(kg_per_m3);
  const column = () => [...sucrose.density([0, 30, 60], deg_c(20)).to(kg_per_m3)];
  const columns = column();
  for (let round = 0; round < 3; round++) {
    assert.throws(() => guarded((core) => core.fault()), (error) => {
      assert.ok(error instanceof SugaringError);
      assert.equal(error.kind, "internal");
      assert.equal(error.message, "a fault in sugaring, please report it");
      assert.ok(error.cause instanceof WebAssembly.RuntimeError);
      return true;
    });
    assert.equal(sucrose.density(66.9, deg_c(20)).to(kg_per_m3), right);
    assert.deepEqual(column(), columns);
    assert.throws(() => day.plan({}), { kind: "missing", argument: "air" });
  }
});
