import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { properties, readClaims } from "#lib/claim";
import { claimed, claimsAbout } from "./bid-claims";

describe("readClaims", () => {
  test("tells shown, said and missing apart in a sentence", () => {
    const claims = [
      claimed({ id: "a", property: "g-max", figure: "95 g", evidence: "stated" }),
      claimed({ id: "b", property: "g-max", figure: "110 g", evidence: "field-tested" }),
      claimed({ id: "c", property: "pile-height", figure: "2 in", evidence: "own-test" }),
    ];
    expect(readClaims(claims, ["g-max", "pile-height", "tuft-bind", "pfas-statement", "g-max"])).toEqual({
      shown: ["g-max"],
      said: ["pile-height"],
      missing: ["tuft-bind", "pfas-statement"],
      sentence:
        "Of 4 properties asked for, 1 is shown by a laboratory, a field test or a guarantee, 1 is only said and 2 are missing: tuft bind, PFAS statement.",
    });
  });

  test("has a sentence where nothing is missing and where nothing is asked for", () => {
    const claims = [claimed({ property: "g-max", figure: "95 g", evidence: "guaranteed" })];
    expect(readClaims(claims, ["g-max"]).sentence).toBe(
      "Of 1 property asked for, 1 is shown by a laboratory, a field test or a guarantee, 0 are only said and 0 are missing.",
    );
    expect(readClaims(claims, []).sentence).toBe("No properties are asked for.");
  });

  test("puts every property that is asked for in exactly one list", () => {
    const wanted = fc.uniqueArray(fc.constantFrom(...properties.map(({ id }) => id)));
    fc.assert(
      fc.property(claimsAbout("g-max", ["95 g"], [""]), wanted, (claims, asked) => {
        const { shown, said, missing } = readClaims(claims, asked);
        expect([...shown, ...said, ...missing].sort()).toEqual([...asked].sort());
      }),
    );
  });
});
