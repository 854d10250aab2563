import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type CriterionText,
  criteriaSchema,
  placingTotal,
  type ShortfallRule,
  type ShownFigure,
  scoreBid,
  shortfallRules,
  undiscountedValue,
} from "#lib/criteria";
import { type Figure, figureFromInterval } from "#lib/figure";
import { measured } from "#lib/quantity";
import { criteriaOf, criterionText, laboratory, levels, measures, stated, working } from "./worked-score";

const mass = (low: number, high = low): Figure =>
  figureFromInterval(
    "arealDensity",
    { low: measured("arealDensity", low, "lb/ft²"), high: measured("arealDensity", high, "lb/ft²") },
    working,
  );
const gate = { kind: "at-least" as const, limit: "3 lb/ft²" };
const asks = (shortfall: ShortfallRule, differing: Partial<CriterionText> = {}): CriterionText =>
  criterionText({ gate, evidence: { least: "laboratory", shortfall, discount: "25 %" }, ...differing });

/** 2 to 8 lb/ft² score 0 to 1, from 3 lb/ft² the gate is passed, and a laboratory has to show it. */
function scoreOf(text: CriterionText, shown?: ShownFigure) {
  const score = scoreBid(criteriaOf([text]), { bid: "a", shown: shown === undefined ? {} : { infill: shown } });
  const [criterion] = score.criteria;
  if (criterion === undefined) throw new Error("one criterion was scored");
  return { ...score, ...criterion };
}
const onPaper = (low: number, high = low): ShownFigure => ({ figure: mass(low, high), evidence: stated });
const proven = (low: number, high = low): ShownFigure => ({ figure: mass(low, high), evidence: laboratory });

const closeTo = (low: number, likely: number | null, high: number) => ({
  low: expect.closeTo(low, 12),
  likely: likely === null ? null : expect.closeTo(likely, 12),
  high: expect.closeTo(high, 12),
});

describe("a figure of 6.5 lb/ft² that is only stated where a laboratory is asked for", () => {
  // by hand: (6.5 − 2) ÷ (8 − 2) = 0.75; three quarters of that are 0.5625
  test.each<[ShortfallRule, ReturnType<typeof closeTo>, string, string]>([
    ["keep-open", closeTo(0, null, 1), "not-shown", "not"],
    ["ask-first", closeTo(0, null, 1), "not-shown", "not"],
    ["discount", closeTo(0.5625, 0.5625, 0.5625), "not-shown", "at a discount"],
    ["counts-as-worst", closeTo(0, 0, 0), "falls-short-on-evidence", "not"],
    ["gate-fails", closeTo(0, null, 1), "falls-short-on-evidence", "not"],
  ])("under the rule %s", (rule, value, gateOutcome, counted) => {
    const score = scoreOf(asks(rule), onPaper(6.5));
    expect(score.value).toEqual(value);
    expect([score.gate.kind, score.counted, score.because?.kind]).toEqual([gateOutcome, counted, "weak-evidence"]);
    expect(score.askFirst).toEqual(rule === "ask-first" ? ["infill"] : []);
    expect(score.coverage).toBe(0);
  });

  test("counts in full as soon as it is proven, under every rule", () => {
    for (const rule of Object.keys(shortfallRules) as ShortfallRule[]) {
      const score = scoreOf(asks(rule), proven(6.5));
      expect(score.value).toEqual(closeTo(0.75, 0.75, 0.75));
      expect([score.counted, score.because, score.coverage]).toEqual(["in full", null, 1]);
    }
  });
});

describe("a discount", () => {
  test("takes nothing off a figure that is missing: that stays open", () => {
    expect(scoreOf(asks("discount")).value).toEqual({ low: 0, likely: null, high: 1 });
  });

  test("never makes a figure worse than the worst there is", () => {
    const knots = [
      { at: "2 lb/ft²", value: "0.4" },
      { at: "8 lb/ft²", value: "1" },
    ];
    const text = asks("discount", { gate: { kind: "none" }, valueFunction: { kind: "piecewise", knots } });
    expect(scoreOf(text, onPaper(2)).value).toEqual(closeTo(0.4, 0.4, 0.4));
    // by hand: half-way up, 0.7 has 0.3 above the worst, of which a quarter goes
    expect(scoreOf(text, onPaper(5)).value).toEqual(closeTo(0.625, 0.625, 0.625));
  });

  test("can be undone, and keeps the order of figures", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.double({ min: 0, max: 10, noNaN: true }), (percent, figure) => {
        const text = asks("discount", {
          evidence: { least: "laboratory", shortfall: "discount", discount: `${percent} %` },
        });
        const [weak, full] = [scoreOf(text, onPaper(figure)), scoreOf(text, proven(figure))];
        const [lessened, value] = [weak.value?.likely ?? -1, full.value?.likely ?? -1];
        expect(lessened).toBeLessThanOrEqual(value);
        expect(undiscountedValue(weak.criterion, lessened)).toBeCloseTo(value, 9);
      }),
    ));
});

describe("a better claim", () => {
  const rules = Object.keys(shortfallRules) as ShortfallRule[];
  const rising: readonly CriterionText["valueFunction"][] = [
    { kind: "more-is-better", worst: "2 lb/ft²", best: "8 lb/ft²" },
    {
      ...{ kind: "steps", counted: "from", otherwise: "0.1" },
      steps: [
        { at: "3 lb/ft²", value: "0.5" },
        { at: "6 lb/ft²", value: "1" },
      ],
    },
    {
      kind: "piecewise",
      knots: [
        { at: "2 lb/ft²", value: "0.2" },
        { at: "4 lb/ft²", value: "0.7" },
        { at: "9 lb/ft²", value: "1" },
      ],
    },
  ];
  const asked = fc
    .record({ rule: fc.constantFrom(...rules), valueFunction: fc.constantFrom(...rising) })
    .map(({ rule, valueFunction }) => asks(rule, { valueFunction }));
  const figure = fc.double({ min: 0, max: 12, noNaN: true });
  const proof = fc.constantFrom(onPaper, proven);
  const sides = (text: CriterionText, shown?: ShownFigure) => {
    const score = scoreOf(text, shown);
    return { low: score.total?.low ?? -1, placing: placingTotal(score), high: score.total?.high ?? -1 };
  };
  const places = { "fails a gate": 0, "gate open": 1, "passes all gates": 2 } as const;

  test("never lowers a score, nor sets a bid back at a gate, whatever the rule and the proof", () =>
    fc.assert(
      fc.property(asked, proof, figure, figure, (text, shownAs, one, other) => {
        const [worse, better] = [Math.min(one, other), Math.max(one, other)];
        const [before, after] = [sides(text, shownAs(worse)), sides(text, shownAs(better))];
        expect(after.low).toBeGreaterThanOrEqual(before.low);
        expect(after.placing).toBeGreaterThanOrEqual(before.placing);
        expect(after.high).toBeGreaterThanOrEqual(before.high);
        const standings = [worse, better].map((at) => places[scoreOf(text, shownAs(at)).standing]);
        expect(standings[1]).toBeGreaterThanOrEqual(standings[0] ?? 0);
      }),
      { numRuns: 400 },
    ));

  test("counts no less with better proof, and no less than a figure that is left out", () =>
    fc.assert(
      fc.property(asked, figure, (text, at) => {
        const [silent, weak, full] = [sides(text), sides(text, onPaper(at)), sides(text, proven(at))];
        expect(full.placing).toBeGreaterThanOrEqual(weak.placing);
        expect(weak.placing).toBeGreaterThanOrEqual(silent.placing);
      }),
      { numRuns: 400 },
    ));
});

describe("what is asked of some bids only", () => {
  // infill of less than 5 lb/ft² has to be above 8 years under warranty; heavier infill is not asked for anything
  const conditional = (differing: Partial<CriterionText> = {}) =>
    criteriaOf([
      criterionText({
        ...{ id: "cover", measure: "warranty", label: "Warranty of light infill" },
        askedOf: { kind: "bids-where", measure: "infill", is: { kind: "below", limit: "5 lb/ft²" } },
        gate: { kind: "at-least", limit: "8 years" },
        valueFunction: { kind: "more-is-better", worst: "4 years", best: "12 years" },
        ...differing,
      }),
    ]);
  const years = (low: number, high = low): Figure =>
    figureFromInterval("time", { low: measured("time", low, "year"), high: measured("time", high, "year") }, working);
  const held = (warranty: Figure | null, infill?: Figure, criteria = conditional()) => {
    const shown =
      warranty === null ? {} : { cover: { figure: warranty, evidence: stated, ...(infill && { asked: infill }) } };
    const [score] = scoreBid(criteria, { bid: "a", shown }).criteria;
    if (score === undefined) throw new Error("one criterion was scored");
    return score;
  };

  test("counts as any other where it is asked", () => {
    expect(held(years(6), mass(3))).toMatchObject({
      asked: "yes",
      status: "falls short",
      value: closeTo(0.25, 0.25, 0.25),
    });
  });

  test("gives full points and no gate where it is not asked, whatever the figure", () => {
    for (const warranty of [years(6), years(20)])
      expect(held(warranty, mass(5))).toMatchObject({
        ...{ asked: "no", status: "not asked", gate: { kind: "not-asked" }, because: null },
        value: { low: 1, likely: 1, high: 1 },
      });
  });

  test("is open from what the figure gives to full points where the condition is not decided", () => {
    const score = held(years(6), mass(4, 6));
    expect(score).toMatchObject({ asked: "not decided", status: "not decided", gate: { kind: "not-shown" } });
    expect(score.value).toEqual(closeTo(0.25, null, 1));
    expect(score.because).toEqual({
      kind: "missing-input",
      what: "one figure for infill mass per area, which decides whether this is asked of the bid",
    });
  });

  test("passes the gate where its figure passes, asked or not", () => {
    expect(held(years(9), mass(4, 6)).gate.kind).toBe("meets");
  });

  test("is open where nothing is said of the condition", () => {
    expect(held(null).because).toEqual({ kind: "not-claimed", what: "infill mass per area" });
  });

  test("is read in the dimension of its own measure, or the caller has a fault", () => {
    expect(() => held(years(6), years(6))).toThrow("infill is judged by arealDensity, got a figure of time");
  });
});

describe("criteriaSchema on rules", () => {
  const issuesOf = (text: CriterionText) =>
    (criteriaSchema(measures, levels).safeParse([text]).error?.issues ?? []).map(({ path, message }) => ({
      field: path.join("."),
      message,
    }));

  test("reads what was stored before rules, sources and conditions had more to them", () => {
    const { source, askedOf, ...before } = criterionText();
    const [read] = criteriaOf([{ ...before, evidence: { least: "stated", shortfall: "ask-first" } }]);
    expect([source, askedOf]).toEqual([undefined, undefined]);
    expect(read).toMatchObject({ source: "", askedOf: { kind: "every-bid" }, evidence: { discount: 0 } });
  });

  test("keeps no discount under another rule", () => {
    expect(criteriaOf([asks("keep-open")])[0]?.evidence).toMatchObject({ shortfall: "keep-open", discount: 0 });
    expect(criteriaOf([asks("discount")])[0]?.evidence).toMatchObject({ shortfall: "discount", discount: 0.25 });
  });

  test.each(["", "0 %", "100 %", "a quarter"])("says what a discount of “%s” lacks", (discount) => {
    const text = asks("discount", { evidence: { least: "laboratory", shortfall: "discount", discount } });
    expect(issuesOf(text)).toEqual([
      {
        field: "0.evidence.discount",
        message: `The discount reads “${discount}”. Expected a part of the points, more than none and less than all, such as 25 %.`,
      },
    ]);
  });

  test("refuses a rule that has nothing to act on", () => {
    expect(issuesOf(asks("gate-fails", { gate: { kind: "none" } }))).toEqual([
      {
        field: "0.evidence.shortfall",
        message: "There is no gate here that could fail. Choose another rule, or set a gate.",
      },
    ]);
    expect(issuesOf(asks("discount", { valueFunction: { kind: "none" }, weight: "0" }))).toEqual([
      {
        field: "0.evidence.shortfall",
        message:
          "A discount is taken off points, but nothing is scored here. Choose another rule, or a way to turn figures into points.",
      },
    ]);
  });

  test("reads a condition in the dimension of its measure and names what it can’t read", () => {
    const on = (measure: string, limit: string) =>
      issuesOf(criterionText({ askedOf: { kind: "bids-where", measure, is: { kind: "below", limit } } }));
    expect(on("infill", "5 lb/ft²")).toEqual([]);
    expect(on("nothing", "5 lb/ft²")).toMatchObject([
      {
        field: "0.askedOf.measure",
        message: expect.stringContaining("The measure reads “nothing”. Expected one that can be judged"),
      },
    ]);
    expect(on("infill", "5 years")).toMatchObject([{ field: "0.askedOf.is.limit" }]);
  });
});
