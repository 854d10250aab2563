import { describe, expect, test } from "vitest";
import {
  breakEven,
  capitalRecovery,
  cashFlows,
  costConventionsSchema,
  costDifference,
  equivalentAnnualCost,
  escalatingUniformPresentWorth,
  fisherNominalRate,
  fisherRateWithout,
  flowPresentValue,
  lifeCycleCost,
  parseRateTable,
  presentValue,
  priceLinesSchema,
  rateForTerm,
  shownCents,
  singlePresentWorth,
  sinkingFund,
  tyingRates,
  uniformPresentWorth,
  withinFederalEnergyRate,
} from "#lib/cost";
import { inUnit, measured } from "#lib/quantity";
import { type BidTerms, bidLines, conventionsText, workedTerms } from "./cost-example";

/** Values printed with `digits` decimals agree to half a unit of the last one. */
const agrees = (actual: number, printed: number, digits: number) =>
  expect(Math.abs(actual - printed), `${actual} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -digits);

/** Dollars printed to the cent against cents as computed: rounded half up they are the same. */
const agreesToTheCent = (cents: number, dollars: number) => expect(shownCents(cents)).toBe(Math.round(dollars * 100));

const tables = {
  // derived from (1 + rate)^−t; method as in 10 CFR 436.16(d)
  single: {
    "0.03": [
      0.970874, 0.942596, 0.915142, 0.888487, 0.862609, 0.837484, 0.813092, 0.789409, 0.766417, 0.744094, 0.722421,
      0.70138, 0.680951, 0.661118, 0.641862, 0.623167, 0.605016, 0.587395, 0.570286, 0.553676, 0.537549, 0.521893,
      0.506692, 0.491934, 0.477606, 0.463695, 0.450189, 0.437077, 0.424346, 0.411987,
    ],
    "0.07": [
      0.934579, 0.873439, 0.816298, 0.762895, 0.712986, 0.666342, 0.62275, 0.582009, 0.543934, 0.508349, 0.475093,
      0.444012, 0.414964, 0.387817, 0.362446, 0.338735, 0.316574, 0.295864, 0.276508, 0.258419, 0.241513, 0.225713,
      0.210947, 0.197147, 0.184249, 0.172195, 0.16093, 0.150402, 0.140563, 0.131367,
    ],
  },
  // derived from (1 − (1 + rate)^−N) ÷ rate; method as in 10 CFR 436.16(c)
  uniform: {
    "0.03": [
      0.970874, 1.91347, 2.828611, 3.717098, 4.579707, 5.417191, 6.230283, 7.019692, 7.786109, 8.530203, 9.252624,
      9.954004, 10.634955, 11.296073, 11.937935, 12.561102, 13.166118, 13.753513, 14.323799, 14.877475, 15.415024,
      15.936917, 16.443608, 16.935542, 17.413148, 17.876842, 18.327031, 18.764108, 19.188455, 19.600441,
    ],
    "0.07": [
      0.934579, 1.808018, 2.624316, 3.387211, 4.100197, 4.76654, 5.389289, 5.971299, 6.515232, 7.023582, 7.498674,
      7.942686, 8.357651, 8.745468, 9.107914, 9.446649, 9.763223, 10.059087, 10.335595, 10.594014, 10.835527, 11.06124,
      11.272187, 11.469334, 11.653583, 11.825779, 11.986709, 12.137111, 12.277674, 12.409041,
    ],
  },
};

describe("discount factors", () => {
  test.each(Object.entries(tables.single))("single present worth at %s, years 1 to 30", (rate, printed) => {
    expect(printed).toHaveLength(30);
    printed.forEach((factor, index) => {
      agrees(singlePresentWorth(Number(rate), index + 1), factor, 6);
    });
  });

  test.each(Object.entries(tables.uniform))("uniform present worth at %s, years 1 to 30", (rate, printed) => {
    expect(printed).toHaveLength(30);
    printed.forEach((factor, index) => {
      agrees(uniformPresentWorth(Number(rate), index + 1), factor, 6);
    });
  });

  // from memory: factors printed in NISTIR 85-3273 and in engineering-economy interest tables
  test("agree with the factors printed in public tables", () => {
    agrees(uniformPresentWorth(0.03, 20), 14.88, 2);
    agrees(singlePresentWorth(0.03, 20), 0.554, 3);
    agrees(singlePresentWorth(0.03, 12), 0.701, 3);
    agrees(singlePresentWorth(0.07, 10), 0.5083, 4);
    agrees(uniformPresentWorth(0.07, 10), 7.0236, 4);
  });

  // derived as the sum of a geometric series
  test("escalating uniform present worth over 20 years", () => {
    agrees(escalatingUniformPresentWorth(0.03, 0.02, 20), 18.081229, 6);
    agrees(escalatingUniformPresentWorth(0.03, -0.01, 20), 13.541833, 6);
    agrees(escalatingUniformPresentWorth(0.07, 0.02, 20), 12.56646, 6);
    agrees(escalatingUniformPresentWorth(0.03, 0.05, 20), 24.625997, 6);
    expect(escalatingUniformPresentWorth(0.03, 0.03, 20)).toBe(20);
  });

  // derived: 1 ÷ uniform present worth, and rate ÷ ((1 + rate)^N − 1)
  test("capital recovery and sinking fund", () => {
    agrees(capitalRecovery(0.03, 20), 0.06721571, 8);
    agrees(sinkingFund(0.03, 10), 0.08723051, 8);
  });
});

describe("real and nominal rates", () => {
  // Fisher's identity; adding up would give 5.5 %
  test("3 % real and 2.5 % inflation make 5.575 % nominal", () => {
    expect(fisherNominalRate(0.03, 0.025)).toBeCloseTo(0.05575, 12);
  });

  // OMB Circular A-94 Appendix C of January 2000, 10-year rates: 6.1 % nominal, 4.0 % real
  test("the ten-year rates of January 2000 imply 2.0192 % inflation", () => {
    agrees(fisherRateWithout(0.061, 0.04), 0.020192, 6);
  });

  // OMB Circular A-94, Appendix C of January 2000, in the archive of the White House; the rule and its example of four
  // years stand there [A94-2000-nominal, A94-2000-real, A94-2000-interp-4yr]
  test("are read off a published table, on a straight line between two terms", () => {
    const printed = {
      nominal: { 3: 5.9, 5: 6.0, 7: 6.0, 10: 6.1, 30: 6.3 },
      real: { 3: 3.8, 5: 3.9, 7: 4.0, 10: 4.0, 30: 4.2 },
    };
    for (const rates of Object.values(printed)) {
      const table = parseRateTable(
        Object.entries(rates)
          .map(([years, rate]) => `${years} years ${rate} %`)
          .join(", "),
      );
      if (!table.ok) throw new Error(table.problem);
      for (const [years, rate] of Object.entries(rates))
        expect(rateForTerm(table.value, Number(years)).rate).toBeCloseTo(rate / 100, 12);
      expect(rateForTerm(table.value, 4).rate).toBeCloseTo((rates[3] + rates[5]) / 200, 12);
      expect(rateForTerm(table.value, 60).rate).toBeCloseTo(rates[30] / 100, 12);
    }
  });

  // 10 CFR 436.14(a)(2): not under 3 %, not over 10 % [FEMP-rate-bounds]
  test("of federal energy projects lie within 3 % and 10 %", () =>
    expect([0.012, 0.045, 0.12].map(withinFederalEnergyRate)).toEqual([0.03, 0.045, 0.1]));

  // derived; the identity is the reason why constant and current money must not be mixed (10 CFR 436.14(a))
  test("constant money at the real rate is worth what current money is at the nominal rate", () => {
    const constant = presentValue([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 38_800_000], 0.03);
    const currentFlow = 38_800_000 * 1.025 ** 10;
    const current = presentValue([0, 0, 0, 0, 0, 0, 0, 0, 0, 0, currentFlow], fisherNominalRate(0.03, 0.025));
    agreesToTheCent(currentFlow, 496_672.8);
    agreesToTheCent(constant, 288_708.44);
    agreesToTheCent(current, 288_708.44);
  });
});

const head = { givenBy: "bid", category: "operation-and-maintenance" } as const;
const lump = (price: string) => ({ kind: "lump-sum", price }) as const;
const conventions = (changes: Readonly<Record<string, string>> = {}) =>
  costConventionsSchema.parse({ ...conventionsText, ...changes });
const total = (lines: unknown, changes: Readonly<Record<string, string>> = {}) => {
  const setting = { area: measured("area", 80_000, "ft²"), conventions: conventions(changes) };
  const discounting = { rate: setting.conventions.realRate.value, timing: setting.conventions.timing };
  return cashFlows(priceLinesSchema.parse(lines), setting).flows.reduce(
    (sum, { flow }) => sum + flowPresentValue(flow, discounting),
    0,
  );
};

describe("single cases", () => {
  const yearly = { kind: "yearly", id: "upkeep", label: "Upkeep", ...head, amount: lump("$10,000") };

  // derived: uniform present worth × 1.03^½
  test("recurring costs in mid-year are worth half a year's interest more", () => {
    agreesToTheCent(total([yearly], { timing: "mid-year" }), 150_989.88);
  });

  // derived; method of 10 CFR 436.16(c) for a service date after the base date
  test("service delayed by a year is costed over the years of service", () => {
    agreesToTheCent(total([{ ...yearly, from: "2" }], { studyPeriod: "21 years" }), 144_441.5);
  });

  // straight-line residual: US GSA P100; 248,000 × 10 ÷ 30
  test("a base with a life of 30 years keeps a third of its cost after 20", () => {
    const base = {
      kind: "replacement-chain",
      id: "base",
      label: "Base",
      givenBy: "bid",
      lifeGivenBy: "bid",
      life: "30 years",
    };
    const [line] = priceLinesSchema.parse([{ ...base, amount: lump("$248,000") }]);
    const flows = cashFlows(line === undefined ? [] : [line], {
      area: measured("area", 1),
      conventions: conventions(),
    });
    agreesToTheCent(flows.byCategory.residual[20] ?? 0, -82_666.67);
  });

  // NIST Handbook 135, heating and cooling illustration: inputs, energy factor 15.13 and total from memory
  const illustrated = {
    plant: 103_000,
    renewal: 12_000,
    left: 3_500,
    energy: 20_000 * 15.13,
    upkeep: 7_000,
    total: 516_233,
  };

  test("the handbook's illustration comes out in whole dollars with factors of as many digits as it prints", () => {
    const { plant, renewal, left, energy, upkeep } = illustrated;
    const renewed = renewal * Number(singlePresentWorth(0.03, 12).toFixed(3));
    const credit = left * Number(singlePresentWorth(0.03, 20).toFixed(3));
    const kept = upkeep * Number(uniformPresentWorth(0.03, 20).toFixed(2));
    expect(Math.round(plant + renewed - credit + energy + kept)).toBe(illustrated.total);
  });

  // its factors have three or four digits, which allows about 0.1 % of each part that is discounted
  test("the handbook's illustration comes out as price lines, within its rounded factors", () => {
    const lines = [
      { kind: "at-base-date", id: "plant", label: "Plant", ...head, category: "investment", amount: lump("$103,000") },
      { kind: "in-year", id: "renewal", label: "Renewal", ...head, amount: lump("$12,000"), year: "12" },
      {
        kind: "in-year",
        id: "left",
        label: "Value left",
        ...head,
        category: "residual",
        amount: lump("-$3,500"),
        year: "20",
      },
      { kind: "at-base-date", id: "energy", label: "Energy, present value", ...head, amount: lump("$302,600") },
      { kind: "yearly", id: "upkeep", label: "Upkeep", ...head, amount: lump("$7,000") },
    ];
    const allowed = 12_000 * 0.0005 + 3_500 * 0.0005 + 7_000 * 0.005 + 0.5;
    expect(Math.abs(total(lines) / 100 - illustrated.total)).toBeLessThan(allowed);
  });

  // means of a university study of 2016: 1,212,000 to build, 7,000 a year, 377,000 to resurface, and 1,902,000 over 20
  // years. Means do not add up to a mean total, so no total here is ever put together from published ones [OSU-gap-synth]
  test("published means come to 1,729,000 over 20 years, not to the 1,902,000 published beside them", () => {
    const lines = [
      {
        kind: "at-base-date",
        id: "build",
        label: "Build",
        ...head,
        category: "investment",
        amount: lump("$1,212,000"),
      },
      { ...yearly, amount: lump("$7,000") },
      { kind: "in-year", id: "carpet", label: "Resurface", ...head, amount: lump("$377,000"), year: "10" },
    ];
    agreesToTheCent(total(lines, { realRate: "0 %" }), 1_729_000);
  });

  // US GSA P100: a difference under 10 % can be judged inconclusive
  test("1,000,000 against 1,080,000 is inconclusive, against 1,100,000 it is not", () => {
    expect(costDifference(100_000_000, 108_000_000).verdict).toBe("inconclusive");
    expect(costDifference(110_000_000, 100_000_000).verdict).toBe("conclusive");
  });
});

// derived: cost ÷ uniform present worth + removal × sinking fund, and the present value over whole lives
describe("chains of unequal lives", () => {
  const chain = (price: string, removal: string, life: string) => [
    {
      kind: "replacement-chain",
      id: "carpet",
      label: "Carpet",
      givenBy: "bid",
      lifeGivenBy: "bid",
      life,
      amount: lump(price),
      removal: lump(removal),
    },
  ];
  const annual = (price: string, removal: string, years: number) =>
    equivalentAnnualCost(
      total(chain(price, removal, `${years} years`), { studyPeriod: `${years} years` }),
      0.03,
      years,
    );

  test("have these equivalent annual costs over one life", () => {
    agreesToTheCent(annual("$388,000", "$68,000", 8), 62_920.11);
    agreesToTheCent(annual("$448,000", "$48,000", 10), 56_706.33);
    agreesToTheCent(annual("$484,000", "$56,000", 12), 52_569.53);
  });

  test("have these present values over 24 years, a multiple of both lives", () => {
    const study = { studyPeriod: "24 years" };
    agreesToTheCent(total(chain("$388,000", "$68,000", "8 years"), study), 1_065_586.23);
    agreesToTheCent(total(chain("$484,000", "$56,000", "12 years"), study), 890_293.42);
  });

  test("cost the same a year over one life and over three", () => {
    const overThree = equivalentAnnualCost(
      total(chain("$388,000", "$68,000", "8 years"), { studyPeriod: "24 years" }),
      0.03,
      24,
    );
    agreesToTheCent(overThree, 62_920.11);
  });
});

type Letter = keyof typeof workedTerms;
const letters = ["a", "b", "c"] as const;

const costOf = (letter: Letter, terms: Partial<BidTerms> = {}, changes: Readonly<Record<string, string>> = {}) =>
  lifeCycleCost(priceLinesSchema.parse(bidLines({ ...workedTerms[letter], ...terms })), {
    bid: `bid-${letter}`,
    area: measured("area", 80_000, "ft²"),
    hoursPerYear: measured("yearlyUse", 1800),
    conventions: conventions(changes),
  });
const knownValue = (figure: { readonly kind: string; readonly value?: number }) => {
  if (figure.kind !== "known" || figure.value === undefined)
    throw new Error(`expected a known figure, got ${figure.kind}`);
  return figure.value;
};
const presentValueOf = (...bid: Parameters<typeof costOf>) => knownValue(costOf(...bid).presentValue);

describe("worked example of three bids", () => {
  const printed: Readonly<Record<string, readonly [number, number, number]>> = {
    "carpet first-cost": [388_000, 448_000, 484_000],
    "base first-cost": [248_000, 236_000, 260_000],
    "pad first-cost": [0, 108_000, 96_000],
    "grooming price": [78_553.07, 64_270.69, 107_117.82],
    "top-up price": [22_613.76, 14_877.47, 40_615.51],
    "water price": [0, 0, 33_474.32],
    "impact-test price": [17_109.1, 17_109.1, 17_109.1],
    "repairs price": [27_121.84, 21_697.48, 21_697.48],
    "deep-clean price": [19_299.31, 19_299.31, 14_474.49],
    "carpet renewal": [288_708.44, 306_685.75, 360_141.45],
    "carpet removal-at-renewal": [50_598.39, 35_716.51, 41_669.26],
    "carpet removal-at-study-end": [37_649.95, 26_576.44, 31_005.84],
    "base residual": [-45_770.53, -43_555.83, -47_985.23],
    "carpet residual": [0, 0, 0],
  };

  test.each(Object.entries(printed))("present value of %s", (name, dollars) => {
    letters.forEach((letter, index) => {
      const [entry, ...others] = costOf(letter).entries.filter(({ line, part }) => `${line} ${part}` === name);
      expect(others).toEqual([]);
      expect(entry?.shown).toBe(Math.round((dollars[index] ?? Number.NaN) * 100));
    });
  });

  test("the additions are owner's estimates of 22,700, 0 and 6,750 dollars", () => {
    const additions = letters.map(
      (letter) => costOf(letter).categories.find(({ category }) => category === "owners-addition")?.shown,
    );
    expect(additions).toEqual([2_270_000, 0, 675_000]);
  });

  const figures: Readonly<Record<string, readonly [(letter: Letter) => number, readonly [number, number, number]]>> = {
    "life-cycle cost at 3 %": [(letter) => presentValueOf(letter), [1_154_583.33, 1_254_676.92, 1_466_070.03]],
    "price at the base date": [(letter) => knownValue(costOf(letter).priceAtBaseDate), [658_700, 792_000, 846_750]],
    "price as bid": [(letter) => knownValue(costOf(letter).priceAsBid), [636_000, 792_000, 840_000]],
    "equivalent annual cost": [
      (letter) => knownValue(costOf(letter).equivalentAnnualCost),
      [77_606.14, 84_334.0, 98_542.93],
    ],
    "life-cycle cost at 0 %": [(letter) => knownValue(atRate(letter, 0)), [1_321_808.31, 1_406_233.31, 1_671_623.31]],
    "life-cycle cost at 3 %, in the row of rates": [
      (letter) => knownValue(atRate(letter, 0.03)),
      [1_154_583.33, 1_254_676.92, 1_466_070.03],
    ],
    "life-cycle cost at 7 %": [(letter) => knownValue(atRate(letter, 0.07)), [1_003_712.8, 1_115_543.75, 1_280_074.4]],
    "life-cycle cost with yearly costs in mid-year": [
      (letter) => presentValueOf(letter, {}, { timing: "mid-year" }),
      [1_156_748.18, 1_256_433.16, 1_469_345.85],
    ],
    "life-cycle cost at the lives offered, 8, 10 and 12 years": [
      (letter) => presentValueOf(letter, { life: offeredLives[letter] }),
      [1_333_173.17, 1_254_676.92, 1_343_342.81],
    ],
  };
  const offeredLives = { a: "8 years", b: "10 years", c: "12 years" } as const;
  const atRate = (letter: Letter, rate: number) => {
    const found = costOf(letter).atRates.find((entry) => entry.rate === rate);
    if (found === undefined) throw new Error(`no total at ${rate}`);
    return found.presentValue;
  };

  test.each(Object.entries(figures))("%s", (_, [computed, dollars]) => {
    letters.forEach((letter, index) => {
      agreesToTheCent(computed(letter), dollars[index] ?? Number.NaN);
    });
  });

  test("cost per hour and cost per square foot and year", () => {
    letters.forEach((letter, index) => {
      const { perHour, perAreaYear } = costOf(letter);
      agrees(
        inUnit("moneyPerTime", measured("moneyPerTime", knownValue(perHour)), "$/h"),
        [43.11, 46.85, 54.75][index] ?? 0,
        2,
      );
      const perSquareFoot = inUnit("moneyPerArea", measured("moneyPerArea", knownValue(perAreaYear)), "$/ft²");
      agrees(perSquareFoot, [0.9701, 1.0542, 1.2318][index] ?? 0, 4);
    });
  });

  test.each([
    ["a", "8 years", [548_079.56, 96_055.18, 18_824.98, -107_413.1]],
    ["c", "12 years", [339_467.86, 39_277.27, 20_670.56, -89_326.36]],
  ] as const)("carpet of bid %s with a life of %s", (letter, life, dollars) => {
    const parts = ["renewal", "removal-at-renewal", "removal-at-study-end", "residual"];
    const { entries } = costOf(letter, { life });
    const shown = parts.map((part) => entries.find((entry) => entry.line === "carpet" && entry.part === part)?.shown);
    expect(shown).toEqual(dollars.map((amount) => Math.round(amount * 100)));
  });

  test("the order is A, B, C at equal lives and B, A, C at the lives offered", () => {
    const ranked = (cost: (letter: Letter) => number) =>
      letters.toSorted((first, second) => cost(first) - cost(second));
    expect(ranked((letter) => presentValueOf(letter))).toEqual(["a", "b", "c"]);
    expect(ranked((letter) => presentValueOf(letter, { life: offeredLives[letter] }))).toEqual(["b", "a", "c"]);
  });

  test("B is 8.67 % above A, which is inconclusive", () => {
    const { share, verdict } = costDifference(presentValueOf("a"), presentValueOf("b"));
    agrees(share * 100, 8.67, 2);
    expect(verdict).toBe("inconclusive");
  });

  const breakEvenOf = (at: number, firstSlope: number, secondSlope: number) => {
    const found = breakEven({
      at,
      firstCost: presentValueOf("a"),
      secondCost: presentValueOf("b"),
      firstSlope,
      secondSlope,
    });
    return found.kind === "at" ? found.value : Number.NaN;
  };

  test("A and B tie where B's price falls by 100,093.59", () => {
    agreesToTheCent(breakEvenOf(0, 0, -1), 100_093.59);
  });

  // 103,821.5735 dollars of present value per dollar of removal a square foot
  test("A and B tie where A's removal costs 1.8141 a square foot", () => {
    const slope = presentValueOf("a", { removal: "$1.85/ft²" }) - presentValueOf("a");
    agrees(slope / 100, 103_821.5735, 4);
    agrees(breakEvenOf(0.85, slope, 0), 1.8141, 4);
  });

  test("A and B tie at a wage of 384.39 an hour, out of reach", () => {
    const slopeOf = (letter: Letter) => presentValueOf(letter, { wage: "$49/h" }) - presentValueOf(letter);
    agrees(slopeOf("a") / 100, 1636.5222, 4);
    agrees(slopeOf("b") / 100, 1338.9727, 4);
    agrees(breakEvenOf(48, slopeOf("a"), slopeOf("b")), 384.39, 2);
  });

  test("the rate moves A between 1,259,486.19 at 1 % and 1,070,912.01 at 5 %", () => {
    agreesToTheCent(presentValueOf("a", {}, { realRate: "1 %" }), 1_259_486.19);
    agreesToTheCent(presentValueOf("a", {}, { realRate: "5 %" }), 1_070_912.01);
  });

  test("the wage moves A between 1,134,945.06 at $36 and 1,174,221.60 at $60", () => {
    agreesToTheCent(presentValueOf("a", { wage: "$36/h" }), 1_134_945.06);
    agreesToTheCent(presentValueOf("a", { wage: "$60/h" }), 1_174_221.6);
  });

  test("the growth of repairs moves A between 1,149,777.70 at 0 % and 1,160,716.28 at 4 %", () => {
    agreesToTheCent(presentValueOf("a", { repairGrowth: "0 %" }), 1_149_777.7);
    agreesToTheCent(presentValueOf("a", { repairGrowth: "4 %" }), 1_160_716.28);
  });

  test("with the lives offered A and B tie at a real rate of 8.5092 %", () => {
    const gap = (rate: string) =>
      presentValueOf("a", { life: "8 years" }, { realRate: rate }) - presentValueOf("b", {}, { realRate: rate });
    expect(gap("8.50915 %")).toBeGreaterThan(0);
    expect(gap("8.50925 %")).toBeLessThan(0);
    const flowsOf = (letter: Letter, life: string) => {
      const setting = { area: measured("area", 80_000, "ft²"), conventions: conventions() };
      return cashFlows(priceLinesSchema.parse(bidLines({ ...workedTerms[letter], life })), setting).flows.map(
        ({ flow }) => flow,
      );
    };
    const sought = { timing: "end-of-year", lowest: 0, highest: 0.15 } as const;
    const found = tyingRates({ first: flowsOf("a", "8 years"), second: flowsOf("b", "10 years"), ...sought });
    if (found.kind !== "at") throw new Error(`expected a rate, got ${found.kind}`);
    expect(found.rates).toHaveLength(1);
    agrees(found.rates[0] * 100, 8.5092, 4);
  });
});
