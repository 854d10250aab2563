// The two programs the tests want beside Node: a Chromium and a PostgreSQL server. Finds them, and
// installs them from the system's packages where this account may do that.
// @ts-check
import { execFileSync, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdirSync, readdirSync } from "node:fs";
import { delimiter, join } from "node:path";

/** @param {string} name @returns {string | undefined} */
function onPath(name) {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return folders.map((folder) => join(folder, name)).find((path) => existsSync(path));
}

/** @returns {string | undefined} */
function systemChromium() {
  const named = process.env.EVENFIELD_CHROMIUM;
  if (named) return named;
  return ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome"].map(onPath).find(Boolean);
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

/** @returns {string | undefined} the folder with initdb, pg_ctl and postgres, newest version first */
function findPostgres() {
  const packaged = "/usr/lib/postgresql";
  const versions = existsSync(packaged) ? readdirSync(packaged).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...versions.map((version) => join(packaged, version, "bin")),
    ...(process.env.PATH ?? "").split(delimiter),
  ];
  return folders.find((folder) => ["initdb", "pg_ctl", "postgres"].every((name) => existsSync(join(folder, name))));
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
 * @param {Readonly<{ browser: boolean, postgres: boolean }>} wanted
 */
export async function provideTools(wanted) {
  const packages = [];
  if (wanted.browser && (await findChromium()).kind === "missing") packages.push("chromium");
  if (wanted.postgres && !findPostgres()) packages.push("postgresql");
  if (packages.length === 0) return;
  if (mayInstall()) {
    console.log(`Installing ${packages.join(" and ")} from the system's packages.`);
    if (tried("apt-get", ["update", "-q"]))
      tried("apt-get", ["install", "-y", "-q", "--no-install-recommends", ...packages]);
  }
  if (wanted.browser && (await findChromium()).kind === "missing") {
    console.log("Fetching the browser that Playwright brings.");
    tried(process.execPath, ["node_modules/@playwright/test/cli.js", "install", "chromium"]);
  }
}

/**
 * A PostgreSQL server of our own, reached through a socket in its folder and gone afterwards. The server refuses to
 * run as root, so root hands it to the account that Debian's package made for it.
 * @param {string} folder made here
 * @returns {Promise<{ kind: "running", url: string, stop: () => Promise<void> } | { kind: "missing", because: string }>}
 */
export async function startPostgres(folder) {
  const programs = findPostgres();
  if (!programs) return { kind: "missing", because: "no PostgreSQL was found, and none could be installed" };
  const asRoot = process.getuid?.() === 0;
  const data = join(folder, "data");
  /** @param {string} name @param {readonly string[]} args */
  const run = (name, ...args) => {
    const command = asRoot
      ? ["runuser", "-u", "postgres", "--", join(programs, name), ...args]
      : [join(programs, name), ...args];
    execFileSync(command[0] ?? "", command.slice(1), {
      cwd: folder,
      stdio: ["ignore", "ignore", "pipe"],
      timeout: 120_000,
    });
  };
  try {
    mkdirSync(folder, { mode: 0o700 });
    if (asRoot) {
      const id = (/** @type {string} */ flag) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
      chownSync(folder, id("-u"), id("-g"));
    }
    run("initdb", "-D", data, "-U", "postgres", "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync");
    const settings = `-c listen_addresses= -c unix_socket_directories=${folder} -c max_connections=200`;
    run("pg_ctl", "-D", data, "-w", "-t", "60", "-l", join(folder, "log"), "-o", settings, "start");
  } catch (problem) {
    return {
      kind: "missing",
      because: `PostgreSQL did not start: ${problem instanceof Error ? problem.message : problem}`,
    };
  }
  return {
    kind: "running",
    url: `postgres://postgres@localhost/postgres?host=${encodeURIComponent(folder)}`,
    stop: async () => run("pg_ctl", "-D", data, "-w", "-m", "immediate", "stop"),
  };
}
