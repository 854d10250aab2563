import { describe, expect, test } from "vitest";
import { halfInchRule } from "#lib/impact";
import { type Interval, measured } from "#lib/quantity";
import {
  depthLosses,
  levelAfterLoss,
  standingToLimit,
} from "../../../app/project/[id]/hardness/_components/depth-loss";

const g = (low: number, high = low): Interval<"g"> => ({
  low: measured("impactLevel", low),
  high: measured("impactLevel", high),
});
const [quarter, half, threeQuarters] = depthLosses;

describe("levelAfterLoss", () => {
  const rounded = (level: Interval<"g">, loss = half) => {
    if (loss === undefined) throw new Error("three losses expected");
    const { low, high } = levelAfterLoss(level, loss, { kind: "applies", perDepth: halfInchRule.perDepth, source: "" });
    return [low, high].map((end) => Math.round(end * 10) / 10);
  };

  // common practice, no source: half an inch less makes 42 % more, where both readings meet; 100 g become 142 g
  test("gives one figure at half an inch", () => expect(rounded(g(100))).toEqual([142, 142]));

  // by hand at a quarter inch: 100 × √1.42 = 119.2 by a constant share, 100 × 1.21 = 121 by a constant amount
  test("spans both readings before half an inch", () => expect(rounded(g(100), quarter)).toEqual([119.2, 121]));

  // by hand at three quarters: 100 × 1.63 = 163 by a constant amount, 100 × 1.42 × √1.42 = 169.2 by a constant share
  test("spans both readings beyond half an inch", () => expect(rounded(g(100), threeQuarters)).toEqual([163, 169.2]));

  test("spans both ends of a stated range", () => expect(rounded(g(90, 110))).toEqual([127.8, 156.2]));
});

describe("standingToLimit", () => {
  const limit = measured("impactLevel", 165);

  test("needs the level to stay below the limit: at it is reached", () => {
    expect(standingToLimit(g(150, 164.9), limit)).toBe("below");
    expect(standingToLimit(g(150, 165), limit)).toBe("may reach");
    expect(standingToLimit(g(165, 170), limit)).toBe("reached");
  });
});
