import { describe, expect, test } from "vitest";
import { requirementsSchema, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { ofKind } from "../../../app/_components/form/of-kind";
import { typedWeights } from "../../../app/project/[id]/requirements/_components/typed-weights";
import {
  pairChoices,
  pairRows,
  rankRows,
  scoredOf,
  swingInWords,
  swingRows,
  weighingChoices,
  weighingTemplates,
} from "../../../app/project/[id]/requirements/_components/weighing-rows";

const { requirements } = startingProject({ name: "Field", owner: "Owner", baseDate: plainDate("2027-06-01") });
const { criteria } = requirements; // 30, 20, 15, 25 and 10 points
const gating = criteria.map((criterion, at) =>
  at === 0 ? { ...criterion, weight: "0", valueFunction: { kind: "none" as const } } : criterion,
);

describe("the rows of each way to weigh", () => {
  test("start where the points stand, so that choosing a way loses nothing", () => {
    expect(swingRows(criteria, []).map(({ points }) => points)).toEqual(["100", "67", "50", "83", "33"]);
    expect(rankRows(criteria, []).map(({ rank }) => rank)).toEqual(["1", "3", "4", "2", "5"]);
    expect(pairRows(criteria, [])).toHaveLength(10);
    expect(pairRows(criteria, []).every(({ times }) => times === "")).toBe(true);
  });

  test("follow the criteria: what is gone goes, what is new comes without a say, what stands stays", () => {
    const rows = swingRows(criteria, []);
    expect(swingRows(criteria, rows)).toBe(rows);
    expect(swingRows(gating, rows)).toEqual(rows.slice(1));
    const back = swingRows(criteria, rows.slice(1));
    expect(back[0]).toEqual({ criterion: criteria[0]?.id, points: "0" });
    expect(back[1]).toBe(rows[1]);
    expect(rankRows(criteria, rankRows(gating, []))[0]?.rank).toBe("5");
    const judged = pairRows(gating, []).map((row) => ({ ...row, times: "3" }));
    expect(pairRows(criteria, judged).map(({ times }) => times)).toEqual(["", "", "", "", ...judged.map(() => "3")]);
    const turned = judged.map(({ first, second, times }) => ({ first: second, second: first, times }));
    expect(pairRows(gating, turned)).toBe(turned);
  });

  test.each(weighingChoices)("of “$label” read once they are filled in", ({ value }) => {
    const empty = ofKind(value, weighingTemplates[value], {}) as Record<string, unknown>;
    const filled = {
      direct: {},
      swing: { points: swingRows(criteria, []) },
      "rank-order": { ranks: rankRows(criteria, []) },
      pairwise: { judgements: pairRows(criteria, []).map((row) => ({ ...row, times: "1" })) },
    }[value];
    expect(requirementsSchema.safeParse({ ...requirements, weighing: { ...empty, ...filled } }).success).toBe(true);
  });

  test("offer every judgement that reads, and name the swing as typed", () => {
    expect(pairChoices("Heat", "Cost").map(({ value }) => value)).toEqual([
      ...["", "9", "8", "7", "6", "5", "4", "3", "2", "1"],
      ...["1/2", "1/3", "1/4", "1/5", "1/6", "1/7", "1/8", "1/9"],
    ]);
    expect(criteria.map(swingInWords)).toContain("from $2.00/ft² to $0.50/ft²");
    expect(scoredOf(gating)).toHaveLength(4);
  });
});

describe("typedWeights", () => {
  test("are the shares that scores will use", () => {
    const weighing = { kind: "rank-order", rule: "centroid", ranks: [...rankRows(criteria, [])] } as const;
    const { shares, isLacking } = typedWeights(criteria, { ...weighing, ranks: [...weighing.ranks] });
    const read = requirementsSchema.parse({ ...requirements, weighing });
    expect(isLacking).toBe(false);
    for (const [at, { weight }] of read.criteria.entries()) expect(shares[at]).toBeCloseTo(weight / 100, 12);
  });

  test("say which judgement fits least, and what is lacking", () => {
    const judged = pairRows(criteria, []).map((row) => ({ ...row, times: "1" }));
    const [first, ...others] = judged;
    if (first === undefined) throw new RangeError("ten pairs");
    const contrary = [{ ...first, times: "9" }, ...others];
    const { said } = typedWeights(criteria, { kind: "pairwise", judgements: contrary });
    expect(said).toContain(
      "You said that “Impact level as new” is 9 times as important as “Impact level in the last year looked at”; your other judgements together say that",
    );
    expect(typedWeights(criteria, { kind: "pairwise", judgements: [] })).toMatchObject({ isLacking: true });
    expect(typedWeights(criteria, undefined).shares[0]).toBeCloseTo(0.3, 12);
  });
});
