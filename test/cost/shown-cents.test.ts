import { describe, expect, test } from "vitest";
import { shownCents } from "#lib/cost";

describe("shownCents", () => {
  test.each([
    [0.5, 1],
    [1.5, 2],
    [2.4999, 2],
    [-0.5, -1],
    [-2.4999, -2],
    [-0.2, 0],
    [38_800_000.00000001, 38_800_000],
    [100.49999999999999, 101], // 100.5 less the last bit
  ])("%d is shown as %d", (cents, shown) => expect(Object.is(shownCents(cents), shown)).toBe(true));
});
