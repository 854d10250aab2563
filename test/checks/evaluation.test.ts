import { expect, test } from "vitest";
import { evaluate, projectFileSchema } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { inUnit, measured } from "#lib/quantity";
import { component, workedProject } from "../evaluation/worked-project";

const evaluation = evaluate(projectFileSchema.parse(workedProject));
const bidOf = (letter: string) => {
  const bid = evaluation.bids.find((candidate) => candidate.letter === letter);
  if (bid === undefined) throw new Error(`no bid ${letter}`);
  return bid;
};
const centsOf = (figure: Parameters<typeof intervalOfFigure>[0]) => intervalOfFigure(figure)?.low ?? Number.NaN;

// Derived independently of this code with discount factors; method of 10 CFR 436.16, residual as in US GSA P100.
test.each([
  ["A", 1_154_583.33, 77_606.14, 43.11],
  ["B", 1_254_676.92, 84_334.0, 46.85],
  ["C", 1_466_070.03, 98_542.93, 54.75],
])("from a file, bid %s costs $%d over the study, $%d a year and $%d an hour", (letter, total, annual, hourly) => {
  const { cost } = bidOf(letter);
  expect(Math.round(centsOf(cost.presentValue)) / 100).toBe(total);
  expect(Math.round(centsOf(cost.equivalentAnnualCost)) / 100).toBe(annual);
  const perHour = intervalOfFigure(cost.perHour)?.low ?? measured("moneyPerTime", Number.NaN);
  expect(inUnit("moneyPerTime", perHour, "$/h")).toBeCloseTo(hourly, 2);
});

// Derived by hand from the additive model with swing points 100, 80, 60, 90, 40. The source rounds the annual cost to
// $0.0001/ft², which moves a total by up to 0.0001 × 90 ÷ 370 = 0.00002.
test.each([
  ["A", 0.559075],
  ["B", 0.76024],
  ["C", 0.713436],
])("from a file, bid %s scores %d", (letter, total) => {
  expect(Math.abs((bidOf(letter).score.total?.likely ?? Number.NaN) - total)).toBeLessThan(0.00002);
});

test("from a file, the order is B, C, A", () => {
  expect(evaluation.ranking.places.map(({ bid }) => bid)).toEqual(["bid-b", "bid-c", "bid-a"]);
});

// Derived by hand: weight of the temperature below 0.249927 and of the cost below 0.776898 keep B first. The same
// rounding of the annual cost moves these crossings by less than 0.0005.
test("from a file, B leads until the temperature weighs a quarter or the cost three quarters", () => {
  const { stability } = evaluation;
  if (stability?.kind !== "led") throw new Error("expected a leader");
  const roomOf = (id: string) => stability.rooms.find(({ criterion }) => criterion.id === id)?.high ?? Number.NaN;
  expect(roomOf("heat")).toBeCloseTo(0.249927, 3);
  expect(roomOf("cost")).toBeCloseTo(0.776898, 3);
});

// 6 lb/ft² over 80,000 ft² are 480,000 lb or 240 short tons: arithmetic on the definition of the short ton
test("from a file, 6 lb/ft² of sand over 80,000 ft² weigh 240 short tons", () => {
  const [first, ...others] = workedProject.bids;
  if (first === undefined) throw new Error("expected a bid");
  const infill = { placement: "layered", components: [component("sand", "silica-sand", "6 lb/ft²")] } as const;
  const project = projectFileSchema.parse({ ...workedProject, bids: [{ ...first, infill }, ...others] });
  const mass = intervalOfFigure(evaluate(project).bids[0]?.infill.stabilisingMass ?? bidOf("A").infill.stabilisingMass);
  expect(mass === null ? Number.NaN : inUnit("mass", mass.low, "short ton")).toBeCloseTo(240, 9);
});
