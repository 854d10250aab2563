import { describe, expect, test } from "vitest";
import { intervalOf, likelyOf, type Reading } from "#lib/quantity";

const open = Number.POSITIVE_INFINITY;
const cases: readonly [Record<string, unknown>, low: number, high: number, likely: number][] = [
  [{ kind: "exact", value: 5 }, 5, 5, 5],
  [{ kind: "plus-or-minus", value: 5, tolerance: 2 }, 3, 7, 5],
  [{ kind: "range", low: 2, high: 3 }, 2, 3, 2.5],
  [{ kind: "at-least", low: 9 }, 9, open, 9],
  [{ kind: "at-most", high: 165 }, -open, 165, 165],
];

describe.each(cases)("%j", (made, low, high, likely) => {
  const reading = made as unknown as Reading<"g">;
  test(`allows ${low} to ${high}`, () => expect(intervalOf(reading)).toEqual({ low, high }));
  test(`is computed with as ${likely}`, () => expect(likelyOf(reading)).toBe(likely));
});
