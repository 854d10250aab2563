import type { Database, Location } from "./database";
import { openPostgres } from "./postgres";
import { openSqlite } from "./sqlite";

/**
 * Opens the database and brings its tables up to date; several processes may do so at once.
 * @param upTo the name of the last migration wanted, for data of an earlier version
 */
export function openDatabase(location: Location, upTo?: string): Promise<Database> {
  switch (location.kind) {
    case "sqlite":
      return openSqlite(location.folder, upTo);
    case "postgres":
      return openPostgres(location.url, upTo);
  }
}

declare global {
  // Survives the reloading of modules while developing, which would otherwise open one database after the other.
  var evenfieldDatabases: Map<string, Promise<Database>> | undefined;
}

/** The one open database of this process at a location; opened at the first call, and again if that failed or it was closed. */
export function sharedDatabase(location: Location): Promise<Database> {
  globalThis.evenfieldDatabases ??= new Map();
  const open = globalThis.evenfieldDatabases;
  const key = location.kind === "sqlite" ? location.folder : location.url;
  const known = open.get(key);
  if (known) return known;
  const opening = openDatabase(location).then((database) => ({
    ...database,
    close: async () => {
      open.delete(key);
      await database.close();
    },
  }));
  open.set(key, opening);
  opening.catch(() => open.delete(key));
  return opening;
}
