import { describe, expect, test } from "vitest";
import type { CostSwings } from "#lib/cost";
import { statedInWords } from "../../../app/project/[id]/cost/uncertainty/_components/stated-words";
import { swingBars, swingEnds, swingWords } from "../../../app/project/[id]/cost/uncertainty/_components/swing-bars";

const swing = (input: string, low: number, high: number) => ({
  ...{ input, label: input, low: { value: 0.9, cents: low }, high: { value: 1.1, cents: high } },
  swing: Math.abs(high - low),
});
const ofA: CostSwings = { bid: "bid-a", cents: 1000, swings: [swing("rate", 1300, 900), swing("price", 950, 1100)] };
const ofB: CostSwings = { bid: "bid-b", cents: 5000, swings: [swing("life", 5700, 5000), swing("wage", 5000, 5000)] };
const money = (cents: number) => `${cents} cents`;

describe("swingBars", () => {
  test("tells both ends as more or less than as entered", () =>
    expect(swingBars(ofA)).toEqual([
      { input: "rate", label: "rate", low: 300, high: -100 },
      { input: "price", label: "price", low: -50, high: 100 },
    ]));

  test("leaves out what moves nothing", () => expect(swingBars(ofB).map(({ input }) => input)).toEqual(["life"]));
});

test("swingEnds spans all bids and the cost as entered", () => {
  expect(swingEnds([ofA, ofB])).toEqual([-100, 700]);
  expect(swingEnds([])).toEqual([0, 0]);
});

describe("swingWords", () => {
  test("names the two widest", () =>
    expect(swingWords(ofA, "A", money)).toBe(
      "“rate” moves the cost of bid A most, by 400 cents between its two ends, then “price” by 150 cents.",
    ));

  test("says that nothing moves a bid", () =>
    expect(swingWords({ ...ofA, swings: [] }, "A", money)).toBe("None of the figures above moves the cost of bid A."));
});

describe("statedInWords", () => {
  test("tells figures and what they move with", () =>
    expect(statedInWords("90 % / 100 % / 130 %", "Price of materials")).toBe(
      "90 % / 100 % / 130 %, moves with “Price of materials”",
    ));
  test("says that there are no figures", () => expect(statedInWords(" ", "")).toBe("no figures yet"));
});
