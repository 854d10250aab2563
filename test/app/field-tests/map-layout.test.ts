import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fieldMap } from "#lib/fieldtest";
import { measured } from "#lib/quantity";
import { fieldDrawing } from "../../../app/project/[id]/field-tests/_tests/field-drawing";
import {
  cellsPath,
  classOf,
  classWords,
  mapCells,
  valueClasses,
} from "../../../app/project/[id]/field-tests/_tests/map-layout";
import { at, outline } from "./places";

describe("valueClasses", () => {
  test("are round and hold the values", () =>
    expect(valueClasses([118, 168])).toEqual([
      { low: 100, high: 120 },
      { low: 120, high: 140 },
      { low: 140, high: 160 },
      { low: 160, high: 180 },
    ]));

  test("there is one for values that do not differ", () => expect(valueClasses([120, 120])).toHaveLength(1));
  test("there is none without a value", () => expect(valueClasses([])).toEqual([]));

  test("are at most five, of one width, and every value has the one that holds it", () => {
    const value = fc.double({ min: 0.01, max: 5000, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 30 }), (values) => {
        const classes = valueClasses(values);
        expect(classes.length).toBeGreaterThan(0);
        expect(classes.length).toBeLessThanOrEqual(5);
        for (const each of values) {
          const held = classes[classOf(classes, each)];
          expect(held?.low ?? Number.NaN).toBeLessThanOrEqual(each * (1 + 1e-6) + 1e-6);
          expect(held?.high ?? Number.NaN).toBeGreaterThanOrEqual(each * (1 - 1e-6) - 1e-6);
        }
      }),
    );
  });
});

test("the words of classes share their decimals", () =>
  expect(classWords(valueClasses([1.85, 2.3]), "in")).toEqual(["1.8–2.0 in", "2.0–2.2 in", "2.2–2.4 in"]));

describe("mapCells", () => {
  const map = fieldMap({
    dimension: "impactLevel",
    outline,
    spacing: measured("distance", 5),
    method: "inverse-distance",
    points: [
      { place: at(20, 30), value: measured("impactLevel", 110) },
      { place: at(80, 30), value: measured("impactLevel", 150) },
    ],
  });
  const drawing = fieldDrawing(outline, { width: 524, tallest: 900 }, "metric");
  const cells = map === null ? [] : mapCells(map, "g", valueClasses([110, 150]), drawing);

  // derived: cells of 5 m at 5 units a metre; 20 × 12 of them
  test("cover the field without a gap: their areas add up to its area", () => {
    expect(cells).toHaveLength(240);
    expect(cells.reduce((sum, { width, height }) => sum + width * height, 0)).toBeCloseTo(500 * 300, 6);
  });

  test("lie where the map has their values", () => {
    const left = cells.find(({ x, y }) => x === drawing.at(at(15, 0)).x && y === drawing.at(at(0, 35)).y);
    const right = cells.find(({ x, y }) => x === drawing.at(at(85, 0)).x && y === drawing.at(at(0, 35)).y);
    expect(left?.value).toBeLessThan(right?.value ?? 0);
  });
});

test("cells become one path, each a closed rectangle", () =>
  expect(
    cellsPath(
      [
        { x: 10, y: 20, width: 5, height: 4, valueClass: 0, value: 1 },
        { x: 15, y: 20, width: 5, height: 4, valueClass: 0, value: 1 },
      ],
      0.25,
    ),
  ).toBe("M9.75 19.75h5.50v4.50h-5.50zM14.75 19.75h5.50v4.50h-5.50z"));
