// The programs the tests want beside Node: a Chromium, a PostgreSQL server and LibreOffice. Finds them, and
// installs them from the system's packages where this account may do that.
// @ts-check
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, realpathSync } from "node:fs";
import { delimiter, dirname, join } from "node:path";

/** @param {string} name @returns {string | undefined} */
function onPath(name) {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return folders.map((folder) => join(folder, name)).find((path) => existsSync(path));
}

/** Chromium without a window: the same engine, which does the journeys in about three quarters of the time. */
const windowless = "chromium-headless-shell";

/** @returns {string | undefined} */
function systemChromium() {
  const named = process.env.EVENFIELD_CHROMIUM;
  if (named) return named;
  return [windowless, "chromium", "chromium-browser", "google-chrome-stable", "google-chrome"]
    .map(onPath)
    .find(Boolean);
}

/**
 * A browser the journeys can use: the system's, else the one Playwright brings.
 * @returns {Promise<{ kind: "found", path?: string } | { kind: "missing", because: string }>}
 */
export async function findChromium() {
  const path = systemChromium();
  if (path) return { kind: "found", path };
  const { chromium } = await import("@playwright/test");
  if (existsSync(chromium.executablePath())) return { kind: "found" };
  return { kind: "missing", because: "no Chromium was found, and none could be installed" };
}

/** @returns {string | undefined} the folder with the programs of a PostgreSQL server, newest version first */
export function findPostgres() {
  const packaged = "/usr/lib/postgresql";
  const versions = existsSync(packaged) ? readdirSync(packaged).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((version) => join(packaged, version, "bin")),
    ...(process.env.PATH ?? "").split(delimiter),
  ];
  return folders.find((folder) => ["initdb", "pg_ctl", "postgres"].every((name) => existsSync(join(folder, name))));
}

/**
 * @param {"calc" | "writer"} part works out workbooks, or opens text documents
 * @returns {string | undefined} a LibreOffice with that part
 */
export function findLibreOffice(part) {
  const program = process.env.EVENFIELD_LIBREOFFICE || ["soffice", "libreoffice", "localc"].map(onPath).find(Boolean);
  if (program === undefined || part === "calc") return program;
  const beside = readdirSync(dirname(realpathSync(program))); // the suite may come without the part for texts
  return beside.some((name) => name.includes("swlo")) ? program : undefined;
}

const mayInstall = () => process.getuid?.() === 0 && onPath("apt-get") !== undefined;

/**
 * Runs a command up to three times, each at most five minutes long.
 * @param {string} program
 * @param {readonly string[]} args
 */
function tried(program, args) {
  for (let attempt = 1; attempt <= 3; attempt += 1) {
    const { status } = spawnSync(program, args, {
      stdio: ["ignore", "ignore", "inherit"],
      timeout: 300_000,
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (status === 0) return true;
    console.error(`${program} ${args.join(" ")}: attempt ${attempt} of 3 did not succeed.`);
  }
  return false;
}

/**
 * Sees to it that what is wanted is there, as far as this account may. What stays missing is reported by the part
 * that needs it.
 * @param {Readonly<{ browser: boolean, postgres: boolean, libreOffice: boolean }>} wanted
 */
export async function provideTools(wanted) {
  const packages = [];
  if (wanted.browser && !process.env.EVENFIELD_CHROMIUM && !onPath(windowless)) packages.push(windowless);
  if (wanted.postgres && !findPostgres()) packages.push("postgresql");
  if (wanted.libreOffice && !findLibreOffice("calc")) packages.push("libreoffice-calc-nogui");
  if (wanted.libreOffice && !findLibreOffice("writer")) packages.push("libreoffice-writer-nogui");
  if (packages.length === 0) return;
  if (mayInstall()) {
    console.log(`Installing ${packages.join(" and ")} from the system's packages.`);
    const install = (/** @type {readonly string[]} */ these) =>
      tried("apt-get", ["install", "-y", "-q", "--no-install-recommends", ...these]);
    if (tried("apt-get", ["update", "-q"]))
      // one after the other, as a system may lack one of them
      for (const name of packages)
        if (!install([name]) && name === windowless && systemChromium() === undefined) install(["chromium"]);
  }
  if (wanted.browser && (await findChromium()).kind === "missing") {
    console.log("Fetching the browser that Playwright brings.");
    tried(process.execPath, ["node_modules/@playwright/test/cli.js", "install", "chromium"]);
  }
}
