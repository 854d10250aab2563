import { describe, expect, test } from "vitest";
import type { CostCategory, CostEntry, GivenBy } from "#lib/cost";
import { categoryLabels } from "../../../app/project/[id]/cost/_components/category-labels";
import { stackedParts } from "../../../app/project/[id]/cost/_components/stacked-parts";

const entry = (category: CostCategory, presentValue: number, givenBy: GivenBy = "bid"): CostEntry => ({
  line: "line",
  label: "Line",
  part: "price",
  givenBy,
  category,
  presentValue,
  shown: presentValue,
});

describe("stackedParts", () => {
  test("lays costs right of zero and credits left of it, in the order of a report", () => {
    const parts = stackedParts([entry("residual", -20), entry("replacement", 30), entry("investment", 100)]);
    expect(parts.map(({ category, from, to }) => [category, from, to])).toEqual([
      ["investment", 0, 100],
      ["replacement", 100, 130],
      ["residual", 0, -20],
    ]);
  });

  test("marks the far end of a part that rests on the owner’s estimates", () => {
    const parts = stackedParts([
      entry("investment", 100),
      entry("operation-and-maintenance", 40),
      entry("operation-and-maintenance", 10, "owner-estimate"),
      entry("residual", -6),
      entry("residual", -2, "owner-estimate"),
    ]);
    expect(parts.map(({ estimated }) => [estimated.from, estimated.to])).toEqual([
      [100, 100],
      [140, 150],
      [-6, -8],
    ]);
  });

  test("marks no more than the part where a credit offsets an estimate", () => {
    const [part] = stackedParts([entry("testing", -30), entry("testing", 50, "owner-estimate")]);
    expect(part).toEqual({ category: "testing", from: 0, to: 20, estimated: { from: 0, to: 20 } });
  });

  test("leaves out what comes to nothing", () => {
    expect(stackedParts([entry("testing", 0)])).toEqual([]);
  });
});

describe("categoryLabels", () => {
  test("points each category into the first bar that has it, from left to right", () => {
    const first = stackedParts([entry("investment", 100), entry("residual", -20)]);
    const second = stackedParts([entry("investment", 80), entry("testing", 10)]);
    expect(categoryLabels([first, second])).toEqual([
      { category: "residual", bar: 0, at: -10 },
      { category: "investment", bar: 0, at: 50 },
      { category: "testing", bar: 1, at: 85 },
    ]);
  });
});
