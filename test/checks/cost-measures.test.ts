import { describe, expect, test } from "vitest";
import {
  adjustedRateOfReturn,
  againstBase,
  bidFormArithmetic,
  capitalisedCost,
  cashFlows,
  commonHorizon,
  costConventionsSchema,
  costDifference,
  cycleAnnualCost,
  payback,
  presentValue,
  priceByIndex,
  priceLinesSchema,
  savingsToInvestment,
  tyingRates,
} from "#lib/cost";
import { inUnit, measured } from "#lib/quantity";
import { area, costsOf, figurePlug, price } from "../cost/costing";
import { lumpSum } from "../cost/lines";
import { conventionsText } from "./cost-example";

const agrees = (actual: number, printed: number, digits: number) =>
  expect(Math.abs(actual - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);

/** Three invented parts: bought, used and taken out, at 3 % real. Dollars. */
const cycles = {
  x: { cost: 388_000, disposal: 68_000, life: 8 },
  y: { cost: 448_000, disposal: 48_000, life: 10 },
  z: { cost: 484_000, disposal: 56_000, life: 12 },
};

describe("parts of unequal lives", () => {
  // derived: cost × capital recovery + disposal × sinking fund
  test.each([
    ["x", 62_920.11],
    ["y", 56_706.33],
    ["z", 52_569.53],
  ] as const)("the equal yearly cost of part %s", (part, printed) =>
    agrees(cycleAnnualCost(cycles[part], 0.03), printed, 2),
  );

  // derived: equal yearly cost ÷ rate
  test("what pays for part x for ever", () => agrees(capitalisedCost(cycles.x, 0.03), 2_097_337.11, 2));

  test("lives of 8, 10 and 12 years end together after 120", () => expect(commonHorizon([8, 10, 12])).toBe(120));

  // derived: three cycles of x and two of z over 24 years, summed payment by payment
  test.each([
    ["x", 1_065_586.23],
    ["z", 890_293.42],
  ] as const)("a chain of part %s over 24 years, from its yearly flows", (part, printed) => {
    const { cost, disposal, life } = cycles[part];
    const [line] = priceLinesSchema.parse([
      {
        ...{ kind: "replacement-chain", id: "part", label: "Part", givenBy: "bid", lifeGivenBy: "bid" },
        ...{ amount: lumpSum(`$${cost}`), life: `${life} years`, removal: lumpSum(`$${disposal}`) },
      },
    ]);
    const conventions = costConventionsSchema.parse({ ...conventionsText, studyPeriod: "24 years" });
    const { total } = cashFlows(line === undefined ? [] : [line], { area, conventions });
    agrees(presentValue(total, 0.03) / 100, printed, 2);
  });
});

/** 108,000 more at first, 13,500 saved in each of 20 years. */
const [extra, annual] = [108_000, 13_500];
const savings = [-extra, ...Array.from({ length: 20 }, () => annual)];

describe("measures against a base alternative", () => {
  // derived: extra first cost ÷ yearly saving; −ln(1 − rate × K ÷ A) ÷ ln(1 + rate)
  test("pay back after 8 years, discounted after 9.284437", () => {
    expect(payback(savings, 0)).toEqual({ kind: "after", years: 8, stays: true });
    const discounted = payback(savings, 0.03);
    agrees(discounted.kind === "after" ? discounted.years : Number.NaN, 9.284437, 6);
  });

  const worth = presentValue([0, ...savings.slice(1)], 0.03);

  // derived: present value of savings ÷ extra investment; (1 + rate) × ratio^(1 ÷ 20) − 1
  test("a ratio of savings to investment of 1.859684 and a rate of return of 6.2452 %", () => {
    const ratio = savingsToInvestment(worth, extra);
    agrees(ratio ?? Number.NaN, 1.859684, 6);
    agrees(adjustedRateOfReturn(ratio, 0.03, 20) ?? Number.NaN, 0.062452, 6);
  });

  // derived: the rate at which the savings are worth what more is spent
  test("the savings and the extra cost are worth the same at 10.9298 %", () => {
    const flow = (stream: readonly number[]) => [
      { part: "price", givenBy: "bid", category: "testing", recurrence: "single", stream } as const,
    ];
    const found = tyingRates({
      ...{ first: flow([extra, 0]), second: flow([0, ...savings.slice(1)]) },
      ...{ timing: "end-of-year", lowest: 0, highest: 0.3 },
    });
    agrees(found.kind === "at" ? found.rates[0] : Number.NaN, 0.109298, 6);
  });

  test("come out the same from price lines as from the sums", () => {
    const conventions = costConventionsSchema.parse(conventionsText);
    const upkeep = { kind: "yearly", category: "operation-and-maintenance" };
    const lines = (first: string, yearly: string) =>
      priceLinesSchema.parse([price("first", first), price("upkeep", yearly, upkeep)]);
    const measuredAs = againstBase(
      { lines: lines("$208,000", "$6,500"), hoursPerYear: null },
      { lines: lines("$100,000", "$20,000"), hoursPerYear: null },
      { area, conventions, base: "natural grass", open: "neither" },
    );
    const { savingsToInvestment: ratio, adjustedRateOfReturn: rate, netSavings } = measuredAs;
    agrees(ratio.kind === "known" ? ratio.value : Number.NaN, 1.859684, 6);
    agrees(rate.kind === "known" ? rate.value : Number.NaN, 0.062452, 6);
    agrees(netSavings.kind === "known" ? netSavings.value / 100 : Number.NaN, worth - extra, 2);
    expect(measuredAs.simplePayback).toEqual({ kind: "after", years: 8, stays: true });
  });
});

describe("levelling", () => {
  // derived: 845,000 + 38,500 accepted − 5,000 adjusted + 22,700 plugged + 120 × 62.50, then a bond of 1.2 %
  test("base, accepted alternate, allowance, plugs, unit price and bond come to 919,604.40", () => {
    const bid = [
      price("base", "$845,000"),
      price("alternate", "$38,500", { role: { kind: "alternate-add", accepted: "yes" } }),
      price("alternate-2", "$99,000", { role: { kind: "alternate-add", accepted: "no" } }),
      price("allowance", "-$5,000", { role: { kind: "allowance" } }),
      price(
        "undercut",
        { kind: "per-unit", quantity: "100", unitPrice: "$62.50" },
        { role: { kind: "unit-price", acceptedQuantity: "120" } },
      ),
    ];
    const levelling = [
      { bid: "a", item: "maintenance-equipment", standing: "excluded", plug: figurePlug("$18,500") },
      { bid: "a", item: "acceptance-tests", standing: "excluded", plug: figurePlug("$4,200") },
      {
        ...{ bid: "a", item: "bonds", standing: "excluded" },
        plug: {
          kind: "figure",
          price: { kind: "at-base-date", amount: { kind: "share", share: "1.2 %", of: "levelled-bid" } },
        },
      },
    ];
    const subtotal = costsOf([bid], { levelling: levelling.slice(0, 2) }).bids[0]?.priceAtBaseDate;
    const inAll = costsOf([bid], { levelling }).bids[0]?.priceAtBaseDate;
    expect(subtotal).toMatchObject({ kind: "known", value: 90_870_000 });
    expect(inAll).toMatchObject({ kind: "known", value: 91_960_440 });
  });

  // usual instruction to bidders (common practice): the unit price governs over a wrong extension
  test("an extension of 7,050 for 120 at 62.50 is corrected to 7,500, 450 more", () => {
    const form = priceLinesSchema.parse([
      price("undercut", { kind: "per-unit", quantity: "120", unitPrice: "$62.50" }, { statedExtension: "$7,050" }),
    ]);
    const found = bidFormArithmetic(
      { bid: "a", form, lines: form, statedTotal: null, statedTotalInWords: "" },
      { area, currency: "USD" },
    );
    expect(found.map(({ sentence }) => sentence)).toEqual([
      "“undercut” states $7,050.00; 120 × $62.50 comes to $7,500.00, $450.00 more. The unit price goes before its product.",
    ]);
  });
});

describe("published figures", () => {
  // trade-association range quoted in a university study of 2016: 30,000 to 60,000 for 80,000 ft², 45,000 used
  test("disposal of 0.375 to 0.75 a square foot, 0.5625 used", () => {
    const perArea = (dollars: number) =>
      inUnit("moneyPerArea", measured("moneyPerArea", (dollars * 100) / area), "$/ft²");
    expect([30_000, 60_000, 45_000].map((dollars) => Number(perArea(dollars).toFixed(6)))).toEqual([
      0.375, 0.75, 0.5625,
    ]);
  });

  // derived: 4.00 × 135.5 ÷ 100
  test("a price of an earlier year comes to the base date by an index", () =>
    expect(priceByIndex(4, 100, 135.5)).toBeCloseTo(5.42, 9));

  // US GSA P100: a difference under 10 % can be judged inconclusive
  test("8 % apart is inconclusive", () => expect(costDifference(1_000_000, 1_080_000).verdict).toBe("inconclusive"));

  // exact: 1 ft = 0.3048 m
  test("one dollar a square foot is 10.76391042 a square metre", () =>
    agrees(inUnit("moneyPerArea", measured("moneyPerArea", 1, "$/ft²"), "$/m²"), 10.76391042, 8));
});
