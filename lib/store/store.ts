import { bodiesOf } from "./bodies";
import { type Contents, contentsOf } from "./contents";
import type { Database, Location } from "./database";
import { type Documents, documentsOf } from "./documents";
import { type Drafts, draftsOf } from "./drafts";
import { environmentLocation } from "./environment";
import type { Guard } from "./guard";
import { randomId } from "./id";
import type { Schemas, Upgrades } from "./model";
import { movesOf } from "./moves";
import { openDatabase, sharedDatabase } from "./open-database";
import { type Projects, projectsOf } from "./projects";
import { type ProjectRecord, recordOf } from "./record";

/** The only door to the database. */
export type Store<S extends Schemas> = Readonly<{
  projects: Projects<S>;
  documents: Documents<S>;
  contents: Contents<S>;
  drafts: Drafts;
  record: ProjectRecord;
  close: () => Promise<void>;
}>;

/**
 * `upgrades` lead stored bodies of older formats to today's; `guard` are the rules that every change of a standing project
 * has to pass, none where it is left out; clock and ids are the system's unless handed in.
 */
export type StoreOptions<S extends Schemas> = Readonly<{
  schemas: S;
  guard?: Guard<S>;
  upgrades?: Upgrades;
  now?: () => string;
  newId?: () => string;
}>;

/** Opens a store of one's own, for scripts and tests; the caller closes it. */
export async function openStore<S extends Schemas>(location: Location, options: StoreOptions<S>): Promise<Store<S>> {
  return storeOver(await openDatabase(location), options);
}

/**
 * The store that the environment names, opened at the first call and shared by the whole process from then on. Call it
 * where a request is answered, never when a module is loaded: building the pages loads modules too.
 */
export async function environmentStore<S extends Schemas>(options: StoreOptions<S>): Promise<Store<S>> {
  return storeOver(await sharedDatabase(environmentLocation()), options);
}

function storeOver<S extends Schemas>(
  database: Database,
  { schemas, upgrades = {}, guard, now = systemTime, newId = randomId }: StoreOptions<S>,
): Store<S> {
  const bodies = bodiesOf(schemas, upgrades);
  const parts = { database, bodies, now, newId };
  const written = { ...parts, moves: movesOf(bodies, guard ?? null, newId) };
  return {
    projects: projectsOf(parts),
    documents: documentsOf(written),
    contents: contentsOf(written),
    drafts: draftsOf(database, now),
    record: recordOf(database),
    close: database.close,
  };
}

const systemTime = (): string => new Date().toISOString();
