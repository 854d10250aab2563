import { createHash, randomBytes } from "node:crypto";
import { isAPIError } from "better-auth/api";
import type { Transaction } from "kysely";
import { type Failures, failedOnceMore, waitAfter } from "#lib/access";
import { type PasswordProblem, passwordProblem } from "#lib/password";
import type { Database, Location } from "./database";
import { randomId } from "./id";
import { libraryTime, type SignInSettings, signInLibrary, signInLimit } from "./sign-in-library";
import type { Tables, WayInRow } from "./tables";

/** Somebody who signs in. */
export type AccountPerson = Readonly<{ id: string; name: string; email: string }>;

/** An organisation that somebody belongs to. */
export type Belonging = Readonly<{ id: string; name: string; administers: boolean }>;

/** Whoever a request comes from. `since` is when they signed in, ISO 8601. */
export type SignedIn = Readonly<{
  person: AccountPerson;
  session: Readonly<{ id: string; since: string }>;
  organisations: readonly Belonging[];
}>;

/** What a browser keeps so that the next request is known; the value is signed. */
export type SignInCookie = Readonly<{ name: string; value: string; secure: boolean; seconds: number }>;

export type SignInOutcome = Readonly<
  { kind: "signed-in"; cookie: SignInCookie } | { kind: "unknown" } | { kind: "wait"; seconds: number }
>;

/** What a link by which a password is set is good for. */
export type WayIn = Readonly<
  | { purpose: "first-owner" }
  | { purpose: "invitation" | "new-password"; person: AccountPerson; organisations: readonly string[] }
>;

/** Who comes in by a link: the first owner says who they are, everybody else is known. */
export type Entry = Readonly<{ password: string; name: string; email: string; organisation: string }>;

export type EntryOutcome = Readonly<
  { kind: "signed-in"; cookie: SignInCookie } | { kind: "password"; problem: PasswordProblem } | { kind: "link-spent" }
>;

/** A browser in which somebody is signed in. */
export type OpenSignIn = Readonly<{ id: string; since: string; lastUsed: string; browser: string; isThisOne: boolean }>;

/** Sign-in: who somebody is. What they may do is said elsewhere. */
export type Accounts = Readonly<{
  /** The token of a link for the first owner; null once somebody administers an organisation. Earlier ones no longer serve. */
  firstOwnerToken: () => Promise<string | null>;
  /** What a link is good for; null if it is used, has expired or never was. */
  wayIn: (token: string) => Promise<WayIn | null>;
  /** Sets the password, uses the link up and signs in; other sign-ins of the person end. */
  enter: (token: string, entry: Entry, browser: string) => Promise<EntryOutcome>;
  /** @param from where the attempt comes from, such as an address of the network, of which only the hash is kept; null where that is not known */
  signIn: (
    tried: Readonly<{ email: string; password: string; from: string | null; browser: string }>,
  ) => Promise<SignInOutcome>;
  /** Whoever a cookie header belongs to. */
  signedIn: (cookies: string | null) => Promise<SignedIn | null>;
  signOut: (cookies: string | null) => Promise<void>;
  signIns: (who: SignedIn) => Promise<readonly OpenSignIn[]>;
  /** Ends a sign-in of one’s own; true if there was such a one. */
  endSignIn: (who: SignedIn, id: string) => Promise<boolean>;
  changePassword: (
    who: SignedIn,
    passwords: Readonly<{ current: string; next: string; from: string | null }>,
  ) => Promise<
    Readonly<
      | { kind: "changed" }
      | { kind: "wrong" }
      | { kind: "wait"; seconds: number }
      | { kind: "password"; problem: PasswordProblem }
    >
  >;
  /** A link for a new password, for whoever asked by the address of their mail; null if nobody of it can sign in. */
  forgotten: (email: string) => Promise<Readonly<{ token: string; person: AccountPerson }> | null>;
}>;

const day = 24 * 3600 * 1000;

/** How long links serve, in milliseconds. */
const lifetimes: Readonly<Record<WayInRow["purpose"], number>> = {
  "first-owner": day,
  invitation: 7 * day,
  "new-password": day / 24,
};

/** Only this is stored of what a link or a cookie of ours holds. */
export const tokenHash = (token: string): string => createHash("sha256").update(token, "utf8").digest("hex");

export const newToken = (): string => randomBytes(24).toString("base64url");

/** A new link within a change. */
export async function newWayIn(
  transaction: Transaction<Tables>,
  {
    purpose,
    person,
    by,
    at,
  }: Readonly<{ purpose: WayInRow["purpose"]; person: string | null; by: string | null; at: string }>,
): Promise<string> {
  const token = newToken();
  const expires_at = new Date(Date.parse(at) + lifetimes[purpose]).toISOString();
  const row = { purpose, person_id: person, made_by: by, made_at: at, expires_at, used_at: null };
  await transaction
    .insertInto("way_in")
    .values({ token_hash: tokenHash(token), ...row })
    .execute();
  return token;
}

/** Links of a person that were not used yet serve no longer: whoever holds one could set another password by it. */
export async function forgetLinks(transaction: Transaction<Tables>, person: string): Promise<void> {
  await transaction.deleteFrom("way_in").where("person_id", "=", person).where("used_at", "is", null).execute();
}

/** Addresses of mail are compared in small letters, as the library stores them. */
export const foldedEmail = (email: string): string => email.trim().toLowerCase();

/** A time as the library writes it into the database at hand. */

const isoTime = (time: string | Date): string => (time instanceof Date ? time.toISOString() : time);

/** Failures by which a place is ahead of a person: many people may share an address of the network. */
const sparedFromOnePlace = 20;

export function accountsOf(
  database: Database,
  kind: Location["kind"],
  settings: SignInSettings,
  now: () => string,
): Accounts {
  const library = signInLibrary(database.whole, kind, settings);
  const db = database.whole;

  const cookieOf = async (headers: Headers): Promise<SignInCookie> => {
    const { sessionToken } = (await library.$context).authCookies;
    const set = headers.getSetCookie().find((one) => one.startsWith(`${sessionToken.name}=`)) ?? "";
    const value = decodeURIComponent(set.slice(sessionToken.name.length + 1).split(";")[0] ?? "");
    if (value === "") throw new Error("a sign-in without a cookie");
    // the database knows when a sign-in ends by being idle; a browser keeps its cookie as long as one may last at all
    return { name: sessionToken.name, value, secure: sessionToken.attributes.secure ?? false, seconds: signInLimit };
  };

  const entered = async (email: string, password: string, browser: string): Promise<SignInCookie | null> => {
    try {
      const { headers } = await library.api.signInEmail({
        body: { email, password },
        headers: new Headers({ "user-agent": browser }),
        returnHeaders: true,
      });
      return await cookieOf(headers);
    } catch (problem) {
      if (isRefusal(problem)) return null;
      throw problem;
    }
  };

  /**
   * Runs an attempt, unless too many failed before it. It counts as failed until it has succeeded, so that of many sent at
   * once no more are looked at than of many sent one after the other.
   */
  const attempted = async <T>(email: string, from: string | null, attempt: () => Promise<T | null>) => {
    const who = tokenHash(`who ${settings.secret} ${foldedEmail(email)}`);
    const place = from === null ? null : tokenHash(`from ${settings.secret} ${from}`);
    const seconds =
      (await counted(database, who, 0, now())) ||
      (place === null ? 0 : await counted(database, place, sparedFromOnePlace, now()));
    if (seconds > 0) return { kind: "wait", seconds } as const;
    const done = await attempt();
    if (done === null) return { kind: "failed" } as const;
    await db.deleteFrom("attempt").where("key", "=", who).execute();
    if (place !== null)
      await db
        .updateTable("attempt")
        .set((eb) => ({ failures: eb("failures", "-", 1) }))
        .where("key", "=", place)
        .execute();
    return { kind: "done", done } as const;
  };

  const standingWayIn = async (token: string) =>
    await db
      .selectFrom("way_in")
      .selectAll()
      .where("token_hash", "=", tokenHash(token))
      .where("used_at", "is", null)
      .where("expires_at", ">", now())
      .executeTakeFirst();

  const personOf = async (id: string): Promise<AccountPerson | null> =>
    (await db.selectFrom("person").select(["id", "name", "email"]).where("id", "=", id).executeTakeFirst()) ?? null;

  const belongings = async (person: string): Promise<readonly Belonging[]> => {
    const rows = await db
      .selectFrom("membership")
      .innerJoin("organisation", "organisation.id", "membership.organisation_id")
      .select(["organisation.id", "organisation.name", "membership.role"])
      .where("membership.person_id", "=", person)
      .where("membership.ended_at", "is", null)
      .execute();
    return rows
      .map(({ id, name, role }) => ({ id, name, administers: role === "administrator" }))
      .sort((one, other) => one.name.localeCompare(other.name, "en"));
  };

  const setPassword = async (transaction: Transaction<Tables>, person: string, hash: string, at: string) => {
    const time = libraryTime(kind, at);
    const facts = { password: hash, updated_at: time };
    const { numUpdatedRows } = await transaction
      .updateTable("credential")
      .set(facts)
      .where("person_id", "=", person)
      .where("provider_id", "=", "credential")
      .executeTakeFirst();
    if (numUpdatedRows > 0n) return;
    const made = { id: randomId(), account_id: person, provider_id: "credential", person_id: person, created_at: time };
    await transaction
      .insertInto("credential")
      .values({ ...made, ...facts })
      .execute();
  };

  return {
    async firstOwnerToken() {
      return database.change(async (transaction) => {
        await transaction.deleteFrom("way_in").where("purpose", "=", "first-owner").execute();
        const owner = await transaction
          .selectFrom("membership")
          .select("person_id")
          .where("role", "=", "administrator")
          .where("ended_at", "is", null)
          .limit(1)
          .executeTakeFirst();
        if (owner !== undefined) return null;
        return newWayIn(transaction, { purpose: "first-owner", person: null, by: null, at: now() });
      });
    },

    async wayIn(token) {
      const row = await standingWayIn(token);
      if (row === undefined) return null;
      if (row.purpose === "first-owner" || row.person_id === null) return { purpose: "first-owner" };
      const person = await personOf(row.person_id);
      if (person === null) return null;
      const organisations = (await belongings(person.id)).map(({ name }) => name);
      return { purpose: row.purpose, person, organisations };
    },

    async enter(token, { password, name, email, organisation }, browser) {
      const row = await standingWayIn(token);
      if (row === undefined) return { kind: "link-spent" };
      const known = row.person_id === null ? null : await personOf(row.person_id);
      const who = known ?? { id: randomId(), name: name.trim(), email: foldedEmail(email) };
      const problem = passwordProblem(password, [who.name, who.email, "evenfield"]);
      if (problem !== null) return { kind: "password", problem };
      const hash = await (await library.$context).password.hash(password);
      const at = now();
      const isIn = await database.change(async (transaction) => {
        const used = await transaction
          .updateTable("way_in")
          .set({ used_at: at })
          .where("token_hash", "=", row.token_hash)
          .where("used_at", "is", null)
          .executeTakeFirst();
        if (used.numUpdatedRows === 0n) return false;
        if (row.purpose === "first-owner") await moveIn(transaction, who, organisation, { kind, at });
        await setPassword(transaction, who.id, hash, at);
        await transaction.deleteFrom("sign_in").where("person_id", "=", who.id).execute();
        await forgetLinks(transaction, who.id);
        return true;
      });
      if (!isIn) return { kind: "link-spent" };
      const cookie = await entered(who.email, password, browser);
      if (cookie === null) throw new Error("a password that was just set does not serve");
      return { kind: "signed-in", cookie };
    },

    async signIn({ email, password, from, browser }) {
      const outcome = await attempted(email, from, () => entered(foldedEmail(email), password, browser));
      if (outcome.kind === "done") return { kind: "signed-in", cookie: outcome.done };
      return outcome.kind === "failed" ? { kind: "unknown" } : outcome;
    },

    async signedIn(cookies) {
      if (cookies === null) return null;
      const known = await library.api.getSession({ headers: new Headers({ cookie: cookies }) });
      if (known === null) return null;
      const { session, user } = known;
      const since = isoTime(session.createdAt);
      if (Date.parse(now()) - Date.parse(since) > signInLimit * 1000) {
        await (await library.$context).internalAdapter.deleteSession(session.token);
        return null;
      }
      const person = { id: user.id, name: user.name, email: user.email };
      return { person, session: { id: session.id, since }, organisations: await belongings(person.id) };
    },

    async signOut(cookies) {
      if (cookies !== null) await library.api.signOut({ headers: new Headers({ cookie: cookies }) });
    },

    async signIns({ person, session }) {
      const open = await (await library.$context).internalAdapter.listSessions(person.id, { onlyActiveSessions: true });
      return open.map(({ id, createdAt, updatedAt, userAgent }) => ({
        ...{ id, since: isoTime(createdAt), lastUsed: isoTime(updatedAt), browser: userAgent ?? "" },
        isThisOne: id === session.id,
      }));
    },

    async endSignIn({ person }, id) {
      const ended = await db
        .deleteFrom("sign_in")
        .where("id", "=", id)
        .where("person_id", "=", person.id)
        .executeTakeFirst();
      return ended.numDeletedRows > 0n;
    },

    async changePassword({ person, session }, { current, next, from }) {
      const context = await library.$context;
      const problem = passwordProblem(next, [person.name, person.email, "evenfield"]);
      const outcome = await attempted(person.email, from, async () => {
        const credential = await context.internalAdapter.findCredentialAccount(person.id);
        const hash = credential?.password ?? null;
        return hash !== null && (await context.password.verify({ hash, password: current })) ? true : null;
      });
      if (outcome.kind === "wait") return outcome;
      if (outcome.kind === "failed") return { kind: "wrong" };
      if (problem !== null) return { kind: "password", problem };
      const hash = await context.password.hash(next);
      await database.change(async (transaction) => {
        await setPassword(transaction, person.id, hash, now());
        const others = transaction.deleteFrom("sign_in").where("person_id", "=", person.id);
        await others.where("id", "!=", session.id).execute();
        await forgetLinks(transaction, person.id);
      });
      return { kind: "changed" };
    },

    async forgotten(email) {
      const person = await db
        .selectFrom("person")
        .select(["id", "name", "email"])
        .where("email", "=", foldedEmail(email))
        .executeTakeFirst();
      if (person === undefined || (await belongings(person.id)).length === 0) return null;
      const at = now();
      const token = await database.change((transaction) =>
        newWayIn(transaction, { purpose: "new-password", person: person.id, by: null, at }),
      );
      return { token, person };
    },
  };
}

/** The first owner: a person, who administers the first organisation under the name they give it. */
async function moveIn(
  transaction: Transaction<Tables>,
  { id, name, email }: AccountPerson,
  organisation: string,
  { kind, at }: Readonly<{ kind: Location["kind"]; at: string }>,
): Promise<void> {
  await transaction.updateTable("organisation").set({ name: organisation.trim() }).where("id", "=", "first").execute();
  await addPerson(transaction, { id, name, email }, { kind, at });
  const role = "administrator" as const;
  const membership = { organisation_id: "first", person_id: id, role, made_at: at, ended_at: null };
  await transaction.insertInto("membership").values(membership).execute();
}

/** A person without a password yet. */
export async function addPerson(
  transaction: Transaction<Tables>,
  person: AccountPerson,
  { kind, at }: Readonly<{ kind: Location["kind"]; at: string }>,
): Promise<void> {
  const time = libraryTime(kind, at);
  const unverified = kind === "postgres" ? false : 0;
  const made = { email_verified: unverified, image: null, created_at: time, updated_at: time };
  await transaction
    .insertInto("person")
    .values({ ...person, ...made })
    .execute();
}

/**
 * Counts an attempt as failed and gives 0, or gives the seconds that it has to wait and counts nothing. The row is locked
 * meanwhile, so that attempts at the same moment follow one another here.
 */
const counted = (database: Database, key: string, spared: number, at: string): Promise<number> =>
  database.change(async (transaction) => {
    const row = await transaction
      .insertInto("attempt")
      .values({ key, failures: 0, last_at: at })
      .onConflict((conflict) => conflict.column("key").doUpdateSet((eb) => ({ key: eb.ref("attempt.key") })))
      .returning(["failures", "last_at"])
      .executeTakeFirstOrThrow();
    const known: Failures | null = row.failures === 0 ? null : { failures: row.failures, lastAt: row.last_at };
    const wait = known === null ? 0 : waitAfter({ ...known, failures: known.failures - spared }, at);
    if (wait > 0) return wait;
    const { failures, lastAt } = failedOnceMore(known, at);
    await transaction.updateTable("attempt").set({ failures, last_at: lastAt }).where("key", "=", key).execute();
    return 0;
  });

/** True for an answer of the library that refuses, such as a wrong password; all else is a bug. */
const isRefusal = (problem: unknown): boolean => isAPIError(problem) && problem.statusCode < 500;
