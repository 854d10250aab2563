import type { Kysely, Transaction } from "kysely";
import type { Scope } from "./scope";
import type { Tables } from "./tables";

/** Where the data are: one SQLite file in a folder of this machine, or a PostgreSQL database shared by several. */
export type Location = Readonly<{ kind: "sqlite"; folder: string } | { kind: "postgres"; url: string }>;

export type Work<T> = (transaction: Transaction<Tables>) => Promise<T>;

/** A database that is open and migrated. */
export type Database = Readonly<{
  /** All of `work` sees one moment of the database; it must not write. */
  read: <T>(work: Work<T>) => Promise<T>;
  /** All of `work` is kept once this resolves, or nothing of it. Its first statement must be a write: see head.ts. */
  change: <T>(work: Work<T>) => Promise<T>;
  /** The same database for somebody who may reach some projects only; closing it closes all. */
  within: (scope: Scope) => Database;
  /** For what belongs to no project: sign-in and organisations. Nothing narrows it. */
  whole: Kysely<Tables>;
  close: () => Promise<void>;
}>;
