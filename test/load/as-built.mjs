// Runs a bench as a build would run it, joined into one file: `node test/load/as-built.mjs test/load/bench.ts`. tsx
// gives every function its name by a call of its own, which took an eighth of an evaluation and which no served page pays for.
// @ts-check
import { rmSync } from "node:fs";
import { mkdtemp } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

const [, , entry = ""] = process.argv;
const folder = await mkdtemp(join("node_modules", ".bench-")); // packages are found from there
const outfile = join(folder, "bench.mjs");
process.on("exit", () => rmSync(folder, { recursive: true, force: true })); // a bench may end the process itself
await build({
  ...{ entryPoints: [entry], outfile, bundle: true, packages: "external", logLevel: "warning" },
  ...{ platform: "node", format: "esm", target: "node20", tsconfig: "tsconfig.json" },
});
await import(pathToFileURL(outfile).href);
