import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { naturalFrequency } from "#lib/impact";

describe("naturalFrequency", () => {
  test.each([
    [0, "fewer than 1 in 100"],
    [0.0099, "fewer than 1 in 100"],
    [0.01, "1 in 100"],
    [0.043, "4 in 100"],
    [0.094, "9 in 100"],
    [0.0951, "1 in 10"],
    [0.3, "3 in 10"],
    [0.349, "3 in 10"],
    [0.904, "9 in 10"],
    [0.906, "91 in 100"],
    [0.99, "99 in 100"],
    [0.991, "more than 99 in 100"],
    [1, "more than 99 in 100"],
  ])("says %f as %s", (chance, words) => expect(naturalFrequency(chance)).toBe(words));

  test("never says none or all, and is at most half a step off", () =>
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (chance) => {
        const [count = 0, of = 1] = (naturalFrequency(chance).match(/\d+/g) ?? []).map(Number);
        expect(count).toBeGreaterThan(0);
        expect(count).toBeLessThan(of);
        if (chance >= 0.01 && chance <= 0.99)
          expect(Math.abs(count / of - chance)).toBeLessThanOrEqual(0.5 / of + 1e-12);
      }),
    ));

  test.each([-0.1, 1.1, Number.NaN])("takes no chance of %f", (chance) =>
    expect(() => naturalFrequency(chance)).toThrow(RangeError),
  );
});
