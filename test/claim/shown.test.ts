import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { properties, readClaims } from "#lib/claim";
import { plainDate } from "#lib/quantity";
import { claimed, claimsAbout } from "./bid-claims";

const today = plainDate("2026-11-25");

describe("readClaims", () => {
  test("tells shown, said and missing apart in a sentence", () => {
    const claims = [
      claimed({ id: "a", property: "g-max", figure: "95 g", evidence: "stated" }),
      claimed({ id: "b", property: "g-max", figure: "110 g", evidence: "field-tested" }),
      claimed({ id: "c", property: "pile-height", figure: "2 in", evidence: "own-test" }),
    ];
    expect(readClaims(claims, ["g-max", "pile-height", "tuft-bind", "pfas-statement", "g-max"], today)).toMatchObject({
      shown: ["g-max"],
      said: ["pile-height"],
      missing: ["tuft-bind", "pfas-statement"],
      sentence:
        "Of 4 properties asked for, 1 is shown by a laboratory, a field test or a guarantee, 1 is only said and 2 are missing: tuft bind, PFAS statement.",
    });
  });

  test("has a sentence where nothing is missing and where nothing is asked for", () => {
    const claims = [claimed({ property: "g-max", figure: "95 g", evidence: "guaranteed" })];
    expect(readClaims(claims, ["g-max"], today).sentence).toBe(
      "Of 1 property asked for, 1 is shown by a laboratory, a field test or a guarantee, 0 are only said and 0 are missing.",
    );
    expect(readClaims(claims, [], today).sentence).toBe("No properties are asked for.");
  });

  test("puts every property that is asked for in exactly one list", () => {
    const wanted = fc.uniqueArray(fc.constantFrom(...properties.map(({ id }) => id)));
    fc.assert(
      fc.property(claimsAbout("g-max", ["95 g"], [""]), wanted, (claims, asked) => {
        const { shown, said, missing } = readClaims(claims, asked, today);
        expect([...shown, ...said, ...missing].sort()).toEqual([...asked].sort());
      }),
    );
  });

  const tested = { property: "g-max", figure: "95 g", method: "f1936", document: "Report 14", page: "2" };

  test("says by whom the claims are proven and what their proof lacks", () => {
    const claims = [
      claimed({ ...tested, id: "a", evidence: "accredited-laboratory", date: "2021-11-24" }),
      claimed({ ...tested, id: "b", evidence: "accredited-laboratory", date: "2021", build: "other-build" }),
      claimed({ ...tested, id: "c", evidence: "own-test", method: "" }),
      claimed({ property: "warranty-years", figure: "8 years", id: "d", evidence: "guaranteed" }),
    ];
    const { provenBy, gaps, remarks } = readClaims(claims, [], today);
    expect(provenBy).toMatchObject({ guaranteed: 1, "accredited-laboratory": 2, "own-test": 1, stated: 0 });
    expect(gaps).toEqual({ noMethod: ["c"], noDocument: ["d"], otherBuild: ["b"], oldReport: ["a"] });
    expect(remarks).toEqual([
      "Of 4 claims, 1 is guaranteed, 2 are tested by a laboratory and 1 is tested by maker or bidder.",
      "1 figure names no test method.",
      "1 claim names no document.",
      "1 report is of another build than the one bid.",
      "1 report was made before November 25, 2021.",
    ]);
  });

  test("has nothing to remark where nothing is claimed, and speaks of many in the plural", () => {
    expect(readClaims([], ["g-max"], today).remarks).toEqual([]);
    const two = ["a", "b"].map((id) => claimed({ ...tested, id, method: "", document: "" }));
    expect(readClaims(two, [], today).remarks).toEqual([
      "Of 2 claims, 2 are only stated.",
      "2 figures name no test method.",
      "2 claims name no document.",
    ]);
  });

  test("reads ages from a leap day", () => {
    const old = claimed({ ...tested, date: "2019-02-27" });
    expect(readClaims([old], [], plainDate("2024-02-29")).gaps.oldReport).toEqual(["a"]);
  });

  test("counts every claim once by its evidence, and does not depend on their order", () => {
    const twoOrders = claimsAbout("g-max", ["95 g"], ["", "f1936"]).chain((claims) =>
      fc.tuple(fc.constant(claims), fc.shuffledSubarray(claims, { minLength: claims.length })),
    );
    fc.assert(
      fc.property(twoOrders, ([claims, shuffled]) => {
        const [one, other] = [readClaims(claims, ["g-max"], today), readClaims(shuffled, ["g-max"], today)];
        expect(Object.values(one.provenBy).reduce((sum, count) => sum + count, 0)).toBe(claims.length);
        expect(other.remarks).toEqual(one.remarks);
      }),
    );
  });
});
