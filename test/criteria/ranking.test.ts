import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BidFigures, dominates, placingTotal, ranking, type ShownFigure, scoreBid } from "#lib/criteria";
import { figureFromInterval } from "#lib/figure";
import { measured } from "#lib/quantity";
import { criteriaOf, criterionText, stated, working } from "./worked-score";

const shown = (low: number, high: number): ShownFigure => {
  const interval = { low: measured("arealDensity", low), high: measured("arealDensity", high) };
  return { figure: figureFromInterval("arealDensity", interval, working), evidence: stated };
};

// 0 to 10 kg/m² as 0 to 1, and at least 1 kg/m² asked for
const criteria = criteriaOf([
  criterionText({
    gate: { kind: "at-least", limit: "1 kg/m²" },
    valueFunction: { kind: "more-is-better", worst: "0 kg/m²", best: "10 kg/m²" },
  }),
]);
const bid = (name: string, low: number, high = low): BidFigures => ({ bid: name, shown: { infill: shown(low, high) } });
const silent: BidFigures = { bid: "silent", shown: {} };
const ranked = (...bids: readonly BidFigures[]) => ranking(bids.map((each) => scoreBid(criteria, each)));

describe("ranking", () => {
  test("is for certain only where totals can't overlap", () => {
    expect(ranked(bid("a", 2, 4), bid("b", 5, 6), bid("c", 3, 6)).leads).toEqual([
      { ahead: "b", behind: "c", how: "ahead on the figures shown" },
      { ahead: "c", behind: "a", how: "ahead on the figures shown" },
    ]);
    expect(ranked(bid("a", 2, 4), bid("b", 5, 6)).leads).toEqual([
      { ahead: "b", behind: "a", how: "ahead for certain" },
    ]);
  });

  test("is not for certain where totals touch", () => {
    expect(ranked(bid("a", 2, 5), bid("b", 5, 6)).leads).toEqual([
      { ahead: "b", behind: "a", how: "ahead on the figures shown" },
    ]);
  });

  test("states ties and leaves out the places they take up", () => {
    const { places, leads } = ranked(bid("a", 5), bid("b", 7), bid("c", 7), bid("d", 9));
    expect(places).toEqual([
      { place: 1, bid: "d" },
      { place: 2, bid: "b" },
      { place: 2, bid: "c" },
      { place: 4, bid: "a" },
    ]);
    expect(leads.map(({ how }) => how)).toEqual(["ahead for certain", "tied", "ahead for certain"]);
  });

  test("keeps bids that fail a gate in sight without a place", () => {
    expect(ranked(bid("light", 0.5), bid("b", 3))).toEqual({
      places: [{ place: 1, bid: "b" }],
      leads: [],
      failing: ["light"],
    });
  });

  test("takes a missing figure at its worst and leaves the ranges that are shown at their middle", () => {
    const two = criteriaOf([
      criterionText({ valueFunction: { kind: "more-is-better", worst: "0 kg/m²", best: "10 kg/m²" } }),
      criterionText({ id: "other", valueFunction: { kind: "more-is-better", worst: "0 kg/m²", best: "10 kg/m²" } }),
    ]);
    const missing = scoreBid(two, { bid: "a", shown: { infill: shown(4, 8) } });
    expect(missing.total).toEqual({ low: 0.2, likely: null, high: 0.9 });
    expect(placingTotal(missing)).toBeCloseTo(0.3, 12);
    const level = scoreBid(two, { bid: "b", shown: { infill: shown(5, 5), other: shown(0, 0) } });
    expect(ranking([level, missing]).places[0]?.bid).toBe("a");
  });

  test("places a silent bid by the worst it may be", () => {
    const { places, leads } = ranked(silent, bid("b", 2));
    expect(places.map((each) => each.bid)).toEqual(["b", "silent"]);
    expect(leads).toEqual([{ ahead: "b", behind: "silent", how: "ahead on the figures shown" }]);
  });

  test("lets no bid with an open gate lead for certain", () => {
    const two = criteriaOf([
      criterionText({ valueFunction: { kind: "more-is-better", worst: "0 kg/m²", best: "10 kg/m²" } }),
      criterionText({
        id: "proof",
        gate: { kind: "at-least", limit: "1 kg/m²" },
        valueFunction: { kind: "none" },
        weight: "0",
      }),
    ]);
    const scores = [
      scoreBid(two, bid("unproven", 9)),
      scoreBid(two, { bid: "proven", shown: { infill: shown(2, 2), proof: shown(2, 2) } }),
    ];
    expect(ranking(scores).leads).toEqual([{ ahead: "unproven", behind: "proven", how: "ahead on the figures shown" }]);
  });

  test("of no bids is empty", () => expect(ranked()).toEqual({ places: [], leads: [], failing: [] }));

  const figure = fc.integer({ min: 0, max: 10 });
  const bids = fc
    .array(fc.tuple(figure, figure), { minLength: 1, maxLength: 6 })
    .map((pairs) =>
      pairs.map(([one, other], index) => bid(`bid-${index}`, Math.min(one, other), Math.max(one, other))),
    );

  test("keeps the order of the others when a bid is added", () =>
    fc.assert(
      fc.property(bids, figure, (others, added) => {
        const names = (each: readonly BidFigures[]) => ranked(...each).places.map((place) => place.bid);
        expect(names([...others, bid("added", added)]).filter((name) => name !== "added")).toEqual(names(others));
      }),
    ));

  test("gives every bid one place or names it as failing", () =>
    fc.assert(
      fc.property(bids, (each) => {
        const { places, failing } = ranked(...each);
        expect([...places.map((place) => place.bid), ...failing].sort()).toEqual(each.map((one) => one.bid).sort());
      }),
    ));

  test("never puts a dominated bid ahead", () =>
    fc.assert(
      fc.property(bids, (each) => {
        const scores = each.map((one) => scoreBid(criteria, one));
        for (const { ahead, behind } of ranking(scores).leads) {
          const [first, second] = [ahead, behind].map((name) => scores.find((score) => score.bid === name));
          if (first === undefined || second === undefined) throw new Error("leads name scored bids");
          expect(dominates(second, first)).toBe(false);
        }
      }),
    ));
});
