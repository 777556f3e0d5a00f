// The JavaScript of the read-me, the guide and the book, run as it stands.
//
// A line `console.log(...); // text` must print that text.

import assert from "node:assert/strict";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { after, test } from "node:test";
import { fileURLToPath } from "node:url";

const here = fileURLToPath(new URL(".", import.meta.url));
const top = join(here, "../..");
const book = join(top, "book/src");
const pages = [join(top, "README.md"), join(top, "DEVELOPERS.md")];
pages.push(...readdirSync(book, { recursive: true }).filter((name) => name.endsWith(".md")).sort().map((name) => join(book, name)));

const FENCE = /^```js\n(.*?)^```$/gms;
const SAYS = /^(\s*)console\.log\((.*)\);? \/\/ (.*)$/gm;
// Beside node_modules, where `import "sugaring"` is found.
const folder = mkdtempSync(join(here, "node_modules/.pages-"));
after(() => rmSync(folder, { recursive: true }));

let blocks = 0;
for (const page of pages) {
  const text = readFileSync(page, "utf8");
  for (const found of text.matchAll(FENCE)) {
    const line = text.slice(0, found.index).split("\n").length + 1;
    const name = `${relative(top, page)}:${line}`;
    blocks += 1;
    test(name, async () => {
      const code = found[1].replace(SAYS, (_, space, values, says) => `${space}globalThis.said(${JSON.stringify(says)}, ${values});`);
      const file = join(folder, `${name.replace(/\W/g, "_")}.mjs`);
      writeFileSync(file, code);
      globalThis.said = (says, ...values) => assert.equal(values.map(String).join(" "), says);
      const log = console.log;
      console.log = () => {};
      try {
        await import(file);
      } finally {
        console.log = log;
      }
    });
  }
}

test("the pages have JavaScript", () => assert.ok(blocks >= 10, `${blocks} blocks`));
