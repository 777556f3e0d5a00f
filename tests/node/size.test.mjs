// What a page loads, and that it names no machine.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { homedir } from "node:os";
import { test } from "node:test";
import { gzipSync } from "node:zlib";

const file = (name) => readFileSync(new URL(import.meta.resolve("sugaring").replace(/[^/]*$/, name)));
// The module carries the whole day, its texts and its ranges, every property, the instruments with their card, and
// uncertainties. It was 366 kB when this was last written, 88 of them for the last two: a growth is to be seen, not
// slipped in.
const MOST = 375_000;

test("module and glue stay as small as they are", () => {
  const sent = ["sugaring.wasm", "glue.js"].map((name) => gzipSync(file(name), { level: 9 }).length);
  console.log(`size: module ${sent[0]} B, glue ${sent[1]} B, gzip`);
  assert.ok(sent[0] + sent[1] <= MOST, `${sent[0] + sent[1]} B gzip`);
});

test("the module names no folder of the machine that built it", () => {
  const text = file("sugaring.wasm").toString("latin1");
  for (const folder of [homedir(), new URL("../..", import.meta.url).pathname]) {
    if (folder.length > 1) assert.ok(!text.includes(folder), folder);
  }
  assert.doesNotMatch(text, /\.cargo\/registry/);
});
