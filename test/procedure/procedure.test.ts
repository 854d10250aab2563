import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  arePricesSealed,
  fieldChanges,
  hasReached,
  lockOn,
  nextStages,
  type Procedure,
  procedureSchema,
  procedureSentences,
  type StageId,
  sameValue,
  stageOf,
  stages,
  toldByFile,
} from "#lib/procedure";

const by = { id: "dana-ruiz", name: "Dana Ruiz" };
const stageIds = stages.map(({ id }) => id);
const onward = stageIds.filter((id): id is Exclude<StageId, "draft"> => id !== "draft");

/** A procedure that went straight on to a stage. */
const at = (stage: StageId, prices: "open" | "sealed" = "open"): Procedure => {
  const steps = onward.slice(0, stageIds.indexOf(stage)).map((id, index) => ({
    ...{ stage: id, at: `2026-11-${10 + index}T10:00:00.000Z`, by, note: "", accepted: [], bid: "", key: "" },
  }));
  return { prices, steps, amendments: [] };
};

describe("the order of stages", () => {
  test("is draft, frozen, prices open, evaluated, recommended, awarded; back only to open prices", () => {
    const ways = stageIds.map((id) => nextStages(at(id)).map(({ stage, way }) => `${way} ${stage}`));
    expect(ways).toEqual([
      ["on frozen"],
      ["on prices-open"],
      ["on evaluated"],
      ["on recommended", "back prices-open"],
      ["on awarded", "back prices-open"],
      [],
    ]);
  });

  test("never thaws: whatever steps are taken, a project that was frozen has reached “frozen”", () =>
    fc.assert(
      fc.property(fc.array(fc.nat(3), { maxLength: 30 }), (choices) => {
        let procedure = at("frozen");
        for (const choice of choices) {
          const ways = nextStages(procedure);
          const next = ways[choice % Math.max(1, ways.length)];
          if (next === undefined) break;
          const step = { ...{ at: "2026-11-25T10:00:00.000Z", by, note: "", accepted: [], bid: "", key: "" } };
          procedure = { ...procedure, steps: [...procedure.steps, { ...step, stage: next.stage }] };
        }
        expect(hasReached(stageOf(procedure), "frozen")).toBe(true);
        expect(lockOn(procedure, "requirements")).not.toBeNull();
      }),
    ));
});

describe("what a stage holds fast", () => {
  /** Kinds that are held at each stage: the owner's choice, no source. */
  test.each([
    ["draft", []],
    ["frozen", ["brief", "requirements"]],
    ["prices-open", ["brief", "requirements", "sealed-prices"]],
    ["evaluated", ["bid", "brief", "committee", "costing", "requirements", "sealed-prices"]],
    ["recommended", ["bid", "brief", "committee", "costing", "recommendation", "requirements", "sealed-prices"]],
    ["awarded", ["bid", "brief", "committee", "costing", "recommendation", "requirements", "sealed-prices"]],
  ] as const)("at “%s” is %j", (stage, held) => {
    const kinds = ["brief", "requirements", "bid", "sealed-prices", "costing", "committee", "recommendation"];
    const free = ["campaign", "attachment", "people", "specification"];
    expect([...kinds, ...free].filter((kind) => lockOn(at(stage), kind) !== null).sort()).toEqual(held);
  });

  test("is what was agreed as well, from the opening of prices that were sealed", () => {
    expect(lockOn(at("prices-open"), "committee")).toBeNull();
    expect(lockOn(at("prices-open", "sealed"), "committee")).toMatchObject({ opens: "never" });
    expect(lockOn(at("frozen", "sealed"), "committee")).toBeNull();
  });

  test("prices are sealed until their first opening, and a step back does not seal them again", () => {
    expect(stageIds.filter((id) => arePricesSealed(at(id, "sealed")))).toEqual(["draft", "frozen"]);
    expect(stageIds.some((id) => arePricesSealed(at(id)))).toBe(false);
  });
});

const leaf = fc.oneof(fc.constantFrom("165 g", "a", "b", ""), fc.boolean(), fc.integer({ min: 0, max: 3 }));
const named = fc.record({ id: fc.constantFrom("one", "two", "three"), label: fc.constantFrom("A", "B"), limit: leaf });
const documents = fc.record({
  name: leaf,
  list: fc.uniqueArray(named, { selector: ({ id }) => id }),
  inner: fc.record({ deep: fc.array(leaf, { maxLength: 3 }) }),
});

describe("fieldChanges", () => {
  test("tells nothing of what is equal, and something of what is not, in both directions", () =>
    fc.assert(
      fc.property(documents, documents, (one, other) => {
        expect(fieldChanges(one, structuredClone(one))).toEqual([]);
        // an entry left out and one left empty are the same to a reader
        const differs = !sameValue(one, other);
        expect(fieldChanges(one, other).length > 0).toBe(fieldChanges(other, one).length > 0);
        if (fieldChanges(one, other).length > 0) expect(differs).toBe(true);
      }),
    ));

  test("matches entries by id, so that a new one does not make all after it differ", () => {
    const limit = (id: string, value: string) => ({ id, label: id.toUpperCase(), limit: value });
    const from = { criteria: [limit("a", "1"), limit("b", "2")] };
    const to = { criteria: [limit("new", "9"), limit("a", "1"), limit("b", "3")] };
    expect(fieldChanges(from, to)).toEqual([
      { field: "criteria, “NEW”", from: "–", to: expect.stringMatching(/^added: .*limit 9/) },
      { field: "criteria, “B”, limit", from: "2", to: "3" },
    ]);
    expect(fieldChanges(from, { criteria: [from.criteria[1], from.criteria[0]] })).toEqual([
      { field: "criteria, order", from: "“A”, “B”", to: "“B”, “A”" },
    ]);
  });
});

test("every later page and document says the stage and each amendment with day, name, reason and change", () => {
  const amendment = {
    ...{ at: "2026-11-20T23:59:00.000Z", by, reason: "The insurer asks for it.", document: "requirements" as const },
    changes: [{ field: "impact, limit", from: "165 g", to: "160 g" }],
  };
  expect(procedureSentences({ ...at("prices-open"), amendments: [amendment] }, "2026-11-01T00:00:00.000Z")).toEqual([
    "Criteria frozen on November 10, 2026 by Dana Ruiz. Stage: prices open, since November 11, 2026.",
    "Amendment 1, November 20, 2026, by Dana Ruiz: The insurer asks for it. (impact, limit: 165 g → 160 g)",
  ]);
});

test("a project that came from a file says that its record does not bear out what the file tells of before", () => {
  expect(toldByFile(at("frozen"), "2026-11-09T00:00:00.000Z")).toBeNull();
  expect(toldByFile(at("draft"), "2026-12-01T00:00:00.000Z")).toBeNull();
  expect(toldByFile(at("frozen"), "2026-12-01T00:00:00.000Z")).toMatch(
    /^This project was opened from a file on December 1/,
  );
  expect(procedureSentences(at("frozen"), "2026-12-01T00:00:00.000Z")[0]).toContain("as the file told it");
});

test("an amendment without a reason or a change does not read", () => {
  const amendment = { at: "2026-11-20T10:00:00.000Z", by, reason: " ", document: "brief", changes: [] };
  const read = procedureSchema.safeParse({ amendments: [amendment] });
  expect(read.error?.issues.map(({ path }) => path.join("."))).toEqual(["amendments.0.reason", "amendments.0.changes"]);
});
