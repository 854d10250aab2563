import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainGrainSize, grainShapes, matchGrainShape, parseGrainSize, sieveNumbers } from "#lib/material";

const explained = (text: string) => {
  const parsed = parseGrainSize(text);
  return parsed.ok ? "read" : explainGrainSize(parsed.problem);
};
/** Ends of the range in mm. */
const millimetres = (text: string): readonly number[] | null => {
  const parsed = parseGrainSize(text);
  if (!parsed.ok) throw new Error(explainGrainSize(parsed.problem));
  const size = parsed.value?.size;
  return size === undefined ? null : [size.low, size.high].map((metres) => Number((metres * 1000).toPrecision(9)));
};

describe("parseGrainSize", () => {
  // ASTM E11, nominal openings, from memory: No. 20 is 0.850 mm, No. 40 is 0.425 mm, No. 10 is 2.00 mm
  test.each([
    ["20–40 mesh", 0.425, 0.85],
    ["20/40", 0.425, 0.85],
    ["mesh 40 - 20", 0.425, 0.85],
    ["#10 x #20 sieves", 0.85, 2],
    ["No. 20 to No. 40", 0.425, 0.85],
    ["0.425–0.85 mm", 0.425, 0.85],
    ["0.5 mm to 2.5 mm", 0.5, 2.5],
    ["≤ 2 mm", 0, 2],
  ])("reads “%s”", (text, low, high) => expect(millimetres(text)).toEqual([low, high]));

  test("takes an empty text as no size", () => expect(millimetres(" ")).toBeNull());

  test.each([
    ["fine", "“fine” was not read as a range of grain sizes. Expected “20–40 mesh” or “0.425–0.85 mm”."],
    [
      "20-40",
      "“20-40” does not say whether sieves or millimetres are meant. Expected “20–40 mesh” or “0.425–0.85 mm”.",
    ],
    ["20 mesh", "“20 mesh” names one sieve, and a range lies between two. Expected “20–40 mesh” or “0.425–0.85 mm”."],
    [
      "20-42 mesh",
      `Sieve 42 in “20-42 mesh” is not in the table, which holds ${sieveNumbers.join(", ")}. Expected “20–40 mesh” or “0.425–0.85 mm”.`,
    ],
    ["20-40 mm", "“20-40 mm” is not a size that grains of infill have. Expected “20–40 mesh” or “0.425–0.85 mm”."],
  ])("explains why it does not read “%s”", (text, sentence) => expect(explained(text)).toBe(sentence));

  const sieve = fc.constantFrom(...sieveNumbers);
  const pair = fc.tuple(sieve, sieve).filter(([one, other]) => one !== other);

  test("does not mind which sieve is named first", () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        expect(millimetres(`${one}-${other} mesh`)).toEqual(millimetres(`${other}/${one}`));
      }),
    );
  });

  test("reads the same range from mesh, from millimetres and from inches", () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const [low = 0, high = 0] = millimetres(`${one}-${other} mesh`) ?? [];
        expect(millimetres(`${low}-${high} mm`)).toEqual([low, high]);
        const inches = millimetres(`${low / 25.4}-${high / 25.4} in`) ?? []; // NIST SP 811: 1 in = 25.4 mm
        expect(Math.abs((inches[0] ?? 0) / low - 1)).toBeLessThan(1e-8);
        expect(Math.abs((inches[1] ?? 0) / high - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  test("finds smaller grains behind bigger mesh numbers", () => {
    fc.assert(
      fc.property(fc.uniqueArray(sieve, { minLength: 3, maxLength: 3 }), (numbers) => {
        const [coarse = 0, middle = 0, fine = 0] = numbers.toSorted((one, other) => one - other);
        const [coarser, finer] = [millimetres(`${coarse}-${middle} mesh`), millimetres(`${middle}-${fine} mesh`)];
        expect(coarser?.[0]).toBe(finer?.[1]);
        expect(coarser?.[1]).toBeGreaterThan(finer?.[1] ?? 0);
      }),
    );
  });

  test("never throws, whatever is typed", () => {
    fc.assert(fc.property(fc.string({ maxLength: 80 }), (text) => typeof parseGrainSize(text).ok === "boolean"));
  });
});

describe("matchGrainShape", () => {
  test("finds a shape by id or label, with and without its hyphen", () => {
    for (const { id, label } of grainShapes)
      expect([id, label, label.replaceAll("-", " ").toUpperCase()].map(matchGrainShape)).toEqual([id, id, id]);
    expect([" ", "round-ish"].map(matchGrainShape)).toEqual(["not-stated", null]);
  });
});
