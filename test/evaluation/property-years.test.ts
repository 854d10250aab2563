import { describe, expect, test } from "vitest";
import { agedResults, measures, type ProjectFile, projectFileSchema, propertyYears } from "#lib/evaluation";
import { measured } from "#lib/quantity";
import { workedProject } from "./worked-project";

type ClaimText = ProjectFile["bids"][number]["claims"][number];

const claim = (property: string, figure: string, method: string, condition: string): ClaimText => ({
  ...{ id: `${property}-${condition.replace(/\W+/g, "-")}`, property, figure, method, condition },
  evidence: "field-tested",
});

function projectWith(...lists: readonly (readonly ClaimText[])[]) {
  const [model] = workedProject.bids;
  if (model === undefined) throw new Error("the worked project has bids");
  const bids = lists.map((claims, index) => ({
    ...{ ...model, id: `bid-${index}`, letter: "ABCD".charAt(index), claims: [...claims] },
  }));
  return projectFileSchema.parse({ ...workedProject, bids });
}

const absorbs = (figure: string, condition: string, method = "f3189") =>
  claim("shock-absorption", figure, method, condition);

describe("propertyYears", () => {
  test("lays a line through figures at three ages", () => {
    // 66, 63 and 60 % in years 0, 3 and 6 fall by 1 % a year without scatter, so year 8 is 58 %; derived
    const [years] = propertyYears(
      projectWith([absorbs("66 %", "new"), absorbs("63 %", "year 3"), absorbs("60 %", "year 6")]),
    );
    const outlook = years?.bids[0]?.outlook;
    if (outlook?.kind !== "outlook") throw new Error("expected an outlook");
    expect(outlook.premise).toBe("fitted-to-aged-data");
    expect(outlook.years[8]?.likely).toBeCloseTo(0.58, 10);
    expect(outlook.years[8]?.low).toBeCloseTo(0.58, 10);
  });

  test("gives the chance that a field keeps the owner's gate, of the field as a whole", () => {
    const project = projectWith([
      absorbs("66 %", "new"),
      absorbs("64 %", "year 3"),
      absorbs("60 %", "year 6"),
      absorbs("59 %", "year 8"),
    ]);
    const [model] = project.requirements.criteria;
    const measure = measures.find(({ id }) => id === "shock-absorption.aaa-shock-absorption");
    if (model === undefined || measure === undefined) throw new Error("a criterion on a measure");
    const limit = { asEntered: "60 %", dimension: "fraction", unit: "%", value: measured("fraction", 0.6) } as const;
    const criterion = { ...model, measure, gate: { kind: "at-least", limit } } as const;
    const gated = { ...project, requirements: { ...project.requirements, criteria: [criterion] } };
    const [years] = propertyYears(gated);
    expect(years?.limits).toEqual({ low: 0.6, high: null });
    const chances = years?.bids[0]?.chances;
    if (chances?.kind !== "chances") throw new Error("expected chances");
    const at = (year: number) => chances.years[year]?.decisive ?? Number.NaN;
    expect(chances.years[0]?.locations).toBeNull();
    expect(at(0)).toBeGreaterThan(0.95);
    expect(at(8)).toBeLessThan(0.25);
    // with Student's t about the line the chance is a half where the line crosses the limit; derived
    const outlook = years?.bids[0]?.outlook;
    if (outlook?.kind !== "outlook" || outlook.basis.kind !== "line") throw new Error("expected a line");
    const crossing = (0.6 - outlook.basis.line.intercept) / outlook.basis.line.slope;
    expect(at(Math.floor(crossing))).toBeGreaterThan(0.5);
    expect(at(Math.ceil(crossing))).toBeLessThan(0.5);
  });

  test("gives no chance without a limit", () => {
    const [years] = propertyYears(
      projectWith([absorbs("66 %", "new"), absorbs("63 %", "year 3"), absorbs("60 %", "year 6")]),
    );
    expect(years?.bids[0]?.chances).toBeNull();
  });

  test("assumes nothing of the years to come with fewer", () => {
    const [years] = propertyYears(projectWith([absorbs("66 %", "new"), absorbs("60 %", "year 6")]));
    expect(years?.bids[0]?.outlook).toMatchObject({ kind: "outlook", premise: "owner-scenario" });
  });

  test("keeps methods apart that measure otherwise", () => {
    const turns = (figure: string, method: string) => claim("rotational-resistance", figure, method, "new");
    const [years] = propertyYears(
      projectWith([turns("38 Nm", "fifa-rotational")], [turns("40 Nm", "fifa-rotational")], [turns("25 Nm", "f2333")]),
    );
    expect(years?.method).toBe("fifa-rotational");
    expect(years?.bids.map(({ outlook }) => outlook.kind)).toEqual(["outlook", "outlook", "unknown"]);
  });

  test("leaves out what no bid states, and what it states without a method", () => {
    expect(propertyYears(projectWith([]))).toEqual([]);
    expect(propertyYears(projectWith([absorbs("66 %", "new", "")]))).toEqual([]);
  });
});

describe("agedResults", () => {
  test("are the middles of closed figures, ages in hours turned into years", () => {
    const [bid] = projectWith([
      claim("g-max", "110–114 g", "f355-a", "new"),
      claim("g-max", "at most 130 g", "f355-a", "year 3"),
      claim("g-max", "126 g", "f1936", "3,600 hours of use"),
      claim("g-max", "70 g", "clegg-on-turf", "year 2"),
    ]).bids;
    if (bid === undefined) throw new Error("expected a bid");
    expect(agedResults(bid, "g-max", "f355-a", 1800).map(({ age, value }) => [age, value])).toEqual([
      [{ years: 0 }, 112],
      [{ years: 2 }, 126],
    ]);
  });
});
