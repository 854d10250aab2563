import type { Database } from "./database";
import { isId } from "./id";
import type { RecordAction, RecordedKind } from "./model";
import { projectRow } from "./project-row";
import type { RecordRow } from "./tables";
import { type RecordVerdict, recordVerdict } from "./verify";

/** One thing that happened to a project. `before` and `after` as record-entry.ts describes them. */
export type RecordEntry = Readonly<{
  seq: number;
  at: string;
  who: string;
  /** Id of the editor; absent in what was recorded before persons had ids. */
  person?: string;
  action: RecordAction;
  kind: RecordedKind;
  id: string;
  before: unknown;
  after: unknown;
  previousHash: string;
  hash: string;
}>;

/** What happened to projects, in order; see record-entry.ts for the format and how to verify it elsewhere. */
export type ProjectRecord = Readonly<{
  /** All entries by number, also of a removed project; empty if there was never such a project. */
  list: (project: string) => Promise<readonly RecordEntry[]>;
  /** Entries that fit a wish, the last first, a page at a time. */
  page: (project: string, wish: RecordWish) => Promise<RecordPage>;
  /** Everybody who stands in it, by name. */
  people: (project: string) => Promise<readonly string[]>;
  /** Whether the record and what it tells of are as they were written; null if there was never such a project. */
  verify: (project: string) => Promise<RecordVerdict | null>;
}>;

/** Which entries are looked for; what is left out leaves nothing out. Days are of the calendar in UTC, "2026-11-25". */
export type RecordWish = Readonly<{
  who?: string;
  kinds?: readonly RecordedKind[];
  from?: string;
  to?: string;
  /** Only entries with a lower number. */
  before?: number;
  limit: number;
}>;

export type RecordPage = Readonly<{ entries: readonly RecordEntry[]; more: boolean }>;

export const recordOf = (database: Database): ProjectRecord => ({
  async list(project) {
    if (!isId(project)) return [];
    const rows = await database.read((transaction) =>
      transaction.selectFrom("record").selectAll().where("project_id", "=", project).orderBy("seq").execute(),
    );
    return rows.map(entryFrom);
  },
  async page(project, { who, kinds, from, to, before, limit }) {
    if (!isId(project)) return { entries: [], more: false };
    const rows = await database.read((transaction) => {
      let found = transaction.selectFrom("record").selectAll().where("project_id", "=", project);
      if (who !== undefined) found = found.where("who", "=", who);
      if (kinds !== undefined) found = found.where("kind", "in", kinds);
      if (from !== undefined) found = found.where("at", ">=", from);
      if (to !== undefined) found = found.where("at", "<", `${to}T99`); // after every time of that day
      if (before !== undefined) found = found.where("seq", "<", before);
      return found
        .orderBy("seq", "desc")
        .limit(limit + 1)
        .execute();
    });
    return { entries: rows.slice(0, limit).map(entryFrom), more: rows.length > limit };
  },
  async people(project) {
    if (!isId(project)) return [];
    const rows = await database.read((transaction) =>
      transaction.selectFrom("record").select("who").distinct().where("project_id", "=", project).execute(),
    );
    return rows.map(({ who }) => who).sort((one, other) => one.localeCompare(other, "en"));
  },
  async verify(project) {
    if (!isId(project)) return null;
    const stored = await database.read(async (transaction) => {
      const row = await projectRow(transaction, project);
      if (row === null) return null;
      const entries = transaction.selectFrom("record").selectAll().where("project_id", "=", project).orderBy("seq");
      const documents = transaction.selectFrom("document").selectAll().where("project_id", "=", project);
      return { project: row, entries: await entries.execute(), documents: await documents.execute() };
    });
    return stored && recordVerdict(stored);
  },
});

const entryFrom = (row: RecordRow): RecordEntry => ({
  seq: row.seq,
  at: row.at,
  who: row.who,
  ...(row.person === null ? {} : { person: row.person }),
  action: row.action,
  kind: row.kind,
  id: row.id,
  before: row.before === null ? null : JSON.parse(row.before),
  after: row.after === null ? null : JSON.parse(row.after),
  previousHash: row.previous_hash,
  hash: row.hash,
});
