import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cashFlows,
  costConventionsSchema,
  costingSchema,
  discountRate,
  flowPresentValue,
  levelledBids,
  lifeCycleCost,
  priceLinesSchema,
  resolvedLines,
  shownCents,
} from "#lib/cost";
import { conventionsText } from "../checks/cost-example";
import { area, costsOf, figurePlug, linkFacts, price } from "./costing";
import { anyLines, lineWith, lumpSum, setting } from "./lines";

const cents = (lines: Parameters<typeof lifeCycleCost>[0], changes: Readonly<Record<string, string>> = {}) => {
  const { presentValue } = lifeCycleCost(lines, setting(changes));
  if (presentValue.kind !== "known") throw new Error(presentValue.kind);
  return presentValue.value;
};
const anyRate = fc.integer({ min: 0, max: 120 }).map((tenths) => `${(tenths / 10).toFixed(1)} %`);
const anyInflation = fc.integer({ min: -10, max: 60 }).map((tenths) => `${(tenths / 10).toFixed(1)} %`);
const anyTiming = fc.constantFrom("end-of-year", "mid-year");
const anyStart = fc.integer({ min: 0, max: 6 }).map((years) => `${years} years`);

describe("laws of money", () => {
  test("constant money at a real rate and current money at the nominal one agree to the cent", () =>
    fc.assert(
      fc.property(
        anyLines,
        anyRate,
        anyInflation,
        anyTiming,
        anyStart,
        (lines, realRate, inflation, timing, serviceStart) => {
          const shared = { realRate, inflation, timing, serviceStart };
          const [constant, current] = [
            lifeCycleCost(lines, setting({ ...shared, money: "constant" })),
            lifeCycleCost(lines, setting({ ...shared, money: "current" })),
          ];
          for (const figure of ["presentValue", "equivalentAnnualCost", "priceAtBaseDate"] as const) {
            const [one, other] = [constant[figure], current[figure]];
            if (one.kind !== "known" || other.kind !== "known") throw new Error("not known");
            expect(shownCents(other.value), figure).toBe(shownCents(one.value));
          }
          constant.atRates.forEach(({ presentValue: one }, index) => {
            const other = current.atRates[index]?.presentValue;
            if (one.kind !== "known" || other?.kind !== "known") throw new Error("not known");
            expect(shownCents(other.value)).toBe(shownCents(one.value));
          });
        },
      ),
    ));

  test("a nominal rate says the same as the real rate it was made of", () =>
    fc.assert(
      fc.property(anyLines, anyTiming, (lines, timing) => {
        const nominal = { realRate: "", nominalRate: "5.575 %", inflation: "2.5 %", timing };
        for (const money of ["constant", "current"]) {
          expect(shownCents(cents(lines, { ...nominal, money }))).toBe(
            shownCents(cents(lines, { realRate: "3 %", timing })),
          );
        }
      }),
    ));

  test("present value is additive over lines", () =>
    fc.assert(
      fc.property(anyLines, anyLines, (some, more) => {
        const renamed = more.map((line) => ({ ...line, id: `more-${line.id}` }));
        expect(cents([...some, ...renamed])).toBeCloseTo(cents(some) + cents(more), 2);
      }),
    ));

  test("does not depend on the currency", () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 900_000 }), fc.integer({ min: 0, max: 900 }), (first, yearly) => {
        const lines = (sign: string) =>
          priceLinesSchema.parse([
            price("first", `${sign}${first}`),
            price("yearly", { kind: "per-area", price: `${sign}${(yearly / 100).toFixed(2)}/m²` }, { kind: "yearly" }),
          ]);
        expect(cents(lines("€"), { currency: "EUR" })).toBe(cents(lines("$")));
        expect(cents(lines("£"), { currency: "GBP" })).toBe(cents(lines("CAD "), { currency: "CAD" }));
      }),
    ));

  test("twice the prices cost twice as much", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400_000 }),
        fc.constantFrom("yearly", "periodic", "in-year"),
        (dollars, kind) => {
          const cost = (factor: number) => cents([lineWith(kind, { amount: lumpSum(`$${dollars * factor}`) })]);
          expect(cost(2)).toBeCloseTo(2 * cost(1), 3);
        },
      ),
    ));

  test("costs fall as the rate rises", () =>
    fc.assert(
      fc.property(anyLines, fc.integer({ min: 0, max: 140 }), (lines, tenths) => {
        const costs = lines.filter((line) => line.kind !== "replacement-chain" || line.residual === "none");
        fc.pre(costs.length > 0);
        const at = (rate: number) => cents(costs, { realRate: `${(rate / 10).toFixed(1)} %` });
        expect(at(tenths + 1)).toBeLessThanOrEqual(at(tenths) + 1e-6);
      }),
    ));

  test("the categories add up to the total, in present value and in every year", () =>
    fc.assert(
      fc.property(anyLines, fc.constantFrom("constant", "current"), (lines, money) => {
        const cost = lifeCycleCost(lines, setting({ money, inflation: "2 %" }));
        const sum = cost.categories.reduce((total, { presentValue }) => total + presentValue, 0);
        expect(sum).toBeCloseTo(cost.presentValue.kind === "known" ? cost.presentValue.value : Number.NaN, 3);
        cost.yearly.forEach((total, year) => {
          const byCategory = Object.values(cost.yearlyByCategory).reduce(
            (added, stream) => added + (stream[year] ?? 0),
            0,
          );
          expect(byCategory).toBeCloseTo(total, 3);
        });
      }),
    ));

  const anyStanding = fc.constantFrom("included", "excluded", "unclear", "by-owner", "not-asked");
  const anyEntry = fc.record({
    item: fc.constantFrom("drainage", "carpet", "training", "yearly-tests", "grooming-contract"),
    standing: anyStanding,
    plug: fc.oneof(
      fc.constant({ kind: "none" }),
      fc.constant({ kind: "median" }),
      fc.integer({ min: 0, max: 90_000 }).map((dollars) => figurePlug(`$${dollars}`)),
    ),
  });
  const anyLink = fc.record({
    bid: fc.constant("a"),
    link: fc.constantFrom(
      "freight",
      "grooming",
      "infill-top-up",
      "removal-and-disposal",
      "shock-layer",
      "impact-tests",
    ),
    choice: fc.constantFrom({ kind: "off" }, { kind: "computed" }),
  });

  test("levelling never changes an as-bid figure, nor does it lower a cost by what it adds", () =>
    fc.assert(
      fc.property(
        anyLines,
        fc.uniqueArray(anyEntry, { selector: ({ item }) => item }),
        fc.uniqueArray(anyLink, { selector: ({ link }) => link }),
        (lines, entries, links) => {
          const costing = costingSchema.parse({
            levelling: entries.map((entry) => ({ ...entry, bid: "a" })),
            links,
            linkParameters: { freightPerLoad: "$1,900", wage: "$48/h", topUpPrice: "$0.40/lb", tippingFee: "$60/t" },
          });
          const project = (with_: typeof costing) =>
            levelledBids([{ id: "a", letter: "A", prices: lines, facts: linkFacts() }], with_, setting());
          const [bare] = project(costingSchema.parse({}));
          const [full] = project(costing);
          expect(full?.asBid).toEqual(bare?.asBid);
          const plugged = (full?.lines ?? []).filter(({ origin }) => origin.kind === "plug").map(({ line }) => line);
          expect(plugged.every(({ givenBy }) => givenBy === "owner-estimate")).toBe(true);
        },
      ),
    ));

  test("shares resolve the same a second time", () =>
    fc.assert(
      fc.property(anyLines, (lines) => {
        const bond = priceLinesSchema.parse([
          price("bond", { kind: "share", share: "2 %", of: "accepted-bid" }, { role: { kind: "bond" } }),
        ]);
        const once = resolvedLines([...lines, ...bond], area);
        expect(resolvedLines(once, area)).toEqual(once);
      }),
    ));
});

describe("a start of service after the base date", () => {
  // 10 CFR 436.16(c): 10,000 × (UPV of 21 years − UPV of 1 year) at 3 %
  test("moves what recurs, counted from the base date", () => {
    const lines = [lineWith("yearly", { amount: lumpSum("$10,000") })];
    expect(shownCents(cents(lines, { studyPeriod: "21 years", serviceStart: "1 year" }))).toBe(14_444_150);
  });

  test("moves lives, and leaves the first cost at the base date", () => {
    const chain = lineWith("replacement-chain", { amount: lumpSum("$800"), life: "8 years" });
    const years = (serviceStart: string) => {
      const { total } = cashFlows([chain], setting({ serviceStart, studyPeriod: "20 years" }));
      return total.flatMap((paid, year) => (paid > 0 ? [year] : []));
    };
    expect(years("0 years")).toEqual([0, 8, 16]);
    expect(years("2 years")).toEqual([0, 10, 18]);
  });

  test("is said in the working, and spreads the cost of an hour over the years of use", () => {
    const lines = [lineWith("at-base-date", { amount: lumpSum("$1,000,000") })];
    const { presentValue, perHour, equivalentAnnualCost } = lifeCycleCost(lines, setting({ serviceStart: "1 year" }));
    if (presentValue.kind !== "known" || perHour.kind !== "known" || equivalentAnnualCost.kind !== "known")
      throw new Error("not known");
    expect(presentValue.working.assumptions).toContain(
      "Service starts a year after the base date; lives and what recurs count from there, the study from the base date.",
    );
    expect((perHour.value * 3600 * 1800) / 1).toBeGreaterThan(equivalentAnnualCost.value);
  });
});

describe("current money", () => {
  // by hand: 100 × 1.025 and 100 × 1.025²
  test("shows flows with inflation in them and discounts at the nominal rate", () => {
    const conventions = costConventionsSchema.parse({ ...conventionsText, money: "current", inflation: "2.5 %" });
    expect(discountRate(conventions)).toBeCloseTo(0.05575, 12);
    const { total, flows } = cashFlows([lineWith("yearly")], { area, conventions });
    expect(total.slice(0, 3).map((paid) => Number(paid.toFixed(6)))).toEqual([0, 10_250, 10_506.25]);
    const worth = flows.reduce(
      (sum, { flow }) => sum + flowPresentValue(flow, { rate: discountRate(conventions), timing: "end-of-year" }),
      0,
    );
    expect(shownCents(worth)).toBe(shownCents(cents([lineWith("yearly")])));
  });
});

describe("replacement out of step", () => {
  const paid = (changes: object) => {
    const { flows } = cashFlows(
      [lineWith("replacement-chain", { amount: lumpSum("$100"), life: "8 years", ...changes })],
      setting(),
    );
    return Object.fromEntries(
      flows.map(({ flow: { part, stream } }) => [
        part,
        stream.flatMap((money, year) => (money === 0 ? [] : [[year, Number((money / 100).toFixed(4))]])),
      ]),
    );
  };

  test("a first renewal is deferred, and the following ones go on from it", () => {
    // by hand: renewed in 11 and 19, a year of eight used at the end
    expect(paid({ firstReplacement: "11" })).toMatchObject({
      renewal: [
        [11, 100],
        [19, 100],
      ],
      residual: [[20, -87.5]],
    });
  });

  test("a part renewal replaces its share, the oldest part first", () => {
    // by hand: 40 % in 8 and 16; at 20 there lie 20 % of the first carpet, worn out, 40 % of year 8, worn out, 40 % of year 16, half worn
    expect(paid({ replacedShare: "40 %", removal: lumpSum("$10") })).toMatchObject({
      renewal: [
        [8, 40],
        [16, 40],
      ],
      "removal-at-renewal": [
        [8, 4],
        [16, 4],
      ],
      "removal-at-study-end": [[20, 8]],
      residual: [[20, -20]],
    });
  });

  test("a part that stays through two lives of another is renewed with every second one", () => {
    const lines = priceLinesSchema.parse([
      {
        kind: "replacement-chain",
        id: "carpet",
        label: "Carpet",
        givenBy: "bid",
        lifeGivenBy: "bid",
        amount: lumpSum("$100"),
        life: "7 years",
      },
      {
        ...{ kind: "replacement-chain", id: "pad", label: "Pad", givenBy: "bid", lifeGivenBy: "bid" },
        ...{ amount: lumpSum("$30"), life: "10 years", reuse: { line: "carpet", lives: "2" } },
      },
    ]);
    const pad = resolvedLines(lines, area)[1];
    expect(pad?.kind === "replacement-chain" ? pad.life : null).toEqual({
      years: 14,
      asEntered: "2 lives of “Carpet” (7 years)",
    });
  });

  test.each([
    [
      { firstReplacement: "0" },
      "0.firstReplacement: “0” was read for the year of the first replacement; expected a whole number of years from 1 to 100.",
    ],
    [
      { replacedShare: "0 %" },
      "0.replacedShare: “0 %” was read for the share replaced; expected more than 0 % and up to 100 % of the part.",
    ],
    [
      { life: "-8 years" },
      "0.life: “-8 years” was read for the life; expected a whole number of years, for example “10 years”.",
    ],
    [
      { reuse: { line: "part", lives: "2" } },
      "0.reuse.line: “part” is named for its lives; expected the name of another line with a life in this bid.",
    ],
  ])("says what it expected instead of %j", (changes, sentence) => {
    const text = {
      kind: "replacement-chain",
      id: "part",
      label: "Part",
      givenBy: "bid",
      lifeGivenBy: "bid",
      amount: lumpSum("$1"),
      life: "8",
    };
    const parsed = priceLinesSchema.safeParse([{ ...text, ...changes }]);
    expect(parsed.error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`)).toEqual([sentence]);
  });
});

describe("a bid that can't be costed", () => {
  test("without prices has figures that say so", () => {
    const [cost] = costsOf([[]]).bids;
    expect(cost?.presentValue).toMatchObject({
      kind: "unknown",
      because: { kind: "not-claimed", what: "any price of its own" },
    });
    expect(cost?.priceAsBid.kind).toBe("unknown");
  });

  test("in another currency names the price", () => {
    const [cost] = costsOf([[price("base", "€500,000", { label: "Base" })]]).bids;
    expect(cost?.presentValue).toMatchObject({
      because: { kind: "missing-input", what: "prices in US dollars: “Base” is written as “€500,000”" },
    });
  });

  test("in euros has figures in euros", () => {
    const [cost] = costsOf([[price("base", "€500,000")]], {}, { currency: "EUR" }).bids;
    expect(cost?.presentValue).toMatchObject({ kind: "known", value: 50_000_000, currency: "EUR" });
  });
});
