import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";
import { afterAll, beforeAll, expect, test } from "vitest";
import { documentSchemas } from "#lib/evaluation";
import { openStore } from "#lib/store";
import { expectNothingLost, noFigures } from "./figures";
import { seed as newSeed, share } from "./places";

// The web server is killed while a person types. Whatever the page called saved has to be there afterwards.

const rounds = share(20);
const { seed, random } = newSeed();
const port = 3989;
const address = `http://127.0.0.1:${port}`;
const executablePath = process.env.EVENFIELD_CHROMIUM ?? "/usr/bin/chromium";
let folder = "";
let browser: Browser;

function startServer(): ChildProcess {
  return spawn(process.execPath, ["app/_commands/start.mjs"], {
    env: { ...process.env, PORT: String(port), HOST: "127.0.0.1", EVENFIELD_DATA: folder, DATABASE_URL: "" },
    stdio: "ignore",
  });
}

async function untilAnswered(): Promise<void> {
  for (let attempt = 0; attempt < 1200; attempt += 1) {
    if ((await fetch(address).catch(() => null))?.ok) return;
    await new Promise((resolve) => setTimeout(resolve, 250));
  }
  throw new Error("the server did not come up");
}

async function startedProject(page: Page): Promise<string> {
  await page.goto(address);
  await page.getByRole("textbox", { name: "Name of the project" }).fill("Killed while typing");
  await page.getByRole("textbox", { name: "Owner" }).fill("A district");
  await page.getByRole("button", { name: "Start an empty project" }).click();
  await page.waitForURL(/\/brief$/);
  return new URL(page.url()).pathname.split("/")[2] ?? "";
}

/**
 * Types numbered texts, notes each that the page calls saved, and goes on until the server is gone, which is killed at a
 * random moment after the first.
 */
async function typeUntilKilled(
  page: Page,
  round: number,
  kill: () => void,
  killed: Promise<unknown>,
): Promise<readonly string[]> {
  const purpose = page.getByRole("textbox", { name: /purpose/i });
  const acknowledged: string[] = [];
  let alive = true;
  void killed.then(() => {
    alive = false;
  });
  for (let turn = 1; alive && turn < 50; turn += 1) {
    const text = `round ${round}, text ${turn}`;
    const typed = await purpose
      .fill(text, { timeout: 5000 })
      .then(() => page.locator('[data-saving="typing"], [data-saving="saving"]').waitFor({ timeout: 5000 }))
      .then(
        () => true,
        () => false,
      ); // else the state of the text before would be taken for this one's
    if (!typed) continue;
    const saved = page.locator('[role="status"][data-saving="saved"]');
    const seen = await Promise.race([
      saved.waitFor({ timeout: 15_000 }).then(
        () => true,
        () => false,
      ),
      killed.then(() => false),
    ]);
    if (!seen) continue;
    if (acknowledged.length === 0) setTimeout(kill, random() * 2000);
    acknowledged.push(text);
  }
  return acknowledged;
}

beforeAll(async () => {
  // else the first start would build the pages and count as slow
  execFileSync(process.execPath, ["app/_commands/start.mjs", "build"], { stdio: "ignore" });
  folder = await mkdtemp(join(tmpdir(), "evenfield-web-kill-"));
  browser = await chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
  });
}, 15 * 60_000);

afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
}, 60_000);

test("what a page called saved outlives a killed web server", { timeout: 60 * 60_000 }, async () => {
  const context = await browser.newContext();
  const figures = noFigures();
  let project = "";
  for (let round = 1; round <= rounds; round += 1) {
    const server = startServer();
    const gone = once(server, "exit");
    const began = performance.now();
    await untilAnswered();
    figures.slowestReopening = Math.max(figures.slowestReopening, performance.now() - began);
    const page = await context.newPage();
    if (project === "") project = await startedProject(page);
    else await page.goto(`${address}/project/${project}/brief`, { waitUntil: "networkidle" });
    const acknowledged = await typeUntilKilled(page, round, () => server.kill("SIGKILL"), gone);
    if (acknowledged.length === 0) server.kill("SIGTERM"); // nothing was saved in all that time, and the test fails
    await gone;
    if (server.signalCode !== "SIGKILL") throw new Error(`the server ended by itself, with ${server.exitCode}`);
    await page.close();
    const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
    const entries = (await store.record.list(project)) ?? [];
    const verdict = await store.record.verify(project);
    if (verdict?.kind !== "intact") figures.brokenRecords.push(`round ${round}: ${JSON.stringify(verdict)}`);
    figures.rounds += 1;
    figures.kills += 1;
    figures.acknowledged += acknowledged.length;
    const told = entries.map(({ after }) => JSON.stringify(after));
    for (const text of acknowledged)
      if (!told.some((after) => after.includes(JSON.stringify(text)))) figures.lost.push(`round ${round}: “${text}”`);
    await store.close();
  }
  expectNothingLost("Web server killed while a person types", seed, figures);
  expect(figures.acknowledged).toBeGreaterThanOrEqual(rounds);
});
