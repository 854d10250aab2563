import { describe, expect, test } from "vitest";
import { type DepthLaw, halfInchRule, spreadValidity } from "#lib/impact";
import { inches } from "../levels";

const notes = (deviation: number, infillDepth: number | null, law: DepthLaw = "log-linear") =>
  spreadValidity({
    deviation: inches(deviation),
    ...{ law, perDepth: halfInchRule.perDepth },
    infillDepth: infillDepth === null ? null : inches(infillDepth),
  });

describe("spreadValidity", () => {
  test("has nothing to say of a small spread", () => expect(notes(0.15, 1.5)).toEqual([]));

  // standard normal table: 1 − Φ(1) = 15.87 %, 1 − Φ(1.5) = 6.68 %
  test("says how many spots lie on the base and beyond the rule", () =>
    expect(notes(0.5, 0.5)).toEqual([
      "16 % of the spots would have lost more than the whole infill depth of 0.50 in (12.7 mm): there the carpet lies on the base and no law of depth holds.",
      "6.7 % of the spots would have lost more than 0.75 in (19.1 mm), which is beyond the range of the rule of thumb.",
    ]));

  // the linear law comes to nothing 1 ÷ 0.84 = 1.19 in above: 1 − Φ(2.98) = 0.14 %
  test("says where the linear law has nothing left", () =>
    expect(notes(0.4, null, "linear")).toContain(
      "By the linear law 0.15 % of the spots would have no level left where infill has gathered: the law does not reach that far.",
    ));
});
