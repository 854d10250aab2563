import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type FieldOutline, fieldOutline, fieldShapeSchema, isInside, type Place } from "#lib/field";
import {
  depthPlaces,
  empiricalVariogram,
  type FieldMap,
  fieldMap,
  fittedVariogram,
  inverseDistanceValue,
  levelPlaces,
  type MapWish,
  type MissingInfill,
  missingInfill,
  ordinaryKriging,
} from "#lib/fieldtest";
import { explainShortfall, type Figure } from "#lib/figure";
import { measured, type UnitOf } from "#lib/quantity";
import { at, campaignOf, eightLocations, metres } from "./campaigns";

const outlineOf = (shape: unknown): FieldOutline => {
  const found = fieldOutline(fieldShapeSchema.parse(shape));
  if (found === null) throw new Error("no outline");
  return found;
};
const rectangle = outlineOf({ kind: "rectangle", length: "100 m", width: "60 m" });
/** Like an L: the far upper quarter is missing. */
const angled = outlineOf({
  kind: "polygon-by-coordinates",
  unit: "m",
  corners: ["0,0", "60,0", "60,20", "30,20", "30,40", "0,40"],
});

const spot = fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 59 })).map(([x, y]) => at(x, y));
const depth = fc.double({ min: 0, max: 0.06, noNaN: true });
const depthPoints = fc.uniqueArray(fc.record({ place: spot, value: depth }), {
  minLength: 1,
  maxLength: 25,
  selector: ({ place }) => `${place.x} ${place.y}`,
});
type Point = Readonly<{ place: Place; value: number }>;
const wishFor = (points: readonly Point[], about: Partial<MapWish<"length">> = {}): MapWish<"length"> => ({
  dimension: "length",
  points: points.map(({ place, value }) => ({ place, value: measured("length", value) })),
  outline: rectangle,
  spacing: metres(5),
  method: "by-number-of-points",
  ...about,
});
const mapOf = (points: readonly Point[], about: Partial<MapWish<"length">> = {}): FieldMap<"length"> => {
  const map = fieldMap(wishFor(points, about));
  if (map === null) throw new Error("no map");
  return map;
};

/** Depths that fall off smoothly from one end, with a ripple: forty points. */
const sloping: readonly Point[] = Array.from({ length: 40 }, (_, index) => {
  const [x, y] = [5 + (index % 8) * 12.5 + (index % 3), 6 + Math.floor(index / 8) * 12 + (index % 2)];
  return { place: at(x, y), value: 0.03 + 0.008 * Math.sin(x / 25) + 0.004 * Math.cos(y / 15) };
});

describe("inverse distance weighting", () => {
  test("stays within what was measured and gives back the points", () => {
    fc.assert(
      fc.property(depthPoints, spot, (points, place) => {
        const values = points.map(({ value }) => value);
        const found = inverseDistanceValue(points, place, rectangle);
        expect(found).toBeGreaterThanOrEqual(Math.min(...values) - 1e-12);
        expect(found).toBeLessThanOrEqual(Math.max(...values) + 1e-12);
        for (const point of points) expect(inverseDistanceValue(points, point.place, rectangle)).toBe(point.value);
      }),
    );
  });
  test("does not look across a notch in the edge", () => {
    const points = [
      { place: at(20, 38), value: 10 },
      { place: at(55, 10), value: 50 },
    ];
    // straight from (55, 18) to (20, 38) the way crosses the missing quarter
    expect(inverseDistanceValue(points, at(55, 18), angled)).toBe(50);
    expect(inverseDistanceValue(points, at(55, 18), rectangle)).not.toBe(50);
  });
});

describe("kriging", () => {
  test("gives back the points with no error, and errs more the farther away", () => {
    const variogram = { shape: "spherical", nugget: 0.5, partialSill: 4, range: 30 } as const;
    fc.assert(
      fc.property(depthPoints, (points) => {
        const kriged = ordinaryKriging(points, variogram);
        for (const point of points) {
          const found = kriged?.(point.place);
          expect(found?.value).toBeCloseTo(point.value, 8);
          expect(found?.standardError).toBeCloseTo(0, 5);
        }
      }),
    );
    const lone = ordinaryKriging(
      [
        { place: at(10, 10), value: 3 },
        { place: at(12, 10), value: 4 },
      ],
      variogram,
    );
    const errors = [13, 20, 40].map((x) => lone?.(at(x, 10)).standardError ?? 0);
    expect(errors).toEqual(errors.toSorted((a, b) => a - b));
  });
  test("finds no solution where two points coincide", () =>
    expect(
      ordinaryKriging(
        [
          { place: at(1, 1), value: 3 },
          { place: at(1, 1), value: 4 },
        ],
        { shape: "spherical", nugget: 0, partialSill: 1, range: 10 },
      ),
    ).toBeNull());
  test("moves with the values: a constant more everywhere is a constant more between", () => {
    const variogram = fittedVariogram(empiricalVariogram(sloping));
    expect(variogram).not.toBeNull();
    if (variogram === null) return;
    const shifted = sloping.map(({ place, value }) => ({ place, value: value + 1 }));
    for (const place of [at(50, 30), at(7, 55)])
      expect(ordinaryKriging(shifted, variogram)?.(place).value).toBeCloseTo(
        (ordinaryKriging(sloping, variogram)?.(place).value ?? 0) + 1,
        9,
      );
  });
});

describe("fieldMap", () => {
  test("puts nodes inside the edge only", () => {
    const map = mapOf([{ place: at(10, 10), value: 0.03 }], { outline: angled, spacing: metres(2) });
    expect(map.nodes.every(({ place }) => isInside(angled, place))).toBe(true);
    expect(map.nodes).toHaveLength((60 * 40 - 30 * 20) / 4);
  });
  test("krigs smooth depths at forty points closely, with an error at every node", () => {
    const map = mapOf(sloping);
    expect(map.method).toBe("kriging");
    expect(map.because).toMatch(
      /^Ordinary kriging with a (spherical|exponential) variogram fitted to 40 points; values are alike up to about \d+ m apart\.$/,
    );
    const inner = map.nodes.filter(({ place }) => place.x > 15 && place.x < 85 && place.y > 12 && place.y < 48);
    for (const { place, value, standardError } of inner) {
      expect(Math.abs(value - (0.03 + 0.008 * Math.sin(place.x / 25) + 0.004 * Math.cos(place.y / 15)))).toBeLessThan(
        0.001,
      );
      expect(standardError).toBeGreaterThan(0);
    }
  });
  test("weighs by distance where there are few points, or where it is asked to", () => {
    const few = mapOf(sloping.slice(0, 12));
    expect([few.method, few.because]).toEqual([
      "inverse-distance",
      "Inverse distance weighting: 12 points are too few to fit a variogram; 30 are asked for.",
    ]);
    expect(few.nodes.every(({ standardError }) => standardError === null)).toBe(true);
    const many = Array.from({ length: 1200 }, (_, index) => ({
      place: at(1 + (index % 40) * 2.5, 1 + Math.floor(index / 40) * 2),
      value: 0.03 + 0.001 * (index % 7),
    }));
    expect(mapOf(many, { spacing: metres(20) }).because).toBe(
      "Inverse distance weighting: kriging is solved for at most 250 points, and 1,200 lie closely enough without it.",
    );
    expect(mapOf(sloping, { method: "inverse-distance" }).because).toBe("Inverse distance weighting, as asked for.");
    expect(mapOf(sloping.map(({ place }) => ({ place, value: 0.03 }))).because).toBe(
      "Inverse distance weighting: the points do not show that near values are more alike than far ones.",
    );
  });
  test("takes the mean of several readings at one place, and warns of reading between", () => {
    const map = mapOf([
      { place: at(10, 10), value: 0.02 },
      { place: at(10, 10), value: 0.04 },
    ]);
    expect(map.points).toEqual([{ place: at(10, 10), value: 0.03 }]);
    expect(map.warning).toBe(
      "Only the marked points were measured. What stands between them is worked out from their distance; a spot between two points can be harder or thinner than both. No verdict rests on it.",
    );
  });
  test("names places beyond the edge", () =>
    expect(
      mapOf([
        { place: at(10, 10), value: 0.03 },
        { place: at(10, 75), value: 0.02 },
      ]).outside,
    ).toEqual([at(10, 75)]));
  test("is made of the depths, or of the levels, of a campaign", () => {
    const campaign = campaignOf([...eightLocations, ["120", "", ""]], {
      depths: [{ id: "d1", x: "10 ft", y: "20 ft", depth: "1 in" }],
    });
    expect(depthPlaces(campaign)).toEqual([{ place: { x: 3.048, y: 6.096 }, value: 0.0254 }]);
    const levels = levelPlaces(campaign);
    expect(levels).toHaveLength(8);
    expect(levels[1]).toEqual({ place: at(10, 20), value: 129.5 });
    const map = fieldMap({
      dimension: "impactLevel",
      points: levels,
      outline: rectangle,
      spacing: metres(10),
      method: "inverse-distance",
    });
    expect(map?.nodes).toHaveLength(60);
  });
  test("is not there without a point", () => expect(fieldMap(wishFor([]))).toBeNull());
});

const missingOf = (points: readonly Point[], target: number, density: readonly [number, number]): MissingInfill => {
  const found = missingInfill({
    depths: mapOf(points, { method: "inverse-distance" }),
    target: measured("length", target),
    area: measured("area", 6000),
    bulkDensity: { low: measured("bulkDensity", density[0]), high: measured("bulkDensity", density[1]) },
    densitySource: "ambient rubber, from memory",
  });
  if (found === null) throw new Error("no map");
  return found;
};
const ends = (figure: Figure): readonly [number, number] => {
  if (figure.kind === "unknown") throw new Error(explainShortfall(figure.because));
  if (figure.kind === "known") return [figure.value, figure.value];
  return figure.kind === "range" ? [figure.low, figure.high] : [Number.NaN, Number.NaN];
};

describe("missingInfill", () => {
  test("keeps the mass: missing volume times density, and what is below less what is above is the mean", () => {
    fc.assert(
      fc.property(
        depthPoints,
        fc.double({ min: 0.005, max: 0.06, noNaN: true }),
        fc.double({ min: 100, max: 1700, noNaN: true }),
        fc.double({ min: 1, max: 1.4, noNaN: true }),
        (points, target, density, span) => {
          const found = missingOf(points, target, [density, density * span]);
          const [missing] = ends(found.missing);
          const [surplus] = ends(found.surplus);
          const [low, high] = ends(found.massToBuy);
          expect(low).toBeCloseTo(missing * density, 6);
          expect(high).toBeCloseTo(missing * density * span, 6);
          expect(missing - surplus).toBeCloseTo(6000 * (target - ends(found.meanDepth)[0]), 8);
          expect(ends(found.massToBuyAfterGrooming)[1]).toBeLessThanOrEqual(high + 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });
  test("is the same in any unit", () => {
    const inUnits = (
      position: UnitOf<"distance">,
      length: UnitOf<"length">,
      points: readonly (readonly [number, number, number])[],
    ) =>
      ends(
        missingOf(
          points.map(([x, y, value]) => ({
            place: { x: measured("distance", x, position), y: measured("distance", y, position) },
            value: measured("length", value, length),
          })),
          0.0381,
          [450, 500],
        ).missing,
      )[0];
    const inFeet = inUnits("ft", "in", [
      [30, 60, 1.25],
      [150, 90, 1.5],
      [250, 30, 1],
    ]);
    const inMetres = inUnits("m", "mm", [
      [9.144, 18.288, 31.75],
      [45.72, 27.432, 38.1],
      [76.2, 9.144, 25.4],
    ]);
    expect(inFeet).toBeCloseTo(inMetres, 8);
  });
  test("shows its working", () => {
    const { massToBuy } = missingOf([{ place: at(10, 10), value: 0.0254 }], 0.0381, [450, 500]);
    expect(massToBuy.kind === "range" ? massToBuy.working.inputs.map(({ text }) => text) : []).toEqual([
      "99.7 yd³ (76.2 m³)",
      "28.1–31.2 lb/ft³ (450–500 kg/m³)",
    ]);
  });
  test("refuses a density of nothing", () =>
    expect(() => missingOf([{ place: at(10, 10), value: 0.02 }], 0.03, [0, 500])).toThrow(RangeError));
});
