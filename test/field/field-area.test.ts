import { describe, expect, test } from "vitest";
import { fieldArea, fieldShapeSchema, sportFields, suggestedRunOff } from "#lib/field";
import { inUnit } from "#lib/quantity";

const areaOf = (typed: unknown) => fieldArea(fieldShapeSchema.parse(typed));

function squareFeet(typed: unknown): number {
  const area = areaOf(typed);
  return area.kind === "known" ? inUnit("area", area.value, "ft²") : Number.NaN;
}

describe("fieldArea", () => {
  test("multiplies the sides of a rectangle and shows them as typed", () => {
    expect(areaOf({ kind: "rectangle", length: "400 ft", width: "200 ft" })).toMatchObject({
      kind: "known",
      working: {
        formula: "area = length × width",
        inputs: [
          { label: "length", text: "400 ft", from: { kind: "brief", field: "field.length" } },
          { label: "width", text: "200 ft", from: { kind: "brief", field: "field.width" } },
        ],
        source: "derived from the definition of area",
      },
    });
    expect(squareFeet({ kind: "rectangle", length: "400 ft", width: "200 ft" })).toBeCloseTo(80_000, 6);
  });

  test("takes feet and metres alike", () => {
    expect(squareFeet({ kind: "rectangle", length: "121.92 m", width: "60.96 m" })).toBeCloseTo(80_000, 6);
  });

  test("adds the run-off on all four sides", () => {
    // (360 + 2 × 10) × (160 + 2 × 10) = 380 × 180, by hand
    expect(squareFeet({ kind: "sport", sport: "us-football", runOff: "10 ft" })).toBeCloseTo(68_400, 6);
    expect(areaOf({ kind: "sport", sport: "us-football", runOff: "10 ft" })).toMatchObject({
      working: {
        formula: "area = (length + 2 × run-off) × (width + 2 × run-off)",
        inputs: [
          { label: "US football with end zones", text: "360 × 160 ft" },
          { label: "run-off on every side", text: "10 ft" },
        ],
        assumptions: ["The run-off is the same on all four sides.", "Two end zones of 30 ft included."],
      },
    });
  });

  test("says so where the size of a field is noted from memory", () => {
    expect(areaOf({ kind: "sport", sport: "lacrosse", runOff: "0 ft" })).toMatchObject({
      working: {
        assumptions: expect.arrayContaining(["The size is noted from memory: check it against the rule book."]),
      },
    });
  });

  test("takes over a measured area with the way it was found as the source", () => {
    expect(areaOf({ kind: "measured-area", area: "1.9 acres", how: "Survey of the site" })).toMatchObject({
      working: { inputs: [{ label: "area", text: "1.9 acres" }], source: "Survey of the site" },
    });
    // an acre is 43,560 ft² by definition
    expect(squareFeet({ kind: "measured-area", area: "1.9 acres", how: "Survey" })).toBeCloseTo(82_764, 6);
  });
});

describe("fieldShapeSchema", () => {
  const issues = (typed: unknown) =>
    fieldShapeSchema.safeParse(typed).error?.issues.map(({ path, message }) => `${path.join(".")}: ${message}`);

  test("names the field that does not read", () => {
    expect(issues({ kind: "rectangle", length: "360", width: "160 lb" })).toEqual([
      "length: “360” has no unit. Expected distance, for instance in ft, m, in or mm.",
      expect.stringMatching(/^width: “lb” is a unit of /),
    ]);
  });

  test("refuses a length of nothing", () => {
    expect(issues({ kind: "rectangle", length: "0 ft", width: "160 ft" })).toEqual([
      "length: “0 ft” was read as 0 ft. Expected more than 0 ft.",
    ]);
  });

  test("wants to know how an area was found", () => {
    expect(issues({ kind: "measured-area", area: "80,000 sq ft", how: " " })).toEqual([
      "how: Say how the area was found: a survey, a drawing, a measuring wheel.",
    ]);
  });

  test("refuses a sport that is not in the list", () => {
    expect(issues({ kind: "sport", sport: "chess", runOff: "0 ft" })).toEqual(["sport: Choose a sport from the list."]);
  });

  test("reads the suggested run-off", () => {
    const shape = { kind: "sport", sport: "field-hockey", runOff: suggestedRunOff.text };
    expect(fieldShapeSchema.safeParse(shape).success).toBe(true);
  });
});

test("every sport field is longer than wide and says where its size is from", () => {
  for (const { length, width, source, note } of Object.values(sportFields)) {
    expect(length).toBeGreaterThan(width);
    expect(source.length).toBeGreaterThan(10);
    expect(note).not.toBe("");
  }
});
