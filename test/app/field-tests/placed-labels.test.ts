import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placedLabels } from "../../../app/project/[id]/field-tests/_tests/placed-labels";

const sizes = { radius: 5, height: 14, room: { width: 400, height: 300 } };

describe("placedLabels", () => {
  test("puts words below their mark where there is room", () =>
    expect(placedLabels([{ at: { x: 200, y: 100 }, width: 40 }], sizes)).toEqual([{ x: 200, y: 113 }]));

  test("puts them above at the lower edge", () =>
    expect(placedLabels([{ at: { x: 200, y: 292 }, width: 40 }], sizes)).toEqual([{ x: 200, y: 279 }]));

  test("gives no place where there is none", () =>
    expect(placedLabels([{ at: { x: 200, y: 100 }, width: 900 }], sizes)).toEqual([null]));

  test("words never cover each other, a strange mark or the edge", () => {
    const mark = fc.record({
      at: fc.record({ x: fc.integer({ min: 5, max: 395 }), y: fc.integer({ min: 5, max: 295 }) }),
      width: fc.integer({ min: 10, max: 90 }),
    });
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 14 }), (marks) => {
        const placed = placedLabels(marks, sizes).map((middle, index) =>
          middle === null ? null : { ...middle, width: marks[index]?.width ?? 0, height: 14, index },
        );
        const words = placed.filter((label) => label !== null);
        for (const { x, y, width } of words) {
          expect(x - width / 2).toBeGreaterThanOrEqual(0);
          expect(x + width / 2).toBeLessThanOrEqual(400);
          expect(y - 7).toBeGreaterThanOrEqual(0);
          expect(y + 7).toBeLessThanOrEqual(300);
        }
        for (const one of words)
          for (const other of words)
            if (one.index < other.index)
              expect(
                Math.abs(one.x - other.x) >= (one.width + other.width) / 2 || Math.abs(one.y - other.y) >= 14,
              ).toBe(true);
      }),
    );
  });
});
