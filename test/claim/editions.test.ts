import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareEditions, editionRegister, testMethods } from "#lib/claim";

describe("compareEditions", () => {
  test("finds nothing against an edition that nobody names, or a method without history", () => {
    expect(compareEditions("f1936", null, null)).toEqual({ kind: "alike" });
    expect(compareEditions("d1335", null, 1998)).toEqual({ kind: "alike" });
  });

  test("warns of an edition that is older than the newest known", () => {
    expect(compareEditions("f1936", null, 2010)).toEqual({
      kind: "caution",
      sentence: "The report names the edition of 2010; the one of 2019 is newer.",
    });
    expect(compareEditions("f1936", 2010, 2010)).toEqual({ kind: "alike" });
  });

  test("sets figures apart between which the procedure changed", () => {
    expect(compareEditions("aaa-shock-absorption", 2015, 2009)).toMatchObject({
      kind: "unlike",
      reason: expect.stringMatching(/another apparatus\. The report names the edition of 2009\.$/),
    });
  });

  test("warns where limits changed", () => {
    expect(compareEditions("en-71-3", 2021, 2013)).toMatchObject({
      kind: "caution",
      sentence: expect.stringContaining("from 160 to 23 mg/kg"),
    });
  });

  const years = fc.integer({ min: 1980, max: 2040 });

  test("holds an edition to be like itself", () => {
    fc.assert(
      fc.property(fc.constantFrom(...testMethods.map(({ id }) => id)), years, (method, year) => {
        expect(compareEditions(method, year, year)).toEqual({ kind: "alike" });
      }),
    );
  });

  test("sets two editions apart whichever of them is wanted", () => {
    fc.assert(
      fc.property(fc.constantFrom(...editionRegister), years, years, ({ method }, one, other) => {
        const unlike = (wanted: number, got: number) => compareEditions(method, wanted, got).kind === "unlike";
        expect(unlike(one, other)).toBe(unlike(other, one));
      }),
    );
  });

  test("is never told of a change without its source", () => {
    for (const { source, changes } of editionRegister) {
      expect(source).not.toBe("");
      for (const change of changes) {
        expect(change.what).toMatch(/^\p{Lu}.*\.$/u);
        expect(change.source).not.toBe("");
      }
    }
  });
});
