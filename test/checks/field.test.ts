import { describe, expect, test } from "vitest";
import { fieldArea, fieldShapeSchema } from "#lib/field";
import { inUnit } from "#lib/quantity";

// Sizes by the rules, as quoted in secondary publications; lacrosse from memory. Areas to the last digit printed.
const published = [
  ["us-football", 57_600, 5351.215, 1.3223, "NFL and NFHS, 360 × 160 ft"],
  ["soccer-fifa", 76_854.32, 7140, 1.7643, "FIFA recommended, 105 × 68 m"],
  ["soccer-nfhs-largest", 86_400, 8026.823, 1.9835, "NFHS, 120 × 80 yd"],
  ["soccer-nfhs-smallest", 49_500, 4598.7, 1.1364, "NFHS, 100 × 55 yd"],
  ["soccer-ncaa-largest", 81_000, 7525.146, 1.8595, "NCAA, 120 × 75 yd"],
  ["lacrosse", 59_400, 5518.441, 1.3636, "NCAA and NFHS, 110 × 60 yd, from memory"],
  ["field-hockey", 54_110.18, 5027, 1.2422, "FIH, 91.40 × 55.00 m"],
  ["rugby-largest", 75_347.37, 7000, 1.7297, "World Rugby Law 1, 100 × 70 m"],
  ["rugby-with-in-goals", 90_416.85, 8400, 2.0757, "usual total, 120 × 70 m"],
] as const;

describe("areas of fields by the rules of their sports", () => {
  test.each(published)("%s has %d ft², %d m² and %d acres", (sport, squareFeet, squareMetres, acres) => {
    const area = fieldArea(fieldShapeSchema.parse({ kind: "sport", sport, runOff: "0 ft" }));
    if (area.kind !== "known") throw new Error(`expected a known area, got ${area.kind}`);
    expect(inUnit("area", area.value, "ft²")).toBeCloseTo(squareFeet, 2);
    expect(area.value).toBeCloseTo(squareMetres, 3);
    expect(inUnit("area", area.value, "acre")).toBeCloseTo(acres, 4);
  });
});
