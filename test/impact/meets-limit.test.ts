import { expect, test } from "vitest";
import { impactCaution, meetsLimit } from "#lib/impact";
import { grams } from "./levels";

test("a level at the limit is not below it", () => {
  expect(meetsLimit(grams(165), grams(165))).toBe(false);
  expect(meetsLimit(grams(164.9), grams(165))).toBe(true);
});

test("the caution says what an impact level is not", () =>
  expect(impactCaution).toBe(
    "A check, not a certification: test the field itself; local codes and licensed practice decide, and no impact level predicts or rules out injury.",
  ));
