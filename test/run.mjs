// One command for all checks: `npm test`. Parts by name: `npm test -- types lint unit`.
// Plain JavaScript without packages, so that it can say what is missing where something is.
// @ts-check
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { stripVTControlCharacters } from "node:util";
import { findChromium, findLibreOffice, findPostgres, provideTools } from "./tools.mjs";

process.chdir(resolve(dirname(fileURLToPath(import.meta.url)), ".."));

/** @typedef {Readonly<{ passed: number, failed: number, skipped: number }>} Tally */
/** @typedef {Readonly<{ ok: boolean, tally: Tally, note?: string, failures?: readonly string[] }>} Outcome */
/** @typedef {(print: ((text: string) => void) | null) => Promise<Outcome>} Run */
/** @typedef {Readonly<{ name: string, does: string, run: Run }>} Part */

/** On somebody's own machine a missing browser or database is said and passed over; in continuous integration it fails. */
const mayLack = process.env.CI !== "true";
const none = { passed: 0, failed: 0, skipped: 0 };
const workFolder = mkdtempSync(join(tmpdir(), "evenfield-test-"));
const bin = (/** @type {string} */ name) => join("node_modules", ".bin", name);
/** @type {Set<import("node:child_process").ChildProcess>} */
const children = new Set();

/**
 * Runs one command to its end, its output going where ours goes, or into a text that is printed later.
 * @param {readonly string[]} command
 * @param {Readonly<Record<string, string>>} env added to ours
 * @param {((text: string) => void) | null} print null for straight through
 * @returns {Promise<boolean>} true where it ended with success
 */
function succeeds(command, env = {}, print = null) {
  const [program, ...args] = command;
  return new Promise((done) => {
    const stream = print === null ? "inherit" : "pipe";
    const child = spawn(program ?? "", args, {
      stdio: ["ignore", stream, stream],
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", ...env },
    });
    for (const output of [child.stdout, child.stderr]) output?.on("data", (data) => print?.(String(data)));
    children.add(child);
    child.on("error", (problem) => {
      console.error(`${command.join(" ")}: ${problem.message}`);
      done(false);
    });
    child.on("close", (code) => {
      children.delete(child);
      done(code === 0);
    });
  });
}

/**
 * A check without tests of its own: it holds or it does not.
 * @param {readonly (readonly string[])[]} commands
 * @returns {Run}
 */
function holds(...commands) {
  return async (print) => {
    for (const command of commands) {
      if (!(await succeeds(command, {}, print)))
        return { ok: false, tally: { ...none, failed: 1 }, note: command.join(" ") };
    }
    return { ok: true, tally: none };
  };
}

/**
 * The tally of a test run. A run that broke off counts as one failure more than its tests show.
 * @param {boolean} ok
 * @param {string} file report in JSON
 * @param {(report: any) => Tally} read
 * @param {(report: any) => string[]} failedIn
 * @returns {Outcome}
 */
function tallied(ok, file, read, failedIn) {
  if (!existsSync(file)) return { ok: false, tally: { ...none, failed: 1 }, note: "broke off before it could report" };
  const report = JSON.parse(readFileSync(file, "utf8"));
  const [tally, failures] = [read(report), failedIn(report)];
  if (!ok && tally.failed === 0)
    return { ok, tally: { ...tally, failed: 1 }, note: "broke off, though no single test failed", failures };
  if (ok && tally.passed === 0) return { ok: false, tally: { ...tally, failed: 1 }, note: "ran no test at all" };
  return { ok: ok && tally.failed === 0, tally, failures };
}

/**
 * The beginning of what a test said when it failed, without colours.
 * @param {unknown} message
 */
const beginning = (message) => stripVTControlCharacters(String(message ?? "")).slice(0, 1500);

/**
 * What failed in a run of unit tests, each with where it stands and what it said.
 * @param {any} report
 * @returns {string[]}
 */
const failedUnits = (report) =>
  report.testResults.flatMap((/** @type {any} */ file) => {
    const failed = file.assertionResults.filter((/** @type {any} */ { status }) => status === "failed");
    const said = failed.map(
      (/** @type {any} */ { fullName, failureMessages }) => `${fullName}\n${beginning(failureMessages?.[0])}`,
    );
    if (said.length === 0 && file.status === "failed") said.push(beginning(file.message));
    return said.map((/** @type {string} */ text) => `${file.name}: ${text}`);
  });

/**
 * What failed in a run of journeys, each with where it stands and what it said.
 * @param {any} suite
 * @returns {string[]}
 */
const failedJourneys = (suite) => [
  ...(suite.suites ?? []).flatMap(failedJourneys),
  ...(suite.specs ?? []).flatMap((/** @type {any} */ { file, line, title, tests }) =>
    tests
      .filter((/** @type {any} */ { status }) => status === "unexpected" || status === "flaky")
      .map((/** @type {any} */ { results }) => {
        const said = results.find((/** @type {any} */ { error }) => error)?.error?.message;
        return `${file}:${line}: ${title}\n${beginning(said)}`;
      }),
  ),
];

/** @returns {Promise<Outcome>} */
async function unit() {
  const report = join(workFolder, "unit.json");
  const ok = await succeeds([
    ...[bin("vitest"), "run", "--config", "test/vitest.config.ts"],
    ...["--reporter=default", "--reporter=json", `--outputFile.json=${report}`],
  ]);
  const tally = (/** @type {any} */ read) => ({
    passed: read.numPassedTests,
    failed: read.numFailedTests,
    skipped: read.numPendingTests + read.numTodoTests,
  });
  const outcome = tallied(ok, report, tally, failedUnits);
  const lacking = [
    ...(findPostgres()
      ? []
      : ["the store over PostgreSQL was not run: no server was found, and none could be installed"]),
    ...(findLibreOffice("calc")
      ? []
      : ["the audit workbook was not recalculated: no LibreOffice was found, and none could be installed"]),
    ...(findLibreOffice("writer")
      ? []
      : [
          "no document was opened in a word processor: no LibreOffice for texts was found, and none could be installed",
        ]),
  ];
  if (lacking.length === 0) return outcome;
  return { ...outcome, ok: outcome.ok && mayLack, note: [outcome.note, ...lacking].filter(Boolean).join("; ") };
}

/** @returns {Promise<number>} */
function freePort() {
  return new Promise((done, failed) => {
    const probe = createServer();
    probe.on("error", failed);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() => done(typeof address === "object" && address ? address.port : 0));
    });
  });
}

/** @returns {Promise<Outcome>} */
async function journeys() {
  const browser = await findChromium();
  if (browser.kind === "missing")
    return { ok: mayLack, tally: { ...none, skipped: 1 }, note: `not run: ${browser.because}` };
  const report = join(workFolder, "journeys.json");
  const ok = await succeeds([bin("playwright"), "test", "--config", "test/journeys/playwright.config.ts"], {
    PLAYWRIGHT_JSON_OUTPUT_NAME: report,
    EVENFIELD_JOURNEYS_PORT: String(await freePort()),
    EVENFIELD_JOURNEYS_DATA: join(workFolder, "journeys-data"),
    ...(browser.path ? { EVENFIELD_CHROMIUM: browser.path } : {}),
  });
  const tally = (/** @type {any} */ { stats }) => ({
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky,
    skipped: stats.skipped,
  });
  return tallied(ok, report, tally, failedJourneys);
}

/**
 * Every part there is. The unit tests wait for databases and processes much of their time, so what needs one processor
 * runs beside them, one after the other, and is printed when it ends.
 * @type {readonly Part[]}
 */
const parts = [
  {
    name: "types",
    does: "TypeScript, with the types of the routes",
    run: holds([bin("next"), "typegen"], [bin("tsc"), "--noEmit", "-p", "."]),
  },
  {
    name: "lint",
    does: "format and lint, warnings count",
    run: holds([bin("biome"), "ci", "--error-on-warnings", "."]),
  },
  {
    name: "direction",
    does: "which way imports point",
    run: holds([bin("depcruise"), "--config", ".dependency-cruiser.mjs", "app", "lib", "test", "proxy.ts"]),
  },
  { name: "unused", does: "files, exports and packages nobody uses", run: holds([bin("knip"), "--no-progress"]) },
  { name: "unit", does: "unit, property, store and outside checks", run: unit },
  {
    name: "build",
    does: "the pages as they are served",
    run: holds([process.execPath, "app/_commands/start.mjs", "build"]),
  },
  { name: "journeys", does: "the job in a browser", run: journeys },
];

/** @param {string} signal */
function stop(signal) {
  for (const child of children) child.kill("SIGTERM");
  rmSync(workFolder, { recursive: true, force: true });
  console.error(`Stopped by ${signal}.`);
  process.exit(1);
}
process.on("SIGINT", stop);
process.on("SIGTERM", stop);

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !parts.some((part) => part.name === name));
if (unknown.length > 0) {
  console.error(
    `There is no part named ${unknown.join(", ")}. The parts are ${parts.map(({ name }) => name).join(", ")}.`,
  );
  process.exit(2);
}
const chosen = asked.length > 0 ? parts.filter(({ name }) => asked.includes(name)) : parts;
await provideTools({
  browser: chosen.some(({ name }) => name === "journeys"),
  postgres: chosen.some(({ name }) => name === "unit"),
  libreOffice: chosen.some(({ name }) => name === "unit"),
});

/** @type {(Outcome & Readonly<{ name: string, seconds: number }>)[]} */
const rows = [];
const place = (/** @type {string} */ wanted) => parts.findIndex(({ name }) => name === wanted);

/**
 * @param {Part} part
 * @param {"now" | "later"} printed
 */
async function carryOut(part, printed) {
  const began = performance.now();
  const head = `\n── ${part.name}: ${part.does}`;
  let said = "";
  const keep = (/** @type {string} */ text) => {
    said += text;
  };
  if (printed === "now") console.log(head);
  const outcome = await part.run(printed === "now" ? null : keep);
  if (printed === "later") console.log(`${head}\n${said.trimEnd()}`);
  rows.push({ ...outcome, name: part.name, seconds: (performance.now() - began) / 1000 });
}

/** @param {readonly Part[]} those */
async function inTurn(those) {
  for (const part of those) await carryOut(part, "later");
}

const [beside, inFront, last] = [
  chosen.filter(({ name }) => name !== "unit" && name !== "journeys"),
  chosen.filter(({ name }) => name === "unit"),
  chosen.filter(({ name }) => name === "journeys"),
];
await Promise.all([inTurn(beside), ...inFront.map((part) => carryOut(part, "now"))]);
for (const part of last) {
  const unbuilt = rows.some(({ name, ok }) => name === "build" && !ok);
  if (unbuilt) {
    const tally = { ...none, failed: 1 };
    rows.push({ ok: false, tally, note: "not run, as the build failed", name: part.name, seconds: 0 });
  } else await carryOut(part, "now");
}
rows.sort((one, other) => place(one.name) - place(other.name));
rmSync(workFolder, { recursive: true, force: true });

// Once more at the end, where whoever reads only the end of a long output finds it
for (const { name, failures = [] } of rows)
  for (const failure of failures) console.log(`\nFAILED in ${name}: ${failure}`);

console.log("\npart         result   seconds   passed  failed  skipped");
for (const { name, ok, seconds, tally, note } of rows) {
  const numbers = [tally.passed, tally.failed, tally.skipped].map((count) => String(count).padStart(8)).join("");
  console.log(`${name.padEnd(12)} ${(ok ? "ok" : "FAILED").padEnd(8)} ${seconds.toFixed(1).padStart(7)} ${numbers}`);
  if (note) console.log(`             ${note}`);
}
const sum = (/** @type {keyof Tally} */ of) => rows.reduce((total, { tally }) => total + tally[of], 0);
console.log(
  `\n${sum("passed")} passed, ${sum("failed")} failed, ${sum("skipped")} skipped, in ${(performance.now() / 60_000).toFixed(1)} minutes`,
);
process.exit(rows.every(({ ok }) => ok) ? 0 : 1);
