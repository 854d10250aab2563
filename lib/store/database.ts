import type { Transaction } from "kysely";
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
  close: () => Promise<void>;
}>;
