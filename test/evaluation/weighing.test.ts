import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evaluate, type ProjectFile, projectFileSchema, requirementsSchema } from "#lib/evaluation";
import { workedProject } from "./worked-project";

const { criteria, impact } = workedProject.requirements;
const ids = criteria.map(({ id }) => id);
type Weighing = NonNullable<ProjectFile["requirements"]["weighing"]>;

const evaluatedBy = (weighing: Weighing, chosen = criteria) =>
  evaluate(projectFileSchema.parse({ ...workedProject, requirements: { impact, criteria: chosen, weighing } }));
const sharesBy = (weighing: Weighing, chosen = criteria): readonly number[] =>
  evaluatedBy(weighing, chosen).bids[0]?.score.criteria.map(({ share }) => share) ?? [];
const problem = (weighing: unknown) => requirementsSchema.safeParse({ impact, criteria, weighing }).error?.issues[0];

describe("weighing of requirements", () => {
  test("counts each criterion's own points where nothing else is said, as in files from before", () => {
    const read = projectFileSchema.parse(workedProject);
    expect(read.requirements.weighing).toEqual({ kind: "direct" });
    expect(read.requirements.criteria.map(({ weight }) => weight)).toEqual([100, 80, 60, 90, 40]);
  });

  // cost-and-decision reference, 3.8: swing points 100, 80, 60, 90, 40 give the totals of the worked score
  test("lets swings rule the scores, whatever points the criteria have", () => {
    const points = [100, 80, 60, 90, 40].map((swing, at) => ({ criterion: ids[at] ?? "", points: String(swing) }));
    const elsewhere = criteria.map((criterion) => ({ ...criterion, weight: "7" }));
    const { bids } = evaluatedBy({ kind: "swing", points }, elsewhere);
    for (const [at, total] of [0.559075, 0.76024, 0.713436].entries())
      expect(bids[at]?.score.total?.likely).toBeCloseTo(total, 4); // the reference rounds yearly cost to $0.0001
  });

  // cost-and-decision reference, 3.2: rank order centroid and rank sum of five criteria
  test("turns an order into the weights of the tables", () => {
    const ranks = [2, 1, 4, 3, 5].map((rank, at) => ({ criterion: ids[at] ?? "", rank: String(rank) }));
    for (const [at, share] of [0.2567, 0.4567, 0.09, 0.1567, 0.04].entries())
      expect(sharesBy({ kind: "rank-order", ranks })[at]).toBeCloseTo(share, 4);
    for (const [at, share] of [0.2667, 0.3333, 0.1333, 0.2, 0.0667].entries())
      expect(sharesBy({ kind: "rank-order", rule: "sum", ranks })[at]).toBeCloseTo(share, 4);
  });

  // cost-and-decision reference, 3.3: three criteria judged 3, 5 and 3
  test("turns judgements of pairs into the weights of the worked table", () => {
    const [a = "", b = "", c = ""] = ids;
    const judgements = [
      { first: a, second: b, times: "3" },
      { first: c, second: a, times: "1/5" },
      { first: b, second: c, times: "3" },
    ];
    const shares = sharesBy({ kind: "pairwise", judgements }, criteria.slice(0, 3));
    for (const [at, share] of [0.636986, 0.258285, 0.104729].entries()) expect(shares[at]).toBeCloseTo(share, 6);
  });

  test("gives a criterion that only gates no weight, and asks for none", () => {
    const [first, ...others] = criteria;
    if (first === undefined) throw new RangeError("five criteria");
    const gating = {
      ...first,
      weight: "0",
      gate: { kind: "below", limit: "200 g" } as const,
      valueFunction: { kind: "none" } as const,
    };
    const ranks = others.map(({ id }, at) => ({ criterion: id, rank: String(at + 1) }));
    expect(sharesBy({ kind: "rank-order", ranks }, [gating, ...others])[0]).toBe(0);
  });

  test("adds up to the whole, and passes over what is said of criteria that are gone", () => {
    const swing = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(fc.tuple(swing, swing, swing, swing), (given) => {
        const points = [100, ...given].map((one, at) => ({ criterion: ids[at] ?? "", points: String(one) }));
        const shares = sharesBy({ kind: "swing", points: [...points, { criterion: "gone", points: "100" }] });
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
      { numRuns: 25 },
    );
  });

  test("says what is lacking", () => {
    expect(problem({ kind: "swing", points: [] })).toMatchObject({
      path: ["weighing"],
      message: "“Impact level” has no points for its swing yet.",
    });
    expect(problem({ kind: "swing", points: ids.map((criterion) => ({ criterion, points: "60" })) })?.message).toBe(
      "The highest swing has 60 points; expected 100 for the move from worst to best that matters most, and the others beside it.",
    );
    expect(problem({ kind: "rank-order", ranks: [{ criterion: ids[0], rank: "1" }] })?.message).toBe(
      "“Fall height” has no place yet.",
    );
    expect(problem({ kind: "pairwise", judgements: [] })?.message).toBe(
      "Not every pair is judged yet: “Impact level” against “Fall height” and 9 more.",
    );
    expect(problem({ kind: "pairwise", judgements: [{ first: "impact", second: "fall", times: "" }] })).toMatchObject({
      path: ["weighing", "judgements", 0, "times"],
      message: "This pair is not judged yet; say which of the two matters more.",
    });
  });
});
