import { describe, expect, test } from "vitest";
import { headingKey, weightLevels } from "#lib/criteria";
import { requirementsSchema, startingProject } from "#lib/evaluation";
import { plainDate } from "#lib/quantity";
import { ofKind } from "../../../app/_components/form/of-kind";
import {
  scoredOf,
  type Typed,
  typedTree,
  typedWeights,
} from "../../../app/project/[id]/requirements/_components/typed-weights";
import {
  pairChoices,
  pairRows,
  personsChoices,
  personsTemplates,
  pointsRows,
  rankRows,
  swingInWords,
  swingRows,
  weighingChoices,
  weighingTemplates,
} from "../../../app/project/[id]/requirements/_components/weighing-rows";
import { fiveCriteria } from "../../criteria/five-criteria";

const starting = startingProject({ name: "Field", owner: "Owner", baseDate: plainDate("2027-06-01") });
const criteria = [...fiveCriteria];
const requirements = { ...starting.requirements, criteria };
const gating = criteria.map((criterion, at) =>
  at === 0 ? { ...criterion, weight: "0", valueFunction: { kind: "none" as const } } : criterion,
);
const levelsOf = (some: Typed["criteria"], headings: Typed["headings"] = []) =>
  weightLevels(typedTree({ criteria: some, headings }));
const flat = levelsOf(criteria);

const headings = [
  { id: "surface", label: "Surface", points: "60" },
  { id: "money", label: "Money", points: "40" },
  { id: "spare", label: "Nothing here", points: "900" },
];
/** The first three under “Surface”, the fourth alone under “Money”, the fifth under none. */
const grouped = criteria.map((criterion, at) => ({
  ...criterion,
  heading: at < 3 ? "surface" : at === 3 ? "money" : "",
}));
const typed = (changes: Partial<Typed>): Typed => ({ criteria, headings: [], weighing: undefined, ...changes });

describe("the rows of each way to weigh", () => {
  test("start where the points stand, so that choosing a way loses nothing", () => {
    expect(pointsRows(flat, []).map(({ points }) => points)).toEqual(["30", "20", "15", "25", "10"]);
    expect(swingRows(flat, []).map(({ points }) => points)).toEqual(["100", "67", "50", "83", "33"]);
    expect(rankRows(flat, []).map(({ rank }) => rank)).toEqual(["1", "3", "4", "2", "5"]);
    expect(pairRows(flat, [])).toHaveLength(10);
    expect(pairRows(flat, []).every(({ times }) => times === "")).toBe(true);
  });

  test("follow the criteria: what is gone goes, what is new comes without a say, what stands stays", () => {
    const rows = swingRows(flat, []);
    expect(swingRows(flat, rows)).toBe(rows);
    expect(swingRows(levelsOf(gating), rows)).toEqual(rows.slice(1));
    const back = swingRows(flat, rows.slice(1));
    expect(back[0]).toEqual({ criterion: criteria[0]?.id, points: "0" });
    expect(back[1]).toBe(rows[1]);
    expect(rankRows(flat, rankRows(levelsOf(gating), []))[0]?.rank).toBe("5");
    const judged = pairRows(levelsOf(gating), []).map((row) => ({ ...row, times: "3" }));
    expect(pairRows(flat, judged).map(({ times }) => times)).toEqual(["", "", "", "", ...judged.map(() => "3")]);
    const turned = judged.map(({ first, second, times }) => ({ first: second, second: first, times }));
    expect(pairRows(levelsOf(gating), turned)).toBe(turned);
  });

  test("are asked heading by heading, and not at all of what stands alone", () => {
    const levels = levelsOf(grouped, headings);
    expect(levels.map(({ heading, items }) => [heading, items.map(({ label }) => label)])).toEqual([
      [null, ["Surface", "Money", "Warranty"]],
      ["Surface", ["Impact level as new", "Impact level in the last year looked at", "Infill mass per area"]],
      ["Money", ["Equivalent annual cost per area"]],
    ]);
    expect(swingRows(levels, [])).toEqual([
      { criterion: headingKey("surface"), points: "100" },
      { criterion: headingKey("money"), points: "67" },
      { criterion: "warranty", points: "17" },
      { criterion: "impact-as-new", points: "100" },
      { criterion: "impact-last-year", points: "67" },
      { criterion: "infill-mass", points: "50" },
    ]);
    expect(pairRows(levels, [])).toHaveLength(3 + 3);
  });

  const filledRows = {
    points: { points: pointsRows(flat, []) },
    swing: { points: swingRows(flat, []) },
    "rank-order": { ranks: rankRows(flat, []) },
    pairwise: { judgements: pairRows(flat, []).map((row) => ({ ...row, times: "1" })) },
  };

  test.each(weighingChoices)("of “$label” read once they are filled in", ({ value }) => {
    const empty = ofKind(value, weighingTemplates[value], {}) as Record<string, unknown>;
    const people = [{ person: "Facilities", method: { kind: "points", ...filledRows.points } }];
    const filled = { ...filledRows, direct: {}, "several-people": { people } }[value];
    expect(requirementsSchema.safeParse({ ...requirements, weighing: { ...empty, ...filled } }).success).toBe(true);
  });

  test.each(personsChoices)("of one of several people, “$label”, read once they are filled in", ({ value }) => {
    const method = { ...ofKind(value, personsTemplates[value], {}), ...filledRows[value] };
    const weighing = { kind: "several-people", shown: "apart", people: [{ person: "Facilities", method }] };
    expect(requirementsSchema.safeParse({ ...requirements, weighing }).success).toBe(true);
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
    const weighing = { kind: "rank-order" as const, rule: "centroid" as const, ranks: [...rankRows(flat, [])] };
    const { shares, isLacking } = typedWeights(typed({ weighing }));
    const read = requirementsSchema.parse({ ...requirements, weighing });
    expect(isLacking).toBe(false);
    for (const [at, { weight }] of read.criteria.entries()) expect(shares[at]).toBeCloseTo(weight / 100, 12);
  });

  test("count points in proportion, and give nothing where they can’t be read yet or nothing is scored", () => {
    expect(typedWeights(typed({})).shares).toEqual([0.3, 0.2, 0.15, 0.25, 0.1]);
    const [first, second, third] = criteria;
    if (first === undefined || second === undefined || third === undefined) throw new RangeError("five criteria");
    const some = [
      { ...first, weight: " 30 " },
      { ...second, valueFunction: { kind: "none" as const } },
      { ...third, weight: "3o" },
    ];
    expect(typedWeights(typed({ criteria: some })).shares).toEqual([1, 0, 0]);
  });

  // by hand: 60 : 40 : 10 between “Surface”, “Money” and the warranty, 30 : 20 : 15 within “Surface”
  test("hand the share of a heading on, and leave a heading out that holds nothing", () => {
    const { shares } = typedWeights(typed({ criteria: grouped, headings }));
    const expected = [(6 / 11) * (30 / 65), (6 / 11) * (20 / 65), (6 / 11) * (15 / 65), 4 / 11, 1 / 11];
    for (const [at, share] of expected.entries()) expect(shares[at]).toBeCloseTo(share, 12);
    const read = requirementsSchema.parse({ ...requirements, criteria: grouped, headings });
    for (const [at, { weight }] of read.criteria.entries()) expect(weight).toBeCloseTo(100 * (expected[at] ?? 0), 10);
  });

  test("say which judgement fits least, level by level, and what is lacking", () => {
    const contrary = (levels: typeof flat) =>
      pairRows(levels, []).map((row, at) => ({ ...row, times: at === 0 ? "9" : "1" }));
    const { said } = typedWeights(typed({ weighing: { kind: "pairwise", judgements: contrary(flat) } }));
    expect(said).toEqual([
      expect.stringContaining(
        "You said that “Impact level as new” is 9 times as important as “Impact level in the last year looked at”; your other judgements together say that",
      ),
    ]);
    const judgements = contrary(levelsOf(grouped, headings));
    const onLevels = typedWeights(typed({ criteria: grouped, headings, weighing: { kind: "pairwise", judgements } }));
    expect(onLevels.said).toEqual([
      expect.stringContaining("You said that “Surface” is 9 times as important as “Money”"),
      "Under “Surface”: The judgements fit together exactly.",
    ]);
    const lacking = typedWeights(
      typed({ criteria: grouped, headings, weighing: { kind: "pairwise", judgements: [] } }),
    );
    expect([lacking.isLacking, lacking.said]).toEqual([
      true,
      ["Not every pair is judged yet: “Surface” against “Money” and 2 more."],
    ]);
  });

  test("are the mean of several people’s, each with a name", () => {
    const one = pointsRows(flat, []).map((row, at) => ({ ...row, points: at === 0 ? "10" : "0" }));
    const people = [
      { person: "Facilities", method: { kind: "points" as const, points: one } },
      { person: "Athletics", method: { kind: "points" as const, points: [...pointsRows(flat, [])] } },
    ];
    const weighing = { kind: "several-people" as const, shown: "apart" as const, people };
    const { shares, people: apart } = typedWeights(typed({ weighing }));
    expect(shares).toEqual([0.65, 0.1, 0.075, 0.125, 0.05].map((share) => expect.closeTo(share, 12)));
    expect(apart.map(({ person }) => person)).toEqual(["Facilities", "Athletics"]);
    const [first, second] = people;
    if (first === undefined || second === undefined) throw new RangeError("two people");
    const said = (some: typeof people) => typedWeights(typed({ weighing: { ...weighing, people: some } })).said;
    expect(said([])).toEqual(["Nobody has given weights yet. Add a person."]);
    expect(said([{ ...first, person: " " }])).toEqual(["Name the person."]);
    expect(said([first, { ...second, person: "Facilities" }])).toEqual([
      "“Facilities” stands there twice; expected each person once.",
    ]);
    expect(said([{ person: "Facilities", method: { kind: "points", points: [] } }])).toEqual([
      "Facilities: “Impact level as new” has no points yet.",
    ]);
  });
});
