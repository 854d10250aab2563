import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { afterAll, describe, expect, test } from "vitest";
import { contentsContract } from "./contents-contract";
import { storeContract } from "./contract";
import { open, type Trial } from "./trial";

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

async function sqliteTrial(): Promise<Trial> {
  const folder = mkdtempSync(join(tmpdir(), "evenfield-sqlite-"));
  folders.push(folder);
  const raw = async (sql: string) => {
    const file = new SqliteFile(join(folder, "evenfield.sqlite"));
    file.exec(sql);
    file.close();
  };
  return { location: { kind: "sqlite", folder }, raw };
}

describe("the store over SQLite", { timeout: 120_000 }, () => {
  storeContract(sqliteTrial);
  contentsContract(sqliteTrial);

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
