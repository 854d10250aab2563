import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { afterEach, describe, expect, test } from "vitest";
import { z } from "zod";
import {
  type Guard,
  type Location,
  openStore,
  type ProjectPlace,
  type ProjectWish,
  recordFileVerdict,
  recordLines,
} from "#lib/store";
import { openDatabase } from "../../lib/store/open-database";
import { seeded } from "../faults/seeded";
import {
  ada,
  ben,
  bid,
  editor,
  northField,
  open,
  schemas,
  type TrialMaker,
  type TrialStore,
  withProject,
} from "./trial";

/** What every database has to do for the store. `trial` gives a new, empty database. */
export function storeContract(trial: TrialMaker): void {
  const opened: { close: () => Promise<void> }[] = [];
  afterEach(async () => {
    for (const store of opened.splice(0)) await store.close();
  });
  const start = async (options: Parameters<typeof withProject>[1] = {}) => {
    const { location, raw } = await trial("tables");
    const made = await withProject(location, options);
    opened.push(made.store);
    return { ...made, location, raw };
  };
  const another = async (location: Location): Promise<TrialStore> => {
    const store = await open(location);
    opened.push(store);
    return store;
  };
  const expectIntact = async (store: TrialStore, project: string, entries: number) =>
    expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries });

  describe("documents", () => {
    test("come back as they were typed, to the last character", async () => {
      const { store, bidA } = await start();
      const words = " 2-1/4 in “≥ 9 lb/ft²”\t\r\n\u00a0é e\u0301 \u{1f33f} \\u0000 '; drop table bid; --  ";
      await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", words, "007"), ben);
      const read = await store.documents.read(bidA);
      expect(read?.body).toStrictEqual(bid("Bidder A", words, "007"));
      expect(read?.model.claims[0]?.count).toStrictEqual({ asEntered: "007", value: 7 });
      expect(read).toMatchObject({ version: 2, position: 0, updatedBy: "Ben" });
    });

    test("come back as they were typed, whatever the text", async () => {
      const { store, bidA, project } = await start();
      let version = 1;
      const text = fc.string({ unit: "binary", maxLength: 200 }).filter((typed) => !typed.includes("\0"));
      await fc.assert(
        fc.asyncProperty(text, async (words) => {
          const saved = await store.documents.replace({ ...bidA, version }, bid("Bidder A", words), ada);
          if (saved.kind === "saved") version = saved.version;
          expect((await store.documents.read(bidA))?.body).toStrictEqual(bid("Bidder A", words));
        }),
        { numRuns: 60 },
      );
      await expectIntact(store, project, 4 + version);
    });

    test("are refused in a stale version, and what was typed is kept as a draft", async () => {
      const { store, bidA, project } = await start({ now: () => "2026-11-25T10:00:00.000Z" });
      const first = await store.documents.replace({ ...bidA, version: 1 }, bid("first"), ada);
      expect(first).toStrictEqual({ kind: "saved", id: "bid-a", version: 2, at: "2026-11-25T10:00:00.000Z" });
      const stale = await store.documents.replace({ ...bidA, version: 1 }, bid("second"), ben);
      expect(stale).toMatchObject({ kind: "conflict", version: 2, savedBy: "Ada", current: { body: bid("first") } });
      expect((await store.documents.read(bidA))?.body).toStrictEqual(bid("first"));
      expect(await store.drafts.read(bidA, ben)).toMatchObject({ basedOnVersion: 1, body: bid("second") });
      await expectIntact(store, project, 6);
    });

    test("can be read in each version in which they stood", async () => {
      const { store, bidA } = await start();
      for (let version = 1; version <= 45; version += 1)
        await store.documents.replace({ ...bidA, version }, bid(`state ${version + 1}`), ada);
      for (const version of [2, 3, 26, 46])
        expect(await store.documents.readVersion({ ...bidA, version })).toStrictEqual(bid(`state ${version}`));
      expect(await store.documents.readVersion({ ...bidA, version: 1 })).toStrictEqual(bid("Bidder A"));
      for (const version of [0, 47]) expect(await store.documents.readVersion({ ...bidA, version })).toBeNull();
      expect(await store.documents.readVersion({ ...bidA, id: "no-such-bid", version: 1 })).toBeNull();
    });

    test("can be asked who last changed them, without being read", async () => {
      const { store, bidA, project } = await start();
      await store.documents.replace({ ...bidA, version: 1 }, bid("second"), ben);
      await store.documents.remove({ ...bidA, id: "bid-b", version: 1 }, ben);
      const asked = ["bid-a", "bid-b", "bid-c"].map((id) => ({ kind: "bid", id }) as const);
      expect(await store.documents.lastChanges(project, [...asked, { kind: "brief", id: "brief" }])).toStrictEqual({
        entries: 7,
        documents: [
          { kind: "bid", id: "bid-a", version: 2, by: "Ben", stands: true },
          { kind: "bid", id: "bid-b", version: 2, by: "Ben", stands: false },
          { kind: "brief", id: "brief", version: 1, by: "Ada", stands: true },
        ],
      });
      expect(await store.documents.lastChanges("no-such-project", asked)).toBeNull();
    });

    test("take exactly one of many writes that start from one version", async () => {
      const { store, bidA, project, location } = await start();
      const other = await another(location);
      const writes = Array.from({ length: 24 }, (_, index) =>
        (index % 2 ? store : other).documents.replace(
          { ...bidA, version: 1 },
          bid(`writer ${index}`),
          editor(`Editor ${index}`),
        ),
      );
      const outcomes = await Promise.all(writes);
      const winner = outcomes.findIndex(({ kind }) => kind === "saved");
      expect(outcomes.map(({ kind }) => kind).sort()).toStrictEqual([...Array(23).fill("conflict"), "saved"]);
      expect((await store.documents.read(bidA))?.body.bidder).toBe(`writer ${winner}`);
      for (const [index] of outcomes.entries()) {
        const kept = await store.drafts.read(bidA, editor(`Editor ${index}`));
        expect(kept?.body).toStrictEqual(index === winner ? undefined : bid(`writer ${index}`));
      }
      await expectIntact(store, project, 6);
    });

    test("are gone after removal, keep what is typed then, and come back when restored", async () => {
      const { store, bidA, project } = await start();
      expect(await store.documents.remove({ ...bidA, version: 9 }, ada)).toMatchObject({
        kind: "conflict",
        version: 1,
      });
      expect(await store.documents.remove({ ...bidA, version: 1 }, ada)).toMatchObject({ kind: "saved", version: 2 });
      expect(await store.documents.read(bidA)).toBeNull();
      expect((await store.projects.load(project))?.documents.bid.map(({ id }) => id)).toStrictEqual(["bid-b"]);
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("late"), ben)).toStrictEqual({ kind: "gone" });
      expect((await store.drafts.read(bidA, ben))?.body).toStrictEqual(bid("late"));
      await expectIntact(store, project, 6);
      expect(await store.documents.restore(bidA, ada)).toMatchObject({ kind: "saved", version: 3 });
      expect(await store.documents.read(bidA)).toMatchObject({ version: 3, position: 0, body: bid("Bidder A") });
      await expectIntact(store, project, 7);
    });

    test("are added after the others, with an id of their own", async () => {
      const { store, project } = await start();
      const made = await store.documents.create({ project, kind: "bid" }, bid("Bidder C"), ada);
      expect(made).toMatchObject({ kind: "saved", version: 1 });
      const bids = (await store.projects.load(project))?.documents.bid;
      expect(bids?.map(({ body }) => body.bidder)).toStrictEqual(["Bidder A", "Bidder B", "Bidder C"]);
      expect(made.kind === "saved" && bids?.[2]?.id).toBe(made.kind === "saved" && made.id);
      await expectIntact(store, project, 6);
    });

    test("are not added over one that stands or was removed", async () => {
      const { store, project, bidA } = await start();
      expect(await store.documents.create(bidA, bid("again"), ben)).toMatchObject({ kind: "conflict", version: 1 });
      expect((await store.drafts.read(bidA, ben))?.body).toStrictEqual(bid("again"));
      await store.documents.remove({ ...bidA, version: 1 }, ada);
      expect(await store.documents.create(bidA, bid("again"), ben)).toStrictEqual({ kind: "gone" });
      await expect(
        store.documents.create({ project, kind: "brief", id: "second" }, { name: "x" }, ada),
      ).rejects.toThrow(RangeError);
      await expectIntact(store, project, 6);
    });

    test("with a body that the schema refuses are not stored", async () => {
      const { store, bidA, project } = await start();
      const unparsed = bid("Bidder A", "words", "three");
      await expect(store.documents.replace({ ...bidA, version: 1 }, unparsed, ada)).rejects.toThrow(TypeError);
      expect(await store.documents.read(bidA)).toMatchObject({ version: 1, body: bid("Bidder A") });
      await expectIntact(store, project, 5);
    });

    test("are refused beyond the size limit and with text that no database holds", async () => {
      const { store, bidA, project } = await start();
      const replace = (words: string) => store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", words), ada);
      expect(await replace("x".repeat(600_000))).toMatchObject({
        kind: "refused",
        because: { kind: "too-large", limit: 524_288 },
      });
      const path = ["claims", "0", "words"];
      const refused = (codePoint: number) => ({
        kind: "refused",
        because: { kind: "text-not-storable", path, codePoint },
      });
      expect(await replace("a\0b")).toStrictEqual(refused(0));
      expect(await replace("a\ud800b")).toStrictEqual(refused(0xd800));
      await expectIntact(store, project, 5);
    });

    test("at places that never were are gone", async () => {
      const { store, bidA } = await start();
      for (const project of ["nowhere", "\0", "'", "x".repeat(100)]) {
        const address = { ...bidA, project, version: 1 };
        expect(await store.documents.replace(address, bid("x"), ada)).toStrictEqual({ kind: "gone" });
        expect(await store.documents.create(address, bid("x"), ada)).toStrictEqual({ kind: "gone" });
        expect(await store.documents.remove(address, ada)).toStrictEqual({ kind: "gone" });
        expect(await store.documents.restore(address, ada)).toStrictEqual({ kind: "gone" });
        expect(await store.documents.read(address)).toBeNull();
        expect(await store.drafts.keep(address, {}, ada)).toStrictEqual({ kind: "gone" });
        expect(await store.drafts.read(address, ada)).toBeNull();
        expect(await store.projects.load(project)).toBeNull();
        expect(await store.projects.remove(project, ada)).toStrictEqual({ kind: "gone" });
        expect(await store.record.verify(project)).toBeNull();
        expect(await store.record.list(project)).toStrictEqual([]);
      }
    });

    test("of an older format are read through their upgrades and saved in today's", async () => {
      const { store, bidA, project, location } = await start();
      const later = await openStore(location, {
        schemas: { ...schemas, bid: z.strictObject({ company: z.string(), claims: z.array(z.unknown()) }) },
        upgrades: { bid: [upgradeBidder] },
      });
      opened.push(later);
      const claims = bid("x").claims;
      expect(await later.documents.read(bidA)).toMatchObject({ version: 1, body: { company: "Bidder A", claims } });
      expect(await later.record.verify(project)).toMatchObject({ kind: "intact", entries: 5 });
      await later.documents.replace({ ...bidA, version: 1 }, { company: "Bidder A, renamed", claims }, ada);
      expect(await later.documents.read(bidA)).toMatchObject({ body: { company: "Bidder A, renamed" } });
      expect(await later.record.verify(project)).toMatchObject({ kind: "intact", entries: 6 });
      await expect(store.documents.read(bidA)).rejects.toThrow(/has format 2; this Evenfield reads up to format 1$/);
    });
  });

  describe("drafts", () => {
    test("keep any form, parsed or not, one for each editor and document, and outlive the process", async () => {
      const { store, bidA, project, location } = await start();
      const typed = { bidder: "\0\ud800", claims: [{ count: "not yet a num" }], more: [null, true, 1.5] };
      expect(await store.drafts.keep({ ...bidA, version: 1 }, { bidder: "before" }, ada)).toMatchObject({
        kind: "kept",
      });
      expect(await store.drafts.keep({ ...bidA, version: 1 }, typed, ada)).toMatchObject({ kind: "kept" });
      await store.drafts.keep({ project, kind: "bid", id: "new", version: 0 }, "half a line", ben);
      const later = await another(location);
      expect((await later.drafts.read(bidA, ada))?.body).toStrictEqual(typed);
      expect(await later.drafts.read(bidA, ben)).toBeNull();
      expect((await later.drafts.list(project, ben)).map(({ id, body }) => [id, body])).toStrictEqual([
        ["new", "half a line"],
      ]);
      expect((await later.documents.read(bidA))?.version).toBe(1);
      await expectIntact(later, project, 5);
      await later.drafts.clear(bidA, ada);
      expect(await later.drafts.read(bidA, ada)).toBeNull();
    });

    test("go when the version they are based on is saved over, and stay when it was another", async () => {
      const { store, bidA } = await start();
      await store.drafts.keep({ ...bidA, version: 1 }, "typed", ada);
      await store.drafts.keep({ ...bidA, version: 1 }, "typed too", ben);
      await store.documents.replace({ ...bidA, version: 1 }, bid("saved"), ada);
      expect(await store.drafts.read(bidA, ada)).toBeNull();
      await store.documents.replace({ ...bidA, version: 2 }, bid("saved again"), ben);
      expect((await store.drafts.read(bidA, ben))?.body).toBe("typed too");
    });

    test("beyond the size limit are refused", async () => {
      const { store, bidA } = await start();
      const kept = await store.drafts.keep({ ...bidA, version: 1 }, "x".repeat(524_287), ada);
      expect(kept).toStrictEqual({ kind: "refused", because: { kind: "too-large", bytes: 524_289, limit: 524_288 } });
    });
  });

  describe("a clock that is set back", () => {
    test("changes neither the chain nor the order of entries, versions, conflicts and drafts", async () => {
      const times = ["10", "11", "02", "03", "12"].map((hour) => `2026-11-25T${hour}:00:00.000Z`);
      const days = ["2026-11-25T13:00:00.000Z", "2026-11-19T08:00:00.000Z"];
      let turn = 0;
      const now = () => [...times, ...days][Math.min(turn++, 6)] ?? "";
      const { store, bidA, project } = await start({ now });
      const saved = async (version: number, words: string) =>
        (await store.documents.replace({ ...bidA, version }, bid("A", words), ada)).kind;
      expect(await saved(1, "at 11")).toBe("saved");
      expect(await saved(2, "at 2, after 11")).toBe("saved");
      expect(await saved(2, "from the version of 11")).toBe("conflict"); // at 3
      expect((await store.drafts.read(bidA, ada))?.body).toStrictEqual(bid("A", "from the version of 11"));
      expect(await saved(3, "at 12")).toBe("saved");
      expect(await saved(4, "at 13")).toBe("saved");
      await store.projects.rename(project, { name: "Last week", owner: "District" }, ben);
      expect((await store.documents.read(bidA))?.body).toStrictEqual(bid("A", "at 13"));
      const entries = await store.record.list(project);
      expect(entries.map(({ seq }) => seq)).toStrictEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
      expect(entries.slice(5).map(({ at }) => at.slice(8, 13))).toStrictEqual([
        ...["25T11", "25T02", "25T12", "25T13", "19T08"],
      ]);
      const page = await store.record.page(project, { limit: 3 });
      expect(page.entries.map(({ seq }) => seq)).toStrictEqual([10, 9, 8]);
      expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries: 10, setBack: [7, 10] });
      expect((await store.projects.load(project))?.summary).toMatchObject({ changedAt: days[1], changedBy: "Ben" });
    });

    test("wherever it jumps, what was written last stands", async () => {
      const random = seeded(20_261_126);
      let time = Date.parse("2026-11-25T10:00:00.000Z");
      const jumping = () => {
        time += (random() - 0.5) * 40 * 86_400_000;
        return new Date(time).toISOString();
      };
      const { store, bidA, project } = await start({ now: jumping });
      for (let version = 1; version <= 30; version += 1)
        expect(
          await store.documents.replace({ ...bidA, version }, bid("A", `version ${version + 1}`), ada),
        ).toMatchObject({ kind: "saved", version: version + 1 });
      expect(await store.documents.replace({ ...bidA, version: 30 }, bid("A", "stale"), ben)).toMatchObject({
        ...{ kind: "conflict", version: 31, current: { body: bid("A", "version 31") } },
      });
      const verdict = await store.record.verify(project);
      expect(verdict).toMatchObject({ kind: "intact", entries: 35 });
      expect(verdict?.kind === "intact" && verdict.setBack.length).toBeGreaterThan(5);
    });
  });

  describe("presence", () => {
    const clock = (at: string) => {
      let now = Date.parse(at);
      return { now: () => new Date(now).toISOString(), pass: (seconds: number) => (now += seconds * 1000) };
    };

    test("shows who else has a page open, over two instances, and nobody elsewhere", async () => {
      const time = clock("2026-11-25T10:00:00.000Z");
      const { store, project, location } = await start({ now: time.now });
      const other = await open(location, { now: time.now });
      opened.push(other);
      expect(await store.presence.seen(project, "brief", ada, "page-1")).toStrictEqual([]);
      time.pass(5);
      expect(await other.presence.seen(project, "brief", ben, "page-2")).toStrictEqual([
        { page: "page-1", editor: ada.id, name: "Ada", since: "2026-11-25T10:00:00.000Z" },
      ]);
      expect(await other.presence.seen(project, "bids/bid-a", ben, "page-3")).toStrictEqual([]);
      time.pass(5);
      expect(await store.presence.seen(project, "brief", ada, "page-1")).toStrictEqual([
        { page: "page-2", editor: ben.id, name: "Ben", since: "2026-11-25T10:00:05.000Z" },
      ]);
      // whoever goes on to another page is no longer at the first, and there anew
      await other.presence.seen(project, "bids/bid-a", ben, "page-2");
      expect(await store.presence.seen(project, "brief", ada, "page-1")).toStrictEqual([]);
      time.pass(5);
      await store.presence.seen(project, "brief", ada, "page-1");
      expect(await other.presence.seen(project, "brief", ben, "page-2")).toMatchObject([
        { name: "Ada", since: "2026-11-25T10:00:00.000Z" },
      ]);
    });

    test("ends when somebody leaves, and by itself within half a minute; what is left over is swept", async () => {
      const time = clock("2026-11-25T10:00:00.000Z");
      const { store, project, raw } = await start({ now: time.now });
      await store.presence.seen(project, "brief", ada, "page-1");
      await store.presence.left(project, ben, "page-1"); // not Ben’s
      expect(await store.presence.seen(project, "brief", ben, "page-2")).toMatchObject([{ name: "Ada" }]);
      await store.presence.left(project, ada, "page-1");
      expect(await store.presence.seen(project, "brief", ben, "page-2")).toStrictEqual([]);
      await store.presence.seen(project, "brief", ada, "page-1");
      time.pass(30);
      expect(await store.presence.seen(project, "brief", ben, "page-2")).toMatchObject([{ name: "Ada" }]);
      time.pass(1);
      expect(await store.presence.seen(project, "brief", ben, "page-2")).toStrictEqual([]);
      time.pass(300);
      await store.presence.seen(project, "brief", ben, "page-2");
      // a second row of that page would break the key, so the first was swept
      await raw(
        `insert into presence values ('${project}', 'page-1', 'brief', 'ada', 'Ada', '2026-11-25', '2026-11-25')`,
      );
    });

    test("leaves the project and its record alone, and is nowhere in a project that is not within reach", async () => {
      const { store, project, location } = await start();
      const before = (await store.projects.load(project))?.summary;
      await store.presence.seen(project, "brief", ada, "page-1");
      await store.presence.left(project, ada, "page-1");
      expect((await store.projects.load(project))?.summary).toStrictEqual(before);
      await expectIntact(store, project, 5);
      const elsewhere = await open(location, { scope: { kind: "organisation", organisation: "another" } });
      opened.push(elsewhere);
      expect(await elsewhere.presence.seen(project, "brief", ben, "page-2")).toBeNull();
      expect(await store.presence.seen("no-such-project", "brief", ada, "page-1")).toBeNull();
      expect(await store.presence.seen("No id", "brief", ada, "page-1")).toBeNull();
      expect(await store.presence.seen(project, "brief", ada, "page-1")).toStrictEqual([]);
    });

    test("takes many pages at once", async () => {
      const { store, project, location } = await start();
      const other = await another(location);
      await Promise.all(
        Array.from({ length: 20 }, (_, index) =>
          (index % 2 ? store : other).presence.seen(project, "brief", editor(`Editor ${index}`), `page-${index}`),
        ),
      );
      expect(await store.presence.seen(project, "brief", ada, "page-of-ada")).toHaveLength(20);
    });
  });

  describe("projects", () => {
    test("are listed, the last changed first, and loaded with their documents in order", async () => {
      let hour = 10;
      const { store, project } = await start({ now: () => `2026-11-25T${hour++}:00:00.000Z` });
      const second = await store.projects.create({ ...northField, name: "South field", origin: "demo" }, ben);
      const listed = await store.projects.list();
      expect(listed.map(({ name, origin }) => [name, origin])).toStrictEqual([
        ["South field", "demo"],
        ["North field", "own"],
      ]);
      await store.documents.replace({ project, kind: "brief", id: "brief", version: 1 }, { name: "New" }, ben);
      const [first] = await store.projects.list();
      expect(first).toMatchObject({
        ...{ id: project, createdAt: "2026-11-25T10:00:00.000Z", createdBy: "Ada" },
        ...{ changedAt: "2026-11-25T12:00:00.000Z", changedBy: "Ben", record: { entries: 6 } },
      });
      const loaded = await store.projects.load(project);
      expect(loaded?.documents.brief.map(({ body }) => body)).toStrictEqual([{ name: "New" }]);
      expect(loaded?.documents.requirements[0]?.model.limit.value).toBe(165);
      expect(loaded?.documents.bid.map(({ id, position }) => [id, position])).toStrictEqual([
        ["bid-a", 0],
        ["bid-b", 1],
      ]);
      expect(second).toMatchObject({ kind: "saved", at: "2026-11-25T11:00:00.000Z" });
    });

    describe("are given a page at a time", () => {
      const found = async (store: TrialStore, wish: Partial<ProjectWish> = {}) => {
        const { projects, ...counts } = await store.projects.page({ limit: 50, ...wish });
        return { names: projects.map(({ name }) => name), ...counts };
      };
      const named = async (facts: readonly (readonly [string, string])[]) => {
        const { location } = await trial("tables");
        let minute = 10;
        const store = await open(location, { now: () => `2026-11-25T10:${minute++}:00.000Z` });
        opened.push(store);
        for (const [name, owner] of facts)
          await store.projects.create({ name, owner, origin: "own", documents: [] }, ada);
        return store;
      };

      test("the last changed first, none twice and none left out", async () => {
        const store = await named(Array.from({ length: 7 }, (_, index) => [`Field ${index}`, "District"]));
        const first = await store.projects.page({ limit: 3 });
        expect(first.projects.map(({ name }) => name)).toStrictEqual(["Field 6", "Field 5", "Field 4"]);
        expect([first.found, first.more]).toStrictEqual([7, true]);
        const [oldest] = (await store.projects.list()).slice(-1);
        await store.projects.remove((await store.projects.list())[2]?.id ?? "", ada); // Field 4, the place of the page
        await store.projects.rename(oldest?.id ?? "", { name: "Field 0 again", owner: "District" }, ada);
        const after = first.projects.at(-1);
        expect(await found(store, { limit: 3, ...(after ? { after } : {}) })).toStrictEqual({
          ...{ names: ["Field 3", "Field 2", "Field 1"], found: 6, more: false },
        });
        expect((await found(store, { limit: 1 })).names).toStrictEqual(["Field 0 again"]);
      });

      test("also where several were changed in one moment", async () => {
        const { location } = await trial("tables");
        const store = await open(location, { now: () => "2026-11-25T10:00:00.000Z" });
        opened.push(store);
        for (let count = 0; count < 9; count += 1)
          await store.projects.create({ name: `Field ${count}`, owner: "D", origin: "own", documents: [] }, ada);
        const seen: string[] = [];
        let after: ProjectPlace | undefined;
        for (;;) {
          const page = await store.projects.page({ limit: 2, ...(after ? { after } : {}) });
          seen.push(...page.projects.map(({ id }) => id));
          after = page.projects.at(-1);
          if (!page.more) break;
        }
        expect(seen).toStrictEqual((await store.projects.list()).map(({ id }) => id));
        expect(new Set(seen).size).toBe(9);
      });

      test("searched by words of name and owner, whatever their case, accents and signs", async () => {
        const store = await named([
          ["North Field", "Harrow Vale district"],
          ["Señora Park, PHASE 2", "Łódź_100% Ltd."],
          ["O’Neil Stadium", "Harrow Vale district"],
          ["Straße 5", "ΑΘΗΝΑ"],
        ]);
        const names = async (search: string) => (await found(store, { search })).names;
        expect(await names("  ")).toHaveLength(4);
        expect(await names("north")).toStrictEqual(["North Field"]);
        expect(await names("HARROW")).toStrictEqual(["O’Neil Stadium", "North Field"]);
        expect(await names("vale FIELD")).toStrictEqual(["North Field"]);
        expect(await names("senora")).toStrictEqual(["Señora Park, PHASE 2"]);
        expect(await names("SEN\u0303ORA phase")).toStrictEqual(["Señora Park, PHASE 2"]);
        expect(await names("o'neil")).toStrictEqual(["O’Neil Stadium"]);
        expect(await names("αθηνα")).toStrictEqual(["Straße 5"]);
        expect(await names("STRAßE")).toStrictEqual(["Straße 5"]);
        expect(await names("tadiu")).toStrictEqual(["O’Neil Stadium"]);
        for (const nothing of ["%", "_", "\\", "north south", "' or 7=7 --"])
          expect(await found(store, { search: nothing })).toStrictEqual({ names: [], found: 0, more: false });
        const long = { name: `${"𐐨 ".repeat(2000)}end`, owner: "Far away" };
        expect(await store.projects.create({ ...long, origin: "own", documents: [] }, ada)).toMatchObject({
          kind: "saved", // longer than an index takes
        });
        expect(await names("100%")).toStrictEqual(["Señora Park, PHASE 2"]);
        const north = (await store.projects.list()).find(({ name }) => name === "North Field");
        await store.projects.rename(north?.id ?? "", { name: "East", owner: "Town" }, ben);
        expect(await names("north")).toStrictEqual([]);
        expect(await names("east")).toStrictEqual(["East"]);
      });

      test("that was made before projects were searched", async () => {
        const { location } = await trial();
        const earlier = await openDatabase(location, "0003-drafts-by-id-persons-in-record-seals");
        const row = {
          ...{ id: "first-project", name: "Émile Field", owner: "Harrow Vale", origin: "own" as const },
          ...{ created_at: "2026-01-01", created_by: "Ada", changed_at: "2026-01-01", changed_by: "Ada" },
          ...{ removed_at: null, head_seq: 0, head_hash: "" },
        };
        await earlier.change((transaction) =>
          transaction
            .insertInto("project")
            .values(row as never)
            .execute(),
        );
        await earlier.close();
        expect(await found(await another(location), { search: "EMILE harrow" })).toStrictEqual({
          ...{ names: ["Émile Field"], found: 1, more: false },
        });
      });
    });

    test("are renamed, removed and restored, all of it in the record", async () => {
      const { store, project, bidA } = await start();
      await store.projects.rename(project, { name: "East field", owner: "District" }, ben);
      await store.projects.remove(project, ben);
      expect(await store.projects.list()).toStrictEqual([]);
      expect((await store.projects.listRemoved()).map(({ name }) => name)).toStrictEqual(["East field"]);
      expect(await store.projects.load(project)).toBeNull();
      expect(await store.documents.read(bidA)).toBeNull();
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("late"), ada)).toStrictEqual({ kind: "gone" });
      expect(await store.projects.rename(project, { name: "x", owner: "y" }, ada)).toStrictEqual({ kind: "gone" });
      expect(await store.projects.remove(project, ada)).toStrictEqual({ kind: "gone" });
      await expectIntact(store, project, 7);
      await store.projects.restore(project, ada);
      expect((await store.projects.load(project))?.summary).toMatchObject({ name: "East field", owner: "District" });
      expect((await store.drafts.read(bidA, ada))?.body).toStrictEqual(bid("late"));
      await expectIntact(store, project, 8);
      expect((await store.record.list(project)).map(({ action, who }) => `${who} ${action}`)).toStrictEqual([
        ...Array(5).fill("Ada create"),
        ...["Ben rename", "Ben remove", "Ada restore"],
      ]);
    });

    test("are imported whole or not at all", async () => {
      const { store } = await start();
      const importing = (documents: readonly unknown[]) =>
        store.projects.import({ ...northField, name: "From a file", documents: documents as never }, ada);
      const good = { kind: "bid", id: "bid-a", body: bid("Bidder A") };
      await expect(importing([good, { ...good, id: "bid-b", body: bid("B", "w", "many") }])).rejects.toThrow(TypeError);
      await expect(importing([good, good])).rejects.toThrow(/unique/i);
      expect(await importing([good, { ...good, id: "bid-b", body: bid("\0") }])).toMatchObject({ kind: "refused" });
      expect(await importing(Array(1001).fill(good))).toMatchObject({ because: { kind: "too-many-documents" } });
      expect(await store.projects.list()).toHaveLength(1);
      const whole = await importing([good, { ...good, id: "bid-b" }]);
      expect(whole.kind).toBe("saved");
      if (whole.kind !== "saved") return;
      expect((await store.projects.load(whole.id))?.documents.bid).toHaveLength(2);
      expect((await store.record.list(whole.id)).map(({ action }) => action)).toStrictEqual(Array(3).fill("import"));
      await expectIntact(store, whole.id, 3);
    });
  });

  describe("rules", () => {
    /** Nothing of a bidder called “No” may be written, and nothing is let in that is called “Secret”. */
    const guard: Guard<typeof schemas> = {
      needs: ["requirements"],
      refusal({ moves, standing }) {
        const bids = moves.flatMap((move) => (move.kind === "bid" && move.after !== null ? [move.after] : []));
        const limit = standing("requirements")[0]?.body.limit;
        const named = (name: string) => bids.some(({ model }) => model.bidder === name);
        if (named("No")) return { sentence: `Not under ${limit}.`, fields: ["bidder"], text: "kept" };
        if (named("Secret")) return { sentence: "Not this.", fields: [], text: "let-go" };
        const removes = moves.some(({ action, id }) => action === "remove" && id === "bid-b");
        return removes ? { sentence: "It stays.", fields: [], text: "kept" } : null;
      },
    };
    const rule = (sentence: string) => ({ kind: "refused", because: { kind: "rule", sentence } });

    test("refuse a save, keep what was typed as a draft, and the record says so", async () => {
      const { store, bidA, project } = await start({ guard, now: () => "2026-11-25T10:00:00.000Z" });
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("No"), ben)).toStrictEqual(
        rule("Not under 165."),
      );
      expect(await store.documents.read(bidA)).toMatchObject({ version: 1, body: bid("Bidder A") });
      expect(await store.drafts.read(bidA, ben)).toMatchObject({ basedOnVersion: 0, body: bid("No") });
      expect((await store.record.list(project)).at(-1)).toMatchObject({
        ...{ seq: 6, who: "Ben", person: "ben", action: "refuse", kind: "refusal", before: null },
        after: {
          because: "Not under 165.",
          fields: ["bidder"],
          documents: [{ attempted: "replace", kind: "bid", id: "bid-a" }],
        },
      });
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("Yes"), ben)).toMatchObject({ kind: "saved" });
      await expectIntact(store, project, 7);
    });

    test("let go of what must not be kept", async () => {
      const { store, bidA } = await start({ guard });
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("Secret"), ben)).toStrictEqual(
        rule("Not this."),
      );
      expect(await store.drafts.read(bidA, ben)).toBeNull();
    });

    test("hold for a new document, a removal, an undone removal and the promotion of a draft alike", async () => {
      const { store, project, bidA, location } = await start({ guard });
      const bidB = { ...bidA, id: "bid-b" };
      const made = await store.documents.create({ project, kind: "bid", id: "bid-c" }, bid("No"), ben);
      expect(made).toStrictEqual(rule("Not under 165."));
      expect((await store.drafts.read({ ...bidA, id: "bid-c" }, ben))?.body).toStrictEqual(bid("No"));
      expect(await store.documents.remove({ ...bidB, version: 1 }, ben)).toStrictEqual(rule("It stays."));
      await store.drafts.keep({ ...bidA, version: 1 }, bid("No"), ben);
      const draft = await store.drafts.read(bidA, ben);
      const promoted = await store.documents.replace({ ...bidA, version: 1 }, draft?.body as never, ben);
      expect(promoted).toStrictEqual(rule("Not under 165."));
      const unguarded = await another(location);
      await unguarded.documents.replace({ ...bidA, version: 1 }, bid("No"), ada);
      await unguarded.documents.remove({ ...bidA, version: 2 }, ada);
      expect(await store.documents.restore(bidA, ben)).toStrictEqual(rule("Not under 165."));
      expect((await store.record.list(project)).filter(({ action }) => action === "refuse")).toHaveLength(4);
      await expectIntact(store, project, 11);
    });

    test("are asked of a stale version too, so that an earlier request sent again is refused and recorded", async () => {
      const { store, project, bidA } = await start({ guard });
      await store.documents.replace({ ...bidA, version: 1 }, bid("Yes"), ada);
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("No"), ben)).toStrictEqual(
        rule("Not under 165."),
      );
      expect(await store.documents.create(bidA, bid("No"), ben)).toStrictEqual(rule("Not under 165."));
      const bidB = { ...bidA, id: "bid-b" };
      expect(await store.documents.remove({ ...bidB, version: 7 }, ben)).toStrictEqual(rule("It stays."));
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("Late"), ben)).toMatchObject({
        ...{ kind: "conflict", version: 2 },
      });
      expect(await store.documents.read(bidA)).toMatchObject({ version: 2, body: bid("Yes") });
      const refused = (await store.record.list(project)).filter(({ action }) => action === "refuse");
      expect(refused.map(({ who }) => who)).toStrictEqual(["Ben", "Ben", "Ben"]);
      await expectIntact(store, project, 9);
    });

    test("leave the time of the last change where it was, whether a write is refused or an attempt told of", async () => {
      let hour = 10;
      const { store, project, bidA } = await start({ guard, now: () => `2026-11-25T${hour++}:00:00.000Z` });
      const changed = async () => {
        const { changedAt, changedBy, record } = (await store.projects.load(project))?.summary ?? {};
        return { changedAt, changedBy, entries: record?.entries };
      };
      const before = await changed();
      await store.documents.replace({ ...bidA, version: 1 }, bid("No"), ben);
      expect(await changed()).toStrictEqual({ ...before, entries: 6 });
      const told = { sentence: "A file tells otherwise.", fields: ["limit"] };
      const documents = [{ attempted: "import", kind: "requirements", id: "requirements" }] as const;
      expect(await store.documents.refuse(project, told, documents, ben)).toStrictEqual(
        rule("A file tells otherwise."),
      );
      expect(await changed()).toStrictEqual({ ...before, entries: 7 });
      expect((await store.record.list(project)).at(-1)).toMatchObject({
        ...{ action: "refuse", who: "Ben", after: { because: told.sentence, fields: ["limit"], documents } },
      });
      expect(await store.documents.refuse("no-such-project", told, documents, ben)).toStrictEqual({ kind: "gone" });
      await expectIntact(store, project, 7);
    });

    test("hold for two stores on one database that write at once", async () => {
      const { store, project, location } = await start({ guard });
      const other = await open(location, { guard });
      opened.push(other);
      const outcomes = await Promise.all(
        Array.from({ length: 20 }, (_, index) =>
          (index % 2 ? store : other).documents.create(
            { project, kind: "bid" },
            bid(index % 4 < 2 ? "No" : "Yes"),
            ada,
          ),
        ),
      );
      expect(outcomes.filter(({ kind }) => kind === "refused")).toHaveLength(10);
      expect((await store.projects.load(project))?.documents.bid).toHaveLength(12);
      await expectIntact(store, project, 25);
    });
  });

  describe("acts", () => {
    test("write several documents together, made or replaced, as of one moment", async () => {
      const { store, project, bidA } = await start({ now: () => "2026-11-25T10:00:00.000Z" });
      await store.drafts.keep({ ...bidA, version: 1 }, "typed before", ada);
      const outcome = await store.documents.act(
        project,
        ({ standing, at }) => ({
          kind: "writes",
          documents: [
            { kind: "bid", id: "bid-a", body: bid(`${standing("bid").length} bids at ${at}`) },
            { kind: "people", id: "people", body: { names: ["Ada"] } },
            ...["bid-c", "bid-d"].map((id) => ({ kind: "bid" as const, id, body: bid(id) })),
          ],
        }),
        ada,
      );
      expect(outcome).toStrictEqual({ kind: "done", at: "2026-11-25T10:00:00.000Z" });
      const loaded = await store.projects.load(project);
      expect(loaded?.documents.bid.map(({ id, version, position }) => [id, version, position])).toStrictEqual([
        ["bid-a", 2, 0],
        ["bid-b", 1, 1],
        ["bid-c", 1, 2],
        ["bid-d", 1, 3],
      ]);
      expect(loaded?.documents.bid[0]?.body.bidder).toBe("2 bids at 2026-11-25T10:00:00.000Z");
      expect(loaded?.documents.people[0]?.body).toStrictEqual({ names: ["Ada"] });
      expect(await store.drafts.read(bidA, ada)).toBeNull();
      await expectIntact(store, project, 9);
    });

    test("that lack something change nothing and stand in no record; those that a rule refuses do", async () => {
      const refuses: Guard<typeof schemas> = {
        needs: [],
        refusal: ({ way, standing }) =>
          way === "act" ? { sentence: `${standing("bid").length} bids.`, fields: [], text: "kept" } : null,
      };
      const { store, project } = await start({ guard: refuses });
      const lacking = await store.documents.act(project, () => ({ kind: "lacks", sentences: ["A reason."] }), ada);
      expect(lacking).toStrictEqual({ kind: "lacks", sentences: ["A reason."] });
      await expectIntact(store, project, 5);
      const people = { kind: "people" as const, id: "people", body: { names: [] } };
      const refused = await store.documents.act(project, () => ({ kind: "writes", documents: [people] }), ada);
      expect(refused).toStrictEqual({ kind: "refused", because: { kind: "rule", sentence: "2 bids." } });
      expect((await store.projects.load(project))?.documents.people).toStrictEqual([]);
      await expectIntact(store, project, 6);
    });

    test("seal what nobody reads before it is opened: not in its document, not in the record, not in another project", async () => {
      const { store, project, location } = await start();
      const words = "a price of 1,234,567";
      const sealing = (value: unknown) =>
        store.documents.act(
          project,
          ({ seal }) => ({
            kind: "writes",
            documents: [
              { kind: "sealed-prices", id: "bid-a", body: { sealed: JSON.stringify(seal("prices", "bid-a", value)) } },
            ],
          }),
          ada,
        );
      await sealing({ words });
      await sealing({ words, more: "x".repeat(900) });
      const later = await another(location);
      const held = (await later.projects.load(project))?.documents["sealed-prices"][0]?.body.sealed ?? "";
      const everything = JSON.stringify([await later.projects.load(project), await later.record.list(project)]);
      expect(everything).not.toMatch(/1,234,567|xxx/);
      const lengths = (await later.record.list(project)).flatMap(({ kind, after }) =>
        kind === "sealed-prices" ? [JSON.stringify(after).length] : [],
      );
      expect(new Set(lengths).size).toBe(1); // the length of a sealed text tells nothing of a short one
      await later.documents.act(
        project,
        ({ unseal, keyOf }) => {
          expect(unseal("prices", "bid-a", JSON.parse(held))).toStrictEqual({ words, more: "x".repeat(900) });
          expect(() => unseal("prices", "bid-b", JSON.parse(held))).toThrow("was sealed for bid-a");
          const { text, ...rest } = JSON.parse(held);
          const altered = `${text.slice(0, 40)}${text[40] === "A" ? "B" : "A"}${text.slice(41)}`;
          expect(() => unseal("prices", "bid-a", { ...rest, text: altered })).toThrow();
          expect(keyOf("prices")).toMatch(/^[\w-]{43}$/);
          expect(keyOf("scores")).toBe("");
          return { kind: "lacks", sentences: [] };
        },
        ada,
      );
      await expectIntact(store, project, 7);
    });

    test("that fail leave no key behind", async () => {
      const { store, project } = await start();
      const failing = store.documents.act(
        project,
        ({ seal }) => {
          seal("prices", "bid-a", 1);
          throw new Error("broke off");
        },
        ada,
      );
      await expect(failing).rejects.toThrow("broke off");
      await store.documents.act(
        project,
        ({ keyOf }) => {
          expect(keyOf("prices")).toBe("");
          return { kind: "lacks", sentences: [] };
        },
        ada,
      );
    });

    test("on a project that is not there are gone", async () => {
      const { store, project } = await start();
      const nothing = () => ({ kind: "lacks", sentences: [] }) as const;
      expect(await store.documents.act("\0", nothing, ada)).toStrictEqual({ kind: "gone" });
      await store.projects.remove(project, ada);
      expect(await store.documents.act(project, nothing, ada)).toStrictEqual({ kind: "gone" });
    });
  });

  test("a database of the first release opens with everything in it, and goes on from there", async () => {
    const { location, raw } = await trial();
    await raw(readFileSync(new URL("./fixtures/first-schema.sql", import.meta.url), "utf8"));
    const store = await another(location);
    const project = "first-project";
    // The head hash was found again by a program in another language, from the description in record-entry.ts alone.
    expect(await store.record.verify(project)).toStrictEqual({
      ...{ kind: "intact", entries: 7 },
      head: "97d9457d7872acaa03b71d51befb75017d277af0fd9a87b45b7c50727f15cef1",
      setBack: [],
    });
    const bidA = { project, kind: "bid", id: "bid-a" } as const;
    const read = await store.documents.read(bidA);
    expect(read).toMatchObject({ version: 2, updatedBy: "Ben", body: bid("Bidder A", "“2-1/4 in” it's stated") });
    const requirements = { project, kind: "requirements", id: "requirements" } as const;
    expect((await store.drafts.read(requirements, ben))?.body).toStrictEqual({ limit: "16" });
    expect(await store.documents.restore({ ...bidA, id: "bid-b" }, ben)).toMatchObject({ kind: "saved", version: 3 });
    expect(await store.documents.replace({ ...bidA, version: 2 }, bid("on"), ada)).toMatchObject({ kind: "saved" });
    await expectIntact(store, project, 9);
    await expectIntact(await another(location), project, 9);
  });

  describe("the record", () => {
    test("tells what was done by whom, with what stood before and after", async () => {
      const { store, bidA, project } = await start({ now: () => "2026-11-25T10:00:00.000Z" });
      await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", "new words"), ben);
      expect((await store.record.list(project)).at(-1)).toMatchObject({
        ...{ seq: 6, at: "2026-11-25T10:00:00.000Z", who: "Ben", action: "replace", kind: "bid", id: "bid-a" },
        before: { version: 1, format: 1, position: 0, body: bid("Bidder A") },
        after: { version: 2, format: 1, position: 0, body: bid("Bidder A", "new words") },
      });
    });

    test("is verified by a reader that knows nothing but its description", async () => {
      const { store, bidA, project } = await start();
      await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder “Ä” 🌿", '\u2028\u007f/\\"'), ben);
      await store.documents.remove({ ...bidA, version: 2 }, ben);
      let previousHash = "0".repeat(64);
      for (const { hash, ...entry } of await store.record.list(project)) {
        expect(entry.previousHash).toBe(previousHash);
        previousHash = createHash("sha256")
          .update(sortedJson({ project, ...entry }))
          .digest("hex");
        expect(hash).toBe(previousHash);
      }
      expect(await store.record.verify(project)).toStrictEqual({
        ...{ kind: "intact", entries: 7, head: previousHash, setBack: [] },
      });
    });

    test("saved as a file verifies from the file alone, and shows where the file was altered", async () => {
      const { store, bidA, project } = await start();
      await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder “Ä” 🌿", '\u2028\u007f/\\"'), ben);
      const text = recordLines(project, await store.record.list(project));
      const verdict = await store.record.verify(project);
      expect(recordFileVerdict(text)).toStrictEqual(verdict);
      expect(recordFileVerdict(`\ufeff${text}`)).toStrictEqual(verdict);
      const lines = text.split("\n");
      const without = (at: number) => lines.filter((_, index) => index !== at).join("\n");
      const broken = (altered: string) => {
        const found = recordFileVerdict(altered);
        return found.kind === "broken" ? found.fault : found;
      };
      expect(broken(text.replace('"165"', '"200"'))).toStrictEqual({ kind: "entry-altered", seq: 3 });
      expect(broken(without(3))).toStrictEqual({ kind: "entry-missing", seq: 3 });
      expect(broken(without(6))).toStrictEqual({ kind: "head-differs", field: "entries" });
      expect(broken(without(0))).toMatchObject({ kind: "line-unread", line: 1 });
      expect(broken(`${text}{`)).toMatchObject({ kind: "line-unread", line: 8 });
      expect(broken(text.replace('"entries":6', '"entries":7'))).toStrictEqual({
        kind: "head-differs",
        field: "entries",
      });
      expect(broken(text.replace(/"head":"./, '"head":"-'))).toStrictEqual({ kind: "head-differs", field: "head" });
    });

    test("has no entry of a change that was rolled back", async () => {
      let failing = false;
      const now = () => {
        if (failing) throw new Error("the clock broke");
        return "2026-11-25T10:00:00.000Z";
      };
      const { store, bidA, project, raw } = await start({ now });
      failing = true;
      await expect(store.documents.replace({ ...bidA, version: 1 }, bid("lost"), ada)).rejects.toThrow("clock broke");
      failing = false;
      // The entry's number is taken, so the change fails at its last step, after the document was written.
      await raw(`insert into record (project_id, seq, at, who, action, kind, id, before, after, previous_hash, hash)
        select project_id, 6, at, who, action, kind, id, before, after, previous_hash, hash
        from record where seq = 5`);
      await expect(store.documents.replace({ ...bidA, version: 1 }, bid("lost"), ada)).rejects.toThrow(/unique/i);
      await raw("delete from record where seq = 6");
      expect(await store.documents.read(bidA)).toMatchObject({ version: 1, body: bid("Bidder A") });
      await expectIntact(store, project, 5);
      expect(await store.documents.replace({ ...bidA, version: 1 }, bid("kept"), ada)).toMatchObject({ kind: "saved" });
      await expectIntact(store, project, 6);
    });

    test("shows every single column that was altered past it", async () => {
      const { store, bidA, project, raw } = await start();
      const bidB = { ...bidA, id: "bid-b" } as const;
      await store.documents.replace({ ...bidA, version: 1 }, bid("Bidder A", "second"), ben);
      await store.documents.remove({ ...bidB, version: 1 }, ben);
      for (const table of ["record", "document", "project"]) {
        await raw(`create table kept_${table} as select * from ${table}`);
      }
      const restore = () =>
        raw(`delete from record; insert into record select * from kept_record;
          delete from document; insert into document select * from kept_document;
          update project set ${projectColumns.map((name) => `${name} = kept.${name}`).join(", ")}
            from kept_project as kept`);
      for (const [sql, fault] of alterations) {
        await raw(sql);
        expect([sql, await store.record.verify(project)]).toStrictEqual([sql, { kind: "broken", fault }]);
        await restore();
        await expectIntact(store, project, 7);
      }
    });

    test("shows an entry that was exchanged together with its hash", async () => {
      const { store, project, raw } = await start();
      const entries = await store.record.list(project);
      const { hash: _, ...third } = entries[2] ?? expect.fail("no third entry");
      const forged = createHash("sha256")
        .update(sortedJson({ project, ...third, who: "Nobody" }))
        .digest("hex");
      await raw(`update record set who = 'Nobody', hash = '${forged}' where seq = 3`);
      expect(await store.record.verify(project)).toStrictEqual({
        kind: "broken",
        fault: { kind: "link-broken", seq: 4 },
      });
    });

    test("stays one chain when two stores on one database write at once", async () => {
      const { store, project, location } = await start();
      const other = await another(location);
      const add = (index: number) =>
        (index % 2 ? store : other).documents.create({ project, kind: "bid" }, bid(`Bidder ${index}`), ada);
      const outcomes = await Promise.all(Array.from({ length: 30 }, (_, index) => add(index)));
      expect(outcomes.every(({ kind }) => kind === "saved")).toBe(true);
      const positions = (await other.projects.load(project))?.documents.bid.map(({ position }) => position);
      expect(positions).toStrictEqual(Array.from({ length: 32 }, (_, index) => index));
      await expectIntact(other, project, 35);
    });

    test("stays one chain when three processes write at once, opening a new database together", async () => {
      const { location } = await trial();
      const setUp = JSON.stringify(location);
      const outcomes = await Promise.all([1, 2, 3].map((writer) => processEnd(setUp, `Writer ${writer}`)));
      expect(outcomes).toStrictEqual([0, 0, 0]);
      const store = await another(location);
      const projects = await store.projects.list();
      expect(projects.map(({ name }) => name)).toStrictEqual(["Shared field"]);
      const [shared] = projects;
      const project = shared?.id ?? "";
      const entries = await store.record.list(project);
      for (const writer of [1, 2, 3]) {
        expect(entries.filter(({ who, kind }) => who === `Writer ${writer}` && kind === "bid")).toHaveLength(20);
      }
      expect(await store.record.verify(project)).toMatchObject({ kind: "intact", entries: entries.length });
    });
  });
}

const projectColumns = [
  ...["name", "owner", "origin", "created_at", "created_by"],
  ...["changed_at", "changed_by", "removed_at", "head_seq", "head_hash"],
];

const upgradeBidder = (body: unknown): unknown => {
  const { bidder, claims } = schemas.bid.omit({ claims: true }).extend({ claims: z.unknown() }).parse(body);
  return { company: bidder, claims };
};

/** Raw alterations of a project with seven entries, bid-a replaced once and bid-b removed, and what verifying finds. */
const alterations: readonly (readonly [string, object])[] = [
  ...["at", "who", "action", "kind", "id"].map((column): readonly [string, object] => [
    `update record set ${column} = 'other' where seq = 3`,
    { kind: "entry-altered", seq: 3 },
  ]),
  ["update record set person = 'other' where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set person = null where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set after = replace(after, '165', '200') where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set after = replace(after, ':', ': ') where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set after = 'no JSON' where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set after = null where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set before = after where seq = 6", { kind: "entry-altered", seq: 6 }],
  ["update record set before = null where seq = 6", { kind: "entry-altered", seq: 6 }],
  ["update record set hash = previous_hash where seq = 3", { kind: "entry-altered", seq: 3 }],
  ["update record set previous_hash = hash where seq = 3", { kind: "link-broken", seq: 3 }],
  ["update record set seq = 99 where seq = 7", { kind: "entry-missing", seq: 7 }],
  ["delete from record where seq = 1", { kind: "entry-missing", seq: 1 }],
  ["delete from record where seq = 4", { kind: "entry-missing", seq: 4 }],
  ["delete from record where seq = 7", { kind: "head-differs", field: "head_seq" }],
  ["delete from record", { kind: "entry-missing", seq: 1 }],
  ["update project set head_seq = 6", { kind: "head-differs", field: "head_seq" }],
  ...["head_hash", "changed_at", "changed_by", "created_at", "created_by"].map((field): readonly [string, object] => [
    `update project set ${field} = 'other'`,
    { kind: "head-differs", field },
  ]),
  ...["name", "owner", "origin"].map((column): readonly [string, object] => [
    `update project set ${column} = 'other'`,
    { kind: "project-differs", field: "name, owner or origin" },
  ]),
  ["update project set removed_at = changed_at", { kind: "project-differs", field: "removed_at" }],
  ...["bid-a", "bid-b"].flatMap((id) => {
    const differs = (field: string) => ({ kind: "document-differs", documentKind: "bid", id, field });
    const facts = differs("version, format, position or body");
    const alter = (set: string) => `update document set ${set} where id = '${id}'`;
    return [
      [alter("version = version + 1"), facts],
      [alter("format = 2"), facts],
      [alter("position = 7"), facts],
      [alter("body = replace(body, 'Bidder', 'Bidders')"), facts],
      [alter("body = 'no JSON'"), facts],
      [alter("updated_at = 'other'"), differs("updated_at")],
      [alter("updated_by = 'other'"), differs("updated_by")],
      [alter("removed_at = 'other'"), differs("removed_at")],
      [`delete from document where id = '${id}'`, differs("id")],
    ] as const;
  }),
  [
    "update document set removed_at = null where id = 'bid-b'",
    { kind: "document-differs", documentKind: "bid", id: "bid-b", field: "removed_at" },
  ],
  [
    "update document set id = 'moved' where id = 'requirements'",
    { kind: "document-differs", documentKind: "requirements", id: "moved", field: "id" },
  ],
  [
    "insert into document select project_id, kind, 'added', 1, 1, 9, body, updated_at, updated_by, null from document where id = 'bid-a'",
    { kind: "document-differs", documentKind: "bid", id: "added", field: "id" },
  ],
];

/** Canonical JSON of what these tests hold, written independently of the store. */
function sortedJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sortedJson).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const members = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return `{${members.map(([name, inner]) => `${JSON.stringify(name)}:${sortedJson(inner)}`).join(",")}}`;
}

/** Exit code of a process that adds 20 bids to the one shared project. */
function processEnd(location: string, name: string): Promise<number | null> {
  const script = new URL("./shared-writer.ts", import.meta.url).pathname;
  const child = spawn(process.execPath, ["--import", "tsx", script, location, name], {
    stdio: ["ignore", "ignore", "inherit"],
  });
  return new Promise((resolve) => child.once("exit", resolve));
}
