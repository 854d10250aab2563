import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CostEntry } from "#lib/cost";
import { evaluate, projectFileSchema } from "#lib/evaluation";
import demonstration from "../../app/_demo/demonstration-project.json";
import { categoryLabels } from "../../app/project/[id]/cost/_components/category-labels";
import { barsSummary, linesSummary } from "../../app/project/[id]/cost/_components/chart-summaries";
import { pricedBids } from "../../app/project/[id]/cost/_components/priced-bid";
import { runningTotal, yearsPaid } from "../../app/project/[id]/cost/_components/running-total";
import { stackedParts } from "../../app/project/[id]/cost/_components/stacked-parts";

const entry = (
  category: CostEntry["category"],
  presentValue: number,
  givenBy: CostEntry["givenBy"] = "bid",
): CostEntry => ({
  line: category,
  label: category,
  part: "price",
  category,
  givenBy,
  presentValue,
  shown: presentValue,
});

describe("runningTotal", () => {
  test("adds up what has been paid", () => expect(runningTotal([100, 0, 50, -20])).toEqual([100, 100, 150, 130]));
  test("ends at the sum of all payments", () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer(), { minLength: 1 }),
        (stream) => void expect(runningTotal(stream).at(-1)).toBe(stream.reduce((sum, cents) => sum + cents, 0)),
      ),
    ));
});

test("yearsPaid names the years in which something is paid or paid back", () =>
  expect(yearsPaid([100, 0, 50, -20])).toEqual([0, 2, 3]));

describe("stackedParts", () => {
  test("lays costs end to end right of zero and credits left of it", () => {
    const parts = stackedParts([
      entry("investment", 700),
      entry("operation-and-maintenance", 300),
      entry("residual", -200),
    ]);
    expect(parts.map(({ category, from, to }) => [category, from, to])).toEqual([
      ["investment", 0, 700],
      ["operation-and-maintenance", 700, 1000],
      ["residual", 0, -200],
    ]);
  });

  test("leaves out a category that comes to nothing", () =>
    expect(stackedParts([entry("investment", 0), entry("replacement", 5), entry("replacement", -5)])).toEqual([]));

  test("marks the end of a part that the owner estimated", () =>
    expect(stackedParts([entry("investment", 700), entry("investment", 300, "owner-estimate")])[0]?.estimated).toEqual({
      from: 700,
      to: 1000,
    }));

  test("never draws an estimate outside its part", () => {
    const cents = fc.integer({ min: -1000, max: 1000 });
    fc.assert(
      fc.property(cents, cents, (given, estimated) => {
        for (const part of stackedParts([
          entry("investment", given),
          entry("investment", estimated, "owner-estimate"),
        ])) {
          const [low, high] = [Math.min(part.from, part.to), Math.max(part.from, part.to)];
          expect(part.estimated.from).toBeGreaterThanOrEqual(low);
          expect(part.estimated.from).toBeLessThanOrEqual(high);
        }
      }),
    );
  });
});

test("categoryLabels names each category once, at the first bar that has it, from left to right", () => {
  const first = stackedParts([entry("investment", 700), entry("residual", -200)]);
  const second = stackedParts([entry("investment", 500), entry("replacement", 100)]);
  expect(categoryLabels([first, second])).toEqual([
    { category: "residual", bar: 0, at: -100 },
    { category: "investment", bar: 0, at: 350 },
    { category: "replacement", bar: 1, at: 550 },
  ]);
});

describe("what the drawings show, in words", () => {
  const project = projectFileSchema.parse(demonstration);
  const priced = pricedBids(project, evaluate(project));

  test("bids with prices stand in the order of the letters", () =>
    expect(priced.map(({ bid }) => bid.letter)).toEqual(["A", "B", "C", "D"]));

  test("a bid without prices is left out", () => {
    const unpriced = projectFileSchema.parse({
      ...demonstration,
      bids: demonstration.bids.map((bid) => (bid.letter === "B" ? { ...bid, prices: [] } : bid)),
    });
    expect(pricedBids(unpriced, evaluate(unpriced)).map(({ bid, index }) => [bid.letter, index])).toEqual([
      ["A", 0],
      ["C", 2],
      ["D", 3],
    ]);
  });

  test("the bars: the present value of each bid, and what the marks mean", () =>
    expect(barsSummary(priced, "USD")).toMatch(
      /^Present value by what the money is spent on: \$[\d,]+ for bid A, at least \$[\d,]+ for bid B, \$[\d,]+ for bid C and \$[\d,]+ for bid D\. Credits lie left of zero, /,
    ));

  test("the lines: where they end and when carpets are renewed", () =>
    expect(linesSummary(priced, 20, "USD")).toMatch(
      /After 20 years and any residual value: \$[\d,]+ for bid A, .* for bid D\. Renewals: bid A in (year|years) [\d, and]+; bid B in .*; bid C in .*; bid D in .*\.$/,
    ));
});
