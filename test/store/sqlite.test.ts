import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { sql } from "kysely";
import { describe, expect, test } from "vitest";
import { openSqlite } from "../../lib/store/sqlite";
import { backupContract } from "./backup-contract";
import { contentsContract } from "./contents-contract";
import { storeContract } from "./contract";
import { peopleContract } from "./people-contract";
import { sqliteTrials } from "./sqlite-trial";
import { open } from "./trial";

const sqliteTrial = sqliteTrials();

describe("the store over SQLite", { timeout: 120_000 }, () => {
  storeContract(sqliteTrial);
  contentsContract(sqliteTrial);
  describe("a backup", () => backupContract(sqliteTrial, sqliteTrial));
  describe("people", () => peopleContract(sqliteTrial, sqliteTrial));

  test("keeps its one file in a folder that it makes", async () => {
    const { location } = await sqliteTrial();
    const folder = location.kind === "sqlite" ? join(location.folder, "made", "for it") : "";
    const store = await open({ kind: "sqlite", folder });
    await store.close();
    const file = new SqliteFile(join(folder, "evenfield.sqlite"), { fileMustExist: true });
    expect(file.pragma("journal_mode", { simple: true })).toBe("wal");
    file.close();
  });

  test("says that there is no room, and goes on when there is", async () => {
    const { location } = await sqliteTrial();
    const database = await openSqlite(location.kind === "sqlite" ? location.folder : "");
    const pages = (most: number) =>
      database.read(async (transaction) => {
        await sql`pragma max_page_count = ${sql.lit(most)}`.execute(transaction);
        const { rows } = await sql<{ page_count: number }>`pragma page_count`.execute(transaction);
        return rows[0]?.page_count ?? 0;
      });
    await pages((await pages(1_000_000)) + 2);
    const put = (id: string) =>
      database.change((transaction) =>
        transaction
          .insertInto("project")
          .values({
            ...{ id, name: "x".repeat(100_000), owner: "", origin: "own", head_seq: 0, head_hash: "" },
            ...{
              created_at: "",
              created_by: "",
              changed_at: "",
              changed_by: "",
              removed_at: null,
              organisation_id: "first",
              searched: "",
            },
          })
          .execute(),
      );
    await expect(put("first")).rejects.toThrow("The disk that holds the data is full");
    await expect(put("second")).rejects.toThrow("so nothing of this change was kept"); // and not that it can’t roll back
    await pages(1_000_000);
    await put("third");
    const rows = await database.read((transaction) => transaction.selectFrom("project").select("id").execute());
    expect(rows).toStrictEqual([{ id: "third" }]);
    await database.close();
  });
});
