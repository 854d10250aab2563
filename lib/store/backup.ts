import { createHash } from "node:crypto";
import { sql, type Transaction } from "kysely";
import { z } from "zod";
import type { Database, Location } from "./database";
import { migrations } from "./migrations";
import { openDatabase } from "./open-database";
import type { Tables } from "./tables";

/*
 * A backup is text, one JSON value a line, that holds every row of every table as of one moment. It is the same for both
 * databases, so it also leads from one to the other:
 *
 *   {"format":"evenfield-backup","version":1,"madeAt":"…","tables":"0003-…"}    the last migration of its tables
 *   {"project":{"id":"…","name":"…"}}                                           a row under the name of its table
 *   {"content_part":{…,"bytes":"…"}}                                            bytes as base64
 *   {"person":{…,"email_verified":0,"created_at":"…"}}                          yes and no as 1 and 0, times in ISO 8601
 *   {"rows":1234,"sha256":"…"}                                                  over all lines before, line ends with them
 *
 * What lives briefly is left out: whoever was signed in signs in again, links that were not followed are made anew, and who
 * has a page open shows within seconds.
 */

const format = "evenfield-backup";
const header = z.strictObject({
  format: z.literal(format),
  version: z.literal(1),
  madeAt: z.string(),
  tables: z.string(),
});
const footer = z.strictObject({ rows: z.number().int().nonnegative(), sha256: z.string() });
const row = z.record(z.string(), z.union([z.string(), z.number(), z.null()]));

/** Tables of what lives briefly. */
type Brief = "sign_in" | "one_time_value" | "way_in" | "attempt" | "presence";

type TableName = Exclude<keyof Tables, Brief>;

/** Every table with its key, those first that others refer to. `page` is how many rows are held in memory at once. */
const tables = {
  organisation: { key: ["id"], page: 500 },
  person: { key: ["id"], page: 500 },
  membership: { key: ["organisation_id", "person_id"], page: 500 },
  credential: { key: ["id"], page: 500 },
  project: { key: ["id"], page: 500 },
  document: { key: ["project_id", "kind", "id"], page: 100 },
  draft: { key: ["project_id", "kind", "id", "editor"], page: 100 },
  record: { key: ["project_id", "seq"], page: 100 },
  content: { key: ["project_id", "sha256"], page: 500 },
  content_part: { key: ["project_id", "sha256", "part"], page: 8 },
  seal: { key: ["project_id", "lock"], page: 500 },
  project_person: { key: ["project_id", "person_id"], page: 500 },
} as const satisfies { [T in TableName]: Readonly<{ key: readonly (keyof Tables[T] & string)[]; page: number }> };
const tableNames = Object.keys(tables) as TableName[];

type Row = Record<string, string | number | boolean | Date | Uint8Array | null>;
type JsonRow = z.output<typeof row>;

const lastMigration = Object.keys(migrations).toSorted().at(-1) ?? "";

/** What a backup holds or brought back. */
export type BackupCount = Readonly<{ projects: number; rows: number }>;

/** Why nothing was restored. `line` counts from 1. */
export type BackupFault = Readonly<
  | { kind: "not-a-backup" }
  | { kind: "newer"; tables: string }
  | { kind: "line-unread"; line: number; reason: string }
  | { kind: "cut-off" }
  | { kind: "altered" }
  | { kind: "place-taken"; projects: number }
  | { kind: "people-there"; people: number }
  | { kind: "place-further-on"; tables: string }
>;

/**
 * Writes everything that a database holds, as of one moment, while others go on working with it.
 * @param write takes one line with its end; the next is made once it has resolved
 */
export async function backUp(
  location: Location,
  write: (line: string) => Promise<void>,
  madeAt: string,
): Promise<BackupCount> {
  const database = await openDatabase(location);
  try {
    return await database.read(async (transaction) => {
      const hash = createHash("sha256");
      const say = async (value: unknown) => {
        const line = `${JSON.stringify(value)}\n`;
        hash.update(line);
        await write(line);
      };
      await say({ format, version: 1, madeAt, tables: lastMigration });
      const counts = { projects: 0, rows: 0 };
      for (const table of tableNames)
        for await (const stored of rowsOf(transaction, table)) {
          await say({ [table]: toJson(stored) });
          counts.rows += 1;
          if (table === "project") counts.projects += 1;
        }
      await write(`${JSON.stringify({ rows: counts.rows, sha256: hash.digest("hex") })}\n`);
      return counts;
    });
  } finally {
    await database.close();
  }
}

/** The rows of a table in the order of their keys, a page at a time. */
async function* rowsOf(transaction: Transaction<Tables>, table: TableName): AsyncGenerator<Row> {
  const { key, page } = tables[table];
  const columns = sql.join(key.map((column) => sql.ref(column)));
  let last: Row | undefined;
  for (;;) {
    const after =
      last === undefined ? sql`` : sql`where (${columns}) > (${sql.join(key.map((column) => last?.[column]))})`;
    const { rows } =
      await sql<Row>`select * from ${sql.table(table)} ${after} order by ${columns} limit ${page}`.execute(transaction);
    yield* rows;
    last = rows.at(-1);
    if (rows.length < page) return;
  }
}

const toJson = (stored: Row): JsonRow =>
  Object.fromEntries(Object.entries(stored).map(([column, value]) => [column, plain(value)]));

function plain(value: Row[string]): JsonRow[string] {
  if (value instanceof Uint8Array) return Buffer.from(value).toString("base64");
  if (value instanceof Date) return value.toISOString();
  return typeof value === "boolean" ? Number(value) : value;
}

function fromJson(table: TableName, read: JsonRow, kind: Location["kind"]): Row {
  if (table === "content_part" && typeof read.bytes === "string")
    return { ...read, bytes: Buffer.from(read.bytes, "base64") };
  if (table === "person" && kind === "postgres") return { ...read, email_verified: read.email_verified === 1 };
  return read;
}

/** Carries a reason out of the transaction that it undoes. */
class NotRestored extends Error {
  constructor(readonly fault: BackupFault) {
    super(fault.kind);
  }
}

/**
 * Brings a backup back into a database without projects: all of it, or nothing where something is the matter.
 * A backup with tables of an earlier version needs a database that is new; its tables are brought up to date afterwards.
 * @param lines begins anew at each call, as a busy database may make it necessary to try again
 */
export async function restore(
  location: Location,
  lines: () => AsyncIterable<string>,
): Promise<Readonly<{ kind: "restored" } & BackupCount> | Readonly<{ kind: "refused"; fault: BackupFault }>> {
  try {
    const made = await tablesOf(lines());
    await assertWhole(lines());
    const database = await openedAt(location, made);
    try {
      return {
        kind: "restored",
        ...(await database.change((transaction) => allBrought(transaction, lines(), location.kind))),
      };
    } finally {
      await database.close();
      if (made !== lastMigration) await (await openDatabase(location)).close();
    }
  } catch (problem) {
    if (problem instanceof NotRestored) return { kind: "refused", fault: problem.fault };
    throw problem;
  }
}

/** Opened with tables of a version, which a database that is further on can't go back to. */
async function openedAt(location: Location, made: string): Promise<Database> {
  try {
    return await openDatabase(location, made);
  } catch (problem) {
    if (made === lastMigration) throw problem;
    await (await openDatabase(location)).close();
    throw new NotRestored({ kind: "place-further-on", tables: made });
  }
}

/** The migration up to which the tables of a backup had come. */
async function tablesOf(lines: AsyncIterable<string>): Promise<string> {
  for await (const line of lines) {
    const read = header.safeParse(jsonOf(line));
    if (!read.success) break;
    const { tables: made } = read.data;
    if (!Object.hasOwn(migrations, made)) throw new NotRestored({ kind: "newer", tables: made });
    return made;
  }
  throw new NotRestored({ kind: "not-a-backup" });
}

/** Reads all of it once before anything is written, so that a damaged file is told as that and not by what a database makes of it. */
async function assertWhole(lines: AsyncIterable<string>): Promise<void> {
  const hash = createHash("sha256");
  let number = 0;
  for await (const line of lines) {
    number += 1;
    const value = jsonOf(line);
    const end = footer.safeParse(value);
    if (end.success) {
      if (end.data.rows !== number - 2 || end.data.sha256 !== hash.digest("hex"))
        throw new NotRestored({ kind: "altered" });
      return;
    }
    hash.update(`${line}\n`);
    if (number > 1) rowIn(value, number);
  }
  throw new NotRestored({ kind: "cut-off" });
}

async function allBrought(
  transaction: Transaction<Tables>,
  lines: AsyncIterable<string>,
  kind: Location["kind"],
): Promise<BackupCount> {
  await assertFree(transaction);
  const counts = { projects: 0, rows: 0 };
  let waiting: { table: TableName; rows: Row[] } | null = null;
  const bring = async () => {
    if (waiting === null || waiting.rows.length === 0) return;
    const { table, rows } = waiting;
    waiting = null;
    if (table === "organisation" && counts.rows === rows.length) await clearFirstOrganisation(transaction);
    await transaction
      .insertInto(table)
      .values(rows as never)
      .execute();
  };
  let number = 0;
  for await (const line of lines) {
    number += 1;
    const value = jsonOf(line);
    if (number === 1 || footer.safeParse(value).success) continue;
    const { table, read } = rowIn(value, number);
    if (waiting !== null && (waiting.table !== table || waiting.rows.length >= tables[table].page)) await bring();
    waiting ??= { table, rows: [] };
    waiting.rows.push(fromJson(table, read, kind));
    counts.rows += 1;
    if (table === "project") counts.projects += 1;
  }
  await bring();
  return counts;
}

/** Its first statement writes nothing and takes the lock of a writer, as each change has to begin with a write. */
async function assertFree(transaction: Transaction<Tables>): Promise<void> {
  await transaction.deleteFrom("draft").where("project_id", "=", "").execute();
  const { count } = await transaction
    .selectFrom("project")
    .select(({ fn }) => fn.countAll().as("count"))
    .executeTakeFirstOrThrow();
  if (Number(count) > 0) throw new NotRestored({ kind: "place-taken", projects: Number(count) });
}

/** The organisation that new tables begin with gives way to those of the backup, unless somebody has moved in. */
async function clearFirstOrganisation(transaction: Transaction<Tables>): Promise<void> {
  const people = await transaction
    .selectFrom("person")
    .select(({ fn }) => fn.countAll().as("count"))
    .executeTakeFirstOrThrow();
  if (Number(people.count) > 0) throw new NotRestored({ kind: "people-there", people: Number(people.count) });
  await transaction.deleteFrom("organisation").execute();
}

function rowIn(value: unknown, line: number): Readonly<{ table: TableName; read: JsonRow }> {
  const [pair, ...more] = Object.entries(typeof value === "object" && value !== null ? value : {});
  const table = tableNames.find((name) => name === pair?.[0]);
  if (table === undefined || more.length > 0)
    throw new NotRestored({ kind: "line-unread", line, reason: "a row under the name of its table was expected" });
  const read = row.safeParse(pair?.[1]);
  if (read.success) return { table, read: read.data };
  throw new NotRestored({ kind: "line-unread", line, reason: `a row of ${table} was expected` });
}

/** Undefined where it is none. */
function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch (problem) {
    if (problem instanceof SyntaxError) return undefined;
    throw problem;
  }
}

/** Says why nothing was restored, and what to do. */
export function explainBackupFault(fault: BackupFault): string {
  switch (fault.kind) {
    case "not-a-backup":
      return "The file is no backup of Evenfield: its first line does not say so.";
    case "newer":
      return `The backup has tables of a later version (${fault.tables}). Restore it with that version or a later one.`;
    case "line-unread":
      return `Line ${fault.line} of the backup can’t be read: ${fault.reason}.`;
    case "cut-off":
      return "The backup is cut off: its last line is missing.";
    case "altered":
      return "The backup is not as it was written: number of rows or SHA-256 differ from its last line.";
    case "place-further-on":
      return `The backup has tables of an earlier version (${fault.tables}), and this database has later ones. Restore it into a new database; its tables are brought up to date then.`;
    case "people-there":
      return `The database has no projects but ${fault.people} ${fault.people === 1 ? "person who signs" : "people who sign"} in already. Restore a backup before the first owner is made, into a new database.`;
    case "place-taken":
      return `The database holds ${fault.projects} ${fault.projects === 1 ? "project" : "projects"} already. A backup is restored into an empty one only, so that nothing is overwritten.`;
  }
}
