import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ChanceYear } from "#lib/impact";
import { boundText, chanceText, overAllSpots } from "../../../app/project/[id]/hardness/_components/chance-line";
import { sharesOf } from "../../../app/project/[id]/hardness/_components/shares-of-year";

const yearWith = (below: number, above: number, meets: number): ChanceYear => ({
  year: 3,
  decisive: 1,
  locations: {
    fieldMeets: 1,
    locationInWindow: 1 - below - above,
    locationBelowWindow: below,
    locationAboveWindow: above,
    locationMeets: meets,
    allMeet: 1,
    meanMeets: 1,
  },
});

describe("the parts of all locations", () => {
  test("stand one on the other and fill the whole, whatever the chances", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (one, other, limit) => {
        const below = Math.min(one, other) / 2;
        const above = Math.max(one, other) / 2;
        const [parts] = sharesOf([yearWith(below, above, limit)]);
        if (parts === undefined) throw new Error("expected a year");
        const { foot, soft, window, below: belowLimit, top } = parts;
        const bounds = [foot, soft, window, belowLimit, top];
        expect(bounds).toEqual(bounds.toSorted((low, high) => low - high));
        expect([foot, top]).toEqual([0, 1]);
      }),
    );
  });

  test("are none where no spread is known", () => {
    expect(sharesOf([{ ...yearWith(0, 0, 1), locations: null }])).toEqual([]);
  });
});

test("a chance of the field as a whole is not drawn beside one of all its spots", () => {
  const line = (letter: string, ...years: readonly ChanceYear[]) => ({ letter, outlook: { years } as never });
  const known = line("A", yearWith(0, 0, 1));
  const asAWhole = line("B", { ...yearWith(0, 0, 1), locations: null });
  expect(overAllSpots([known, asAWhole]).map(({ letter }) => letter)).toEqual(["A"]);
});

test("a chance is never written as none or all", () => {
  expect([0, 0.004, 0.01, 0.5, 0.99, 0.996, 1].map(chanceText)).toEqual([
    ...["under 1 %", "under 1 %", "1 %", "50 %", "99 %", "over 99 %", "over 99 %"],
  ]);
});

test("a bound of a chance is rounded to the side that it is sure of", () => {
  expect(boundText(0.936, "at-most")).toBe("at least 93 %");
  expect(boundText(0.931, "at-least")).toBe("at most 94 %");
  expect(boundText(0.999, "at-most")).toBe("over 99 %");
  expect(boundText(0.999, "at-least")).toBe("at most 100 %");
  expect(boundText(0.001, "at-least")).toBe("under 1 %");
  expect(boundText(0.936, null)).toBe("94 %");
});
