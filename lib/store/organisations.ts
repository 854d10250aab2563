import type { Transaction } from "kysely";
import { type AccountPerson, addPerson, foldedEmail, forgetLinks, newWayIn } from "./accounts";
import type { Database, Location } from "./database";
import { randomId } from "./id";
import type { MembershipRow, Tables } from "./tables";

/** A person of an organisation. `hasPassword` is false until they followed their invitation. Times are ISO 8601. */
export type Member = Readonly<
  AccountPerson & { role: MembershipRow["role"]; since: string; hasPassword: boolean; isYou: boolean }
>;

/** Done, or why not: whoever asks does not administer the organisation, it has no such member, or would be left without an administrator. */
export type MemberOutcome = Readonly<{
  kind: "done" | "not-allowed" | "no-such-member" | "last-administrator" | "belongs-elsewhere";
}>;

export type InviteOutcome = Readonly<
  | { kind: "invited"; token: string; person: AccountPerson }
  /** They sign in for another organisation already and only joined: a link would open that one too. */
  | { kind: "joined"; person: AccountPerson }
  /** Another organisation invited them and they have not come in: whoever has that link could enter here as well. */
  | { kind: "not-here-yet"; person: AccountPerson }
  | { kind: "already-here"; person: AccountPerson }
  | { kind: "not-allowed" }
>;

/** Who belongs to an organisation. Each change asks in its own transaction whether whoever makes it administers it. */
export type Organisations = Readonly<{
  /** Null where whoever asks does not belong to it. */
  members: (organisation: string, asked: string) => Promise<readonly Member[] | null>;
  invite: (
    organisation: string,
    invited: Readonly<{ name: string; email: string; role: MembershipRow["role"] }>,
    by: string,
  ) => Promise<InviteOutcome>;
  /**
   * A link by which a member sets a new password; their sign-ins end when they use it. None for who belongs to another
   * organisation too, as whoever has the link could enter that one: they ask for it by mail themselves.
   */
  newPassword: (
    organisation: string,
    person: string,
    by: string,
  ) => Promise<Readonly<{ kind: "link"; token: string; person: AccountPerson }> | MemberOutcome>;
  setRole: (organisation: string, person: string, role: MembershipRow["role"], by: string) => Promise<MemberOutcome>;
  /** Takes a member out at once. Whoever belongs to no organisation any more is forgotten: address, password and sign-ins are deleted. */
  end: (organisation: string, person: string, by: string) => Promise<MemberOutcome>;
  rename: (organisation: string, name: string, by: string) => Promise<MemberOutcome>;
  /** A new organisation beside those that are here, administered by whoever makes it, who has to administer the first. */
  add: (
    name: string,
    by: string,
  ) => Promise<Readonly<{ kind: "done"; id: string }> | Readonly<{ kind: "not-allowed" }>>;
}>;

export function organisationsOf(database: Database, kind: Location["kind"], now: () => string): Organisations {
  /** Runs a change of an organisation for one of its administrators. */
  const asAdministrator = <T>(
    organisation: string,
    by: string,
    change: (transaction: Transaction<Tables>, at: string) => Promise<T>,
  ): Promise<T | Readonly<{ kind: "not-allowed" }>> =>
    database.change(async (transaction) => {
      // taken first, so that two changes of one organisation follow one another
      await transaction
        .updateTable("organisation")
        .set(({ ref }) => ({ name: ref("name") }))
        .where("id", "=", organisation)
        .execute();
      const standing = await membershipOf(transaction, organisation, by);
      return standing?.role === "administrator" ? change(transaction, now()) : { kind: "not-allowed" };
    });

  const altered = (
    organisation: string,
    person: string,
    by: string,
    set: Readonly<{ role: MembershipRow["role"] } | "ended">,
  ): Promise<MemberOutcome> =>
    asAdministrator(organisation, by, async (transaction, at): Promise<MemberOutcome> => {
      const before = await membershipOf(transaction, organisation, person);
      if (before === null) return { kind: "no-such-member" };
      const stays = set !== "ended" && set.role === "administrator";
      if (before.role === "administrator" && !stays && (await administrators(transaction, organisation)) === 1)
        return { kind: "last-administrator" };
      await transaction
        .updateTable("membership")
        .set(set === "ended" ? { ended_at: at } : { role: set.role })
        .where("organisation_id", "=", organisation)
        .where("person_id", "=", person)
        .execute();
      if (set === "ended") {
        await forgetLinks(transaction, person);
        await forgetIfNowhere(transaction, person);
      }
      return { kind: "done" };
    });

  return {
    async members(organisation, asked) {
      return database.read(async (transaction) => {
        if ((await membershipOf(transaction, organisation, asked)) === null) return null;
        const rows = await transaction
          .selectFrom("membership")
          .innerJoin("person", "person.id", "membership.person_id")
          .select(["person.id", "person.name", "person.email", "membership.role", "membership.made_at"])
          .where("membership.organisation_id", "=", organisation)
          .where("membership.ended_at", "is", null)
          .execute();
        const credentials = await transaction.selectFrom("credential").select("person_id").execute();
        const set = new Set(credentials.map(({ person_id }) => person_id));
        return rows
          .map(({ made_at: since, ...row }) => ({
            ...row,
            since,
            hasPassword: set.has(row.id),
            isYou: row.id === asked,
          }))
          .sort((one, other) => one.name.localeCompare(other.name, "en"));
      });
    },

    invite: (organisation, { name, email, role }, by) =>
      asAdministrator(organisation, by, async (transaction, at): Promise<InviteOutcome> => {
        const known = await transaction
          .selectFrom("person")
          .select(["id", "name", "email"])
          .where("email", "=", foldedEmail(email))
          .executeTakeFirst();
        const person = known ?? { id: randomId(), name: name.trim(), email: foldedEmail(email) };
        if (known === undefined) await addPerson(transaction, person, { kind, at });
        const standing = await membershipOf(transaction, organisation, person.id);
        const hasPassword = await transaction
          .selectFrom("credential")
          .select("id")
          .where("person_id", "=", person.id)
          .executeTakeFirst();
        if (standing !== null && hasPassword !== undefined) return { kind: "already-here", person };
        if (hasPassword === undefined && (await belongsElsewhere(transaction, organisation, person.id)))
          return { kind: "not-here-yet", person };
        const joined = { role, made_at: at, ended_at: null };
        await transaction
          .insertInto("membership")
          .values({ organisation_id: organisation, person_id: person.id, ...joined })
          .onConflict((conflict) => conflict.columns(["organisation_id", "person_id"]).doUpdateSet(joined))
          .execute();
        if (hasPassword !== undefined) {
          await forgetLinks(transaction, person.id);
          return { kind: "joined", person };
        }
        const token = await newWayIn(transaction, { purpose: "invitation", person: person.id, by, at });
        return { kind: "invited", token, person };
      }),

    newPassword: (organisation, person, by) =>
      asAdministrator(organisation, by, async (transaction, at) => {
        if ((await membershipOf(transaction, organisation, person)) === null)
          return { kind: "no-such-member" } as const;
        if (await belongsElsewhere(transaction, organisation, person)) return { kind: "belongs-elsewhere" } as const;
        const known = await transaction
          .selectFrom("person")
          .select(["id", "name", "email"])
          .where("id", "=", person)
          .executeTakeFirstOrThrow();
        const token = await newWayIn(transaction, { purpose: "new-password", person, by, at });
        return { kind: "link", token, person: known } as const;
      }),

    setRole: (organisation, person, role, by) => altered(organisation, person, by, { role }),
    end: (organisation, person, by) => altered(organisation, person, by, "ended"),

    rename: (organisation, name, by) =>
      asAdministrator(organisation, by, async (transaction): Promise<MemberOutcome> => {
        await transaction.updateTable("organisation").set({ name }).where("id", "=", organisation).execute();
        return { kind: "done" };
      }),

    add: (name, by) =>
      asAdministrator("first", by, async (transaction, at) => {
        const id = randomId();
        await transaction.insertInto("organisation").values({ id, name, made_at: at }).execute();
        const membership = { organisation_id: id, person_id: by, role: "administrator" as const };
        await transaction
          .insertInto("membership")
          .values({ ...membership, made_at: at, ended_at: null })
          .execute();
        return { kind: "done", id } as const;
      }),
  };
}

async function membershipOf(transaction: Transaction<Tables>, organisation: string, person: string) {
  const row = await transaction
    .selectFrom("membership")
    .selectAll()
    .where("organisation_id", "=", organisation)
    .where("person_id", "=", person)
    .where("ended_at", "is", null)
    .executeTakeFirst();
  return row ?? null;
}

async function belongsElsewhere(
  transaction: Transaction<Tables>,
  organisation: string,
  person: string,
): Promise<boolean> {
  const other = await transaction
    .selectFrom("membership")
    .select("organisation_id")
    .where("person_id", "=", person)
    .where("organisation_id", "!=", organisation)
    .where("ended_at", "is", null)
    .executeTakeFirst();
  return other !== undefined;
}

async function administrators(transaction: Transaction<Tables>, organisation: string): Promise<number> {
  const { count } = await transaction
    .selectFrom("membership")
    .select(({ fn }) => fn.countAll().as("count"))
    .where("organisation_id", "=", organisation)
    .where("role", "=", "administrator")
    .where("ended_at", "is", null)
    .executeTakeFirstOrThrow();
  return Number(count);
}

/**
 * Deletes what is known of a person who belongs to no organisation any more, by which they can’t sign in either. Names in
 * the records of projects stay: who did what in a public procedure is part of what was done.
 */
async function forgetIfNowhere(transaction: Transaction<Tables>, person: string): Promise<void> {
  const left = await transaction
    .selectFrom("membership")
    .select("person_id")
    .where("person_id", "=", person)
    .where("ended_at", "is", null)
    .executeTakeFirst();
  if (left !== undefined) return;
  for (const table of ["sign_in", "credential", "way_in", "membership"] as const)
    await transaction.deleteFrom(table).where("person_id", "=", person).execute();
  // unsaved text of theirs, which nobody else sees; what they saved belongs to its project
  await transaction.deleteFrom("draft").where("editor", "=", person).execute();
  await transaction.deleteFrom("presence").where("editor", "=", person).execute();
  await transaction.deleteFrom("person").where("id", "=", person).execute();
}
