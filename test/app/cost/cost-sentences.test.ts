import { describe, expect, test } from "vitest";
import { costSentences } from "../../../app/project/[id]/cost/_components/cost-sentences";

const bid = (letter: string, presentValue: number, priceAtBaseDate: number) => ({
  letter,
  presentValue: presentValue * 100,
  priceAtBaseDate: priceAtBaseDate * 100,
  isLeast: false,
});

// Totals of the worked example of three invented bids, derived by discount factors as in 10 CFR 436.16.
const equalLives = [bid("A", 1_154_583.33, 658_700), bid("B", 1_254_676.92, 792_000), bid("C", 1_466_070.03, 846_750)];
const offeredLives = [
  bid("A", 1_333_173.17, 658_700),
  bid("B", 1_254_676.92, 792_000),
  bid("C", 1_343_342.81, 846_750),
];

const study = (studyYears: number) => ({ studyYears, currency: "USD" });

describe("costSentences", () => {
  test("names the cheapest, the gap, and that a small gap does not decide", () => {
    expect(costSentences(equalLives, study(20))).toEqual([
      "Bid A costs least over the 20 years of the study: $1,154,583. Bid B comes next and costs $100,094 (8.7 %) more.",
      "A difference under 10 % can be judged inconclusive (US GSA P100), so cost alone does not put bid A ahead of bid B.",
      "By price at the base date the order is the same: A, B and C.",
    ]);
  });

  test("says where the order by price at the base date differs", () => {
    expect(costSentences(offeredLives, study(20))).toEqual([
      "Bid B costs least over the 20 years of the study: $1,254,677. Bid A comes next and costs $78,496 (6.3 %) more.",
      "A difference under 10 % can be judged inconclusive (US GSA P100), so cost alone does not put bid B ahead of bids A and C.",
      "By price at the base date the order differs: A, B and C, where over the study it is B, A and C.",
    ]);
  });

  test("says that no other bid is close", () => {
    expect(costSentences([bid("A", 1_000_000, 1), bid("B", 1_100_000, 2)], study(20))[1]).toBe(
      "A difference under 10 % can be judged inconclusive (US GSA P100); no other bid is that close.",
    );
  });

  test("names all that cost the same", () => {
    expect(costSentences([bid("A", 500, 5), bid("B", 900, 5), bid("C", 500, 5)], study(10))[0]).toBe(
      "Bids A and C cost least over the 10 years of the study: $500 each.",
    );
  });

  test("has nothing to compare with one bid and nothing to say with none", () => {
    expect(costSentences([bid("A", 500, 5)], study(10))).toEqual([
      "Bid A costs $500 over the 10 years of the study. It is the only bid with prices, so there is nothing to compare it with yet.",
    ]);
    expect(costSentences([], study(10))).toEqual([]);
  });

  test("says how sure a cost and a difference are where an item has no figure yet", () => {
    const least = { ...bid("B", 1_050_000, 2), isLeast: true };
    expect(costSentences([bid("A", 1_000_000, 1), least], study(20))[0]).toBe(
      "Bid A costs least over the 20 years of the study: $1,000,000. Bid B comes next and costs at least $50,000 (5 %) more.",
    );
    expect(costSentences([bid("A", 1_100_000, 1), least], study(20)).slice(0, 2)).toEqual([
      "Bid B costs least over the 20 years of the study as far as figures stand: at least $1,050,000. Bid A comes next and costs at most $50,000 (4.8 %) more.",
      "Bid B has items without a figure, so it is not sure to stay the cheapest.",
    ]);
  });

  test("speaks the currency of the project", () =>
    expect(costSentences([bid("A", 500, 5), bid("B", 900, 5)], { studyYears: 10, currency: "EUR" })[0]).toBe(
      "Bid A costs least over the 10 years of the study: €500. Bid B comes next and costs €400 (80 %) more.",
    ));
});
