import { describe, expect, test } from "vitest";
import { everyLocationMeets, impactCaution, testReduction } from "#lib/impact";
import { grams } from "./levels";

describe("testReduction", () => {
  test("takes no account of the first drop", () =>
    expect(testReduction([grams(20), grams(130), grams(131)])).toBe(
      testReduction([grams(190), grams(130), grams(131)]),
    ));
});

describe("everyLocationMeets", () => {
  test("counts a location at the limit as not below it", () =>
    expect(everyLocationMeets([140, 165, 164.9].map(grams), grams(165))).toEqual({
      kind: "locations-at-or-above",
      locations: [1],
    }));
  test("says that nothing was tested", () =>
    expect(everyLocationMeets([], grams(165))).toEqual({ kind: "no-locations" }));
});

test("the caution says what an impact level is not", () =>
  expect(impactCaution).toBe(
    "A check, not a certification: test the field itself; local codes and licensed practice decide, and no impact level predicts or rules out injury.",
  ));
