import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { afterAll } from "vitest";
import type { TrialMaker } from "./trial";

/** Makes a new SQLite file for each trial, and takes all of them away after the tests of the file. */
export function sqliteTrials(): TrialMaker {
  const folders: string[] = [];
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });
  return async () => {
    const folder = mkdtempSync(join(tmpdir(), "evenfield-sqlite-"));
    folders.push(folder);
    const raw = async (sql: string) => {
      const file = new SqliteFile(join(folder, "evenfield.sqlite"));
      file.exec(sql);
      file.close();
    };
    return { location: { kind: "sqlite", folder }, raw };
  };
}
