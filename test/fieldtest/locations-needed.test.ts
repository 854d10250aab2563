import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  locationsNeeded,
  locationsNeededByNormal,
  shareAboveLimit,
  toleranceFactor,
  upperToleranceLimit,
} from "#lib/fieldtest";
import { explainShortfall, type Figure } from "#lib/figure";
import { measured } from "#lib/quantity";
import { grams } from "./campaigns";

const share = (part: number) => measured("fraction", part);
const question = (part: number, confidence = 0.95) => ({ share: share(part), confidence: share(confidence) });
const countOf = (figure: Figure) => (figure.kind === "known" ? figure.value : Number.NaN);
const highOf = (figure: Figure) => (figure.kind === "at-most" ? figure.high : Number.NaN);
const reasonOf = (figure: Figure) => (figure.kind === "unknown" ? explainShortfall(figure.because) : "known");

describe("locationsNeeded", () => {
  test("is the first number after which the share that can be believed in is small enough", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.4, noNaN: true }), fc.integer({ min: 0, max: 5 }), (part, allowed) => {
        const count = countOf(locationsNeeded(question(part), allowed));
        expect(highOf(shareAboveLimit(count, allowed, share(0.95)))).toBeLessThanOrEqual(part + 1e-9);
        expect(highOf(shareAboveLimit(count - 1, allowed, share(0.95)))).toBeGreaterThan(part - 1e-9);
      }),
    );
  });
  test("says when no plan is large enough", () =>
    expect(reasonOf(locationsNeeded(question(0.0001), 0))).toBe(
      "No figure for the number of locations: more than 20,000 would be needed.",
    ));
});

describe("the normal form", () => {
  test("asks for fewer locations the farther the mean lies below the limit", () => {
    const counts = [2, 2.5, 3, 4].map((margin) => countOf(locationsNeededByNormal(question(0.05), margin)));
    expect(counts).toEqual(counts.toSorted((a, b) => b - a));
    for (const [index, margin] of [2, 2.5, 3, 4].entries()) {
      const count = counts[index] ?? 0;
      expect(toleranceFactor(count, 0.95, 0.95)).toBeLessThanOrEqual(margin);
      expect(toleranceFactor(count - 1, 0.95, 0.95)).toBeGreaterThan(margin);
    }
  });
  test("says when the mean lies too close to the limit", () =>
    expect(reasonOf(locationsNeededByNormal(question(0.05), 1.6))).toBe(
      "No figure for the number of locations: the mean lies 1.60 standard deviations below the limit, too close for any number up to 2,000.",
    ));
  test("needs three levels for a limit", () =>
    expect(reasonOf(upperToleranceLimit([grams(120), grams(121)], question(0.05)))).toBe(
      "This figure needs the levels of at least three locations.",
    ));
  test("refuses what has no factor", () => {
    expect(() => toleranceFactor(1, 0.95, 0.95)).toThrow(RangeError);
    expect(() => toleranceFactor(8, 1, 0.95)).toThrow(RangeError);
  });
});
test("nothing tested shows nothing", () =>
  expect(reasonOf(shareAboveLimit(0, 0, share(0.95)))).toBe("This figure needs at least one location with a level."));
