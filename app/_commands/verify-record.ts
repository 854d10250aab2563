// npm run verify-record: verifies the store, or the saved records that are named, and ends with 1 if one does not hold.
import { readFile } from "node:fs/promises";
import { environmentLocation, explainRecordFault, explainSetBack, recordFileVerdict } from "#lib/store";
import { verifiedRecords } from "./verified-records";

/** Verifies a record that was saved as a file; no store is opened. True where it holds. */
async function verifiedFile(file: string): Promise<boolean> {
  let text: string;
  try {
    text = await readFile(file, "utf8");
  } catch (problem) {
    console.log(`broken  ${file}: The file can’t be read: ${problem instanceof Error ? problem.message : problem}`);
    return false;
  }
  const verdict = recordFileVerdict(text);
  if (verdict.kind === "intact") {
    console.log(`intact  ${file}: ${verdict.entries} entries, head ${verdict.head}`);
    if (verdict.setBack.length > 0) console.log(`note    ${file}: ${explainSetBack(verdict.setBack)}`);
  } else console.log(`broken  ${file}: ${explainRecordFault(verdict.fault)}`);
  return verdict.kind === "intact";
}

const files = process.argv.slice(2);
const held = files.length === 0 ? [await verifiedRecords(environmentLocation())] : [];
for (const file of files) held.push(await verifiedFile(file));
if (held.includes(false)) process.exitCode = 1;
