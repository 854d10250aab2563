import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { comparability, properties, testMethods } from "#lib/claim";

const methodIds = testMethods.map(({ id }) => id);

describe("comparability", () => {
  test("lets the field procedure stand for its apparatus, with a note", () => {
    expect(comparability("g-max", "f355-a", "f1936")).toEqual({
      kind: "comparable",
      note: "ASTM F1936 and ASTM F355, missile A use the same missile and drop height; ASTM F355, missile A describes the apparatus and ASTM F1936 its use on an installed field, so test points, temperature and age belong to the figure.",
    });
  });

  test("needs no note for one and the same method", () => {
    expect(comparability("tuft-bind", "d1335", "d1335")).toEqual({ kind: "comparable", note: "" });
  });

  test("asks for the drop height where the method leaves it open", () => {
    expect(comparability("head-injury-criterion", "f355-e", "f355-e")).toEqual({
      kind: "comparable",
      note: "ASTM F355, missile E fixes no drop height, so look in the reports whether both figures are for the same one.",
    });
  });

  test("keeps another missile apart and says why from the facts", () => {
    expect(comparability("g-max", "f355-a", "f355-e")).toEqual({
      kind: "not-comparable",
      reason:
        "ASTM F355, missile E drops a hemispherical missile of 10.1 lb (4.6 kg), 160 mm across, from a height that the report states; ASTM F355, missile A drops a flat round missile of 20 lb (9.1 kg), 128 mm across, from 24 in (610 mm), which gives 54.4 J. They differ in missile mass, striking face and drop height, so one figure does not follow from the other.",
      ask: "What does a test by ASTM F355, missile A give for G-max?",
    });
  });

  test("keeps two procedures apart that have no missile to compare", () => {
    expect(comparability("system-infiltration", "f2898", "en-12616")).toEqual({
      kind: "not-comparable",
      reason:
        "EN 12616 fills a ring that is sealed to the surface and times how fast the water sinks, while ASTM F2898 floods a part of the finished field without confining the water. One figure does not follow from the other.",
      ask: "What does a test by ASTM F2898 give for system infiltration rate?",
    });
  });

  test("does not take a method that gives no figure for the property", () => {
    expect(comparability("system-infiltration", "f2898", "d4491")).toMatchObject({
      kind: "not-comparable",
      reason:
        "ASTM D4491 passes water through a piece of the carpet alone in a laboratory cell; that gives no figure for system infiltration rate.",
    });
    expect(comparability("critical-fall-height", "f1292", "f1936").kind).toBe("not-comparable");
  });

  test("compares critical fall heights as soon as the missile is the same, but not head injury criteria", () => {
    expect(comparability("critical-fall-height", "f1292", "f3146").kind).toBe("comparable");
    expect(comparability("head-injury-criterion", "f1292", "f3146")).toMatchObject({ kind: "not-comparable" });
  });

  test("says what to ask where no method is stated", () => {
    expect(comparability("g-max", "f355-a", "not-stated")).toEqual({
      kind: "not-comparable",
      reason: "The method was not stated, so nobody can tell what the figure measures.",
      ask: "Which test method stands behind the stated G-max, and in which report and on which page is it?",
    });
  });

  test("does not depend on which of two methods is wanted", () => {
    const any = fc.constantFrom(...methodIds);
    const property = fc.constantFrom(...properties.map(({ id }) => id));
    fc.assert(
      fc.property(property, any, any, (what, one, other) => {
        expect(comparability(what, one, other).kind).toBe(comparability(what, other, one).kind);
      }),
    );
  });

  test("gives whole sentences for every pair of methods of a property", () => {
    for (const { id, methods } of properties) {
      for (const wanted of methods) {
        for (const got of [...methods, "not-stated" as const]) {
          const compared = comparability(id, wanted, got);
          if (compared.kind === "comparable") expect(compared.note).toMatch(/^$|^\p{Lu}.*\.$/u);
          else expect(`${compared.reason} ${compared.ask}`).toMatch(/^\p{Lu}[^?]*\. \p{Lu}[^?]*\?$/u);
        }
      }
    }
  });
});
