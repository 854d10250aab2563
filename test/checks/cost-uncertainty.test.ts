// Closed forms of the cost-and-decision reference, section 1.7 and 2.2, worked out there independently of this code.
import { describe, expect, test } from "vitest";
import {
  baseValues,
  type CostModel,
  costAt,
  costOutcome,
  drawCosts,
  linesModel,
  type PriceLine,
  sampledModel,
  tiedValues,
  tieStart,
} from "#lib/cost";
import { type Distribution, drawnToEnd, normalShare } from "#lib/sampling";
import { parseLumpSum } from "../../lib/cost/parse-price";
import { lineInput, perHour, perSquareFoot, setting, workedBids, workedInputs } from "../cost/uncertainty/worked";

const samples = 40_000;
const model = linesModel(workedBids, workedInputs, setting);
const outcomeOf = (that: CostModel, seed = 2027) => costOutcome(drawnToEnd(drawCosts(that, { seed, samples })));

describe("the worked Bid A with three uncertain inputs [MC-A-mean]", () => {
  test("is 699,073.49 + 59,527.5132 X1 + 103,821.5735 X2 + 714.1188 X3 dollars", () => {
    const [bid] = model.bids;
    if (bid === undefined) throw new RangeError("no bid");
    const dollars = (values: readonly number[]) => costAt(model, bid, Float64Array.from(values)) / 100;
    const base = [...baseValues(model.inputs)];
    const with1 = (index: number, value: number) => base.map((one, at) => (at === index ? value : one));
    const hour = (base[2] ?? 0) / 110;
    const slope = (index: number, unit: number) =>
      (dollars(with1(index, (base[index] ?? 0) + unit)) - dollars(base)) / 1;
    expect(dollars(base)).toBeCloseTo(1_154_583.33, 2);
    expect(slope(0, perSquareFoot(1))).toBeCloseTo(59_527.5132, 4);
    expect(slope(1, perSquareFoot(1))).toBeCloseTo(103_821.5735, 4);
    expect(slope(2, hour)).toBeCloseTo(714.1188, 4);
    expect(dollars([0, 0, 0])).toBeCloseTo(699_073.49, 2);
  });

  test("has the mean 1,178,347.46 and the deviation 36,906.44 within four standard errors", () => {
    const [a] = outcomeOf(model).bids;
    const [mean, deviation] = [117_834_746, 3_690_644];
    expect(a?.how).toBe("compiled");
    expect(Math.abs((a?.mean.value ?? 0) - mean)).toBeLessThan((4 * deviation) / Math.sqrt(samples));
    expect(Math.abs((a?.deviation ?? 0) / deviation - 1)).toBeLessThan(4 / Math.sqrt(2 * samples));
    expect(a?.mean.standardError).toBeCloseTo((a?.deviation ?? 0) / Math.sqrt(samples), 6);
  });
});

/** Lump sums in given years, each drawn from a normal distribution. */
function paidIn(
  bid: string,
  payments: readonly (readonly [year: number, mean: number, deviation: number])[],
  driver: { name: string; share: number } | null,
) {
  const lines = payments.map(([year, mean]): PriceLine => {
    const price = parseLumpSum(`$${mean}`);
    if (!price.ok) throw new RangeError(price.problem);
    const head = {
      id: `year-${year}`,
      label: "payment",
      givenBy: "bid",
      role: { kind: "base-bid" },
      purpose: "",
      statedExtension: null,
      document: "",
      page: "",
      note: "",
    } as const;
    const terms = { category: "investment", amount: { kind: "lump-sum", price: price.value } } as const;
    return year === 0
      ? { kind: "at-base-date", ...head, ...terms }
      : { kind: "in-year", ...head, ...terms, year: { asEntered: "", years: year }, escalation: null };
  });
  const inputs = payments.map(([year, mean, deviation]) => {
    const distribution: Distribution = { kind: "normal", mean: mean * 100, deviation: deviation * 100 };
    const target = {
      kind: "amount",
      of: [{ bid, line: `year-${year}` }],
      part: "price",
      move: { kind: "set" },
    } as const;
    const input = { id: `${bid} ${year}`, distribution, base: mean * 100, target };
    return lineInput(driver === null ? input : { ...input, driver });
  });
  return { bid: { bid, lines }, inputs };
}

const at5 = {
  ...setting,
  conventions: { ...setting.conventions, realRate: { ...setting.conventions.realRate, value: 0.05 as never } },
};

describe("flows of several years [NPV-normal-mean, NPV-normal-sd-corr]", () => {
  const flows = [
    [1, 10_000, 1500],
    [2, 12_000, 2000],
    [3, 15_000, 2500],
  ] as const;
  const outcome = (driver: { name: string; share: number } | null) => {
    const { bid, inputs } = paidIn("a", flows, driver);
    return outcomeOf(linesModel([bid], inputs, at5)).bids[0];
  };
  test("spread by 3,161.56 where each moves alone and by 5,402.22 where all move together", () => {
    const [alone, together] = [outcome(null), outcome({ name: "index", share: 1 })];
    for (const [found, deviation] of [
      [alone, 316_156.17],
      [together, 540_222.44],
    ] as const) {
      expect(Math.abs((found?.mean.value ?? 0) - 3_336_572.72)).toBeLessThan((4 * deviation) / Math.sqrt(samples));
      expect(Math.abs((found?.deviation ?? 0) / deviation - 1)).toBeLessThan(4 / Math.sqrt(2 * samples));
    }
  });
});

describe("chance that A costs less than B [P-A-lt-B-normal, P-A-lt-B-corr]", () => {
  const chance = (share: number | null) => {
    const driver = share === null ? null : { name: "market", share };
    const [a, b] = [paidIn("a", [[0, 1_200_000, 60_000]], driver), paidIn("b", [[0, 1_260_000, 80_000]], driver)];
    const outcome = outcomeOf(linesModel([a.bid, b.bid], [...a.inputs, ...b.inputs], setting));
    return outcome.pairs.find(({ bid, than }) => bid === "a" && than === "b")?.chance;
  };
  test("is 0.725747 where they move alone and 0.893559 at a correlation of 0.8", () => {
    // two inputs with shares √0.8 of one driver are correlated by 0.8
    for (const [share, expected] of [
      [null, 0.725747],
      [Math.sqrt(0.8), 0.893559],
    ] as const) {
      const found = chance(share);
      expect(Math.abs((found?.value ?? 0) - expected)).toBeLessThan(4 * (found?.standardError ?? 0));
      expect(found?.standardError).toBeLessThan(0.0025);
    }
  });
  test("agrees with the normal share that the reference took", () => {
    expect(normalShare(60 / Math.hypot(60, 80))).toBeCloseTo(0.725747, 6);
  });
});

describe("break-even values of the worked bids", () => {
  const tie = (
    id: string,
    base: number,
    of: readonly { bid: string; line: string }[],
    part: "price" | "removal-price" | "unit-price",
    to: number,
  ) => {
    const input = lineInput({
      id,
      base,
      distribution: { kind: "fixed", value: base },
      target: { kind: "amount", of, part, move: { kind: "set" } },
    });
    return tiedValues(linesModel(workedBids, [input], setting), { first: "a", second: "b", input: id, from: 0, to });
  };
  test("A's disposal ties at 1.8141 $/ft² [BE-disposal-A]", () => {
    const tied = tie(
      "disposal",
      perSquareFoot(0.85),
      [{ bid: "a", line: "carpet" }],
      "removal-price",
      perSquareFoot(3),
    );
    expect(tied.kind === "line" && (tied.at ?? 0) / perSquareFoot(1)).toBeCloseTo(1.8141, 4);
  });
  test("the wage ties at 384.39 $/h, far outside what can be [BE-wage-AB]", () => {
    const of = ["a", "b"].map((bid) => ({ bid, line: "grooming" }));
    const tied = tie("wage", perHour(48), of, "unit-price", perHour(100));
    expect(tied.kind === "line" && (tied.at ?? 0) / perHour(1)).toBeCloseTo(384.39, 2);
    expect(tied).toMatchObject({ inside: false });
  });
  test("B ties where its price at the base date falls by 100,093.59 [BE-first-price-B]", () => {
    const start = tieStart(linesModel(workedBids, workedInputs, setting), {
      first: "a",
      second: "b",
      input: "disposal",
      from: 0,
      to: 1,
    });
    expect((start.second - start.first) / 100).toBeCloseTo(100_093.59, 2);
  });
  test("with the offered lives A and B tie at a real rate of 8.5092 %", () => {
    const bids = workedBids.map(({ bid, lines }) => ({
      bid,
      lines: lines.map((line) =>
        bid === "a" && line.kind === "replacement-chain" && line.id === "carpet"
          ? { ...line, life: { ...line.life, years: 8 } }
          : line,
      ),
    }));
    const input = lineInput({
      id: "rate",
      base: 0.03,
      distribution: { kind: "uniform", low: 0.01, high: 0.05 },
      target: { kind: "real-rate" },
    });
    const tied = tiedValues(linesModel(bids, [input], setting), {
      first: "a",
      second: "b",
      input: "rate",
      from: 0,
      to: 0.15,
    });
    expect(tied.kind === "crossings" && tied.at.length).toBe(1);
    expect(tied.kind === "crossings" && (tied.at[0] ?? 0)).toBeCloseTo(0.085092, 6);
  });
});

test("every worked bid is taken apart, none runs the whole cost in each draw", () => {
  expect(sampledModel(model).bids).toEqual(["a", "b", "c"].map((bid) => ({ bid, how: "compiled" })));
});
