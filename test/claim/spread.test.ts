import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { claimSchema } from "#lib/claim";

const claim = (changes: object) =>
  claimSchema.safeParse({
    ...{ id: "level", property: "g-max", figure: "104 g", method: "f1936", condition: "new" },
    ...{ evidence: "accredited-laboratory", ...changes },
  });
const spreadOf = (changes: object) => {
  const read = claim(changes);
  return read.success ? read.data.spread : read.error.issues.map(({ path, message }) => [path.join("."), message]);
};

describe("the standard deviation of a claim", () => {
  test("is none where nothing is written, as in what was stored before", () => {
    expect(spreadOf({})).toBeNull();
    expect(spreadOf({ spread: " " })).toBeNull();
  });

  test("is read in the unit of the figure or as a share of it", () => {
    expect(spreadOf({ spread: "6 g" })).toEqual({ asEntered: "6 g", deviation: 6 });
    expect(spreadOf({ spread: "5 %" })).toEqual({ asEntered: "5 %", deviation: expect.closeTo(5.2, 12) });
    // 9 °F apart are 5 K apart: a deviation is a difference, whatever the zero of the scale
    expect(spreadOf({ property: "surface-temperature-peak", figure: "150 °F", method: "", spread: "9 °F" })).toEqual({
      asEntered: "9 °F",
      deviation: expect.closeTo(5, 12),
    });
  });

  test("says what stands in its way", () => {
    expect(spreadOf({ spread: "a little" })).toEqual([
      [
        "spread",
        "The standard deviation reads “a little”; expected a number with its unit or a percentage of the figure, such as “6 g” or “5 %”.",
      ],
    ]);
    expect(spreadOf({ figure: "100–110 g", spread: "6 g" })).toEqual([
      [
        "spread",
        "The standard deviation reads “6 g”, but a deviation belongs to one number, and the figure reads “100–110 g”.",
      ],
    ]);
    expect(spreadOf({ property: "warranty-remedy", figure: "prorated", method: "", spread: "6 g" })).toEqual([
      ["spread", "The standard deviation reads “6 g”, but this property takes no figure. Leave it empty."],
    ]);
  });

  test("leaves the word to the figure while that does not read", () => {
    const read = claim({ figure: "hard", words: "", spread: "6 g" });
    expect(read.error?.issues.map(({ path }) => path.join("."))).toEqual(["figure"]);
  });

  test("is never below 0", () =>
    fc.assert(
      fc.property(fc.integer({ min: -50, max: 50 }), (grams) => {
        const read = claim({ spread: `${grams} g` });
        if (read.success) expect(read.data.spread?.deviation).toBeGreaterThanOrEqual(0);
        else expect(grams).toBeLessThan(0);
      }),
    ));
});
