import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";
import { afterAll, beforeAll, expect, test } from "vitest";
import { documentSchemas } from "#lib/evaluation";
import { openStore } from "#lib/store";
import { seeded } from "./seeded";

// The web server is killed while a person types. Whatever the page called saved has to be there afterwards.

const rounds = Number(process.env.ROUNDS ?? 50);
const seed = Number(process.env.SEED ?? Date.now() % 2 ** 32);
const random = seeded(seed);
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

/** Types numbered texts, notes each that the page calls saved, and goes on until the server is gone. */
async function typeUntilKilled(page: Page, round: number, killed: Promise<unknown>): Promise<string | null> {
  const purpose = page.getByRole("textbox", { name: /purpose/i });
  let acknowledged: string | null = null;
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
    if (seen) acknowledged = text;
  }
  return acknowledged;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evenfield-web-kill-"));
  browser = await chromium.launch({
    executablePath,
    args: ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"],
  });
}, 60_000);

afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
}, 60_000);

test("what a page called saved outlives a killed web server", { timeout: 60 * 60_000 }, async () => {
  const context = await browser.newContext();
  let acknowledgedRounds = 0;
  const lost: string[] = [];
  const broken: string[] = [];
  let project = "";
  for (let round = 1; round <= rounds; round += 1) {
    const server = startServer();
    const gone = once(server, "exit");
    await untilAnswered();
    const page = await context.newPage();
    if (project === "") project = await startedProject(page);
    else await page.goto(`${address}/project/${project}/brief`, { waitUntil: "networkidle" });
    setTimeout(() => server.kill("SIGKILL"), 1500 + random() * 3500);
    const acknowledged = await typeUntilKilled(page, round, gone);
    await gone;
    await page.close();
    const store = await openStore({ kind: "sqlite", folder }, { schemas: documentSchemas });
    const entries = (await store.record.list(project)) ?? [];
    const verdict = await store.record.verify(project);
    if (verdict?.kind !== "intact") broken.push(`round ${round}: ${JSON.stringify(verdict)}`);
    if (acknowledged !== null) {
      acknowledgedRounds += 1;
      const kept = entries.some(({ after }) => JSON.stringify(after).includes(JSON.stringify(acknowledged)));
      if (!kept) lost.push(`round ${round}: “${acknowledged}”`);
    }
    await store.close();
  }
  console.log(
    `web server killed, seed ${seed}: ${rounds} rounds, ${acknowledgedRounds} with an acknowledged text, ${lost.length} lost, ${broken.length} broken records`,
  );
  expect({ lost, broken }).toStrictEqual({ lost: [], broken: [] });
  expect(acknowledgedRounds).toBeGreaterThan(rounds / 2);
});
