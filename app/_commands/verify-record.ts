import { readFile } from "node:fs/promises";
import {
  environmentLocation,
  explainContentFault,
  explainRecordFault,
  openStore,
  recordFileVerdict,
  unreadBodies,
} from "#lib/store";

/** One line about something that was verified; what does not hold ends the command with 1. */
function say(what: string, broken: string | null, intact = ""): void {
  if (broken !== null) process.exitCode = 1;
  console.log(broken === null ? `intact  ${what}: ${intact}` : `broken  ${what}: ${broken}`);
}

/** Verifies record and kept files of every project. It looks at bodies as stored, unparsed. */
async function verifyStore(): Promise<void> {
  const location = environmentLocation();
  const store = await openStore(location, { schemas: unreadBodies });
  const projects = [...(await store.projects.list()), ...(await store.projects.listRemoved())];
  const where = location.kind === "sqlite" ? location.folder : "the PostgreSQL database";
  console.log(`${projects.length} ${projects.length === 1 ? "project" : "projects"} in ${where}`);
  for (const { id, name } of projects) {
    const verdict = await store.record.verify(id);
    if (verdict?.kind === "intact") say(`${id}  ${name}`, null, `${verdict.entries} entries, head ${verdict.head}`);
    else say(`${id}  ${name}`, verdict ? explainRecordFault(verdict.fault) : "The project is gone.");
    for (const fault of await store.contents.verify(id)) say(`${id}  ${name}`, explainContentFault(fault));
  }
  await store.close();
}

/** Verifies a record that was saved as a file; no store is opened. */
async function verifyFile(file: string): Promise<void> {
  let text: string;
  try {
    text = await readFile(file, "utf8");
  } catch (problem) {
    say(file, `The file can’t be read: ${problem instanceof Error ? problem.message : String(problem)}`);
    return;
  }
  const verdict = recordFileVerdict(text);
  if (verdict.kind === "intact") say(file, null, `${verdict.entries} entries, head ${verdict.head}`);
  else say(file, explainRecordFault(verdict.fault));
}

const files = process.argv.slice(2);
if (files.length === 0) await verifyStore();
for (const file of files) await verifyFile(file);
