import { describe, expect, test } from "vitest";
import {
  type AgedLevel,
  driftFromAgedPoints,
  explainOutlook,
  hardnessOutlook,
  newFieldOnLine,
  predictedLevel,
  severalFieldsLine,
} from "#lib/impact";
import { aged } from "./levels";
import { requirement } from "./requirement";

const on = (field: string | null, years: number, low: number, high = low): AgedLevel => ({
  ...aged(years, low, high),
  field,
});
const threeFields = [
  on("north", 0, 104),
  on("north", 3, 115),
  on("north", 6, 121),
  on("south", 1, 118),
  on("south", 4, 125),
  on("south", 7, 137),
  on("east", 2, 101),
  on("east", 5, 112),
];
const fitted = (points: readonly AgedLevel[]) => {
  const drift = driftFromAgedPoints(points);
  if (drift.kind !== "fitted") throw new Error(drift.reason);
  return drift;
};

describe("levels on several named fields", () => {
  test("are predicted as a new field of the system is", () => {
    const drift = fitted(threeFields);
    const found = severalFieldsLine(
      threeFields.map(({ years, level, field }) => ({ x: years, y: level.low, field: field ?? "", fields: 1 })),
    );
    if (found.kind !== "fitted") throw new Error(found.reason);
    expect(drift.fieldsApart).toEqual({
      ...{ kind: "several-fields", fields: 3, named: 3 },
      betweenFields: found.line.betweenFields,
    });
    for (const years of [0, 4, 12]) {
      const { likely, low, high } = newFieldOnLine(found.line, years, 0.9);
      const prediction = predictedLevel(drift, years, 0.9);
      expect(prediction.likely).toBeCloseTo(likely, 9);
      expect(prediction.low).toBeCloseTo(low, 9);
      expect(prediction.high).toBeCloseTo(high, 9);
    }
  });

  test("tell the spread from field to field in the outlook and its working", () => {
    const outlook = hardnessOutlook({ newLevel: null, agedPoints: threeFields, requirement, years: 8 });
    expect(explainOutlook(outlook)[0]).toMatch(
      /^Fitted to 8 levels in the bid, 3 fields named \(spread from field to field 9\.3 g\), at ages from 0 to 7 years/,
    );
    const level = outlook.kind === "outlook" ? outlook.years[8]?.level : undefined;
    if (level?.kind !== "range") throw new Error("a range was expected");
    expect(level.working.formula).toContain("spread between fields²");
    expect(level.working.source).toContain("restricted maximum likelihood");
  });

  test("are weighted so that a shift of every level shifts the line by as much", () => {
    const { points } = fitted(threeFields);
    expect(points.reduce((sum, { atMeanAge }) => sum + atMeanAge, 0)).toBeCloseTo(1, 9);
    expect(points.reduce((sum, { perYear }) => sum + perYear, 0)).toBeCloseTo(0, 9);
    expect(points.reduce((sum, { perYear, years }) => sum + perYear * years, 0)).toBeCloseTo(1, 9);
  });

  test("widen by stated ranges as far as their ends can move the line", () => {
    const ranged = threeFields.map((point) =>
      on(point.field ?? null, point.years, point.level.low - 2, point.level.low + 2),
    );
    const moved = threeFields.map((point) => on(point.field ?? null, point.years, point.level.low + 2));
    const [narrow, wide, up] = [threeFields, ranged, moved].map((points) => predictedLevel(fitted(points), 3.5, 0.9));
    if (!narrow || !wide || !up) throw new Error("three predictions were made");
    expect(wide.high - narrow.high).toBeGreaterThanOrEqual(up.likely - narrow.likely - 1e-6);
  });

  test.each([
    ["no field is named", threeFields.map((point) => ({ ...point, field: null })), /^No figure names the field/],
    ["one field is named", [on("north", 0, 104), on("north", 3, 112), on("north", 5, 113)], /^Only one field is named/],
    [
      "two fields only are named",
      threeFields.filter(({ field }) => field !== "east"),
      /needs at least 3 fields of the system; results stand for 2\. All count alike/,
    ],
    ["the named fields have too few results", [on("a", 0, 104), on("b", 3, 112), on("c", 5, 113)], /too few to tell/],
    [
      "each field lies exactly on one slope",
      [0, 2, 4].flatMap((years) => [100, 110, 118].map((start) => on(`field of ${start}`, years, start + 2 * years))),
      /exactly on one slope/,
    ],
  ])("count alike, with the reason, where %s", (_, points, reason) => {
    const { fieldsApart } = fitted(points);
    expect(fieldsApart.kind === "pooled" && fieldsApart.reason).toMatch(reason);
  });

  test("count a mean over fields as such", () => {
    const means = threeFields.map((point) => ({ ...point, fields: point.field === "south" ? 6 : 1 }));
    const south = fitted(means).intercept - fitted(threeFields).intercept;
    expect(south).toBeGreaterThan(0); // the mean of six fields lies higher and weighs more
  });
});
