import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BidEvaluation, evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { explainShortfall, intervalOfFigure } from "#lib/figure";
import demonstration from "../../app/_demo/demonstration-project.json";
import { component, workedProject } from "./worked-project";

const demo = demonstration as unknown as ProjectFile;
const evaluated = (file: ProjectFile) => evaluate(projectFileSchema.parse(file));
const evaluation = evaluated(demo);

function bidOf(letter: string, among = evaluation): BidEvaluation {
  const bid = among.bids.find((candidate) => candidate.letter === letter);
  if (bid === undefined) throw new Error(`no bid ${letter}`);
  return bid;
}

const chanceInYear = ({ hardness: { chances } }: BidEvaluation, year: number) =>
  chances.outlook.kind === "chances" ? chances.outlook.years[year]?.decisive : undefined;

const changedBid = (letter: string, change: (bid: ProjectFile["bids"][number]) => ProjectFile["bids"][number]) => ({
  ...demo,
  bids: demo.bids.map((bid) => (bid.letter === letter ? change(bid) : bid)),
});

describe("the demonstration project", () => {
  test("says that it is invented", () => expect(evaluation.project.notice).toMatch(/^Invented/));

  test("has findings of every severity, each in the bid that gives reason for it", () => {
    const found = evaluation.bids.map(({ letter, findings }) => [letter, findings.map(({ rule }) => rule)]);
    expect(Object.fromEntries(found)).toEqual({
      A: ["components-against-total", "warranty-shorter-than-life"],
      B: ["light-infill-without-shock-layer", "drift-against-own-points", "single-figure-from-average"],
      C: ["warranty-shorter-than-life"],
      D: [
        "impact-by-another-method",
        "float-against-migration",
        "warranty-shorter-than-life",
        "laboratory-not-accredited",
      ],
    });
  });

  test("never puts a level by another missile on the scale of the required one", () => {
    const { hardness, score } = bidOf("D");
    expect(hardness.asNew.kind).toBe("unknown");
    expect(hardness.outlook.kind).toBe("unknown");
    expect(score.criteria.find(({ criterion }) => criterion.id === "impact-new")?.status).toBe("not comparable");
  });

  test("fits bids with aged data and uses the owner's assumption for the others", () => {
    const premiseOf = (letter: string) => {
      const { outlook } = bidOf(letter).hardness;
      return outlook.kind === "outlook" ? outlook.premise : outlook.kind;
    };
    expect(["A", "B", "C"].map(premiseOf)).toEqual(["fitted-to-aged-data", "owner-scenario", "fitted-to-aged-data"]);
  });

  test("says for each bid when its chance falls below the owner's level, or why it can't", () =>
    expect(evaluation.bids.map(({ letter, hardness }) => [letter, hardness.chanceSentences[0]])).toEqual([
      ["A", "The chance that all 10 test locations stay below 165 g first falls below 95 % in year 6."],
      ["B", "The chance that all 10 test locations stay below 165 g first falls below 95 % in year 3."],
      ["C", "The chance that all 10 test locations stay below 165 g stays at 95 % or more through year 8."],
      [
        "D",
        "No chance can be given. The bid does not state any impact level by the required method. Ask the bidder for it.",
      ],
    ]));

  test("keeps the chance longer up where the owner plans to undo part of the change", () => {
    const { impact } = demo.requirements;
    const planned = { ...impact, outlook: { resets: [{ year: "3", undone: "100 %", note: "" }] } };
    const kept = bidOf("A", evaluated({ ...demo, requirements: { ...demo.requirements, impact: planned } }));
    expect(chanceInYear(kept, 6)).toBeCloseTo(chanceInYear(bidOf("A"), 3) ?? 0, 12); // all undone: three years again
    expect(chanceInYear(kept, 6)).toBeGreaterThan(chanceInYear(bidOf("A"), 6) ?? 1);
  });

  test("counts floating cork as lifting", () =>
    expect(intervalOfFigure(bidOf("D").infill.submergedMass)?.low).toBeLessThan(0));
});

describe("evaluate", () => {
  test("gives the same bytes each time", () =>
    expect(JSON.stringify(evaluated(demo))).toBe(JSON.stringify(evaluation)));

  const withoutC = (project: typeof demo) =>
    evaluated({ ...project, bids: project.bids.filter(({ letter }) => letter !== "C") });

  test("keeps every bid's scores when a bid is added or withdrawn", () => {
    const { levelling = [], ...costing } = demo.costing ?? {};
    const inFigures = levelling.map((entry) =>
      entry.plug?.kind === "median"
        ? {
            ...entry,
            plug: {
              kind: "figure",
              price: { kind: "at-base-date", amount: { kind: "lump-sum", price: "$2,700" } },
            } as const,
          }
        : entry,
    );
    const project = { ...demo, costing: { ...costing, levelling: inFigures } };
    const [before, after] = [evaluated(project), withoutC(project)];
    for (const letter of ["A", "B", "D"]) expect(bidOf(letter, after).score).toEqual(bidOf(letter, before).score);
  });

  test("says of a plug at the median that it hangs on the other bids, and moves no bid without one", () => {
    for (const letter of ["A", "D"]) expect(bidOf(letter, withoutC(demo)).score).toEqual(bidOf(letter).score);
    expect(bidOf("B").cost.notes).toEqual([
      "The median of the other bids stands in for training of the grounds staff. It changes when another bid is added or withdrawn; write it down as the owner’s own figure before bids are scored.",
    ]);
  });

  const claimsOfA = demo.bids.find(({ letter }) => letter === "A")?.claims ?? [];

  test("does not depend on the order of claims", () =>
    fc.assert(
      fc.property(fc.shuffledSubarray([...claimsOfA], { minLength: claimsOfA.length }), (claims) => {
        const shuffled = evaluated(changedBid("A", (bid) => ({ ...bid, claims })));
        expect(bidOf("A", shuffled).score).toEqual(bidOf("A").score);
        expect(bidOf("A", shuffled).findings).toEqual(bidOf("A").findings);
      }),
      { numRuns: 20 },
    ));

  test("scales mass and loads with the area", () => {
    const { field: _field, ...brief } = demo.brief;
    const sized = (area: string) =>
      evaluated({ ...demo, brief: { ...brief, field: { kind: "measured-area", area, how: "given" } } });
    const massOf = (area: string) =>
      intervalOfFigure(bidOf("A", sized(area)).infill.stabilisingMass)?.low ?? Number.NaN;
    expect(massOf("160,000 ft²") / massOf("80,000 ft²")).toBeCloseTo(2, 12);
  });

  test("gives no totals while a material is unknown, and says what to describe", () => {
    const withMoss = evaluated(
      changedBid("A", (bid) => ({
        ...bid,
        infill: { placement: "layered", components: [component("moss", "moss", "3 lb/ft²")] },
      })),
    );
    const { totalArealDensity, unknownMaterials } = bidOf("A", withMoss).infill;
    expect(unknownMaterials).toEqual(["moss"]);
    if (totalArealDensity.kind !== "unknown") throw new Error("expected no total");
    expect(explainShortfall(totalArealDensity.because)).toBe(
      "This figure needs a description of the material “moss” in the brief.",
    );
  });

  test("shows a working with inputs and a source behind every known figure", () => {
    for (const { infill, cost, hardness } of evaluation.bids) {
      const figures = [
        infill.totalArealDensity,
        infill.stabilisingMass,
        infill.depth,
        cost.presentValue,
        cost.perHour,
        hardness.asNew,
      ];
      for (const figure of figures) {
        if (figure.kind === "unknown") continue;
        expect(figure.working.formula).not.toBe("");
        expect(figure.working.inputs.length).toBeGreaterThan(0);
        expect(figure.working.source).not.toBe("");
      }
    }
  });

  test("evaluates a project without bids or criteria", () => {
    const empty = evaluated({
      ...workedProject,
      bids: [],
      requirements: { ...workedProject.requirements, criteria: [] },
    });
    expect(empty.bids).toEqual([]);
    expect(empty.ranking).toEqual({ places: [], leads: [], failing: [] });
  });

  test("a bid that says nothing gets reasons, not numbers", () => {
    const [first] = workedProject.bids;
    if (first === undefined) throw new Error("expected a bid");
    const silent = { ...first, claims: [], prices: [] };
    const [bid] = evaluated({ ...workedProject, bids: [silent] }).bids;
    expect(bid?.cost.presentValue.kind).toBe("unknown");
    expect(bid?.infill.stabilisingMass.kind).toBe("unknown");
    expect(bid?.score.total).toEqual({ low: 0, likely: null, high: 1 });
  });
});
