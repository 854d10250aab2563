import { Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import type { Database } from "./database";
import { migrate } from "./migrate";
import { scopePlugin } from "./scope";
import type { Tables } from "./tables";

/** Opens a PostgreSQL database; the migrator holds an advisory lock, so several processes may start at once. */
export async function openPostgres(url: string, upTo?: string): Promise<Database> {
  const pool = new pg.Pool({ connectionString: url, max: 10, connectionTimeoutMillis: 10_000 });
  // The pool drops a connection that breaks while nobody uses it and opens another when needed; without a listener
  // the event would end the process.
  pool.on("error", (problem) => console.error(`A waiting database connection broke: ${problem.message}`));
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    await migrate(db, upTo);
  } catch (problem) {
    await db.destroy();
    throw problem;
  }
  return over(db, db);
}

/** What a store asks of a database; `seen` is as much of the whole as a scope lets through. */
const over = (seen: Kysely<Tables>, whole: Kysely<Tables>): Database => ({
  read: (work) => seen.transaction().setIsolationLevel("repeatable read").setAccessMode("read only").execute(work),
  change: (work) => seen.transaction().setIsolationLevel("read committed").execute(work),
  within: (scope) => over(scope.kind === "everything" ? whole : whole.withPlugin(scopePlugin(scope)), whole),
  whole,
  close: () => whole.destroy(),
});
