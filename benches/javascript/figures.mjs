// Figures of the package under Node: what a call, a typed line and a column cost, against plain JavaScript in one run.
//
// `cargo xtask javascript` first, then `node benches/javascript/figures.mjs`. Best of 7; ratios count, not nanoseconds.

import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

import init, { day, sucrose, water } from "../../tests/node/node_modules/sugaring/index.js";
import { deg_c, gal, kg_per_m3, litre } from "../../tests/node/node_modules/sugaring/units.js";

await init();

function best(name, elements, work) {
  let least = Infinity;
  for (let round = 0; round < 7; round++) {
    const start = process.hrtime.bigint();
    work();
    least = Math.min(least, Number(process.hrtime.bigint() - start) / elements);
  }
  console.log(`${name.padEnd(58)} ${least.toFixed(1).padStart(9)} ns`);
  return least;
}

const calls = 500_000;
const repeated = (work) => () => {
  for (let i = 0; i < calls; i++) work(i);
};
const t = deg_c(20);
best("gal(40).to(litre)", calls, repeated(() => gal(40).to(litre)));
best("density(66.9, t)", calls, repeated(() => sucrose.density(66.9, t)));
best("density(66.9, deg_c(20)).to(kg_per_m3)", calls, repeated(() => sucrose.density(66.9, deg_c(20)).to(kg_per_m3)));
best("saturationPressure(t)", calls, repeated(() => water.saturationPressure(t)));

// The same shape in plain JavaScript: a 5 by 5 double polynomial over typed arrays, as somebody would write it.
const n = 1_000_000;
const brix = Float64Array.from({ length: n }, (_, i) => (i * 70) / n);
const celsius = Float64Array.from({ length: n }, (_, i) => (i * 97) % 100);
const table = Array.from({ length: 25 }, (_, i) => 1000 / (i + 1));
const plain = () => {
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const w = brix[i] / 100;
    const u = (celsius[i] - 20) / 100;
    let sum = 0;
    for (let j = 4; j >= 0; j--) {
      let inner = 0;
      for (let k = 4; k >= 0; k--) inner = inner * w + table[5 * j + k];
      sum = sum * u + inner;
    }
    out[i] = sum;
  }
  return out;
};
const temperatures = deg_c(celsius);
const bare = best("1e6 lanes of a 5 x 5 polynomial, plain JavaScript", n, plain);
const column = best("1e6 lanes of density(brix, deg_c(t)).to(kg_per_m3)", n, () => sucrose.density(brix, temperatures).to(kg_per_m3));
console.log(`column against plain JavaScript: ${(column / bare).toFixed(2)}`);

const inputs = readFileSync(new URL("../../examples/far_orchard.json", import.meta.url), "utf8");
best("the demo plan with its 1000 draws", 1, () => day.plan(inputs));

for (const name of ["sugaring.wasm", "glue.js", "inline.js"]) {
  const bytes = readFileSync(new URL(`../../tests/node/node_modules/sugaring/${name}`, import.meta.url));
  const sent = gzipSync(bytes, { level: 9 }).length;
  console.log(`${name.padEnd(58)} ${(bytes.length / 1000).toFixed(0).padStart(9)} kB, ${(sent / 1000).toFixed(0)} kB gzip`);
}
