import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type CostStream, cashFlows, costCategories, flowPresentValue, type PriceLine, presentValue } from "#lib/cost";
import { measured } from "#lib/quantity";
import { anyLines, lineWith, setting } from "./lines";

const rate = fc.double({ min: 0, max: 0.3, noNaN: true });
const timing = fc.constantFrom("end-of-year", "mid-year");
const worth = (lines: readonly PriceLine[], discounting: Parameters<typeof flowPresentValue>[1]) =>
  cashFlows(lines, setting()).flows.reduce((sum, { flow }) => sum + flowPresentValue(flow, discounting), 0);
const summed = (streams: readonly CostStream[]) =>
  Array.from({ length: 21 }, (_, year) => streams.reduce((sum, stream) => sum + (stream[year] ?? Number.NaN), 0));
/** Equal but for the order of addition: within a ten-thousandth of a cent, or a part in 10¹² of a large sum. */
const same = (actual: number, expected: number) =>
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-4 + 1e-12 * Math.abs(expected));

describe("cashFlows", () => {
  test("covers year 0 and every year of the study in each stream", () => {
    const { total, byCategory, flows } = cashFlows([lineWith("yearly")], setting({ studyPeriod: "3 years" }));
    expect(total).toEqual([0, 10_000, 10_000, 10_000]);
    expect(byCategory["operation-and-maintenance"]).toEqual(total);
    expect(byCategory.testing).toEqual([0, 0, 0, 0]);
    expect(flows.map(({ line, flow }) => [line.id, flow.stream])).toEqual([["line", total]]);
    expect(Object.keys(byCategory)).toEqual(Object.keys(costCategories));
  });

  test("gives the same money by line, by category and in all", () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { total, byCategory, flows } = cashFlows(lines, setting());
        const categories = summed(Object.values(byCategory));
        const ofLines = summed(flows.map(({ flow }) => flow.stream));
        total.forEach((cents, year) => {
          same(categories[year] ?? Number.NaN, cents);
          same(ofLines[year] ?? Number.NaN, cents);
        });
      }),
    );
  });
});

describe("present value of price lines", () => {
  test("adds up over lines", () => {
    fc.assert(
      fc.property(anyLines, rate, timing, (lines, perYear, when) => {
        const discounting = { rate: perYear, timing: when } as const;
        const apart = lines.reduce((sum, line) => sum + worth([line], discounting), 0);
        same(worth(lines, discounting), apart);
      }),
    );
  });

  test("is the plain sum of all flows at a rate of 0, whatever the timing", () => {
    fc.assert(
      fc.property(anyLines, timing, (lines, when) => {
        const sum = cashFlows(lines, setting()).total.reduce((total, cents) => total + cents, 0);
        same(worth(lines, { rate: 0, timing: when }), sum);
      }),
    );
  });

  test("at year ends is the present value of the total stream", () => {
    fc.assert(
      fc.property(anyLines, rate, (lines, perYear) => {
        const { total } = cashFlows(lines, setting());
        same(worth(lines, { rate: perYear, timing: "end-of-year" }), presentValue(total, perYear));
      }),
    );
  });

  test("never rises with the rate where nothing is credited", () => {
    fc.assert(
      fc.property(anyLines, rate, rate, timing, (lines, one, other, when) => {
        const costs = lines.filter((line) => line.kind !== "replacement-chain" || line.residual === "none");
        const low = worth(costs, { rate: Math.min(one, other), timing: when });
        const high = worth(costs, { rate: Math.max(one, other), timing: when });
        expect(high).toBeLessThanOrEqual(low * (1 + 1e-12));
      }),
    );
  });

  test("scales with every amount, so that the unit of money does not matter", () => {
    const multiple = fc.integer({ min: 2, max: 50 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900_000 }), multiple, rate, (dollars, factor, perYear) => {
        const discounting = { rate: perYear, timing: "mid-year" } as const;
        const kinds = ["at-base-date", "in-year", "yearly", "periodic", "replacement-chain"] as const;
        const lines = (amount: number) =>
          kinds.map((kind) => lineWith(kind, { id: kind, amount: { kind: "lump-sum", price: `$${amount}` } }));
        same(worth(lines(dollars * factor), discounting), worth(lines(dollars), discounting) * factor);
      }),
    );
  });

  test("of prices per area scales with the area, of lump sums it does not", () => {
    const perArea = lineWith("replacement-chain", { amount: { kind: "per-area", price: "$4.85/ft²" } });
    const onArea = (line: PriceLine, feet: number) =>
      cashFlows([line], { ...setting(), area: measured("area", feet, "ft²") }).total;
    onArea(perArea, 80_000).forEach((cents, year) => {
      same(cents, (onArea(perArea, 20_000)[year] ?? Number.NaN) * 4);
    });
    expect(onArea(lineWith("yearly"), 80_000)).toEqual(onArea(lineWith("yearly"), 20_000));
  });
});
