import { describe, expect, test } from "vitest";
import { sportFields } from "#lib/field";
import { layoutOfSport, planLayouts, testProtocols, wearZones } from "#lib/fieldtest";

describe("the registers", () => {
  test("every protocol has a source and its own id", () => {
    expect(new Set(testProtocols.map(({ id }) => id)).size).toBe(testProtocols.length);
    for (const { source, locations, minutesBetweenDrops } of testProtocols) {
      expect(source).not.toBe("");
      expect(locations).toBeGreaterThan(0);
      expect(minutesBetweenDrops).toBeGreaterThan(0);
    }
  });
  test("every layout has a source, and its spots lie within its marks", () => {
    for (const { source, sport, spots } of Object.values(planLayouts)) {
      expect(source).toMatch(/^our own layout/);
      if (sport === null) continue;
      const { length, width } = sportFields[sport];
      for (const { at, zone } of spots) {
        const [x, y] = at({ length, width });
        expect(x > 0 && x < length && y > 0 && y < width).toBe(true);
        expect(wearZones[zone].why).not.toBe("");
      }
    }
  });
  test("every sport with marks has a layout", () =>
    expect(Object.keys(layoutOfSport).toSorted()).toEqual(Object.keys(sportFields).toSorted()));
});
