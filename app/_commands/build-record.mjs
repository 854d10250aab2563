// Knows whether the build in .next was made from the sources as they are now.
// @ts-check
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Everything a build depends on, relative to the project folder; what is absent counts as absent. */
const sources = [
  "app",
  "lib",
  "public",
  "proxy.ts",
  "instrumentation.ts",
  "next.config.mjs",
  "tsconfig.json",
  "package.json",
  "package-lock.json",
];

/** Commands run beside the pages and are no part of the build. */
const outsideTheBuild = new Set(["_commands"]);

/**
 * @param {string} folder
 * @param {string} path of a file or folder in it
 * @returns {string[]} paths of all files there, sorted
 */
function filesUnder(folder, path) {
  const full = join(folder, path);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [path];
  return readdirSync(full)
    .filter((name) => !outsideTheBuild.has(name))
    .sort()
    .flatMap((name) => filesUnder(folder, `${path}/${name}`));
}

/**
 * One hash over the names and contents of all sources; times of files play no part.
 * @param {string} folder
 */
function sourcesHash(folder) {
  const hash = createHash("sha256").update(`node ${process.versions.modules}\n`);
  for (const path of sources.flatMap((source) => filesUnder(folder, source))) {
    hash.update(`${path}\n`).update(
      createHash("sha256")
        .update(readFileSync(join(folder, path)))
        .digest(),
    );
  }
  return hash.digest("hex");
}

/** @param {string} folder */
const recordPath = (folder) => join(folder, ".next", "built-from.txt");

/**
 * @param {string} folder the project's
 * @returns true where a finished build exists and nothing it was made from has changed since
 */
export function buildIsCurrent(folder) {
  if (!existsSync(join(folder, ".next", "BUILD_ID")) || !existsSync(recordPath(folder))) return false;
  return readFileSync(recordPath(folder), "utf8").trim() === sourcesHash(folder);
}

/**
 * To be called right after a build that succeeded.
 * @param {string} folder the project's
 */
export function recordBuild(folder) {
  writeFileSync(recordPath(folder), `${sourcesHash(folder)}\n`);
}
