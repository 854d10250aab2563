import type { Database } from "./database";
import { isId } from "./id";
import type { DocumentKind, RecordAction } from "./model";
import { projectRow } from "./project-row";
import type { RecordRow } from "./tables";
import { type RecordVerdict, recordVerdict } from "./verify";

/** One thing that happened to a project. `before` and `after` as record-entry.ts describes them. */
export type RecordEntry = Readonly<{
  seq: number;
  at: string;
  who: string;
  action: RecordAction;
  kind: DocumentKind | "project";
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
  /** Whether the record and what it tells of are as they were written; null if there was never such a project. */
  verify: (project: string) => Promise<RecordVerdict | null>;
}>;

export const recordOf = (database: Database): ProjectRecord => ({
  async list(project) {
    if (!isId(project)) return [];
    const rows = await database.read((transaction) =>
      transaction.selectFrom("record").selectAll().where("project_id", "=", project).orderBy("seq").execute(),
    );
    return rows.map(entryFrom);
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
  action: row.action,
  kind: row.kind,
  id: row.id,
  before: row.before === null ? null : JSON.parse(row.before),
  after: row.after === null ? null : JSON.parse(row.after),
  previousHash: row.previous_hash,
  hash: row.hash,
});
