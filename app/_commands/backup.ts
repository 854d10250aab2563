// npm run backup -- FILE: all that the store holds as one file, made while others go on working, then restored into a
// place of its own and verified there, so that it is known to serve.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { environmentLocation, explainBackupFault, restore } from "#lib/store";
import { explainFileProblem, linesOf, writeBackup } from "./backup-file";
import { verifiedRecords } from "./verified-records";

const [path] = process.argv.slice(2);

async function makeBackup(path: string): Promise<void> {
  const { projects, rows } = await writeBackup(environmentLocation(), path);
  console.log(`${path}: ${projects} ${projects === 1 ? "project" : "projects"}, ${rows} rows`);
  const folder = mkdtempSync(join(tmpdir(), "evenfield-rehearsal-"));
  try {
    const rehearsal = { kind: "sqlite", folder } as const;
    const outcome = await restore(rehearsal, () => linesOf(path));
    if (outcome.kind === "refused") throw new Error(explainBackupFault(outcome.fault));
    const isIntact = await verifiedRecords(rehearsal);
    console.log(isIntact ? "restored for trial, every record holds" : "restored for trial, not every record holds");
    if (!isIntact) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

if (path === undefined) {
  console.error("Name the file to write: npm run backup -- FILE");
  process.exitCode = 2;
} else
  try {
    await makeBackup(path);
  } catch (problem) {
    console.error(`No backup that serves was made: ${explainFileProblem(problem, path)}`);
    process.exitCode = 1;
  }
