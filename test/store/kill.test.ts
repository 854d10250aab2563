import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { databaseKillTrial } from "../faults/database-kill-trial";
import { fullDiskTrial } from "../faults/full-disk-trial";
import { killTrial } from "../faults/kill-trial";
import { missingWrites } from "../faults/missing-writes";
import { ada, bid, withProject } from "./trial";

// The short variant of test/faults.
killTrial({
  sqliteWriting: 5,
  sqliteTwoWriting: 2,
  sqliteOpening: 3,
  sqliteClockShifted: 0,
  postgresWriting: 2,
  postgresTwoWriting: 2,
  postgresOpening: 1,
});
databaseKillTrial(2);
fullDiskTrial({ sqlite: 1, postgres: 0 });

test("the trial notices a write that is missing, older or different", async () => {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-missing-"));
  const { store, project, bidA } = await withProject({ kind: "sqlite", folder });
  await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", "second"), ada);
  const write = (version: number, words: string) => ({ kind: "saved", project, id: "bid-a", version, words }) as const;
  const missing = (...writes: ReturnType<typeof write>[]) => missingWrites(store, writes);
  expect(await missing(write(1, "as stated"), write(2, "second"))).toStrictEqual([]);
  expect(await missing(write(3, "third"))).toStrictEqual([
    "bid-a version 3 in the record: not there",
    "bid-a version 3: not there",
  ]);
  expect(await missing(write(1, "at stated"))).toStrictEqual([
    "bid-a version 1 in the record: 9 characters acknowledged, 9 found, unlike from character 1 on",
  ]);
  expect(await missing({ ...write(1, "as stated"), project: "nowhere" })).toStrictEqual(["project nowhere"]);
  const file = { kind: "kept", project, id: "bid-a", sha256: "0".repeat(64) } as const;
  expect(await missingWrites(store, [file])).toStrictEqual(["file bid-a: not there"]);
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});
