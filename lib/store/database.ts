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

/** There is no room for a change. Nothing of it was kept; what was kept before can be read as ever. */
export class StoreFull extends Error {
  constructor(cause: Error) {
    super("The disk that holds the data is full, so nothing of this change was kept. Make room, then save again.", {
      cause,
    });
    this.name = "StoreFull";
  }
}

/** The database or the way to it broke, or nobody answered in time. */
export class StoreUnreachable extends Error {
  constructor(cause: Error) {
    super(
      `The database does not answer (${cause.message}). Whether the last change was kept shows when the page is opened again.`,
      { cause },
    );
    this.name = "StoreUnreachable";
  }
}
