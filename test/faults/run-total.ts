import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import { totalsFile } from "./totals-file";

const trial = z.object({
  line: z.string(),
  ...{ rounds: z.number(), kills: z.number(), acknowledged: z.number(), lost: z.number(), brokenRecords: z.number() },
});

/** Collects what the trials of a run have counted, and prints it together when the run is over. */
export function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-totals-"));
  const file = join(folder, "trials.jsonl");
  process.env[totalsFile] = file;
  const began = performance.now();
  return () => {
    const lines = existsSync(file) ? readFileSync(file, "utf8").trimEnd().split("\n") : [];
    rmSync(folder, { recursive: true, force: true });
    if (lines.length === 0) return;
    const trials = lines.map((line) => trial.parse(JSON.parse(line)));
    const sum = (of: "rounds" | "kills" | "acknowledged" | "lost" | "brokenRecords") =>
      trials.reduce((total, one) => total + one[of], 0);
    console.log(`\n${trials.map(({ line }) => line).join("\n")}`);
    console.log(
      `All trials: ${sum("kills")} kills and ${sum("rounds") - sum("kills")} other faults, ${sum("acknowledged")} acknowledged ` +
        `writes, ${sum("lost")} lost, ${sum("brokenRecords")} broken records, in ${Math.round((performance.now() - began) / 60_000)} minutes`,
    );
  };
}
