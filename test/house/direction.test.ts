import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import directionRules from "../../.dependency-cruiser.mjs";
import { type CruisedModule, leavesReaching } from "./client-leaves";

type Cruise = Readonly<{
  modules: readonly CruisedModule[];
  summary: Readonly<{ violations: readonly Readonly<{ rule: { name: string }; from: string; to: string }>[] }>;
}>;

/** Runs the very command and rules of `npm test -- direction` on another tree. */
function cruise(folder: string, ...paths: readonly string[]): Cruise {
  const command = [resolve("node_modules/dependency-cruiser/bin/dependency-cruise.mjs")];
  const options = ["--config", resolve(".dependency-cruiser.mjs"), "--output-type", "json"];
  const written = execFileSync(process.execPath, [...command, ...options, ...paths], {
    cwd: folder,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
  });
  return JSON.parse(written);
}

/** A small house in which every file but the sound ones breaks one rule. */
const house: Readonly<Record<string, string>> = {
  "package.json": '{ "type": "module", "imports": { "#lib/*": "./lib/*/index.ts" } }',
  "tsconfig.json": readFileSync("tsconfig.json", "utf8"),
  "node_modules/pg/package.json": '{ "name": "pg", "main": "index.js" }',
  "node_modules/pg/index.js": "module.exports = 1;",
  "node_modules/react/package.json": '{ "name": "react", "main": "index.js" }',
  "node_modules/react/index.js": "module.exports = 1;",
  "node_modules/zod/package.json": '{ "name": "zod", "main": "index.js" }',
  "node_modules/zod/index.js": "module.exports = 1;",
  // sound
  "lib/quantity/index.ts": 'export { one } from "./one";',
  "lib/quantity/one.ts": "export const one = 1;",
  "lib/figure/index.ts": 'export { one } from "#lib/quantity";',
  "lib/field/index.ts": 'import "./schema"; export { one } from "#lib/figure";',
  "lib/field/schema.ts": 'import "zod";',
  "lib/store/index.ts": 'import "pg"; import "node:fs"; import "#lib/field"; export const store = 1;',
  "lib/evaluation/index.ts": 'import "#lib/field"; export const evaluation = 1;',
  "lib/document/index.ts": 'import "#lib/evaluation"; export const written = 1;',
  "app/page.ts": 'import "#lib/document"; import "#lib/store"; import "./leaf";',
  "app/actions.ts": '"use server";\nimport "#lib/store"; export const save = 1;',
  "app/leaf.ts":
    '"use client";\nimport "react"; import "./actions"; import type { store } from "#lib/store"; export type S = typeof store;',
  "proxy.ts": 'import "#lib/field";',
  "test/any.test.ts": 'import "../lib/quantity/one"; import "../app/page";',
  // one deliberate violation each
  "lib/cost/index.ts": 'import "./a";',
  "lib/cost/a.ts": 'import "./b";',
  "lib/cost/b.ts": 'import "./a";',
  "lib/claim/index.ts": 'import "../quantity/one";',
  "app/side-door.ts": 'import "../lib/quantity/one";',
  "lib/claim/page.ts": 'import "../../app/page";',
  "app/tested.ts": 'import "../test/any.test";',
  "lib/claim/stored.ts": 'import "#lib/store";',
  "lib/evaluation/written.ts": 'import "#lib/document";',
  "lib/figure/field.ts": 'import "#lib/field";',
  "lib/quantity/figure.ts": 'import "#lib/cost";',
  "lib/claim/drawn.ts": 'import "react";',
  "lib/claim/filed.ts": 'import "node:fs/promises";',
  "lib/store/drawn.ts": 'import "react";',
  "lib/claim/parsed.ts": 'import "zod";',
  "app/queried.ts": 'import "pg";',
  "lib/claim/lost.ts": 'import "./nowhere";',
  "app/leaking-leaf.ts": '"use client";\nimport "./carries";',
  "app/carries.ts": 'import "#lib/store";',
};

describe("direction rules", () => {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-direction-"));
  let found: Cruise;
  beforeAll(() => {
    for (const [path, text] of Object.entries(house)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    found = cruise(folder, "app", "lib", "test", "proxy.ts");
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("fire on each deliberate violation and on nothing else", () => {
    expect(found.summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`).sort()).toEqual([
      "database-in-the-store-only: app/queried.ts",
      "domain-below-upper-rooms: lib/claim/stored.ts",
      "evaluation-below-document-and-store: lib/evaluation/written.ts",
      "figure-on-quantity-only: lib/figure/field.ts",
      "lib-knows-no-pages: lib/claim/page.ts",
      "no-cycles: lib/cost/a.ts",
      "pages-know-no-tests: app/tested.ts",
      "quantity-on-nothing: lib/quantity/figure.ts",
      "resolvable: lib/claim/lost.ts",
      "rooms-are-pure: lib/claim/drawn.ts",
      "rooms-leave-node-alone: lib/claim/filed.ts",
      "store-draws-nothing: lib/store/drawn.ts",
      "through-the-door: app/side-door.ts",
      "through-the-door: lib/claim/index.ts",
      "zod-in-schemas-only: lib/claim/parsed.ts",
    ]);
  });

  test("leave none of them untried", () => {
    const fired = new Set(found.summary.violations.map(({ rule }) => rule.name));
    expect(directionRules.forbidden?.map(({ name }) => name).filter((name) => !fired.has(name ?? ""))).toEqual([]);
  });

  test("find the client leaf that would carry the store into the browser, and not the one that only calls an action", () => {
    expect(leavesReaching(found.modules, (path) => readFileSync(join(folder, path), "utf8"))).toEqual([
      "app/leaking-leaf.ts → app/carries.ts → lib/store/index.ts",
    ]);
  });
});

test("no client leaf carries the store, a database or a part of Node into the browser", () => {
  const { modules } = cruise(".", "app", "lib");
  expect(modules.length).toBeGreaterThan(50);
  expect(leavesReaching(modules, (path) => readFileSync(path, "utf8"))).toEqual([]);
});
