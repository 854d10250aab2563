import { type Accounts, accountsOf } from "./accounts";
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
import { type Organisations, organisationsOf } from "./organisations";
import { type PresenceOfOthers, presenceOf } from "./presence";
import { type Projects, projectsOf } from "./projects";
import { type ProjectRecord, recordOf } from "./record";
import type { Scope } from "./scope";
import type { SignInSettings } from "./sign-in-library";
import { type Swept, sweep } from "./sweep";

/** The only door to the database. */
export type Store<S extends Schemas> = Readonly<{
  projects: Projects<S>;
  documents: Documents<S>;
  contents: Contents<S>;
  drafts: Drafts;
  record: ProjectRecord;
  presence: PresenceOfOthers;
  close: () => Promise<void>;
}>;

/**
 * `scope` says which projects can be reached, all where it is left out; new projects go to `organisation`, as a rule the
 * first. `upgrades` lead stored bodies of older formats to today's; `guard` are the rules that every change of a standing project
 * has to pass, none where it is left out; clock and ids are the system's unless handed in.
 */
export type StoreOptions<S extends Schemas> = Readonly<{
  schemas: S;
  scope?: Scope;
  organisation?: string;
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
export async function environmentStore<S extends Schemas>(
  options: StoreOptions<S> & Readonly<{ scope: Scope }>,
): Promise<Store<S>> {
  return storeOver(await sharedDatabase(environmentLocation()), options);
}

function storeOver<S extends Schemas>(
  whole: Database,
  { schemas, scope = { kind: "everything" }, organisation = firstOrganisation, ...options }: StoreOptions<S>,
): Store<S> {
  const { upgrades = {}, guard, now = systemTime, newId = randomId } = options;
  const database = whole.within(scope);
  const bodies = bodiesOf(schemas, upgrades);
  const parts = { database, bodies, now, newId };
  const written = { ...parts, moves: movesOf(bodies, guard ?? null, newId) };
  return {
    projects: projectsOf({ ...parts, organisation }),
    documents: documentsOf(written),
    contents: contentsOf(written),
    drafts: draftsOf(database, now),
    record: recordOf(database),
    presence: presenceOf(database, now),
    close: whole.close,
  };
}

/** What stood before there were organisations, and all on a computer where nobody signs in, belongs to this one. */
export const firstOrganisation = "first";

const systemTime = (): string => new Date().toISOString();

/** Who somebody is and where they belong. */
export type People = Readonly<{
  accounts: Accounts;
  organisations: Organisations;
  /** Deletes what has served, such as sign-ins whose time is over. */
  sweep: () => Promise<Swept>;
  close: () => Promise<void>;
}>;

/** Opens sign-in and organisations, for scripts and tests; the caller closes it. */
export async function openPeople(
  location: Location,
  settings: SignInSettings,
  now: () => string = systemTime,
): Promise<People> {
  return peopleOver(await openDatabase(location), location, settings, now);
}

/** Sign-in and organisations of the store that the environment names; see `environmentStore`. */
export async function environmentPeople(settings: SignInSettings): Promise<People> {
  const location = environmentLocation();
  const database = await sharedDatabase(location);
  const known = peopleOf.get(database.whole) ?? peopleOver(database, location, settings, systemTime);
  peopleOf.set(database.whole, known);
  return known;
}

/** Made once for a database, as the sign-in library is slow to set up. */
const peopleOf = new WeakMap<object, People>();

const peopleOver = (database: Database, { kind }: Location, settings: SignInSettings, now: () => string): People => ({
  accounts: accountsOf(database, kind, settings, now),
  organisations: organisationsOf(database, kind, now),
  sweep: () => sweep(database, kind, now()),
  close: database.close,
});
