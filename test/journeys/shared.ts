import { documentSchemas, projectRules } from "#lib/evaluation";
import { openPeople, openStore, type People, type Store } from "#lib/store";
import { sharedAddress, sharedSecret } from "./shared-server";

function sharedFolder(): string {
  const folder = process.env.EVENFIELD_JOURNEYS_DATA;
  if (!folder) throw new Error("EVENFIELD_JOURNEYS_DATA names no folder; run journeys by npm run test:journeys.");
  return `${folder}-shared`;
}

export type SharedStore = Store<typeof documentSchemas>;

/** The store behind the second server, past every scope, for laying out what a journey needs. */
export const sharedStore = (): Promise<SharedStore> =>
  openStore({ kind: "sqlite", folder: sharedFolder() }, { schemas: documentSchemas, guard: projectRules });

export const sharedPeople = (): Promise<People> =>
  openPeople({ kind: "sqlite", folder: sharedFolder() }, { secret: sharedSecret, address: sharedAddress });

export type Came = Readonly<{ id: string; name: string; cookie: string }>;

export const aPassword = "clover meadow anvil tide";

/** Somebody who follows a link and is signed in, as a browser would be. */
async function cameIn(
  people: People,
  token: string,
  said: Partial<Record<"name" | "email" | "organisation", string>> = {},
): Promise<Came> {
  const entry = { password: aPassword, name: "", email: "", organisation: "", ...said };
  const entered = await people.accounts.enter(token, entry, "journey");
  if (entered.kind !== "signed-in") throw new Error(entered.kind);
  return whoHas(people, `${entered.cookie.name}=${encodeURIComponent(entered.cookie.value)}`);
}

let members = 0;

/** The first owner, as the first journey on this server makes them. */
export const owner = {
  name: "Dana Ruiz",
  email: "dana@larkmoor.example",
  organisation: "Larkmoor Valley School District",
};

/** The first owner signed in; made first where a journey runs by itself. */
export async function administrator(people: People): Promise<Came> {
  const token = await people.accounts.firstOwnerToken();
  if (token !== null) return cameIn(people, token, owner);
  const tried = { email: owner.email, password: aPassword, from: null, browser: "journey" };
  const known = await people.accounts.signIn(tried);
  if (known.kind !== "signed-in") throw new Error(known.kind);
  return whoHas(people, `${known.cookie.name}=${encodeURIComponent(known.cookie.value)}`);
}

async function whoHas(people: People, cookie: string): Promise<Came> {
  const signedIn = await people.accounts.signedIn(cookie);
  if (signedIn === null) throw new Error("a sign-in that is not known");
  return { id: signedIn.person.id, name: signedIn.person.name, cookie };
}

/** A member of an organisation who has come in by an invitation. */
export async function member(people: People, organisation: string, name: string, by: string): Promise<Came> {
  members += 1;
  const email = `${name.toLowerCase().replace(/[^a-z0-9]+/g, ".")}.${process.pid}.${members}@larkmoor.example`;
  const invited = await people.organisations.invite(organisation, { name, email, role: "member" }, by);
  if (invited.kind !== "invited") throw new Error(invited.kind);
  return cameIn(people, invited.token);
}
