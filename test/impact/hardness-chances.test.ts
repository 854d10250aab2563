import { describe, expect, test } from "vitest";
import {
  explainChances,
  explainChanceYear,
  type HardnessChancesQuestion,
  hardnessChances,
  impactRequirementSchema,
  outlookChoices,
} from "#lib/impact";
import { measured } from "#lib/quantity";
import { aged, inches, stated } from "./levels";
import { requirement, typed } from "./requirement";

const share = (value: number) => ({ low: measured("fraction", value), high: measured("fraction", value) });
const question = (differing: Partial<HardnessChancesQuestion> = {}): HardnessChancesQuestion => ({
  stated: [{ ...stated(120), years: 0 }],
  requirement,
  facts: { method: "f355-a", level: stated(120).level, polymerShare: share(0.4), shockLayer: "none" },
  mineralShare: share(0.6),
  infillDepth: inches(1.5),
  ...{ levelsAtLoss: [], depthGrid: null },
  ...differing,
});
const withOutlook = (outlook: unknown) => impactRequirementSchema.parse({ ...typed, outlook });

describe("hardnessChances", () => {
  test("says what it rests on where the owner set nothing", () => {
    const found = hardnessChances(question());
    expect(found.assumptions).toEqual([
      "The yearly change lies between the owner's low and high, most likely at the likely one (a triangle), and a level stated as a range may lie anywhere in it alike.",
      "Infill depth differs from spot to spot with a standard deviation of 0.10 in (2.5 mm), for infill that is mostly mineral and levelled every month: owner's assumption to start from; no published figure.",
      "Sensitivity to depth loss 0.701 per in (0.0276 per mm), common practice, no source, read as growth by an even share per depth.",
      "Locations differ independently of each other and by as much in every year; none is frozen or saturated.",
    ]);
    expect(outlookChoices(requirement).setBy.spread).toBe("starting-value");
  });

  test("goes by the owner's spread, law and shock layer", () => {
    const owners = withOutlook({
      spread: { kind: "depth-deviation", deviation: "0.3 in", reason: "grid of 40 spots" },
      law: "linear",
      shockLayer: { kind: "owners-value", factor: "60 %", reason: "maker-neutral pair of tests" },
    });
    const padded = { ...question().facts, shockLayer: "present" as const };
    const found = hardnessChances(question({ requirement: owners, facts: padded }));
    expect(found.assumptions[1]).toBe(
      "Infill depth differs from spot to spot with a standard deviation of 0.30 in (7.6 mm); owner's value: grid of 40 spots",
    );
    expect(found.assumptions[2]).toBe(
      "Sensitivity to depth loss 0.421 per in (0.0166 per mm), common practice, no source; lowered to 60 % for the shock layer (owner's value: maker-neutral pair of tests), read as growth by an even amount per depth.",
    );
    expect(outlookChoices(owners).setBy).toMatchObject({ spread: "owner", law: "owner", resets: "starting-value" });
  });

  test("takes the owner's spread of the level where no law of depth holds", () => {
    const sand = { ...question().facts, polymerShare: share(0) };
    const none = hardnessChances(question({ facts: sand }));
    expect(none.outlook.kind === "chances" && none.outlook.years[0]?.locations).toBeNull();
    const owners = withOutlook({ spread: { kind: "level-deviation", share: "9 %", reason: "own yearly tests" } });
    const given = hardnessChances(question({ facts: sand, requirement: owners }));
    expect(given.outlook.kind === "chances" && given.outlook.years[0]?.locations?.allMeet).toBeGreaterThan(0.99);
    expect(given.assumptions[1]).toBe(
      "The level differs from spot to spot with a standard deviation of 9 %; owner's value: own yearly tests",
    );
  });

  const depths = [1.2, 1.4, 1.5, 1.5, 1.6, 1.6, 1.7, 1.9].map(inches);
  const grid = { date: "2030-08-16", depths };

  // by hand: deviations from 1.55 in sum to 0.30 squared, ÷ 7, root 0.20702 in
  test("takes the spread from a grid measured on the installed field where the owner says so", () => {
    const found = hardnessChances(
      question({ requirement: withOutlook({ installedSpread: "depth-grid" }), depthGrid: grid }),
    );
    expect(found.assumptions[1]).toBe(
      "Infill depth differs from spot to spot with a standard deviation of 0.21 in (5.3 mm), measured on 2030-08-16 at 8 spots of the installed field; that grid counts.",
    );
    const spread = found.outlook.kind === "chances" ? found.outlook.question.spread : null;
    if (spread?.kind !== "depth") throw new Error("a spread of depth was expected");
    expect(spread.deviation.likely / inches(1)).toBeCloseTo(0.20702, 5);
    expect(spread.deviation.low).toBeLessThan(spread.deviation.likely);
    expect(spread.deviation.high).toBeGreaterThan(spread.deviation.likely);
  });

  test("keeps what the owner set for all bids without that choice, without a grid and with too small a one", () => {
    const set = hardnessChances(question({ depthGrid: grid }));
    expect(set.assumptions).toEqual(hardnessChances(question()).assumptions);
    const asked = withOutlook({ installedSpread: "depth-grid" });
    const spreadOf = (found: ReturnType<typeof hardnessChances>) =>
      found.outlook.kind === "chances" ? found.outlook.question.spread : null;
    const none = hardnessChances(question({ requirement: asked }));
    expect(spreadOf(none)).toEqual(spreadOf(set));
    expect(none.assumptions).toContain(
      "No depths were measured on an installed field of this system, so what the owner set for all bids counts.",
    );
    const few = hardnessChances(question({ requirement: asked, depthGrid: { ...grid, depths: depths.slice(0, 4) } }));
    expect(spreadOf(few)).toEqual(spreadOf(set));
    expect(few.assumptions).toContain(
      "The depths measured on 2030-08-16 don’t count. The spread of the depth needs at least 5 measured spots, there are 4.",
    );
  });

  test("says that a grid can’t count where the answer to lost depth is not known", () => {
    const found = hardnessChances(
      question({
        requirement: withOutlook({ installedSpread: "depth-grid" }),
        facts: { ...question().facts, shockLayer: "not-stated" },
        depthGrid: grid,
      }),
    );
    expect(found.assumptions).toContain(
      "The measured depths don’t count: how the level answers to lost depth is not known.",
    );
  });

  test("follows a line where the bid carries one, and resets where they are planned", () => {
    const own = [aged(0, 118), aged(2, 127), aged(4, 131), aged(6, 143), aged(8, 148)];
    const plain = hardnessChances(question({ stated: own }));
    const kept = hardnessChances(
      question({ stated: own, requirement: withOutlook({ resets: [{ year: "5", undone: "60 %" }] }) }),
    );
    if (plain.outlook.kind === "unknown" || kept.outlook.kind === "unknown") throw new Error("levels were stated");
    expect(plain.outlook.question.basis.kind).toBe("line");
    expect(kept.outlook.years[5]?.decisive).toBe(plain.outlook.years[5]?.decisive);
    expect(kept.outlook.years[8]?.decisive).toBeGreaterThan(plain.outlook.years[8]?.decisive ?? 1);
  });

  // a level of 140 g itself leaves the chance that "at most 140 g" can't fall below
  test("gives a bound where every level is open on one side", () => {
    const open = (low: number, high: number) =>
      hardnessChances(question({ stated: [{ ...stated(low, high), years: 0 }] }));
    const exact = hardnessChances(question({ stated: [{ ...stated(140), years: 0 }] }));
    const most = open(Number.NEGATIVE_INFINITY, 140);
    expect(most.outlook.kind).toBe("unknown");
    expect(most.bound).toEqual({ stated: "at-most", outlook: exact.outlook });
    expect(explainChances(most, "B")[0]).toBe(
      "Its levels are stated as at most only, so its chances are bounds. With just that level: the chance that all 10 test locations stay below 165 g is below 95 % as new. The true chance is no smaller.",
    );
    const lower = hardnessChances(question({ stated: [{ ...stated(125), years: 0 }] })).outlook;
    if (exact.outlook.kind !== "chances" || lower.kind !== "chances") throw new Error("levels were stated");
    for (const [year, { decisive }] of exact.outlook.years.entries())
      expect(lower.years[year]?.decisive).toBeGreaterThanOrEqual(decisive - 1e-9);
    if (most.bound === null) throw new Error("a bound was expected");
    expect(explainChanceYear(most.bound.outlook, 0, "B", most.bound.stated)[0]).toMatch(
      / if the owner's assumptions hold\. That is the most it can be, as its levels are stated as at most only\.$/,
    );
    const least = open(140, Number.POSITIVE_INFINITY);
    expect(least.bound?.stated).toBe("at-least");
    expect(explainChances(least, "B")[0]).toContain("no greater");
    expect(exact.bound).toBeNull();
  });

  test("goes by the chance wanted, and by that of a stated range where none was set", () => {
    const levelOf = (outlook: unknown) => {
      const found = hardnessChances(question({ requirement: withOutlook(outlook) })).outlook;
      return found.kind === "chances" ? found.question.level : null;
    };
    expect(levelOf({})).toBeCloseTo(0.95, 12);
    expect(levelOf({ wantedChance: "80 %" })).toBeCloseTo(0.8, 12);
  });

  test("is unknown without a level", () => {
    const found = hardnessChances(question({ stated: [] }));
    expect(explainChances(found, "B")).toEqual([
      "No chance can be given. The bid does not state any impact level by the required method. Ask the bidder for it.",
    ]);
  });
});

describe("explainChances", () => {
  const hard = hardnessChances(
    question({
      stated: [{ ...stated(140), years: 0 }],
      requirement: impactRequirementSchema.parse({ ...typed, horizonYears: "6 years" }),
    }),
  );

  // the chances behind the words by adaptive quadrature in SciPy 1.17.1: 0.471 here; 0.0057, 0.846 and 0.220 below
  test("tells the first year and the last one", () =>
    expect(explainChances(hard, "B")).toEqual([
      "The chance that all 10 test locations stay below 165 g is below 95 % as new.",
      "In year 6, 5 in 10 fields like bid B would have at least one of 10 test locations at or above 165 g, if the owner's assumptions hold.",
    ]));

  test("tells of a line that it is the bid's own data", () => {
    const own = [aged(0, 118), aged(2, 127), aged(4, 131), aged(6, 143)];
    const found = hardnessChances(question({ stated: own }));
    expect(explainChanceYear(found.outlook, 0, "C")[0]).toBe(
      "As new, fewer than 1 in 100 fields like bid C would have at least one of 10 test locations at or above 165 g, if its own test data hold.",
    );
    expect(explainChanceYear(found.outlook, 10, "C")[0]).toBe(
      "In year 10, 8 in 10 fields like bid C would have at least one of 10 test locations at or above 165 g, if its own test data hold.",
    );
  });

  test("tells of the soft side where it matters", () => {
    const soft = hardnessChances(question({ stated: [{ ...stated(95), years: 0 }] }));
    expect(explainChanceYear(soft.outlook, 0, "A")[1]).toBe(
      "As new, 2 in 10 locations on fields like bid A would be softer than 90 g, if the owner's assumptions hold.",
    );
  });

  test("tells that single locations may be worse where no spread is known", () => {
    const sand = { ...question().facts, shockLayer: "not-stated" as const };
    expect(explainChances(hardnessChances(question({ facts: sand })), "D")).toEqual([
      "The chance that the field as a whole stays below 165 g stays at 95 % or more through year 12.",
      "In year 12, fewer than 1 in 100 fields like bid D would be at or above 165 g as a whole, if the owner's assumptions hold.",
      "How single locations differ from the field as a whole is not known, so some may well be worse. No figure for the effect of lost infill depth: The bid does not say whether a shock layer lies under the carpet. Ask the bidder.",
    ]);
  });
});
