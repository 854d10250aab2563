import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  adjustedRateOfReturn,
  capitalisedCost,
  commonHorizon,
  payback,
  priceByIndex,
  savingsToInvestment,
} from "#lib/cost";
import { explainShortfall } from "#lib/figure";
import { costsOf, price } from "../costing";

describe("payback", () => {
  test("is at once where nothing more is spent first", () => {
    expect(payback([0, 5], 0.03)).toEqual({ kind: "at-once" });
    expect(payback([10, -5], 0.03)).toEqual({ kind: "at-once" });
  });
  test("is not within the study where savings never make up for it", () => {
    expect(payback([-100, 10, 10], 0)).toEqual({ kind: "not-within-study" });
    expect(payback([-100, 50, 50], 0)).toMatchObject({ kind: "after", years: 2 });
    expect(payback([-100, 50, 50], 0.03)).toEqual({ kind: "not-within-study" });
  });
  test("takes the part of a year evenly", () =>
    expect(payback([-100, 80, 80], 0)).toEqual({ kind: "after", years: 1.25, stays: true }));
  test("says where a later payment takes it back", () =>
    expect(payback([-100, 100, -50, 10], 0)).toEqual({ kind: "after", years: 1, stays: false }));
  test("refuses a rate of −100 %", () =>
    expect(() => payback([-1, 1], -1)).toThrow("a rate above −100 % is needed, got -100 %"));

  // from the closed form: −ln(1 − rate × K ÷ A) ÷ ln(1 + rate)
  test("is the closed form for equal savings, at any rate", () => {
    const terms = fc.record({
      rate: fc.double({ min: 0.005, max: 0.15, noNaN: true }),
      years: fc.double({ min: 1.2, max: 29, noNaN: true }),
    });
    fc.assert(
      fc.property(terms, ({ rate, years }) => {
        const cost = (1000 * (1 - (1 + rate) ** -years)) / rate;
        const found = payback([-cost, ...Array.from({ length: 40 }, () => 1000)], rate);
        expect(found.kind === "after" ? found.years : Number.NaN).toBeCloseTo(years, 6);
      }),
    );
  });
});

describe("ratios", () => {
  test("have no value where nothing more is invested or nothing is saved", () => {
    expect(savingsToInvestment(100, 0)).toBeNull();
    expect(savingsToInvestment(100, -50)).toBeNull();
    expect(adjustedRateOfReturn(null, 0.03, 20)).toBeNull();
    expect(adjustedRateOfReturn(-0.5, 0.03, 20)).toBeNull();
    expect(adjustedRateOfReturn(1, 0.03, 20)).toBeCloseTo(0.03, 12);
  });
  test("refuse what has no meaning", () => {
    expect(() => capitalisedCost({ cost: 1, disposal: 0, life: 8 }, 0)).toThrow("a rate above 0 % is needed, got 0 %");
    expect(() => commonHorizon([8, 0])).toThrow("whole lives above 0 are needed, got 8, 0");
    expect(() => priceByIndex(4, 0, 100)).toThrow("indices above 0 are needed, got 0 and 100");
  });
});

const upkeep = (text: string) => price("upkeep", text, { kind: "yearly", category: "operation-and-maintenance" });
const grass = {
  label: "Natural grass",
  hoursPerYear: "800 h/year",
  prices: [
    price("build", "$300,000", { givenBy: "owner-estimate" }),
    { ...upkeep("$40,000"), givenBy: "owner-estimate" },
  ],
};
const against = (bid: readonly object[], comparedWith: object = { kind: "base-alternative" }) =>
  costsOf([bid as never, [price("base", "$900,000")]], { baseAlternative: grass, comparedWith }).bids[0]?.against;

describe("a bid against the owner's own alternative", () => {
  const bid = [price("base", "$500,000"), upkeep("$10,000")];

  test("is told in sentences, with the hours that the totals do not buy alike", () =>
    expect(against(bid)?.sentences).toEqual([
      "Its yearly savings against natural grass make up for the higher price after 6.7 years, not discounted.",
      "Discounted, it takes 7.5 years.",
      "The bid is reckoned with 1,800 h/year of use and natural grass with 800 h/year: the totals do not buy the same use. Compare the cost of an hour.",
    ]));

  test("saves what the two cost apart", () => {
    const { bids, baseAlternative } = costsOf([bid], {
      baseAlternative: grass,
      comparedWith: { kind: "base-alternative" },
    });
    const [own, base] = [bids[0]?.presentValue, baseAlternative?.presentValue];
    const net = bids[0]?.against?.netSavings;
    if (own?.kind !== "known" || base?.kind !== "known" || net?.kind !== "known") throw new Error("not known");
    expect(net.value).toBeCloseTo(base.value - own.value, 4);
  });

  test("says in words why a ratio has no meaning", () => {
    const cheaper = against([price("base", "$200,000"), upkeep("$10,000")]);
    if (cheaper?.savingsToInvestment.kind !== "unknown") throw new Error("expected no ratio");
    expect(explainShortfall(cheaper.savingsToInvestment.because)).toBe(
      "No figure for savings for each unit invested: the bid takes no more investment than natural grass, so there is nothing to divide by. Compare the life-cycle costs.",
    );
    expect(cheaper.sentences[0]).toBe(
      "It costs no more than natural grass at the base date, so nothing has to be paid back.",
    );
  });

  test("says that savings never make up for the price", () => {
    const dear = against([price("base", "$500,000"), upkeep("$45,000")]);
    expect(dear?.sentences[0]).toBe(
      "Its yearly savings against natural grass do not make up for the higher price within 20 years.",
    );
    if (dear?.adjustedRateOfReturn.kind !== "unknown") throw new Error("expected no rate");
    expect(explainShortfall(dear.adjustedRateOfReturn.because)).toBe(
      "No figure for a rate of return: the bid saves nothing in operation against natural grass, so the extra investment earns nothing.",
    );
  });

  test("may be another bid, and is nothing for that bid itself", () => {
    expect(against(bid, { kind: "bid", bid: "b" })?.base).toBe("bid B");
    expect(against(bid, { kind: "bid", bid: "a" })).toBeNull();
    expect(against(bid, { kind: "nothing" })).toBeNull();
  });

  test("says nothing of a bid without prices", () => expect(against([])).toBeNull());
});
