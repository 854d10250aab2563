import { describe, expect, test } from "vitest";
import { type CostedBid, costSentences } from "../../app/project/[id]/cost/_components/cost-sentences";

const bid = (letter: string, presentDollars: number, priceDollars: number): CostedBid => ({
  letter,
  presentValue: presentDollars * 100,
  priceAtBaseDate: priceDollars * 100,
  isLeast: false,
});

const study = (studyYears: number) => ({ studyYears, currency: "USD" });

describe("costSentences", () => {
  test("says nothing of no bids", () => expect(costSentences([], study(20))).toEqual([]));

  test("says that one bid has nothing to be compared with", () =>
    expect(costSentences([bid("B", 1_254_677, 900_000)], study(20))).toEqual([
      "Bid B costs $1,254,677 over the 20 years of the study. It is the only bid with prices, so there is nothing to compare it with yet.",
    ]));

  // 1,100,000 − 1,000,000 = 100,000, exactly a tenth; 1,050,000 lies 5 % above; derived
  test("says which bid costs least, that a small difference decides nothing, and that prices tell another order", () =>
    expect(
      costSentences(
        [bid("A", 1_050_000, 700_000), bid("B", 1_000_000, 800_000), bid("C", 1_300_000, 900_000)],
        study(20),
      ),
    ).toEqual([
      "Bid B costs least over the 20 years of the study: $1,000,000. Bid A comes next and costs $50,000 (5 %) more.",
      "A difference under 10 % can be judged inconclusive (US GSA P100), so cost alone does not put bid B ahead of bid A.",
      "By price at the base date the order differs: A, B and C, where over the study it is B, A and C.",
    ]));

  test("says when no other bid is close and the order by price is the same", () =>
    expect(costSentences([bid("A", 1_000_000, 700_000), bid("B", 1_250_000, 800_000)], study(15))).toEqual([
      "Bid A costs least over the 15 years of the study: $1,000,000. Bid B comes next and costs $250,000 (25 %) more.",
      "A difference under 10 % can be judged inconclusive (US GSA P100); no other bid is that close.",
      "By price at the base date the order is the same: A and B.",
    ]));

  test("names all bids that cost the same", () =>
    expect(costSentences([bid("A", 1_000_000, 700_000), bid("B", 1_000_000, 700_000)], study(20))[0]).toBe(
      "Bids A and B cost least over the 20 years of the study: $1,000,000 each.",
    ));
});
