// The package in a browser, under a content security policy that allows WebAssembly and nothing else.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { extname, join, normalize, resolve } from "node:path";
import { after, test } from "node:test";
import { fileURLToPath } from "node:url";

import { chromium } from "../node/node_modules/playwright-core/index.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const top = resolve(here, "../..");
const places = [
  ["/sugaring/", join(top, "tests/node/node_modules/sugaring")],
  ["/tests/conformance/", join(top, "tests/conformance")],
  ["/examples/", join(top, "examples")],
  ["/judge.mjs", join(top, "tests/node/judge.mjs")],
  ["/", here],
];
const TYPES = { ".html": "text/html", ".js": "text/javascript", ".mjs": "text/javascript", ".css": "text/css", ".wasm": "application/wasm" };
const POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; connect-src 'self'";

const server = createServer(async (request, response) => {
  const path = normalize(new URL(request.url, "http://localhost").pathname);
  const [start, folder] = places.find(([start]) => path.startsWith(start));
  const rest = path.slice(start.length);
  const file = start.endsWith("/") ? join(folder, rest === "" ? "index.html" : rest) : folder;
  try {
    const body = await readFile(file);
    response.writeHead(200, { "content-type": `${TYPES[extname(file)] ?? "text/plain"}; charset=utf-8`, "content-security-policy": POLICY });
    response.end(body);
  } catch {
    response.writeHead(404).end();
  }
});
await new Promise((ready) => server.listen(0, "127.0.0.1", ready));
const origin = `http://127.0.0.1:${server.address().port}`;
const profile = mkdtempSync(join(tmpdir(), "sugaring-"));
const browser = await chromium.launchPersistentContext(profile, {
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  headless: true,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  viewport: { width: 900, height: 1100 },
});
after(async () => {
  await browser.close();
  server.close();
  rmSync(profile, { recursive: true, force: true });
});

async function opened(path) {
  const page = await browser.newPage();
  const troubles = [];
  page.on("console", (message) => message.type() === "error" && troubles.push(message.text()));
  page.on("pageerror", (error) => troubles.push(error.stack ?? String(error)));
  await page.goto(origin + path);
  return { page, troubles };
}

test("the demo day and every vector, to the last bit", { timeout: 120_000 }, async () => {
  const { page, troubles } = await opened("/");
  await page.waitForFunction(() => globalThis.judged !== undefined, undefined, { timeout: 90_000 }).catch(() => undefined);
  assert.deepEqual(troubles, []);
  const { numbers, others, asks, edges } = await page.evaluate(() => globalThis.judged);
  console.log(`conformance: Chromium ${browser.browser()?.version() ?? ""}: ${numbers.vectors} vectors and ${numbers.lanes} lanes of ${numbers.functions} functions, ${others.calls} calls, ${asks.asks} asks, ${edges.edges} edges`);
  assert.deepEqual([...numbers.misses, ...others.misses, ...asks.misses, ...edges.misses].slice(0, 20), []);
  assert.ok(numbers.functions > 40 && numbers.vectors > 4000);
  const stored = await readFile(join(top, "tests/conformance/days/far_orchard.as_given.txt"), "utf8");
  assert.equal(await page.textContent("#plan"), stored);
  await page.getByRole("button", { name: "US units" }).click();
  assert.match(await page.textContent("#plan"), /70\.0 gal of sap/);
  if (process.env.SCREENSHOT) await page.screenshot({ path: process.env.SCREENSHOT, fullPage: true });
});

test("the slim entry fetches its module, and a worker hands quantities on", { timeout: 60_000 }, async () => {
  const { page, troubles } = await opened("/");
  const told = await page.evaluate(async () => {
    const { default: init, sucrose } = await import("./sugaring/slim.js");
    const { deg_c, kg_per_m3 } = await import("./sugaring/units.js");
    await init();
    const channel = new MessageChannel();
    const travelled = new Promise((take) => (channel.port2.onmessage = ({ data }) => take(data)));
    channel.port1.postMessage(deg_c(20));
    return sucrose.density(66.9, await travelled).to(kg_per_m3).toFixed(2);
  });
  assert.equal(told, "1328.19");
  assert.deepEqual(troubles, []);
});
