import { describe, expect, test } from "vitest";
import { explainRanking } from "#lib/evaluation";
import { type Claimed, comparison, twoCriteria } from "./comparison";

const sentences = (claimed: Readonly<Record<string, Claimed>>, criteria = twoCriteria) =>
  explainRanking(comparison(claimed, criteria).evaluation);

const sound: Claimed = { level: "120 g", warranty: "8 years" };

describe("explainRanking", () => {
  test("says that there is no bid", () => expect(sentences({})).toEqual(["No bid has been entered yet."]));

  test("says that nothing can be judged without criteria", () =>
    expect(sentences({ A: sound }, [])).toEqual(["No criterion has been set yet, so nothing can be judged."]));

  test("says that a bid alone is alone", () =>
    expect(sentences({ A: sound })).toEqual([
      "Bid A is the only bid in the order, with 80 of 100 points.",
      "Bid A passes every gate.",
    ]));

  test("is certain only where no other total can reach the first", () =>
    expect(sentences({ A: sound, B: { level: "150 g", warranty: null } })).toEqual([
      "Bid A is ahead for certain, with 80 of 100 points. No other bid in the order can reach its total.",
      "Bids A and B pass every gate.",
    ]));

  // the neighbour is beaten for certain, a bid further down is not: B 60…62, C 36…76… by its missing warranty
  test("looks beyond the neighbour", () =>
    expect(
      sentences({
        A: { level: "130 g", warranty: "8 years" },
        B: { level: "130 g", warranty: "5 years" },
        C: { level: "120 g", warranty: null },
      }),
    ).toEqual([
      "Bid A is ahead on the figures shown, with 74 of 100 points.",
      "It is ahead of bid B for certain.",
      "Against bid C the order is not settled.",
      "Bids A, B and C pass every gate.",
    ]));

  test("says that a leader with an open gate may drop out", () =>
    expect(
      sentences({ A: { level: "90–170 g", warranty: "10 years" }, B: { level: "160 g", warranty: "1 year" } }),
    ).toEqual([
      "Bid A is ahead on the figures shown, with 82 of 100 points.",
      "Against bid B the order is not settled.",
      "Bid A leaves a gate open and may still drop out.",
      "Bid B passes every gate.",
      "Bid A leaves a gate open.",
    ]));

  test("names a tie", () =>
    expect(sentences({ B: sound, A: sound })).toEqual([
      "Bids A and B are tied on the figures shown.",
      "Bids A and B pass every gate.",
    ]));

  test("says that no bid has a place where each fails a gate", () =>
    expect(sentences({ A: { level: "170 g", warranty: "8 years" } })).toEqual([
      "Every bid fails a gate, so no bid has a place.",
      "Bid A fails a gate and has no place.",
    ]));

  test("gives no order where nothing weighs", () => {
    const gatesOnly = twoCriteria.map((criterion) => ({ ...criterion, weight: "0" }));
    expect(sentences({ A: sound, B: sound }, gatesOnly)[0]).toBe(
      "No criterion carries weight, so there are gates but no points and no order.",
    );
  });
});
