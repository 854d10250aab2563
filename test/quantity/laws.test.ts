import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DimensionDefinition,
  type DimensionName,
  dimensions,
  explainQuantity,
  formatReading,
  formatValue,
  intervalOf,
  inUnit,
  likelyOf,
  measured,
  parseExact,
  parseQuantity,
  type Reading,
  type UnitSystem,
  unitFor,
} from "#lib/quantity";

const names = Object.keys(dimensions) as DimensionName[];
const definition = (name: DimensionName): DimensionDefinition => dimensions[name];
const dimension = fc.constantFrom(...names);
const system = fc.constantFrom<UnitSystem>("us", "metric");
const size = fc.double({ min: 0.001, max: 1e9, noNaN: true });
const exact = (name: DimensionName, text: string) => {
  const parsed = parseExact(name, text);
  if (!parsed.ok) throw new Error(`${name} “${text}”: ${explainQuantity(parsed.problem)}`);
  return parsed.value.value;
};
const unitsOf = (name: DimensionName) => Object.entries(definition(name).units);
const everySpelling = names.flatMap((name) =>
  unitsOf(name).flatMap(([symbol, { spellings }]) =>
    [symbol, ...spellings].map((spelling) => ({ name, symbol, spelling })),
  ),
);
/** Written with the currency in front, as the trade does. "1" is a unit for computation only. */
const written = (number: string, unit: string) =>
  unit.startsWith("$") ? `$${number}${unit.slice(1)}` : `${number} ${unit}`;
const readable = everySpelling.filter(({ spelling }) => spelling !== "1" && spelling !== "T");

describe("reading and showing", () => {
  test("what is shown reads back to the same value within the last digit shown", () => {
    fc.assert(
      fc.property(dimension, system, size, (name, us, number) => {
        fc.pre(name !== "temperature" || number > 1); // rounded below 1 K is below absolute zero
        const si = measured(name, number);
        fc.pre(Math.abs(inUnit(name, si, unitFor(name, us))) < 1e12); // beyond any field; more digits than are read
        const text = formatValue(name, si, us);
        const inverse = String(unitFor(name, us)).startsWith("1/");
        const back = exact(name, inverse ? text.replace(/^([\d,.]+) per /, "$1 1/") : text);
        const unit = definition(name).units[unitFor(name, us)];
        const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
        expect(Math.abs(back - si)).toBeLessThanOrEqual(
          0.5001 * 10 ** -decimals * (unit?.factor ?? 0) + Math.abs(si) * 1e-9,
        );
      }),
    );
  });
  test("ranges, limits and tolerances keep their kind when shown and read again", () => {
    const reading = fc
      .tuple(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 501, max: 999 }))
      .chain(([low, high]) =>
        fc.constantFrom(
          { kind: "range", low, high },
          { kind: "at-least", low },
          { kind: "at-most", high },
          { kind: "plus-or-minus", value: high, tolerance: low },
        ),
      );
    fc.assert(
      fc.property(reading, (made) => {
        const shown = formatReading("impactLevel", made as Reading<"g">, "us");
        expect(parseQuantity("impactLevel", shown)).toMatchObject({ ok: true, value: { reading: made } });
      }),
    );
  });
  test("the unit system of the reader never changes the value", () => {
    fc.assert(
      fc.property(dimension, size, (name, number) => {
        const si = measured(name, number);
        for (const one of ["us", "metric"] as const) {
          const unit = unitFor(name, one);
          expect(Math.abs(measured(name, inUnit(name, si, unit), unit) - si)).toBeLessThanOrEqual(
            1e-12 * Math.max(si, 300),
          );
        }
      }),
    );
  });
  test("twice the number is twice the quantity, except on scales with their own zero", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...readable),
        fc.integer({ min: 1, max: 99_999 }),
        ({ name, symbol, spelling }, number) => {
          fc.pre(definition(name).units[symbol]?.zero === undefined);
          const [once, twice] = [
            exact(name, written(`${number}`, spelling)),
            exact(name, written(`${2 * number}`, spelling)),
          ];
          expect(Math.abs(twice - 2 * once)).toBeLessThanOrEqual(1e-12 * twice);
        },
      ),
    );
  });
});

describe("spellings", () => {
  test.each(readable)("$name: “$spelling” is $symbol in any case", ({ name, symbol, spelling }) => {
    const capitals = /^t$|µ/.test(spelling) ? spelling : spelling.toUpperCase(); // T is ambiguous, capital µ is a Greek M
    for (const form of [spelling, capitals, spelling.toLowerCase()]) {
      expect(parseQuantity(name, written("7", form))).toMatchObject({ ok: true, value: { unit: symbol } });
    }
  });
  test("T, a tonne to some and a short ton to others, is the only spelling that stands for two units", () => {
    const twice = everySpelling.filter(({ name, spelling }) => {
      const parsed = parseQuantity(name, written("7", spelling));
      return !parsed.ok && parsed.problem.kind === "unit-ambiguous";
    });
    expect(new Set(twice.map(({ spelling }) => spelling))).toEqual(new Set(["T"]));
  });
});

describe("text from anywhere", () => {
  const fragment = fc.constantFrom(
    ..."0123456789.,-–−±/½²'\"$%°≥<~()+ \u202f\t",
    ...[
      "lb/ft²",
      " to ",
      "min ",
      " max",
      "1/",
      "e9",
      "×10³",
      " ft ",
      "in",
      "psf",
      "+/-",
      "between ",
      " and ",
      "$",
      "١",
      "𝟗",
      "\u202e",
      "\u200b",
    ],
  );
  const tradeLike = fc.array(fragment, { maxLength: 40 }).map((parts) => parts.join(""));
  const anything = fc.oneof(tradeLike, fc.string({ unit: "binary", maxLength: 250 }), fc.string({ maxLength: 250 }));
  test("never throws, and either reads finite numbers in order or gives a sentence", () => {
    fc.assert(
      fc.property(dimension, anything, (name, text) => {
        const parsed = parseQuantity(name, text);
        if (!parsed.ok) {
          expect(explainQuantity(parsed.problem)).toMatch(/^\S.*[.?]$/su);
          return;
        }
        const { low, high } = intervalOf(parsed.value.reading as Reading<string>);
        expect(low).toBeLessThanOrEqual(high);
        expect(Number.isFinite(likelyOf(parsed.value.reading as Reading<string>))).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
  test.each([
    ["digits", "9"],
    ["separators", "1,"],
    ["dashes", "-"],
    ["spaces", " 9"],
    ["words", "lb "],
    ["brackets", "("],
    ["combining marks", "e\u0301"],
    ["pictures", "👩‍🔬"],
    ["half of a pair", "\ud83d"],
  ])("refuses 100,000 characters of %s by their number, before any is read", (_, part) => {
    const parsed = parseQuantity("arealDensity", part.repeat(100_000 / part.length));
    expect(parsed).toMatchObject({ ok: false, problem: { kind: "too-long" } });
  });
  // A pattern that tries every way to divide 200 characters would not end within the time that any test has.
  test.each(["9 ", "1,", "lb ", "-1/2", "((", "½", "min "])(
    "comes to an end on the longest text it takes, of %s",
    (part) => {
      const parsed = parseQuantity("arealDensity", `9 ${part.repeat(200)}`.slice(0, 200));
      expect(parsed.ok || explainQuantity(parsed.problem)).toBeTruthy();
    },
  );
});
