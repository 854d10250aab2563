import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { depthLaws, halfInchRule, levelAfterDepthLoss, lossToReach } from "#lib/impact";
import { measured } from "#lib/quantity";
import { grams, inches } from "./levels";

const level = fc.double({ min: 90, max: 150, noNaN: true }).map(grams);
const law = fc.constantFrom(...depthLaws);
const loss = fc.double({ min: 0, max: 0.75, noNaN: true });
const sensitivity = fc.double({ min: 0.1, max: 2, noNaN: true }).map((k) => measured("depthSensitivity", k, "1/in"));

describe("levelAfterDepthLoss", () => {
  test("rises with every loss", () =>
    fc.assert(
      fc.property(
        level,
        law,
        sensitivity,
        loss,
        fc.double({ min: 1e-6, max: 0.5, noNaN: true }),
        (start, by, k, less, more) => {
          expect(levelAfterDepthLoss(start, inches(less + more), by, k)).toBeGreaterThan(
            levelAfterDepthLoss(start, inches(less), by, k),
          );
        },
      ),
    ));

  test("leaves the level where nothing is lost", () =>
    fc.assert(
      fc.property(level, law, (start, by) => {
        expect(levelAfterDepthLoss(start, inches(0), by)).toBe(start);
      }),
    ));

  test("agrees in both readings at half an inch", () =>
    fc.assert(
      fc.property(level, sensitivity, (start, k) => {
        expect(levelAfterDepthLoss(start, inches(0.5), "linear", k)).toBeCloseTo(
          levelAfterDepthLoss(start, inches(0.5), "log-linear", k),
          9,
        );
      }),
    ));

  test("is higher in the linear reading before half an inch and lower after it", () =>
    fc.assert(
      fc.property(
        level,
        fc.double({ min: 0.01, max: 0.49, noNaN: true }),
        fc.double({ min: 0.51, max: 2, noNaN: true }),
        (start, before, after) => {
          expect(levelAfterDepthLoss(start, inches(before), "linear")).toBeGreaterThan(
            levelAfterDepthLoss(start, inches(before), "log-linear"),
          );
          expect(levelAfterDepthLoss(start, inches(after), "linear")).toBeLessThan(
            levelAfterDepthLoss(start, inches(after), "log-linear"),
          );
        },
      ),
    ));
});

describe("lossToReach", () => {
  test("takes the level back to where the loss led", () =>
    fc.assert(
      fc.property(level, law, sensitivity, loss, (start, by, k, lost) => {
        const reached = levelAfterDepthLoss(start, inches(lost), by, k);
        expect(lossToReach(start, reached, by, k)).toBeCloseTo(inches(lost), 12);
      }),
    ));

  test("is below 0 for a level above the limit", () =>
    expect(lossToReach(grams(170), grams(165), "linear", halfInchRule.perDepth)).toBeLessThan(0));

  test("takes no level of 0", () =>
    expect(() => lossToReach(grams(0), grams(165), "linear", halfInchRule.perDepth)).toThrow(RangeError));
});
