import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BidFigures, type Criterion, explainStability, ranking, scoreBid, weightStability } from "#lib/criteria";
import { bidOf, criteriaOf, workedBids, workedTexts } from "./worked-score";

const worked = criteriaOf(workedTexts);
const scoresOf = (criteria: readonly Criterion[], bids: readonly BidFigures[]) =>
  bids.map((bid) => scoreBid(criteria, bid));
const stabilityOf = (criteria: readonly Criterion[], bids: readonly BidFigures[]) =>
  weightStability(scoresOf(criteria, bids));
const nameOf = (bid: string) => `Bid ${bid.toUpperCase()}`;

/** The criteria with one of them at a share of all weights and the others in their old proportions. */
const movedTo = (criteria: readonly Criterion[], id: string, share: number): readonly Criterion[] => {
  const rest = criteria.reduce((sum, criterion) => (criterion.id === id ? sum : sum + criterion.weight), 0);
  return criteria.map((criterion) => ({
    ...criterion,
    weight: criterion.id === id ? share : (criterion.weight / rest) * (1 - share),
  }));
};

describe("weightStability", () => {
  const figures = fc.tuple(
    fc.double({ min: 70, max: 175, noNaN: true }),
    fc.double({ min: 0.8, max: 1.6, noNaN: true }),
    fc.double({ min: 5, max: 45, noNaN: true }),
    fc.double({ min: 0.5, max: 2, noNaN: true }),
    fc.double({ min: 5, max: 13, noNaN: true }),
  );
  const bids = fc
    .array(figures, { minLength: 2, maxLength: 4 })
    .map((each) => each.map((figure, index) => bidOf(`bid-${index}`, figure)));

  test("holds the share as it is and keeps the leader first all through each room", () =>
    fc.assert(
      fc.property(bids, fc.double({ min: 0, max: 1, noNaN: true }), (each, part) => {
        const stability = stabilityOf(worked, each);
        if (stability.kind !== "led") return;
        const firstAt = (id: string, share: number) =>
          ranking(scoresOf(movedTo(worked, id, share), each)).places.filter(({ place }) => place === 1);
        for (const { criterion, share, low, high } of stability.rooms) {
          expect(low).toBeLessThanOrEqual(share);
          expect(high).toBeGreaterThanOrEqual(share);
          // a hair inside, so that the rounding of the crossing itself can't decide
          const hair = 1e-7;
          const inside = low + hair + part * (high - low - 2 * hair);
          if (high - low > 4 * hair) {
            expect(firstAt(criterion.id, inside).map(({ bid }) => bid)).toContain(stability.leader);
          }
        }
      }),
    ));

  test("finds another bid ahead beyond a room that ends short of all the weight", () => {
    const firstAt = (id: string, share: number) =>
      ranking(scoresOf(movedTo(worked, id, share), workedBids)).places[0]?.bid;
    const stability = stabilityOf(worked, workedBids);
    if (stability.kind !== "led") throw new Error("one bid leads");
    const ending = stability.rooms.filter(({ high }) => high < 1);
    expect(ending.map(({ criterion }) => criterion.id)).toEqual(["heat", "cost"]);
    for (const { criterion, high } of ending) {
      expect(firstAt(criterion.id, high - 1e-6)).toBe("b");
      expect(firstAt(criterion.id, high + 1e-6)).not.toBe("b");
    }
  });

  test("leaves out a criterion that carries all the weight", () => {
    expect(stabilityOf(worked.slice(0, 1), workedBids.slice(0, 2))).toEqual({ kind: "led", leader: "b", rooms: [] });
  });
});

describe("explainStability", () => {
  test("names the nearest turn", () => {
    expect(explainStability(stabilityOf(worked, workedBids), nameOf)).toBe(
      "On the figures shown, Bid B stays first until the weight of “Surface temperature” rises from 16.2 % to 25 % of all weights.",
    );
  });

  test("says so where no single weight turns the order", () => {
    const better = [bidOf("a", [128, 1.1, 32, 1.2, 8]), bidOf("b", [104, 1.4, 30, 1.1, 10])];
    expect(explainStability(stabilityOf(worked, better), nameOf)).toBe(
      "On the figures shown, Bid B stays first however far any one weight is moved.",
    );
  });

  test("says so where bids are tied", () => {
    const twins = [bidOf("a", [104, 1.4, 30, 1.1, 10]), bidOf("b", [104, 1.4, 30, 1.1, 10])];
    expect(explainStability(stabilityOf(worked, twins), nameOf)).toBe(
      "Bid A and Bid B are tied on the figures shown, so any change of a weight may put one of them first.",
    );
  });

  test("says so where one criterion carries all the weight", () => {
    expect(explainStability(stabilityOf(worked.slice(0, 1), workedBids.slice(0, 2)), nameOf)).toBe(
      "On the figures shown, Bid B comes first on the one criterion that carries weight.",
    );
  });

  test("says so where there is one bid", () => {
    expect(explainStability(stabilityOf(worked, workedBids.slice(0, 1)), nameOf)).toBe(
      "There are not two bids to compare, so the weights decide nothing.",
    );
  });
});
