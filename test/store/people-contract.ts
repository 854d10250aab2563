import { getMigrations } from "better-auth/db/migration";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { signedInEditor } from "#lib/access";
import { backUp, type Location, openPeople, type People, restore, type Scope } from "#lib/store";
import { openDatabase } from "../../lib/store/open-database";
import { scopePlugin } from "../../lib/store/scope";
import { signInLibrary } from "../../lib/store/sign-in-library";
import { bid, northField, open, type TrialMaker, type TrialStore } from "./trial";

const settings = { secret: "a secret of the tests, 0123456789 abc", address: "http://127.0.0.1:3000" };
const first = { name: "Dana Ruiz", email: "Dana@Larkmoor.example", organisation: "Larkmoor district" };
const password = "clover meadow anvil tide";
const another = "granite otter lamp fig";

/** What every database has to do for sign-in, organisations and the scope of a store. */
export function peopleContract(trial: TrialMaker, elsewhere: TrialMaker): void {
  let location: Location;
  let people: People;
  let clock = "";
  const passes = (seconds: number) => {
    clock = new Date(Date.parse(clock) + seconds * 1000).toISOString();
  };
  beforeEach(async () => {
    clock = new Date().toISOString();
    ({ location } = await trial("tables"));
    people = await openPeople(location, settings, () => clock);
  });
  afterEach(() => people.close());

  const enter = async (token: string, said: Partial<typeof first> = {}, chosen = password): Promise<string> => {
    const entry = { name: "", email: "", organisation: "", ...said, password: chosen };
    const entered = await people.accounts.enter(token, entry, "a browser");
    if (entered.kind !== "signed-in") throw new Error(JSON.stringify(entered));
    return `${entered.cookie.name}=${encodeURIComponent(entered.cookie.value)}`;
  };
  const owner = async () => {
    const cookie = await enter((await people.accounts.firstOwnerToken()) ?? "", first);
    const who = await people.accounts.signedIn(cookie);
    if (who === null) throw new Error("not signed in");
    return { cookie, who, id: who.person.id };
  };
  const invited = async (email: string, by: string, organisation = "first") => {
    const outcome = await people.organisations.invite(organisation, { name: "Eve Okoro", email, role: "member" }, by);
    if (outcome.kind !== "invited") throw new Error(outcome.kind);
    return outcome;
  };
  const tries = (email: string, tried: string, from: string | null = null) =>
    people.accounts.signIn({ email, password: tried, from, browser: "a browser" });
  const allText = async () => {
    const lines: string[] = [];
    await backUp(location, async (line) => void lines.push(line), clock);
    return lines.join("");
  };

  test("the tables are those that the library of sign-in wants", async () => {
    const database = await openDatabase(location);
    const wanted = await getMigrations(signInLibrary(database.whole, location.kind, settings).options);
    expect([wanted.toBeAdded, wanted.toBeCreated]).toEqual([[], []]);
    await database.close();
  });

  test("what was there before belongs to the first organisation, and lists of people can be asked", async () => {
    const { location: earlier } = await elsewhere();
    const before = await openDatabase(earlier, "0003-drafts-by-id-persons-in-record-seals");
    const by = { created_at: "", created_by: "Ada", changed_at: "", changed_by: "Ada", removed_at: null };
    const project = { id: "old", name: "Old", owner: "O", origin: "own", ...by, head_seq: 0, head_hash: "" };
    const list = JSON.stringify({ people: [{ id: "eve-okoro" }, { id: "sam-lind" }] });
    const document = {
      project_id: "old",
      kind: "people",
      id: "people",
      version: 1,
      format: 1,
      position: 0,
      body: list,
    };
    await before.change(async (transaction) => {
      await transaction
        .insertInto("project")
        .values(project as never)
        .execute();
      await transaction
        .insertInto("document")
        .values({ ...document, updated_at: "", updated_by: "Ada", removed_at: null } as never)
        .execute();
    });
    await before.close();
    const after = await openDatabase(earlier);
    const listed = await after.whole.selectFrom("project_person").selectAll().orderBy("person_id").execute();
    expect(listed.map(({ project_id, person_id }) => [project_id, person_id])).toEqual([
      ["old", "eve-okoro"],
      ["old", "sam-lind"],
    ]);
    expect(await after.whole.selectFrom("project").select("organisation_id").execute()).toEqual([
      { organisation_id: "first" },
    ]);
    await after.close();
  });

  test("the first owner comes in once, by the last link, within a day", async () => {
    const earlier = (await people.accounts.firstOwnerToken()) ?? "";
    const token = (await people.accounts.firstOwnerToken()) ?? "";
    expect(await people.accounts.wayIn(earlier)).toBeNull();
    expect(await people.accounts.wayIn(token)).toEqual({ purpose: "first-owner" });
    expect(await people.accounts.enter(token, { ...first, password: "password1234" }, "")).toMatchObject({
      kind: "password",
    });
    const cookie = await enter(token, first);
    expect(await people.accounts.signedIn(cookie)).toMatchObject({
      person: { name: "Dana Ruiz", email: "dana@larkmoor.example" },
      organisations: [{ id: "first", name: "Larkmoor district", administers: true }],
    });
    expect(await people.accounts.enter(token, { ...first, password }, "")).toEqual({ kind: "link-spent" });
    expect(await people.accounts.firstOwnerToken()).toBeNull();
  });

  test("links end with their time, and of two who follow one at the same moment one comes in", async () => {
    const { id } = await owner();
    const { token, person } = await invited("eve@larkmoor.example", id);
    expect(await people.accounts.wayIn(token)).toMatchObject({
      purpose: "invitation",
      organisations: ["Larkmoor district"],
    });
    passes(7 * 24 * 3600 + 1);
    expect(await people.accounts.wayIn(token)).toBeNull();
    expect(await people.accounts.enter(token, { ...first, password }, "")).toEqual({ kind: "link-spent" });
    const again = await invited("eve@larkmoor.example", id);
    expect(again.person.id).toBe(person.id);
    const both = await Promise.all([1, 2].map(() => people.accounts.enter(again.token, { ...first, password }, "")));
    expect(both.map(({ kind }) => kind).toSorted()).toEqual(["link-spent", "signed-in"]);
  });

  test("a wrong password and an address that nobody has are answered alike, and after five there is a wait", async () => {
    await owner();
    for (const email of ["dana@larkmoor.example", "nobody@larkmoor.example"]) {
      for (let attempt = 0; attempt < 5; attempt += 1)
        expect(await tries(email, "wrong words here")).toEqual({ kind: "unknown" });
      expect(await tries(email, password)).toEqual({ kind: "wait", seconds: 30 });
    }
    passes(31);
    expect(await tries("dana@larkmoor.example", "wrong again")).toEqual({ kind: "unknown" });
    expect(await tries("dana@larkmoor.example", password)).toEqual({ kind: "wait", seconds: 60 });
    passes(61);
    expect(await tries(" DANA@larkmoor.example", password)).toMatchObject({ kind: "signed-in" });
    expect(await tries("dana@larkmoor.example", "wrong again")).toEqual({ kind: "unknown" });
  });

  test("of many attempts at the same moment no more are looked at than of many in turn", async () => {
    await owner();
    const outcomes = await Promise.all(
      Array.from({ length: 20 }, () => tries("dana@larkmoor.example", "wrong words here")),
    );
    expect(outcomes.filter(({ kind }) => kind === "unknown")).toHaveLength(5);
  });

  test("a place from which many addresses are tried has to wait as well, later than a person", async () => {
    for (let attempt = 0; attempt < 25; attempt += 1)
      expect(await tries(`person${attempt}@larkmoor.example`, "wrong words here", "192.0.2.7")).toEqual({
        kind: "unknown",
      });
    expect(await tries("one.more@larkmoor.example", "wrong words here", "192.0.2.7")).toMatchObject({ kind: "wait" });
    expect(await tries("one.more@larkmoor.example", "wrong words here", "192.0.2.8")).toEqual({ kind: "unknown" });
  });

  test("sign-ins are listed and ended by whose they are; another password ends the others and the links", async () => {
    const { id, who, cookie } = await owner();
    const other = await tries(first.email, password);
    if (other.kind !== "signed-in") throw new Error(other.kind);
    const elsewhereCookie = `${other.cookie.name}=${encodeURIComponent(other.cookie.value)}`;
    const { token } = await invited("eve@larkmoor.example", id);
    const eve = await people.accounts.signedIn(await enter(token));
    if (eve === null) throw new Error("not signed in");
    const open = await people.accounts.signIns(who);
    expect(open.map(({ isThisOne }) => isThisOne).toSorted()).toEqual([false, true]);
    expect(await people.accounts.endSignIn(eve, who.session.id)).toBe(false);
    const link = await people.accounts.forgotten("DANA@larkmoor.example");
    expect(await people.accounts.changePassword(who, { current: "not this one", next: another, from: null })).toEqual({
      kind: "wrong",
    });
    expect(
      await people.accounts.changePassword(who, { current: password, next: "dana ruiz larkmoor", from: null }),
    ).toEqual({
      kind: "password",
      problem: { kind: "says-who" },
    });
    expect(await people.accounts.changePassword(who, { current: password, next: another, from: null })).toEqual({
      kind: "changed",
    });
    expect(await people.accounts.signedIn(elsewhereCookie)).toBeNull();
    expect(await people.accounts.signedIn(cookie)).not.toBeNull();
    expect(await people.accounts.wayIn(link?.token ?? "")).toBeNull();
    await people.accounts.signOut(cookie);
    expect(await people.accounts.signedIn(cookie)).toBeNull();
  });

  test("a sign-in ends after thirty days however busy somebody is", async () => {
    const { cookie } = await owner();
    passes(31 * 24 * 3600);
    expect(await people.accounts.signedIn(cookie)).toBeNull();
  });

  test("members are changed by administrators alone, one of whom stays; who leaves is out at once and forgotten", async () => {
    const { id } = await owner();
    const { token, person } = await invited("eve@larkmoor.example", id);
    const cookie = await enter(token);
    for (const outcome of [
      await people.organisations.invite("first", { name: "X", email: "x@larkmoor.example", role: "member" }, person.id),
      await people.organisations.setRole("first", id, "member", person.id),
      await people.organisations.end("first", id, person.id),
      await people.organisations.rename("first", "Taken", person.id),
      await people.organisations.newPassword("first", id, person.id),
      await people.organisations.add("Mine", person.id),
    ])
      expect(outcome).toEqual({ kind: "not-allowed" });
    expect(await people.organisations.end("first", id, id)).toEqual({ kind: "last-administrator" });
    expect(await people.organisations.setRole("first", id, "member", id)).toEqual({ kind: "last-administrator" });
    expect((await people.organisations.members("first", person.id))?.map(({ name }) => name)).toEqual([
      "Dana Ruiz",
      "Eve Okoro",
    ]);
    expect(await people.organisations.members("first", "nobody")).toBeNull();
    expect(await allText()).toContain("eve@larkmoor.example");
    const store = await open(location);
    const made = await store.projects.create(northField, signedInEditor({ id, name: first.name }, []));
    if (made.kind !== "saved") throw new Error(made.kind);
    const place = { project: made.id, kind: "bid", id: "bid-a", version: 1 } as const;
    for (const one of [person, { id, name: first.name }])
      await store.drafts.keep(place, { bidder: one.name }, signedInEditor(one, []));
    expect(await people.organisations.end("first", person.id, id)).toEqual({ kind: "done" });
    expect(await people.accounts.signedIn(cookie)).toBeNull();
    expect(await tries("eve@larkmoor.example", password)).toEqual({ kind: "unknown" });
    expect(await allText()).not.toContain("eve@larkmoor.example");
    expect(await store.drafts.list(made.id, signedInEditor(person, []))).toEqual([]);
    expect(await store.drafts.list(made.id, signedInEditor({ id, name: first.name }, []))).toHaveLength(1);
    await store.close();
  });

  test("what has served is swept, and what serves stays", async () => {
    const { cookie, id } = await owner();
    const used = await invited("eve@larkmoor.example", id);
    await enter(used.token);
    const open_ = await invited("ada@larkmoor.example", id);
    await tries("nobody@larkmoor.example", "wrong");
    expect(await people.sweep()).toEqual({ signIns: 0, links: 2, attempts: 0, openPages: 0 });
    expect(await people.accounts.signedIn(cookie)).not.toBeNull();
    expect(await people.accounts.wayIn(open_.token)).not.toBeNull();
    passes(25 * 3600);
    expect(await people.sweep()).toMatchObject({ signIns: 0, attempts: 1 });
    passes(4 * 24 * 3600);
    expect(await people.sweep()).toEqual({ signIns: 2, links: 0, attempts: 0, openPages: 0 });
    passes(3 * 24 * 3600);
    expect(await people.sweep()).toEqual({ signIns: 0, links: 1, attempts: 0, openPages: 0 });
  });

  test("no link of one organisation opens another", async () => {
    const { id } = await owner();
    const other = await people.organisations.add("Another owner", id);
    if (other.kind !== "done") throw new Error(other.kind);
    const pending = await invited("eve@larkmoor.example", id, other.id);
    const eve = { name: "Eve Okoro", email: "eve@larkmoor.example", role: "member" as const };
    expect(await people.organisations.invite("first", eve, id)).toMatchObject({ kind: "not-here-yet" });
    await enter(pending.token);
    const reset = await people.organisations.newPassword(other.id, pending.person.id, id);
    if (reset.kind !== "link") throw new Error(reset.kind);
    expect(await people.organisations.invite("first", eve, id)).toMatchObject({ kind: "joined" });
    expect(await people.accounts.wayIn(reset.token)).toBeNull();
    expect(await people.organisations.newPassword(other.id, pending.person.id, id)).toEqual({
      kind: "belongs-elsewhere",
    });
    expect(await people.organisations.end(other.id, pending.person.id, id)).toEqual({ kind: "done" });
    expect(await tries(eve.email, password)).toMatchObject({ kind: "signed-in" });
  });

  test("a backup brings people and their passwords to another database, and nobody’s sign-in or link", async () => {
    const { id, cookie } = await owner();
    const { token } = await invited("eve@larkmoor.example", id);
    const text = await allText();
    const place = await elsewhere();
    const lines = async function* () {
      yield* text.trimEnd().split("\n");
    };
    expect(await restore(place.location, lines)).toMatchObject({ kind: "restored" });
    const there = await openPeople(place.location, settings, () => clock);
    expect(await there.accounts.signedIn(cookie)).toBeNull();
    expect(await there.accounts.wayIn(token)).toBeNull();
    const back = await there.accounts.signIn({ email: first.email, password, from: null, browser: "" });
    expect(back).toMatchObject({ kind: "signed-in" });
    await there.close();
    expect(await restore(place.location, lines)).toMatchObject({ kind: "refused", fault: { kind: "people-there" } });
  });

  describe("a scope", () => {
    const stores: TrialStore[] = [];
    afterEach(async () => {
      for (const store of stores.splice(0)) await store.close();
    });
    const within = async (scope: Scope, organisation = "first") => {
      const store = await open(location, { scope, organisation });
      stores.push(store);
      return store;
    };
    const lay = async () => {
      const { id } = await owner();
      const added = await people.organisations.add("Another owner", id);
      if (added.kind !== "done") throw new Error(added.kind);
      const stranger = await invited("noa@brandt.example", id, added.id);
      const member = await invited("eve@larkmoor.example", id);
      const all = await within({ kind: "everything" }, added.id);
      const editor = signedInEditor({ id, name: "Dana" }, []);
      const make = async (store: TrialStore, name: string) => {
        const made = await store.projects.create({ ...northField, name }, editor);
        if (made.kind !== "saved") throw new Error(made.kind);
        return made.id;
      };
      const here = await make(await within({ kind: "everything" }), "Here");
      const there = await make(all, "There");
      return {
        id,
        stranger: stranger.person.id,
        member: member.person.id,
        all,
        here,
        there,
        editor,
        other: added.id,
        make,
      };
    };

    test("leaves nothing of another project to be read or written, by any method", async () => {
      const { stranger, here, there, editor, all } = await lay();
      await people.organisations.setRole("first", stranger, "administrator", stranger);
      const seen = await within({ kind: "organisation", organisation: "first" });
      expect((await seen.projects.list()).map(({ name }) => name)).toEqual(["Here"]);
      const before = (await allText()).split("\n").slice(1);
      const place = { project: there, kind: "bid", id: "bid-a" } as const;
      const facts = { name: "report.pdf" };
      const methods: Readonly<Record<string, Readonly<Record<string, () => Promise<unknown>>>>> = {
        projects: {
          list: async () => (await seen.projects.list()).filter(({ id }) => id === there),
          page: async () => (await seen.projects.page({ limit: 50, search: "There" })).projects,
          listRemoved: () => seen.projects.listRemoved(),
          load: () => seen.projects.load(there),
          create: async () => (await within({ kind: "person", person: stranger })).projects.create(northField, editor),
          import: async () => (await within({ kind: "person", person: stranger })).projects.import(northField, editor),
          rename: () => seen.projects.rename(there, { name: "Taken", owner: "" }, editor),
          remove: () => seen.projects.remove(there, editor),
          restore: () => seen.projects.restore(there, editor),
        },
        documents: {
          read: () => seen.documents.read(place),
          readVersion: () => seen.documents.readVersion({ ...place, version: 1 }),
          lastChanges: () => seen.documents.lastChanges(there, [place]),
          create: () => seen.documents.create({ project: there, kind: "bid" }, bid("X"), editor),
          replace: () => seen.documents.replace({ ...place, version: 1 }, bid("X"), editor),
          remove: () => seen.documents.remove({ ...place, version: 1 }, editor),
          restore: () => seen.documents.restore(place, editor),
          act: () => seen.documents.act(there, () => ({ kind: "lacks", sentences: ["reached"] }), editor),
          refuse: () => seen.documents.refuse(there, { sentence: "no", fields: [] }, [], editor),
        },
        contents: {
          keep: () => seen.contents.keep(there, facts, new Uint8Array([1]), editor),
          held: async () => [...(await seen.contents.held(there))],
          open: () => seen.contents.open(there, "0".repeat(64)),
          verify: () => seen.contents.verify(there),
        },
        drafts: {
          keep: () => seen.drafts.keep({ ...place, version: 1 }, { bidder: "X" }, editor),
          read: () => seen.drafts.read(place, editor),
          list: () => seen.drafts.list(there, editor),
          clear: async () => (await seen.drafts.clear(place, editor)) ?? null,
        },
        record: {
          list: () => seen.record.list(there),
          page: async () => (await seen.record.page(there, { limit: 10 })).entries,
          people: () => seen.record.people(there),
          verify: () => seen.record.verify(there),
        },
        presence: {
          seen: () => seen.presence.seen(there, "brief", editor, "page-1"),
          left: async () => (await seen.presence.left(there, editor, "page-1")) ?? null,
        },
      };
      for (const [part, called] of Object.entries(methods)) {
        const there = Object.keys(seen[part as "projects"]);
        expect(Object.keys(called).toSorted(), part).toEqual(there.toSorted());
        for (const [name, call] of Object.entries(called)) {
          const outcome = await call();
          const isNothing = outcome === null || (Array.isArray(outcome) && outcome.length === 0);
          expect(
            isNothing || (outcome as { kind?: string }).kind === "gone",
            `${part}.${name}: ${JSON.stringify(outcome)}`,
          ).toBe(true);
        }
      }
      expect((await allText()).split("\n").slice(1)).toEqual(before);
      expect(await all.projects.load(here)).not.toBeNull();
    });

    test("of a person holds what they administer and what lists them, and follows the list at once", async () => {
      const { id, member, stranger, here, there, all, editor, other } = await lay();
      const names = async (person: string) =>
        (await (await within({ kind: "person", person })).projects.list()).map(({ name }) => name).toSorted();
      expect(await names(id)).toEqual(["Here", "There"]);
      expect([await names(member), await names(stranger)]).toEqual([[], []]);
      const people_ = { project: here, kind: "people", id: "people" } as const;
      const listed = { people: [{ id: member }, { id: stranger }] };
      await all.documents.create(people_, listed as never, editor);
      expect(await names(member)).toEqual(["Here"]);
      expect(await names(stranger)).toEqual([]); // on the list, and no member of its organisation
      await all.documents.replace({ ...people_, version: 1 }, { people: [] } as never, editor);
      expect(await names(member)).toEqual([]);
      await all.documents.replace({ ...people_, version: 2 }, listed as never, editor);
      await people.organisations.end("first", member, id);
      expect(await names(member)).toEqual([]);
      expect(
        await (await within({ kind: "person", person: id }, other)).projects.create(northField, editor),
      ).toMatchObject({ kind: "saved" });
      expect(there).not.toBe(here);
    });

    test("of a public link reads its project and writes nowhere", async () => {
      const { here, there, editor } = await lay();
      const seen = await within({ kind: "project", project: here });
      expect(await seen.projects.load(here)).not.toBeNull();
      expect(await seen.projects.load(there)).toBeNull();
      expect((await seen.projects.list()).map(({ id }) => id)).toEqual([here]);
      await expect(
        seen.drafts.keep({ project: here, kind: "bid", id: "bid-a", version: 1 }, {}, editor),
      ).rejects.toThrow("changes nothing");
    });

    test("lets no query through that it can’t keep within", async () => {
      const database = await openDatabase(location);
      const seen = database.whole.withPlugin(scopePlugin({ kind: "organisation", organisation: "first" }));
      await expect(seen.selectFrom("person").selectAll().execute()).rejects.toThrow("belongs to no project");
      const left = seen
        .selectFrom("project")
        .leftJoin("document", "document.project_id", "project.id")
        .select("project.id");
      await expect(left.execute()).rejects.toThrow("LeftJoin");
      const inner = seen
        .selectFrom("project")
        .select("id")
        .where("id", "in", (query) => query.selectFrom("document").select("project_id"));
      const narrowed = inner.compile().sql.match(/\w+(?="\."organisation_id" = )/g);
      expect(narrowed?.toSorted()).toEqual(["project", "scoped"]);
      await database.close();
    });
  });
}
