// npm run restore -- FILE: brings a backup back into the database that the environment names, which has to be empty.
// It may be of the other kind, so this is also the way from the file of one machine to PostgreSQL.
import { environmentLocation, explainBackupFault, restore } from "#lib/store";
import { explainFileProblem, linesOf } from "./backup-file";
import { verifiedRecords } from "./verified-records";

const [path] = process.argv.slice(2);

async function bringBack(path: string): Promise<void> {
  const location = environmentLocation();
  const outcome = await restore(location, () => linesOf(path));
  if (outcome.kind === "refused") {
    console.error(`Nothing was restored. ${explainBackupFault(outcome.fault)}`);
    process.exitCode = 1;
    return;
  }
  console.log(`restored ${outcome.projects} ${outcome.projects === 1 ? "project" : "projects"}, ${outcome.rows} rows`);
  if (!(await verifiedRecords(location))) process.exitCode = 1;
}

if (path === undefined) {
  console.error("Name the backup: npm run restore -- FILE");
  process.exitCode = 2;
} else
  try {
    await bringBack(path);
  } catch (problem) {
    // The address of a database may hold a password, so it is not repeated here.
    console.error(`Nothing was restored: ${explainFileProblem(problem, path)}`);
    process.exitCode = 1;
  }
