import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { describe, expect, test } from "vitest";
import { backupContract } from "./backup-contract";
import { contentsContract } from "./contents-contract";
import { storeContract } from "./contract";
import { sqliteTrials } from "./sqlite-trial";
import { open } from "./trial";

const sqliteTrial = sqliteTrials();

describe("the store over SQLite", { timeout: 120_000 }, () => {
  storeContract(sqliteTrial);
  contentsContract(sqliteTrial);
  describe("a backup", () => backupContract(sqliteTrial, sqliteTrial));

  test("keeps its one file in a folder that it makes", async () => {
    const { location } = await sqliteTrial();
    const folder = location.kind === "sqlite" ? join(location.folder, "made", "for it") : "";
    const store = await open({ kind: "sqlite", folder });
    await store.close();
    const file = new SqliteFile(join(folder, "evenfield.sqlite"), { fileMustExist: true });
    expect(file.pragma("journal_mode", { simple: true })).toBe("wal");
    file.close();
  });
});
