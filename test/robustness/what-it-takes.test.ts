import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Comparison, leverNeed, leverNeeds, totalIntervals, valueAndWeightLevers } from "#lib/robustness";

const bids = [
  { bid: "a", values: [0.9, 0.2, 0.5] },
  { bid: "b", values: [0.4, 0.9, 0.6] },
];
const shares = [0.5, 0.3, 0.2];
const criteria = ["impact", "heat", "cost"].map((id) => ({ id, label: id }));

describe("leverNeed", () => {
  const lever = { id: "x", label: "x", kind: "price" } as const;
  test("finds the least change of a function that only rises, exactly", () => {
    const need = leverNeed({ ...lever, from: 100, furthest: 60, leadAt: (at) => 83.25 - at });
    expect(need).toMatchObject({ kind: "takes" });
    expect(need.kind === "takes" && need.at).toBeCloseTo(83.25, 12);
    expect(need.kind === "takes" && need.part).toBeCloseTo(16.75 / 40, 12);
  });
  test("says by how much the furthest falls short, and where nothing is needed", () => {
    expect(leverNeed({ ...lever, from: 0, furthest: 1, leadAt: (at) => at - 1.5 })).toMatchObject({
      kind: "not-enough",
      shortAtFurthest: 0.5,
    });
    expect(leverNeed({ ...lever, from: 0, furthest: 1, leadAt: () => 0 })).toMatchObject({ kind: "leads-already" });
  });
  test("finds the step of a rule that jumps", () => {
    const need = leverNeed({ ...lever, from: 0, furthest: 10, leadAt: (at) => (at >= 3 ? 1 : -1) });
    expect(need.kind === "takes" && need.at).toBeCloseTo(3, 12);
  });
});

describe("valueAndWeightLevers", () => {
  test("gives by arithmetic what each value and weight takes, the smallest part of the way first", () => {
    const needs = leverNeeds(valueAndWeightLevers(bids, shares, criteria, "b"));
    const at = (id: string, kind = "takes") => {
      const need = needs.find((one) => one.lever.id === id && one.kind === kind);
      return need?.kind === "takes" ? need.at : Number.NaN;
    };
    // b is 0.02 behind: 0.02 ÷ weight more on one value
    expect(at("value/impact")).toBeCloseTo(0.4 + 0.02 / 0.5, 10);
    expect(at("value/heat")).toBeCloseTo(0.9 + 0.02 / 0.3, 10);
    expect(at("value/cost")).toBeCloseTo(0.6 + 0.02 / 0.2, 10);
    // the crossing of the reference, section 3.6: b leads once the first weight falls to 23/48
    expect(at("weight/impact")).toBeCloseTo(23 / 48, 10);
    const parts = needs.map((need) => (need.kind === "takes" ? need.part : 2));
    expect(parts).toEqual(parts.toSorted((one, other) => one - other));
  });

  test("puts the bid level with the best at what it takes, and not before", () => {
    const value = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, value), { minLength: 2, maxLength: 5 }), (all) => {
        const named = all.map((values, at) => ({ bid: `b${at}`, values }));
        for (const need of leverNeeds(valueAndWeightLevers(named, shares, criteria, "b0"))) {
          if (need.kind !== "takes") continue;
          const { leadAt, from, furthest } = need.lever;
          expect(leadAt(need.at)).toBeGreaterThanOrEqual(-1e-12);
          expect(leadAt(from + (need.at - from) * 0.999)).toBeLessThanOrEqual(1e-9);
          expect(Math.min(from, furthest)).toBeLessThanOrEqual(need.at);
          expect(Math.max(from, furthest)).toBeGreaterThanOrEqual(need.at);
        }
      }),
    );
  });

  test("misses no weight at which the bid would lead", () => {
    const value = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, value), { minLength: 2, maxLength: 4 }), (all) => {
        const named = all.map((values, at) => ({ bid: `b${at}`, values }));
        const levers = valueAndWeightLevers(named, shares, criteria, "b0");
        const total = (values: readonly number[], weights: readonly number[]) =>
          values.reduce((sum, one, at) => sum + one * (weights[at] ?? 0), 0);
        const leadsAt = (weight: number) => {
          const weights = [weight, ((1 - weight) * 0.3) / 0.5, ((1 - weight) * 0.2) / 0.5];
          const mine = total(named[0]?.values ?? [], weights);
          return named.slice(1).every(({ values }) => mine - total(values, weights) > 1e-6);
        };
        const grid = Array.from({ length: 101 }, (_, at) => at / 100);
        const needs = levers.filter(({ id }) => id === "weight/impact").map(leverNeed);
        const found = leadsAt(0.5) || needs.some(({ kind }) => kind !== "not-enough");
        if (grid.some(leadsAt)) expect(found).toBe(true);
      }),
    );
  });

  test("refuses a bid that is not there", () => {
    expect(() => valueAndWeightLevers(bids, shares, criteria, "z")).toThrow(RangeError);
  });
});

describe("totalIntervals", () => {
  const comparison = (low: number): Comparison => ({
    criteria: ["c"],
    shares: [1],
    bids: [
      { bid: "a", standing: "in", values: [{ kind: "between", low, high: 0.86 }] },
      { bid: "b", standing: "in", values: [{ kind: "known", value: 0.7 }] },
      { bid: "c", standing: "out", values: [{ kind: "known", value: 1 }] },
    ],
  });
  // cost-and-decision reference, missing-vs-complete
  test("leaves the order open where intervals overlap [missing-vs-complete]", () => {
    expect(totalIntervals(comparison(0.51))).toEqual({
      totals: [
        { bid: "a", low: 0.51, high: 0.86 },
        { bid: "b", low: 0.7, high: 0.7 },
      ],
      certainLeader: null,
    });
    expect(totalIntervals(comparison(0.71)).certainLeader).toBe("a");
  });
});
