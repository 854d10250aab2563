import { mkdirSync, realpathSync } from "node:fs";
import { join } from "node:path";
import SqliteFile from "better-sqlite3";
import { type DatabaseConnection, Kysely, SqliteDialect, type SqliteDialectConfig, SqliteDriver } from "kysely";
import { type Database, StoreFull } from "./database";
import { migrate } from "./migrate";
import { scopePlugin } from "./scope";
import type { Tables } from "./tables";
import { inTurn } from "./turn";

const fileName = "evenfield.sqlite";

/** How long one statement waits for another process; the process answers nobody meanwhile. */
const waitMilliseconds = 2000;
const attempts = 8;

export async function openSqlite(folder: string, upTo?: string): Promise<Database> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const path = join(realpathSync(folder), fileName);
  const file = new SqliteFile(path, { timeout: waitMilliseconds });
  const db = new Kysely<Tables>({ dialect: new OneFileDialect({ database: file }, file) });
  try {
    await inTurn(path, () => patiently(() => prepare(file, db, upTo)));
  } catch (problem) {
    file.close();
    throw problem;
  }
  return over(db, path, db);
}

/** What a store asks of a database; `seen` is as much of the whole as a scope lets through. */
const over = (seen: Kysely<Tables>, path: string, whole: Kysely<Tables>): Database => ({
  read: (work) => seen.transaction().execute(work),
  change: (work) => inTurn(path, () => patiently(() => saidPlainly(() => seen.transaction().execute(work)))),
  within: (scope) => over(scope.kind === "everything" ? whole : whole.withPlugin(scopePlugin(scope)), path, whole),
  whole,
  close: () => whole.destroy(),
});

/**
 * SQLite itself ends a transaction that fails because the disk is full or broken. To roll it back once more would be an
 * error, which would be told in place of the true one.
 */
class OneFileDialect extends SqliteDialect {
  constructor(
    private readonly config: SqliteDialectConfig,
    private readonly file: SqliteFile.Database,
  ) {
    super(config);
  }

  override createDriver(): SqliteDriver {
    return new OneFileDriver(this.config, this.file);
  }
}

class OneFileDriver extends SqliteDriver {
  constructor(
    config: SqliteDialectConfig,
    private readonly file: SqliteFile.Database,
  ) {
    super(config);
  }

  override async rollbackTransaction(connection: DatabaseConnection): Promise<void> {
    if (this.file.inTransaction) await super.rollbackTransaction(connection);
  }
}

/** One transaction around all migrations, so that a process killed halfway leaves a file that opens. */
async function prepare(file: SqliteFile.Database, db: Kysely<Tables>, upTo?: string): Promise<void> {
  file.pragma("journal_mode = WAL");
  file.pragma("synchronous = FULL");
  file.pragma("foreign_keys = ON");
  file.exec("begin immediate");
  try {
    await migrate(db, upTo);
    file.exec("commit");
  } catch (problem) {
    if (file.inTransaction) file.exec("rollback");
    throw problem;
  }
}

/** Says of a full disk what it means, which “database or disk is full” leaves open. */
async function saidPlainly<T>(job: () => Promise<T>): Promise<T> {
  try {
    return await job();
  } catch (problem) {
    if (!(problem instanceof SqliteFile.SqliteError) || problem.code !== "SQLITE_FULL") throw problem;
    throw new StoreFull(problem);
  }
}

/** Tries again while another process holds the file; nothing of a failed attempt is left behind. */
async function patiently<T>(job: () => Promise<T>, left = attempts): Promise<T> {
  try {
    return await job();
  } catch (problem) {
    const busy = problem instanceof SqliteFile.SqliteError && problem.code.startsWith("SQLITE_BUSY");
    if (!busy || left <= 1) throw problem;
  }
  await new Promise((resolve) => setTimeout(resolve, 5));
  return patiently(job, left - 1);
}
