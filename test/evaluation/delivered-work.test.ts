import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deliveredWork, evaluate, type ProjectFile, projectFileSchema } from "#lib/evaluation";
import { intervalOfFigure } from "#lib/figure";
import { deliverySchema } from "#lib/submittal";
import demonstration from "../../app/_demo/demonstration-project.json";

const project = projectFileSchema.parse(demonstration as unknown as ProjectFile);
const area = intervalOfFigure(evaluate(project).area)?.low ?? Number.NaN;
const delivered = (delivery: unknown) => deliveredWork({ ...project, delivery: deliverySchema.parse(delivery) });

describe("delivered work", () => {
  test("the dry mass of all tickets lies on the field, less what was left over", () =>
    fc.assert(
      fc.property(
        fc.array(fc.record({ tons: fc.integer({ min: 1, max: 40 }), water: fc.integer({ min: 0, max: 20 }) }), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.integer({ min: 0, max: 1 }),
        (loads, left) => {
          const tickets = loads.flatMap(({ tons, water }) =>
            ["sand", "rubber"].map((component) => ({ component, mass: `${tons} t`, moisture: `${water} %` })),
          );
          const found = delivered({ tickets, leftOver: [{ component: "sand", mass: `${left} t` }] });
          const dry = loads.reduce((sum, { tons, water }) => sum + 1000 * tons * (1 - water / 100), 0);
          const total = found.figures === null ? null : intervalOfFigure(found.figures.totalArealDensity);
          if (dry > 1000 * left) {
            expect((total?.low ?? 0) * area).toBeCloseTo(2 * dry - 1000 * left, 1);
            expect((total?.high ?? 0) * area).toBeCloseTo(2 * dry - 1000 * left, 1);
          }
        },
      ),
      { numRuns: 40 },
    ));

  test("bags count by their number, and without moisture the dry mass is a range", () => {
    const { components } = delivered({
      mostMoisture: "10 %",
      tickets: [{ component: "sand", bags: "10", mass: "1 t" }],
    });
    const sand = components.find(({ found }) => found.component === "sand")?.found;
    expect((sand?.arealDensity.low ?? 0) * area).toBeCloseTo(9000, 6);
    expect((sand?.arealDensity.high ?? 0) * area).toBeCloseTo(10_000, 6);
  });

  test("nothing is said of the depth while an infill of the bid has no ticket", () =>
    expect(delivered({ tickets: [{ component: "sand", mass: "20 t" }] }).figures).toBeNull());
});
