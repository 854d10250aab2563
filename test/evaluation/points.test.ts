import { describe, expect, test } from "vitest";
import { bidsAtStart, bidsInWords, formatPointSpan, formatPoints, formatShare, totalWorking } from "#lib/evaluation";
import { comparison } from "./comparison";

describe("points of 100", () => {
  test("keep three significant figures at most", () => {
    expect(formatPoints(0.80322)).toBe("80.3");
    expect(formatPoints(0.05)).toBe("5");
    expect(formatPoints(1)).toBe("100");
    expect(formatPoints(0)).toBe("0");
  });

  test("show a range only where its ends differ as shown", () => {
    expect(formatPointSpan({ low: 0.7061, high: 0.883 })).toBe("70.6–88.3");
    expect(formatPointSpan({ low: 0.94, high: 0.94001 })).toBe("94");
  });

  test("show a part of all weights in percent", () => expect(formatShare(0.12)).toBe("12 %"));
});

describe("bids in words", () => {
  test("go by their letters", () => {
    expect(bidsInWords(["A"])).toBe("bid A");
    expect(bidsInWords(["A", "C"])).toBe("bids A and C");
    expect(bidsAtStart(["A", "B", "D"])).toBe("Bids A, B and D");
  });
});

describe("totalWorking", () => {
  const { evaluation } = comparison({
    A: { level: "120 g", warranty: "8 years" },
    B: { level: "150 g", warranty: null },
  });
  const inputs = (letter: string) => {
    const bid = evaluation.bids.find((candidate) => candidate.letter === letter);
    return bid === undefined ? [] : totalWorking(bid.score).inputs.map(({ label, text }) => `${label}: ${text}`);
  };

  // by hand: 60 × 0.8 = 48, 40 × 0.8 = 32
  test("lets a reader redo the sum", () =>
    expect(inputs("A")).toEqual(["Impact level: 60 % × 80 = 48", "Warranty: 40 % × 80 = 32"]));

  test("carries a missing figure through as a range", () =>
    expect(inputs("B")).toEqual([
      "Impact level: 60 % × 50 = 30",
      "Warranty: 40 % × (0–100) = 0–40. It may be worth anything from its worst to its best.",
    ]));

  test("leads back to the criterion", () =>
    expect(evaluation.bids[0] && totalWorking(evaluation.bids[0].score).inputs[0]?.from).toEqual({
      kind: "requirements",
      field: "impact",
    }));
});
