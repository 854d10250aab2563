import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changes, clashes, isSame, joined, puts } from "#lib/together";

const brief = { name: "North field", owner: "Harrow Vale district", money: { currency: "USD", rate: "4 %" } };
const list = (...entries: readonly (readonly [string, string])[]) => entries.map(([id, text]) => ({ id, text }));

describe("two texts of one", () => {
  test("that changed different fields are joined without a clash", () => {
    const three = {
      base: brief,
      mine: { ...brief, name: "South field" },
      theirs: { ...brief, money: { ...brief.money, rate: "3 %" } },
    };
    expect(clashes(three)).toEqual([]);
    expect(joined(three)).toEqual({ ...brief, name: "South field", money: { currency: "USD", rate: "3 %" } });
  });

  test("that changed one field clash there and nowhere else, and this side’s stands", () => {
    const three = {
      base: brief,
      mine: { ...brief, name: "South field" },
      theirs: { ...brief, name: "East field", owner: "Another" },
    };
    expect(clashes(three)).toEqual([
      { path: ["name"], by: "both", base: "North field", mine: "South field", theirs: "East field" },
    ]);
    expect(joined(three)).toEqual({ ...brief, name: "South field", owner: "Another" });
  });

  test("that changed one field alike do not clash", () => {
    const both = { ...brief, name: "South field" };
    expect(changes({ base: brief, mine: both, theirs: both })).toEqual([]);
  });

  test("hold entries of lists by id: changed, added and taken out on either side", () => {
    const three = {
      base: list(["a", "1"], ["b", "2"], ["c", "3"]),
      mine: list(["a", "1"], ["b", "two"], ["m", "mine"], ["c", "3"]),
      theirs: list(["t", "theirs"], ["b", "2"], ["c", "three"]),
    };
    expect(clashes(three)).toEqual([]);
    expect(joined(three)).toEqual(list(["t", "theirs"], ["b", "two"], ["m", "mine"], ["c", "three"]));
  });

  test("clash over an entry that one took out and the other changed", () => {
    const three = {
      base: list(["a", "1"], ["b", "2"]),
      mine: list(["a", "one"], ["b", "2"]),
      theirs: list(["b", "2"]),
    };
    expect(clashes(three)).toMatchObject([{ path: ["a"], mine: { text: "one" }, theirs: undefined }]);
    expect(joined(three)).toEqual(three.mine);
    expect(joined(three, () => "theirs")).toEqual(three.theirs);
  });

  test("keep the order that one gave a list, and clash where both gave it another", () => {
    const base = list(["a", "1"], ["b", "2"], ["c", "3"]);
    const turned = list(["c", "3"], ["a", "1"], ["b", "2"]);
    expect(joined({ base, mine: list(["a", "1"], ["b", "two"], ["c", "3"]), theirs: turned })).toEqual(
      list(["c", "3"], ["a", "1"], ["b", "two"]),
    );
    const other = list(["b", "2"], ["a", "1"], ["c", "3"]);
    expect(clashes({ base, mine: turned, theirs: other })).toMatchObject([{ path: ["order"], mine: ["c", "a", "b"] }]);
  });

  test("clash over a list without ids as a whole", () => {
    const three = { base: { texts: ["a", "b"] }, mine: { texts: ["A", "b"] }, theirs: { texts: ["a", "B"] } };
    expect(clashes(three)).toMatchObject([{ path: ["texts"], mine: ["A", "b"], theirs: ["a", "B"] }]);
  });

  test("mix no fields of two kinds", () => {
    const base = { shape: { kind: "rectangle", length: "100 m", width: "60 m" } };
    const three = {
      base,
      mine: { shape: { kind: "area", area: "7000 m²" } },
      theirs: { shape: { ...base.shape, width: "64 m" } },
    };
    expect(clashes(three)).toMatchObject([{ path: ["shape"] }]);
    expect(joined(three)).toEqual(three.mine);
  });

  test("take a field that a form filled in empty for one that is not there", () => {
    expect(changes({ base: {}, mine: { note: "", list: [] }, theirs: {} })).toEqual([]);
    expect(joined({ base: {}, mine: { note: "" }, theirs: { note: "Theirs." } })).toEqual({ note: "Theirs." });
  });
});

const text = fc.constantFrom("", "a", "b", "c", "3 lb/ft²");
const entry = fc.record({ id: fc.constantFrom("e1", "e2", "e3", "e4"), text, more: fc.record({ note: text }) });
const document = fc.record({
  name: text,
  shape: fc.oneof(
    fc.record({ kind: fc.constant("area"), area: text }),
    fc.record({ kind: fc.constant("rectangle"), length: text, width: text }),
  ),
  texts: fc.array(text, { maxLength: 3 }),
  entries: fc.uniqueArray(entry, { selector: ({ id }) => id, maxLength: 4 }),
});
const runs = { numRuns: 500 };

describe("whatever the texts", () => {
  test("a text joined with itself stays, and so does one that alone was changed", () => {
    fc.assert(
      fc.property(document, document, (base, changed) => {
        expect(joined({ base, mine: base, theirs: base })).toEqual(base);
        expect(clashes({ base, mine: changed, theirs: base })).toEqual([]);
        expect(isSame(joined({ base, mine: changed, theirs: base }), changed)).toBe(true);
        expect(isSame(joined({ base, mine: base, theirs: changed }), changed)).toBe(true);
      }),
      runs,
    );
  });

  test("all of one side gives that side", () => {
    fc.assert(
      fc.property(document, document, document, (base, mine, theirs) => {
        expect(
          isSame(
            joined({ base, mine, theirs }, () => "mine"),
            mine,
          ),
        ).toBe(true);
        expect(
          isSame(
            joined({ base, mine, theirs }, () => "theirs"),
            theirs,
          ),
        ).toBe(true);
      }),
      runs,
    );
  });

  test("edits of different fields and entries are all there afterwards", () => {
    const touched = fc.constantFrom("mine", "theirs", "nobody");
    const edit = fc.dictionary(fc.constantFrom("name", "owner", "note", "e1", "e2", "e3"), touched);
    fc.assert(
      fc.property(edit, (edits) => {
        const by = (side: string, key: string) => (edits[key] === side ? side : "stood");
        const made = (side: string) => ({
          ...Object.fromEntries(["name", "owner", "note"].map((key) => [key, by(side, key)])),
          entries: ["e1", "e2", "e3"].map((id) => ({ id, text: by(side, id) })),
        });
        const three = { base: made("-"), mine: made("mine"), theirs: made("theirs") };
        expect(clashes(three)).toEqual([]);
        const result = joined(three) as ReturnType<typeof made>;
        for (const key of ["name", "owner", "note"] as const)
          expect(result[key as never]).toBe(edits[key] === undefined || edits[key] === "nobody" ? "stood" : edits[key]);
        for (const { id, text: now } of result.entries)
          expect(now).toBe(edits[id] === undefined || edits[id] === "nobody" ? "stood" : edits[id]);
      }),
      runs,
    );
  });

  test("entries added on either side are all there, and those taken out are gone", () => {
    const ids = (prefix: string) => fc.uniqueArray(fc.integer({ min: 0, max: 9 }).map((n) => `${prefix}${n}`));
    fc.assert(
      fc.property(ids("b"), ids("m"), ids("t"), fc.infiniteStream(fc.integer({ min: 0, max: 3 })), (b, m, t, luck) => {
        const draw = () => Number(luck.next().value);
        const drop = (all: readonly string[]) => all.filter(() => draw() !== 0);
        const mix = (kept: readonly string[], added: readonly string[]) => {
          const order = [...kept];
          for (const id of added) order.splice(Math.min(draw(), order.length), 0, id);
          return order;
        };
        const [mine, theirs] = [mix(drop(b), m), mix(drop(b), t)];
        const asList = (all: readonly string[]) => all.map((id) => ({ id, text: id }));
        const three = { base: asList(b), mine: asList(mine), theirs: asList(theirs) };
        expect(clashes(three)).toEqual([]);
        const result = (joined(three) as { id: string }[]).map(({ id }) => id);
        const expected = [...b.filter((id) => mine.includes(id) && theirs.includes(id)), ...m, ...t];
        expect([...result].sort()).toEqual(expected.sort());
        const keepsOrder = (side: readonly string[]) =>
          expect(result.filter((id) => side.includes(id))).toEqual(side.filter((id) => result.includes(id)));
        keepsOrder(mine);
        keepsOrder(theirs);
      }),
      runs,
    );
  });

  test("either side comes to the same text, a clash settled the same way", () => {
    fc.assert(
      fc.property(document, document, document, (base, mine, theirs) => {
        const sorted = (value: unknown) => {
          const { entries = [], ...rest } = value as { entries?: { id: string }[] };
          return { ...rest, entries: [...entries].sort((one, other) => one.id.localeCompare(other.id)) };
        };
        const here = joined({ base, mine, theirs });
        const there = joined({ base, mine: theirs, theirs: mine }, ({ by }) => (by === "mine" ? "mine" : "theirs"));
        expect(isSame(sorted(here), sorted(there))).toBe(true);
      }),
      runs,
    );
  });

  test("what is put into a form makes it the other text", () => {
    fc.assert(
      fc.property(document, document, (now, next) => {
        const form = structuredClone(now) as Record<string, unknown>;
        for (const { path, value } of puts(now, next)) {
          const keys = path.split(".");
          const last = keys.pop() ?? "";
          const holder = keys.reduce((at, key) => at[key] as Record<string, unknown>, form);
          holder[last] = value;
        }
        expect(isSame(form, next)).toBe(true);
      }),
      runs,
    );
  });
});
