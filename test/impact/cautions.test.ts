import { expect, test } from "vitest";
import { impactCaution } from "#lib/impact";

test("the caution says what an impact level is not", () =>
  expect(impactCaution).toBe(
    "A check, not a certification: test the field itself; local codes and licensed practice decide, and no impact level predicts or rules out injury.",
  ));
