import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measured } from "#lib/quantity";
import { deliveredInfill, depthReadings, type WeighTicket } from "#lib/submittal";

const pounds = (mass: number) => measured("mass", mass, "lb");
const area = measured("area", 80_000, "ft²");
const wanted = {
  component: "sand",
  arealDensity: measured("arealDensity", 6, "lb/ft²"),
  tolerance: 0.05,
  leftOver: pounds(0),
  mostMoisture: 0.04,
};
const ticket = (
  mass: number,
  moisture: WeighTicket["moisture"] = { share: 0, of: "wet mass" },
  component = "sand",
): WeighTicket => ({ component, mass: pounds(mass), moisture });

describe("delivered infill", () => {
  // 6 lb/ft² over 80,000 ft² is 480,000 lb: the technical reference, derived there
  test("480,000 lb of dry sand over 80,000 ft² are 6 lb/ft²", () => {
    const found = deliveredInfill(wanted, [ticket(240_000), ticket(240_000), ticket(99, null, "rubber")], area);
    expect(found).toMatchObject({ tickets: 2, verdict: "as wanted" });
    expect(found.arealDensity.low).toBeCloseTo(29.294_566, 5); // 6 lb/ft², NIST SP 811: 29.295 in the reference
    expect(found.arealDensity.high).toBe(found.arealDensity.low);
    expect(found.missing.low).toBeCloseTo(0, 6);
  });

  test("water is taken off, by the mass it is stated on", () => {
    const dry = (moisture: WeighTicket["moisture"]) =>
      deliveredInfill(wanted, [ticket(100_000, moisture)], area).arealDensity.low * area;
    expect(dry({ share: 0.05, of: "wet mass" })).toBeCloseTo(pounds(95_000), 6);
    expect(dry({ share: 0.25, of: "dry mass" })).toBeCloseTo(pounds(80_000), 6);
  });

  test("what was not measured makes a range, and a range across the tolerance decides nothing", () => {
    expect(deliveredInfill(wanted, [ticket(460_000, null)], area).verdict).toBe("not decided");
    expect(deliveredInfill(wanted, [ticket(450_000, null)], area).verdict).toBe("short");
    expect(deliveredInfill(wanted, [ticket(530_000, null)], area).verdict).toBe("over");
    expect(deliveredInfill({ ...wanted, leftOver: pounds(30_000) }, [ticket(480_000)], area)).toMatchObject({
      verdict: "short",
      missing: { low: expect.closeTo(pounds(30_000), 5) },
    });
    expect(deliveredInfill(wanted, [], area)).toMatchObject({ tickets: 0, verdict: "short" });
  });

  test("at the tolerance itself it is as wanted", () =>
    expect(deliveredInfill(wanted, [ticket(456_000)], area).verdict).toBe("as wanted"));

  test("refuses an area or a moisture that can’t be", () => {
    expect(() => deliveredInfill(wanted, [], measured("area", 0))).toThrow("above 0 m²");
    expect(() => deliveredInfill(wanted, [ticket(1, { share: 1, of: "wet mass" })], area)).toThrow("no share of water");
  });
});

describe("depth readings", () => {
  const millimetres = (...depths: readonly number[]) => depths.map((depth) => measured("length", depth, "mm"));
  const aim = {
    depth: measured("length", 38, "mm"),
    average: measured("length", 3, "mm"),
    place: measured("length", 6, "mm"),
  };

  // NIST/SEMATECH e-Handbook 1.3.5.2, heat flow data: n 195, mean 9.261460, deviation 0.022789, 95 % from 9.258242 to 9.264679; figures from memory.
  // Ninety-seven pairs about the mean have just that mean and deviation.
  test("give the interval of the handbook’s example", () => {
    const values = [9.26146, ...Array.from({ length: 97 }, () => [9.26146 - 0.022789, 9.26146 + 0.022789]).flat()].map(
      (value) => measured("length", value),
    );
    const found = depthReadings(values, aim);
    if (found.kind !== "known") throw new Error(found.kind);
    expect(found.mean).toBeCloseTo(9.26146, 6);
    expect(found.deviation).toBeCloseTo(0.022789, 6);
    expect(found.low).toBeCloseTo(9.258242, 5);
    expect(found.high).toBeCloseTo(9.264679, 5);
  });

  test("are held against the depth wanted only as far as they are sure", () => {
    const verdict = (...depths: readonly number[]) => {
      const found = depthReadings(millimetres(...depths), aim);
      return found.kind === "known" ? found.verdict : found.kind;
    };
    expect(verdict(38, 38.5, 37.5, 38.2, 37.9, 38.1)).toBe("as wanted");
    expect(verdict(30, 31, 30.5, 30.2, 29.8)).toBe("short");
    expect(verdict(46, 47, 46.5, 46.2)).toBe("over");
    expect(verdict(30, 46, 38)).toBe("not decided");
    expect(verdict(38)).toBe("too-few");
  });

  test("count the places beyond the tolerance and say how many readings it takes", () => {
    const found = depthReadings(millimetres(30, 46, 38, 32, 44), aim);
    if (found.kind !== "known") throw new Error(found.kind);
    expect(found.beyond).toBe(2 + 0); // 30 and 46 are 8 mm off; 32 and 44 are 6 mm off, which is allowed
    // by hand: deviation √(8²+8²+6²+6²)/2 = 7.0711 mm; t(0.975, 23) = 2.0687 gives 2.986 mm with 24 readings, and t(0.975, 22) = 2.0739 gives 3.058 mm with 23
    expect(found.readingsNeeded).toBe(24);
  });

  test("more readings of the same spread never need to be more", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 50 }), { minLength: 3, maxLength: 20 }), (depths) => {
        const [once, twice] = [millimetres(...depths), millimetres(...depths, ...depths)].map((readings) =>
          depthReadings(readings, aim),
        );
        if (once?.kind !== "known" || twice?.kind !== "known") throw new Error("too few");
        expect(twice.high - twice.low).toBeLessThanOrEqual(once.high - once.low + 1e-15);
        expect(twice.mean).toBeCloseTo(once.mean, 12);
      }),
      { numRuns: 50 },
    );
  });
});
