import { describe, expect, test } from "vitest";
import { depthDeviations, depthSpread, groomings, infillClass } from "#lib/impact";
import { measured } from "#lib/quantity";
import { inches } from "../levels";

const fraction = (low: number, high: number) => ({ low: measured("fraction", low), high: measured("fraction", high) });

describe("infillClass", () => {
  test("goes by half the mass, and by the one that moves more where it can't be told", () => {
    expect(infillClass(fraction(0.5, 0.7))).toBe("mostly-mineral");
    expect(infillClass(fraction(0.4, 0.7))).toBe("mostly-light");
    expect(infillClass(null)).toBe("mostly-light");
  });
});

describe("depthDeviations", () => {
  test("are in rising order, wider for light infill and for less grooming", () => {
    for (const kind of ["mostly-mineral", "mostly-light"] as const) {
      for (const grooming of groomings) {
        const { low, likely, high } = depthDeviations[kind][grooming];
        expect(low).toBeLessThan(likely);
        expect(likely).toBeLessThan(high);
        expect(likely).toBeLessThanOrEqual(depthDeviations[kind]["less-often"].likely);
        expect(likely).toBeLessThanOrEqual(depthDeviations["mostly-light"][grooming].likely);
      }
    }
  });
});

describe("depthSpread", () => {
  test("asks for five spots", () =>
    expect(depthSpread([1, 1, 1, 1].map(inches), 0.95)).toEqual({
      kind: "not-enough",
      count: 4,
      reason: "The spread of the depth needs at least 5 measured spots, there are 4.",
    }));

  test("is nothing where every spot has the same depth", () => {
    const found = depthSpread([1, 1, 1, 1, 1].map(inches), 0.95);
    expect(found.kind === "measured" && found.deviation).toBe(0);
  });
});
