import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { costCategories, lifeCycleCost, shownCents } from "#lib/cost";
import { explainShortfall, type Figure } from "#lib/figure";
import { anyLines, lineWith, lumpSum, setting } from "./lines";

const price = lineWith("at-base-date", {
  id: "price",
  label: "Field",
  category: "investment",
  amount: lumpSum("$1,000"),
});
const groomer = lineWith("at-base-date", {
  id: "groomer",
  label: "Grooming machine",
  category: "owners-addition",
  givenBy: "owner-estimate",
  amount: lumpSum("$200"),
});
const yearly = lineWith("yearly", { id: "upkeep", label: "Upkeep", givenBy: "owner-estimate" });

const knownFigure = (figure: Figure) => {
  if (figure.kind !== "known") throw new Error(`expected a known figure, got ${figure.kind}`);
  return figure;
};
const why = (figure: Figure) => (figure.kind === "unknown" ? explainShortfall(figure.because) : figure.kind);

describe("lifeCycleCost", () => {
  test("keeps the owner's estimates out of the price as bid", () => {
    const cost = lifeCycleCost([price, groomer], setting());
    expect(knownFigure(cost.priceAsBid).value).toBe(100_000);
    expect(knownFigure(cost.priceAtBaseDate).value).toBe(120_000);
    expect(knownFigure(cost.priceAsBid).working.inputs.map(({ label }) => label)).toEqual(["Field"]);
    expect(knownFigure(cost.priceAtBaseDate).working.inputs.map(({ label }) => label)).toEqual([
      "Field",
      "Grooming machine (owner’s estimate)",
    ]);
  });

  test("is unknown where the bid gives no price of its own", () => {
    const { entries, ...cost } = lifeCycleCost([groomer, yearly], setting());
    const sentence = "The bid does not state any price of its own. Ask the bidder for it.";
    const figures = [
      cost.presentValue,
      cost.priceAtBaseDate,
      cost.priceAsBid,
      cost.equivalentAnnualCost,
      cost.perHour,
      cost.perAreaYear,
      ...cost.atRates.map(({ presentValue }) => presentValue),
    ];
    expect(figures.map(why)).toEqual(figures.map(() => sentence));
    expect(entries.map(({ line, givenBy }) => `${line}: ${givenBy}`)).toEqual([
      "groomer: owner-estimate",
      "upkeep: owner-estimate",
    ]);
    expect(why(lifeCycleCost([], setting()).presentValue)).toBe(sentence);
  });

  test("has no cost per hour where the hours of use are not known", () => {
    const sentence = "This figure needs the hours of use a year, above 0.";
    expect(why(lifeCycleCost([price], { ...setting(), hoursPerYear: null }).perHour)).toBe(sentence);
  });

  test("shows how the present value comes about", () => {
    const carpet = lineWith("replacement-chain", {
      id: "carpet",
      label: "Carpet",
      amount: { kind: "per-area", price: "$4.85/ft²" },
      removal: { kind: "per-area", price: "$0.85/ft²" },
    });
    const { working } = knownFigure(lifeCycleCost([carpet, yearly], setting()).presentValue);
    expect(working).toEqual({
      formula: "present value = Σ payment ÷ (1 + rate)^year",
      inputs: [
        {
          label: "Carpet",
          text: "$4.85/ft² × 80,000 ft², at the base date, renewed every 8 years",
          from: { kind: "price-line", bid: "bid-a", line: "carpet" },
        },
        {
          label: "Carpet, removal (owner’s estimate)",
          text: "$0.85/ft² × 80,000 ft², each time it is renewed and at the end of the study",
          from: { kind: "price-line", bid: "bid-a", line: "carpet" },
        },
        {
          label: "Upkeep (owner’s estimate)",
          text: "$100, in each of the years 1 to 20",
          from: { kind: "price-line", bid: "bid-a", line: "upkeep" },
        },
        { label: "Real rate a year", text: "3 %", from: { kind: "brief", field: "money.realRate" } },
        { label: "Study period", text: "20 years", from: { kind: "brief", field: "money.studyPeriod" } },
      ],
      assumptions: [
        "Money keeps its value of 2026-07-01: general inflation is left out of the prices and of the rate.",
        "Every payment falls at the end of its year.",
        "Removal of “Carpet” at the end of the study: the share of the life that is used up.",
        "Value of “Carpet” left at the end of the study: what was last paid for it × remaining life ÷ life.",
      ],
      source: "derived; discounting as in 10 CFR 436.16",
    });
  });

  test("shows how the shares of the yearly cost come about", () => {
    const cost = lifeCycleCost([price], setting({ realRate: "0 %" }));
    expect(knownFigure(cost.equivalentAnnualCost).working.inputs[0]?.text).toBe("$1,000.00");
    expect(knownFigure(cost.perHour).working.formula).toBe(
      "cost per hour = equivalent annual cost ÷ hours of use a year",
    );
    expect(knownFigure(cost.perHour).working.inputs.map(({ text }) => text)).toEqual(["$50.00", "1,800 h/year"]);
    expect(knownFigure(cost.perAreaYear).working.inputs.map(({ text }) => text)).toEqual([
      "$50.00",
      "80,000 ft² (7,432 m²)",
    ]);
  });

  test("says which rate each total was discounted at", () => {
    const { atRates } = lifeCycleCost([price, yearly], setting({ realRate: "5 %" }));
    const rates = atRates.map(({ presentValue }) =>
      knownFigure(presentValue).working.inputs.find(({ label }) => label === "Real rate a year"),
    );
    expect(rates.map((input) => input?.text)).toEqual(["0 %", "3 %", "7 %"]);
    expect(atRates.map(({ rate }) => rate)).toEqual([0, 0.03, 0.07]);
    // by hand: 1,000 and 20 payments of 100
    expect(atRates[0]?.presentValue).toMatchObject({ kind: "known", value: 300_000 });
  });

  test("says that yearly costs fall in mid-year where they do", () => {
    const { working } = knownFigure(lifeCycleCost([price], setting({ timing: "mid-year" })).presentValue);
    expect(working.assumptions).toContain(
      "What recurs every year falls in the middle of its year; single payments fall at its end.",
    );
  });

  test("rounds entries, categories and the total each from unrounded figures", () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { entries, categories, presentValue } = lifeCycleCost(lines, setting());
        const total = knownFigure(presentValue).value;
        expect(categories.map(({ category }) => category)).toEqual(Object.keys(costCategories));
        for (const shown of [entries, categories]) {
          const sum = shown.reduce((cents, entry) => cents + entry.presentValue, 0);
          expect(Math.abs(sum - total)).toBeLessThanOrEqual(1e-4 + 1e-12 * Math.abs(total));
          const sumShown = shown.reduce((cents, entry) => cents + entry.shown, 0);
          expect(Math.abs(sumShown - total)).toBeLessThanOrEqual(0.5 * shown.length + 1e-3);
          expect(shown.every((entry) => entry.shown === shownCents(entry.presentValue))).toBe(true);
        }
      }),
    );
  });
});
