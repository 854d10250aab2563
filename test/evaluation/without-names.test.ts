import fc from "fast-check";
import { expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema, withoutNames } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";

const demo = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const names = demo.bids.map(({ bidder }) => bidder);

test("no bidder is named anywhere in the project or its evaluation", () => {
  const [first, ...others] = demo.bids;
  if (first === undefined) throw new Error("expected a bid");
  const named = { ...first, system: `The usual surface of ${first.bidder}` };
  const hidden = withoutNames({ ...demo, bids: [named, ...others] });
  const text = JSON.stringify([hidden, evaluate(hidden)]);
  expect(names.filter((name) => text.includes(name))).toEqual([]);
  expect(hidden.bids.map(({ bidder }) => bidder)).toEqual(["Bidder A", "Bidder B", "Bidder C", "Bidder D"]);
  expect(hidden.bids[0]?.system).toBe("The usual surface of Bidder A");
});

test("nothing but texts changes: the figures and the order stay", () => {
  const [shown, hidden] = [evaluate(demo), evaluate(withoutNames(demo))];
  expect(hidden.ranking).toEqual(shown.ranking);
  expect(hidden.bids.map(({ score }) => score.total)).toEqual(shown.bids.map(({ score }) => score.total));
});

test("a name that is a word of the trade changes no figure", () => {
  const bids = demo.bids.map((bid) => ({ ...bid, bidder: "layered" }));
  const [shown, hidden] = [evaluate({ ...demo, bids }), evaluate(withoutNames({ ...demo, bids }))];
  expect(hidden.bids.map(({ infill }) => infill.depth)).toEqual(shown.bids.map(({ infill }) => infill.depth));
});

test("any name may be hidden, whatever its characters", () =>
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 40 }), (name) => {
      const bids = demo.bids.map((bid) => ({ ...bid, bidder: `§${name}§`, system: `by §${name}§ itself` }));
      const hidden = withoutNames({ ...demo, bids });
      expect(hidden.bids.map(({ system }) => system)).toEqual(["A", "B", "C", "D"].map((l) => `by Bidder ${l} itself`));
    }),
  ));

test("what evaluators wrote of a bid names no bidder either", () => {
  const [first] = demo.bids;
  if (first === undefined) throw new Error("expected a bid");
  const says = (what: string) => `${what} of ${first.bidder}.`;
  const doer = { id: "eve-okoro", name: "Eve Okoro" };
  const rated = { criterion: "care-plan", bid: first.id };
  const committee = {
    opened: { at: "2026-11-25T10:00:00.000Z", by: doer, key: "" },
    sheets: [
      {
        ...{ evaluator: doer, handedInAt: "2026-11-25T09:00:00.000Z" },
        sheet: {
          statement: { kind: "some-bids" as const, bids: [first.id], words: says("A cousin") },
          ratings: [{ ...rated, level: "level-3", comment: says("The plan") }],
        },
      },
    ],
    agreed: [{ ...rated, value: null, reason: says("The plan"), dissent: says("Not the plan") }],
  };
  const hidden = withoutNames({ ...demo, committee });
  expect(JSON.stringify(hidden)).not.toContain(first.bidder);
  expect(hidden.committee?.sheets[0]?.sheet.ratings[0]?.comment).toBe("The plan of Bidder A.");
  expect(hidden.committee?.agreed[0]?.dissent).toBe("Not the plan of Bidder A.");
});
