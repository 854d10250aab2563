import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { completeMethod, completeProperty, properties, testMethods } from "#lib/claim";

describe("completeProperty", () => {
  test.each([
    ["tuft b", null],
    ["tuft bind", "tuft-bind"],
    ["Pile height", "pile-height"],
    ["abrasiv", "abrasiveness-index"],
    ["yarn lin", "yarn-linear-density"],
    ["rate stitch", "stitch-rate"],
    ["pile", null],
    ["nothing like it", null],
    ["", null],
  ])("takes “%s” for %s", (text, id) => expect(completeProperty(text)).toBe(id));

  test("takes the whole label of every property for that property", () => {
    for (const { id, label } of properties) expect(completeProperty(label.toUpperCase())).toBe(id);
  });

  test("never goes from one property to another as more of a label is typed", () => {
    const begun = fc
      .constantFrom(...properties)
      .chain(({ id, label }) => fc.integer({ min: 1, max: label.length }).map((at) => ({ id, label, at })));
    fc.assert(
      fc.property(begun, ({ id, label, at }) => {
        const found = completeProperty(label.slice(0, at));
        const typed = label.slice(0, at).trim().toLowerCase();
        const isWhole = properties.some(
          (other) => other.id === found && [other.label.toLowerCase(), other.id.replaceAll("-", " ")].includes(typed),
        );
        expect(found === null || found === id || isWhole).toBe(true);
      }),
    );
  });
});

describe("completeMethod", () => {
  test.each([
    ["F1936", "f1936"],
    ["1936", null],
    ["clegg hammer on", "clegg-on-turf"],
    ["advanced ath", null],
    ["tuft bind", "d1335"],
    ["pill", "d2859"],
    ["", "not-stated"],
    ["not stated", "not-stated"],
    ["ASTM", null],
  ])("takes “%s” for %s", (text, id) => expect(completeMethod(text)).toBe(id));

  test("takes the whole designation of every method for that method", () => {
    for (const { id, designation } of testMethods) expect(completeMethod(designation)).toBe(id);
  });
});
