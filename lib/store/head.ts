import type { Transaction } from "kysely";
import { type Change, recordRow } from "./record-entry";
import type { ProjectRow, Tables } from "./tables";

/**
 * Takes the lock on a project for the rest of the transaction and gives its row, null if there never was one. It must be
 * the first statement: as an update it makes SQLite take its one write lock and PostgreSQL the lock of the row, so that
 * whatever is read afterwards stays true until the commit, and entries of the record follow one another.
 */
export async function lockedProject(transaction: Transaction<Tables>, project: string): Promise<ProjectRow | null> {
  const row = await transaction
    .updateTable("project")
    .set(({ ref }) => ({ head_seq: ref("head_seq") }))
    .where("id", "=", project)
    .returningAll()
    .executeTakeFirst();
  return row ?? null;
}

/** The last entry of a project's record. */
export type Head = Readonly<{ project: string; seq: number; hash: string }>;

export const headOf = (row: ProjectRow): Head => ({ project: row.id, seq: row.head_seq, hash: row.head_hash });

/**
 * Appends changes to the record of a locked project and moves its head there. What was refused changed nothing, so the
 * time of the last change stays.
 */
export async function append(
  transaction: Transaction<Tables>,
  head: Head,
  ...changes: readonly [Change, ...Change[]]
): Promise<void> {
  let last = head;
  for (const change of changes) {
    const entry = recordRow(last, change);
    await transaction.insertInto("record").values(entry).execute();
    last = { project: head.project, seq: entry.seq, hash: entry.hash };
  }
  const done = changes.findLast(({ action }) => action !== "refuse");
  const changed = done === undefined ? {} : { changed_at: done.at, changed_by: done.who };
  await transaction
    .updateTable("project")
    .set({ head_seq: last.seq, head_hash: last.hash, ...changed })
    .where("id", "=", head.project)
    .execute();
}
