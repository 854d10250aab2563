import { Kysely, PostgresDialect, type PostgresPool, type PostgresPoolClient } from "kysely";
import pg from "pg";
import { type Database, StoreFull, StoreUnreachable } from "./database";
import { migrate } from "./migrate";
import { scopePlugin } from "./scope";
import type { Tables } from "./tables";

/**
 * How long anything waits, in milliseconds, so that a server or a network that hangs gives an error and no page that never
 * ends. The server ends a statement before we turn our back on it. It takes back the lock of an application that fell
 * silent within a transaction before those who wait for that lock give up. Parameters of the address come before these.
 */
const patience = {
  connectionTimeoutMillis: 10_000,
  idle_in_transaction_session_timeout: 20_000,
  statement_timeout: 30_000,
  query_timeout: 35_000,
};

/** New tables and columns may take long where there is much, and wait for another process that makes them. */
const patienceWhileMigrating = { connectionTimeoutMillis: 10_000, query_timeout: 600_000 };

/** Opens a PostgreSQL database; the migrator holds an advisory lock, so several processes may start at once. */
export async function openPostgres(url: string, upTo?: string): Promise<Database> {
  const migrating = new Kysely<Tables>({ dialect: new PostgresDialect({ pool: poolOf(url, patienceWhileMigrating) }) });
  try {
    await migrate(migrating, upTo);
  } finally {
    await migrating.destroy();
  }
  const db = new Kysely<Tables>({ dialect: new PostgresDialect({ pool: poolOf(url, patience) }) });
  return over(db, db);
}

/** What a store asks of a database; `seen` is as much of the whole as a scope lets through. */
const over = (seen: Kysely<Tables>, whole: Kysely<Tables>): Database => ({
  read: (work) =>
    saidPlainly(() => seen.transaction().setIsolationLevel("repeatable read").setAccessMode("read only").execute(work)),
  change: (work) => saidPlainly(() => seen.transaction().setIsolationLevel("read committed").execute(work)),
  within: (scope) => over(scope.kind === "everything" ? whole : whole.withPlugin(scopePlugin(scope)), whole),
  whole,
  close: () => whole.destroy(),
});

/** Connections that are thrown away as soon as anything is the matter with them, and made anew when needed. */
function poolOf(url: string, wait: pg.PoolConfig): PostgresPool {
  const pool = new pg.Pool({
    connectionString: url,
    max: 10,
    keepAlive: true,
    keepAliveInitialDelayMillis: 10_000,
    ...wait,
  });
  // Without a listener the event would end the process. Who uses the connection learns of it from the query.
  pool.on("connect", (client) => client.on("error", () => undefined));
  pool.on("error", (problem) => console.error(`A waiting database connection broke: ${problem.message}`));
  return {
    async connect() {
      const client = await pool.connect().catch((problem: unknown) => {
        throw problem instanceof Error ? new StoreUnreachable(problem) : problem;
      });
      let broken: Error | undefined;
      const query: unknown = async (text: string, values: readonly unknown[]) => {
        // What comes after, such as to roll back, would wait behind a query that hangs, or hide what happened first.
        if (broken) throw broken;
        try {
          return await client.query(text, [...values]);
        } catch (problem) {
          if (!(problem instanceof Error) || isRefusalOfStatement(problem)) throw problem;
          broken = isDiskFull(problem) ? problem : new StoreUnreachable(problem);
          throw broken;
        }
      };
      // Kysely would hand it a cursor only if it was told of cursors
      return { query: query as PostgresPoolClient["query"], release: () => client.release(broken) };
    },
    end: () => pool.end(),
  };
}

/** The server did not like a statement and the connection is as good as before. */
const isRefusalOfStatement = (problem: Error): boolean =>
  problem instanceof pg.DatabaseError && problem.severity === "ERROR";

const isDiskFull = (problem: unknown): problem is Error =>
  problem instanceof pg.DatabaseError && problem.code === "53100";

async function saidPlainly<T>(job: () => Promise<T>): Promise<T> {
  try {
    return await job();
  } catch (problem) {
    throw isDiskFull(problem) ? new StoreFull(problem) : problem;
  }
}
