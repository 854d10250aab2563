import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  evaluate,
  type ProjectFile,
  peoplesOrders,
  peoplesSentences,
  projectFileSchema,
  requirementsSchema,
} from "#lib/evaluation";
import { workedProject } from "./worked-project";

const { criteria, impact } = workedProject.requirements; // impact, fall, heat, cost, warranty
const ids = criteria.map(({ id }) => id);
type Weighing = NonNullable<ProjectFile["requirements"]["weighing"]>;

const points = (...given: readonly number[]) => ({
  kind: "points" as const,
  points: given.map((one, at) => ({ criterion: ids[at] ?? "", points: String(one) })),
});
const people = (shown: "apart" | "mean-only", given: Readonly<Record<string, readonly number[]>>): Weighing => ({
  ...{ kind: "several-people", shown },
  people: Object.entries(given).map(([person, row]) => ({ person, method: points(...row) })),
});
const read = (weighing: Weighing, headings: ProjectFile["requirements"]["headings"] = []) => {
  const project = projectFileSchema.parse({
    ...workedProject,
    requirements: { impact, criteria, weighing, headings },
  });
  return { project, evaluation: evaluate(project) };
};
const ordersOf = (weighing: Weighing) => {
  const { project, evaluation } = read(weighing);
  return peoplesOrders(project.requirements, evaluation);
};

describe("peoplesOrders", () => {
  // cost-and-decision reference, 3.8: points 100, 80, 60, 90, 40 give B 0.76024, C 0.713436, A 0.559075; by heat alone
  // the values are 0.2667, 0.3333 and 0.7333, so that C leads
  test("give each person the order that their own weights would make", () => {
    const orders = ordersOf(people("apart", { Athletics: [100, 80, 60, 90, 40], Health: [0, 0, 1, 0, 0] }));
    expect(orders?.people.map(({ person, ranking }) => [person, ranking.places.map(({ bid }) => bid)])).toEqual([
      ["Athletics", ["bid-b", "bid-c", "bid-a"]],
      ["Health", ["bid-c", "bid-b", "bid-a"]],
    ]);
    const [athletics, health] = orders?.people ?? [];
    for (const [at, total] of [0.559075, 0.76024, 0.713436].entries())
      expect(athletics?.totals[at]?.total).toBeCloseTo(total, 4); // the reference rounds yearly cost to $0.0001
    for (const [at, total] of [8 / 30, 1 / 3, 22 / 30].entries())
      expect(health?.totals[at]?.total).toBeCloseTo(total, 9);
    // by hand: ranks 3 1 2 and 3 2 1, column sums 6 3 3, S = 6, W = 12 × 6 ÷ (4 × 24)
    expect(orders?.agreement).toMatchObject({ kind: "measured", concordance: expect.closeTo(0.75, 12) });
  });

  test("are summed up in sentences", () => {
    const letterOf = (bid: string) => bid.slice(-1).toUpperCase();
    const said = (given: Readonly<Record<string, readonly number[]>>) => {
      const orders = ordersOf(people("apart", given));
      return orders === null ? [] : peoplesSentences(orders, letterOf);
    };
    expect(said({ Athletics: [100, 80, 60, 90, 40], Health: [0, 0, 1, 0, 0], Board: [1, 1, 1, 1, 1] })).toEqual([
      "Bid B comes first by the weights of Athletics and Board; bid C by those of Health.",
      expect.stringMatching(/^Kendall’s W of the orders is 0\.\d\d, where 1 is one order from all and 0 is none\.$/),
    ]);
    expect(said({ One: [1, 1, 1, 1, 1], Two: [2, 2, 2, 2, 2] })).toEqual([
      "Bid B comes first by everybody’s own weights.",
      "Kendall’s W of the orders is 1.00, where 1 is one order from all and 0 is none.",
    ]);
    // by hand: impact alone is worth 1 with bids B and C
    expect(said({ One: [1, 0, 0, 0, 0], Two: [2, 0, 0, 0, 0] })[0]).toBe(
      "Bids B and C share the first place by everybody’s own weights.",
    );
  });

  test("are the order of the evaluation where everybody gives the same", () => {
    const given = fc.tuple(...ids.map(() => fc.integer({ min: 1, max: 100 })));
    fc.assert(
      fc.property(given, (row) => {
        const { project, evaluation } = read(people("apart", { One: row, Two: row.map((one) => 3 * one) }));
        for (const { ranking } of peoplesOrders(project.requirements, evaluation)?.people ?? [])
          expect(ranking.places).toEqual(evaluation.ranking.places);
      }),
      { numRuns: 20 },
    );
  });

  test("stay out of sight where only the mean is to be shown, and where one person weighs", () => {
    expect(ordersOf(people("mean-only", { One: [1, 1, 1, 1, 1], Two: [1, 0, 0, 0, 0] }))).toBeNull();
    expect(ordersOf(people("apart", { One: [1, 1, 1, 1, 1] }))).toBeNull();
    expect(ordersOf({ kind: "direct" })).toBeNull();
  });
});

describe("headings of requirements", () => {
  test("lets the mean of people count under headings too", () => {
    const grouped = criteria.map((one) => ({ ...one, heading: one.id === "cost" ? "money" : "surface" }));
    const headings = [
      { id: "surface", label: "Surface", points: "70" },
      { id: "money", label: "Money", points: "30" },
    ];
    const rows = (surface: string, money: string) => ({
      kind: "points" as const,
      points: [
        { criterion: "heading:surface", points: surface },
        { criterion: "heading:money", points: money },
        ...ids.filter((id) => id !== "cost").map((criterion) => ({ criterion, points: "1" })),
      ],
    });
    const weighing = {
      ...{ kind: "several-people", shown: "apart" },
      people: [
        { person: "One", method: rows("1", "1") },
        { person: "Two", method: rows("9", "1") },
      ],
    };
    const parsed = requirementsSchema.parse({ impact, criteria: grouped, headings, weighing });
    // by hand: money has a half and a tenth, on average 0.3; the four others share the rest alike
    expect(parsed.criteria.map(({ weight }) => weight)).toEqual(
      [17.5, 17.5, 17.5, 30, 17.5].map((weight) => expect.closeTo(weight, 10)),
    );
  });

  test("refuses a heading that is not in the list, and two of one id", () => {
    const problems = (given: object) =>
      requirementsSchema
        .safeParse({ impact, criteria, ...given })
        .error?.issues.map(({ path, message }) => [path.join("."), message]);
    expect(problems({ criteria: criteria.map((one, at) => (at === 1 ? { ...one, heading: "lost" } : one)) })).toEqual([
      [
        "criteria.1.heading",
        "The heading reads “lost”, which is not in the list of headings. Expected one of them, or none.",
      ],
    ]);
    const twice = [
      { id: "a", label: "A", points: "1" },
      { id: "a", label: "B", points: "1" },
    ];
    expect(problems({ headings: twice })).toEqual([
      ["headings.1.id", "Another heading has the id “a” as well. Expected an id of its own."],
    ]);
  });
});
