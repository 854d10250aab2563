import { describe, expect, test } from "vitest";
import { fieldDrawing } from "../../../app/project/[id]/field-tests/_tests/field-drawing";
import { at, outline } from "./places";

const room = { width: 524, tallest: 900 };

describe("fieldDrawing", () => {
  // derived: 524 less 12 on either side leaves 500 for 100 m
  test("takes the whole width, to one scale along and across", () => {
    const { scale, at: place } = fieldDrawing(outline, room, "metric");
    expect(scale).toBe(5);
    expect(place(at(100, 0)).x - place(at(0, 0)).x).toBe(500);
    expect(place(at(0, 0)).y - place(at(0, 60)).y).toBe(300);
  });

  test("draws y upwards, as on a plan", () => {
    const { at: place } = fieldDrawing(outline, room, "metric");
    expect(place(at(0, 60)).y).toBeLessThan(place(at(0, 0)).y);
  });

  test("keeps below the tallest height and stays in the middle", () => {
    const { scale, at: place, width } = fieldDrawing(outline, { width: 524, tallest: 120 }, "metric");
    expect(scale).toBe(2);
    expect(place(at(0, 0)).x).toBe(width - place(at(100, 0)).x);
  });

  test("the bar is a round length in the reader’s unit, no longer than a third", () => {
    // derived: a third of 524 is 174.7; 30 m is 150 units of the drawing, 100 ft is 30.48 m, 152.4 units
    expect(fieldDrawing(outline, room, "metric").bar).toMatchObject({ length: 150, words: "30 m" });
    const feet = fieldDrawing(outline, room, "us").bar;
    expect(feet.words).toBe("100 ft");
    expect(feet.length).toBeCloseTo(152.4, 6);
  });
});
