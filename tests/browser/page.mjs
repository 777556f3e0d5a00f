// Plans the demo day in the browser and holds every stored vector and call against this build.

import * as sugaring from "./sugaring/index.js";

import { judgeAsks, judgeCalls, judgeEdges, judgeFunctions } from "./judge.mjs";

const text = async (path) => {
  const response = await fetch(path);
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.text();
};

await sugaring.default();
const plan = sugaring.day.plan(await text("examples/far_orchard.json"));
const page = document.querySelector("#plan");
const buttons = [...document.querySelectorAll("button")];
const show = (chosen) => {
  page.textContent = plan.page(chosen.dataset.system);
  for (const button of buttons) button.setAttribute("aria-pressed", button === chosen);
};
for (const button of buttons) button.addEventListener("click", () => show(button));
show(buttons[0]);

const calls = await text("tests/conformance/calls.jsonl");
const files = new Map();
for (const line of calls.split("\n").filter((line) => line.includes("day.plan"))) {
  const { args, plan, pages } = JSON.parse(line);
  for (const path of [args[0].file, plan, ...Object.values(pages ?? {})]) {
    if (path !== undefined && !files.has(path)) files.set(path, await text(path));
  }
}
const numbers = judgeFunctions(sugaring, await text("tests/conformance/functions.txt"));
const others = judgeCalls(sugaring, calls, (path) => files.get(path));
const asks = judgeAsks(sugaring, await text("tests/conformance/asks.jsonl"));
const edges = judgeEdges(sugaring, await text("tests/conformance/edges.jsonl"));
const misses = [...numbers.misses, ...others.misses, ...asks.misses, ...edges.misses];
document.querySelector("#verdict").textContent =
  `${numbers.vectors} vectors and ${numbers.lanes} lanes of ${numbers.functions} functions, ${others.calls} calls, ${asks.asks} asks and ${edges.edges} edges: ` +
  (misses.length === 0 ? "all equal to the core's, to the last bit." : `${misses.length} differ.`);
for (const miss of misses.slice(0, 20)) {
  document.querySelector("#misses").append(Object.assign(document.createElement("li"), { textContent: miss }));
}
globalThis.judged = { numbers, others, asks, edges };
