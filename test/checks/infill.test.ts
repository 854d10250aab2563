import { describe, expect, test } from "vitest";
import { type Figure, known } from "#lib/figure";
import {
  fillRatio,
  floatProneShare,
  freePile,
  infillDepth,
  interlockedDepth,
  massInTradeUnits,
  massOfDepth,
  massOverArea,
  settledDepth,
  stabilisingMass,
  submergedMass,
  totalArealDensity,
  truckLoads,
  usualInfillMass,
  weightClass,
} from "#lib/infill";
import { inUnit, measured } from "#lib/quantity";
import { areaOf, component, ends, knownValue, reading, system, withParticleDensity } from "../infill/build";

const sand = (mass: string) => component(withParticleDensity("silica-sand", 2650), mass, "1550 kg/m³");
const rubber = (mass: string) => component(withParticleDensity("rubber-ambient", 1150), mass, "480 kg/m³");
const stated = (text: string) => ({ reading: reading("bulkDensity", text), from: { kind: "constant" } }) as const;
const millimetres = (figure: Figure<"length">) => inUnit("length", knownValue(figure), "mm");
const lengthOf = (text: string): Figure<"length"> => {
  const read = reading("length", text);
  const value = read.kind === "exact" ? read.value : measured("length", Number.NaN);
  return known("length", value, { formula: "", inputs: [], assumptions: [], source: "" });
};

describe("mass of infill, from the exact factors of NIST SP 811", () => {
  test.each([
    ["3 lb/ft²", 14.6473],
    ["6 lb/ft²", 29.2946],
    ["9 lb/ft²", 43.9418],
  ])("%s is %d kg/m²", (claimed, expected) => {
    expect(knownValue(totalArealDensity(system("layered", rubber(claimed))))).toBeCloseTo(expected, 4);
  });

  test("6 lb/ft² of sand and 3 lb/ft² of rubber make 9 lb/ft²", () => {
    const total = totalArealDensity(system("layered", sand("6 lb/ft²"), rubber("3 lb/ft²")));
    expect(inUnit("arealDensity", knownValue(total), "lb/ft²")).toBeCloseTo(9, 9);
  });

  test("6 lb/ft² on 80,000 ft² is 480,000 lb, 240 short tons, 217.7243 t", () => {
    const mass = massInTradeUnits(knownValue(stabilisingMass(system("layered", sand("6 lb/ft²")), areaOf(80_000))));
    expect(mass.pounds).toBeCloseTo(480_000, 4);
    expect(mass.shortTons).toBeCloseTo(240, 7);
    expect(mass.tonnes).toBeCloseTo(217.7243, 4);
  });

  test("half an inch of rubber at 480 kg/m³ is 6.096 kg/m², over 80,000 ft² some 49.942 short tons", () => {
    const lost = massOfDepth(measured("length", 0.5, "in"), stated("480 kg/m³"));
    expect(knownValue(lost)).toBeCloseTo(6.096, 9);
    expect(inUnit("arealDensity", knownValue(lost), "lb/ft²")).toBeCloseTo(1.2486, 4);
    const { pounds, shortTons } = massInTradeUnits(knownValue(massOverArea(lost, areaOf(80_000))));
    expect(pounds).toBeCloseTo(99_884.7, 1);
    expect(shortTons).toBeCloseTo(49.942, 3);
  });

  // Benchmark of ECHA's Committee for Socio-economic Analysis, 7 g/m² a year, as reported by a European trade association
  test("7 g/m² a year on 80,000 ft² is 52.026 kg a year", () => {
    const lost = totalArealDensity(system("layered", rubber("7 g/m²")));
    expect(knownValue(massOverArea(lost, areaOf(80_000)))).toBeCloseTo(52.026, 3);
  });

  // 480,000 lb ÷ 44,000 lb = 10.9 (by hand); 220 short tons are exactly ten loads of 22
  test("480,000 lb take 11 loads of 22 short tons, 440,000 lb take 10", () => {
    expect(knownValue(truckLoads(stabilisingMass(system("layered", sand("6 lb/ft²")), areaOf(80_000))))).toBe(11);
    expect(knownValue(truckLoads(stabilisingMass(system("layered", sand("5.5 lb/ft²")), areaOf(80_000))))).toBe(10);
  });

  // common practice, no source: heavy above 9 lb/ft², all-rubber about 3 ± 0.75 lb/ft²
  test("more than 9 lb/ft² is heavy, all-rubber infill is about 3 lb/ft²", () => {
    const classOf = (claimed: string) => weightClass(totalArealDensity(system("layered", sand(claimed))));
    expect([classOf("9.1 lb/ft²"), classOf("8.9 lb/ft²"), classOf("8.5–9.5 lb/ft²")]).toEqual([
      "heavy",
      "not-heavy",
      "may-be-heavy",
    ]);
    const { low, high } = usualInfillMass.allRubber;
    expect(inUnit("arealDensity", measured("arealDensity", (low + high) / 2), "lb/ft²")).toBeCloseTo(3, 9);
  });
});

describe("depth of infill, worked by hand from depth = mass per area ÷ loose density", () => {
  test("3 lb/ft² of rubber at 480 kg/m³ is 30.515 mm, 1.2014 in", () => {
    const depth = infillDepth(system("layered", rubber("3 lb/ft²")));
    expect(millimetres(depth)).toBeCloseTo(30.515, 3);
    expect(inUnit("length", knownValue(depth), "in")).toBeCloseTo(1.2014, 4);
  });

  test("6 lb/ft² of sand at 1550 kg/m³ is 18.900 mm, with 3 lb/ft² of rubber 49.415 mm", () => {
    expect(millimetres(infillDepth(system("layered", sand("6 lb/ft²"))))).toBeCloseTo(18.9, 3);
    const both = infillDepth(system("layered", sand("6 lb/ft²"), rubber("3 lb/ft²")));
    expect(millimetres(both)).toBeCloseTo(49.415, 3);
    expect(inUnit("length", knownValue(both), "in")).toBeCloseTo(1.9455, 4);
  });

  // Packing argument: 9.4499 mm of sand find room in 17.778 mm of rubber voids, so the mix is no less than the rubber
  test("3 lb/ft² of each, mixed, is between 30.515 mm and 39.965 mm", () => {
    const { low, high } = ends(infillDepth(system("blended", sand("3 lb/ft²"), rubber("3 lb/ft²"))));
    expect(inUnit("length", low, "mm")).toBeCloseTo(30.515, 3);
    expect(inUnit("length", high, "mm")).toBeCloseTo(39.965, 3);
  });

  // C. C. Furnas 1931, from memory: grains of void share 0.4 in two sizes pack to 1 − 0.4² = 0.84 at best, in three to 0.936
  test("grains of very different size pack as far as Furnas' limits", () => {
    const two = [
      { bed: 1, solid: 0.6 },
      { bed: 0.4, solid: 0.24 },
    ];
    const three = [{ bed: 0.16, solid: 0.096 }, ...two];
    expect(0.84 / interlockedDepth(two)).toBeCloseTo(0.84, 12);
    expect(0.936 / interlockedDepth(three)).toBeCloseTo(0.936, 12);
  });

  // Beyond Furnas' optimum fines carry the bed: coarse solids 0.6 embedded in 0.8 of fines make 1.4 (by hand)
  test("coarse grains are embedded where fines overfill their voids", () => {
    const depth = interlockedDepth([
      { bed: 1, solid: 0.6 },
      { bed: 0.8, solid: 0.48 },
    ]);
    expect(depth).toBeCloseTo(1.4, 12);
  });

  test("30.5 mm that settle from 480 to 560 kg/m³ become 26.143 mm", () => {
    const settled = settledDepth(lengthOf("30.5 mm"), { placed: stated("480 kg/m³"), settled: stated("560 kg/m³") });
    expect(millimetres(settled)).toBeCloseTo(26.143, 3);
  });
});

describe("pile and infill", () => {
  const pile = (text: string) => ({ reading: reading("length", text), from: { kind: "constant" } }) as const;

  test("a pile of 2.25 in over 1.75 in of infill stands 0.5 in free", () => {
    expect(inUnit("length", knownValue(freePile(pile("2.25 in"), lengthOf("1.75 in"))), "in")).toBeCloseTo(0.5, 9);
  });

  // Penn State, ball roll report of its sports surface centre, 2012: prints 69 % and 56 % (exact: 56.7 %)
  test("the surveyed fields are filled to 69 % and 56.7 %", () => {
    expect(knownValue(fillRatio(pile("2.0 in"), lengthOf("35 mm")))).toBeCloseTo(0.689, 3);
    expect(knownValue(fillRatio(pile("2.5 in"), lengthOf("36 mm")))).toBeCloseTo(0.5669, 4);
  });
});

describe("infill under water, by Archimedes' principle", () => {
  // By hand: 10 · (1 − 998/2650) = 6.23396; 10 · (1 − 998/1150) = 1.32174; 1 · (1 − 998/200) = −3.99
  test("10 kg/m² of sand press with 6.234, of rubber with 1.3217 kg/m²", () => {
    expect(knownValue(submergedMass(system("layered", sand("10 kg/m²"))))).toBeCloseTo(6.23396, 5);
    expect(knownValue(submergedMass(system("layered", rubber("10 kg/m²"))))).toBeCloseTo(1.32174, 5);
  });

  test("1 kg/m² of cork lifts with 3.99 kg/m² and is all float-prone", () => {
    const cork = component(withParticleDensity("cork", 200), "1 kg/m²", "140 kg/m³");
    expect(knownValue(submergedMass(system("layered", cork)))).toBeCloseTo(-3.99, 9);
    expect(knownValue(floatProneShare(system("layered", cork)))).toBe(1);
    expect(knownValue(floatProneShare(system("layered", rubber("3 lb/ft²"))))).toBe(0);
  });
});
