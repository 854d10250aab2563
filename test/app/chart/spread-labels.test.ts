import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spreadLabels } from "../../../app/_components/chart/spread-labels";

describe("spreadLabels", () => {
  test("leaves labels alone that have room", () => {
    expect(spreadLabels([10, 50, 90], 16)).toEqual([10, 50, 90]);
  });

  test("moves two labels at one place apart by half a size to either side", () => {
    expect(spreadLabels([50, 50], 16)).toEqual([42, 58]);
  });

  test("keeps the order in which they were wanted, whatever the order of the list", () => {
    expect(spreadLabels([60, 50], 16)).toEqual([63, 47]);
  });

  test("gives labels of unlike size the room that each needs", () => {
    // sizes 10 and 30 stand 20 apart, middle kept at 50
    expect(spreadLabels([50, 50], [10, 30])).toEqual([40, 60]);
  });

  test("stays inside the room it is given", () => {
    expect(spreadLabels([98, 99], 16, { from: 0, to: 100 })).toEqual([84, 100]);
    expect(spreadLabels([1, 0], 16, { from: 0, to: 100 })).toEqual([16, 0]);
  });

  test("gives nothing for no labels", () => {
    expect(spreadLabels([], 16)).toEqual([]);
  });

  const places = fc.array(fc.integer({ min: 0, max: 400 }), { minLength: 1, maxLength: 12 });

  test("never lets one label cover another", () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 40 }), (wanted, size) => {
        const placed = spreadLabels(wanted, size).toSorted((one, other) => one - other);
        for (const [place, at] of placed.entries()) {
          const before = placed[place - 1];
          if (before !== undefined) expect(at - before).toBeGreaterThanOrEqual(size - 1e-9);
        }
      }),
    );
  });

  test("keeps the mean of the places where nothing bounds it", () => {
    const mean = (numbers: readonly number[]) => numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
    fc.assert(
      fc.property(places, fc.integer({ min: 1, max: 40 }), (wanted, size) => {
        expect(mean(spreadLabels(wanted, size))).toBeCloseTo(mean(wanted), 6);
      }),
    );
  });
});
