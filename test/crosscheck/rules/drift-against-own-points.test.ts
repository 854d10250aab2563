import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "drift-against-own-points";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const level = (figure: string, condition: string, method = "f1936") => ({
  ...{ property: "g-max", figure, method, condition },
});
const drift = (figure: string, method = "f1936") => ({ property: "g-max-change-per-year", figure, method });

// 120 g as new and 152 g in year 8: 32 g in 8 years, 4 g a year; scatter 5 % of 120 g over 8 years, 0.75 g a year
const own = [level("120 g", "new"), level("152 g", "year 8")];

describe("the stated change a year against the bid's own levels", () => {
  test("fires where the levels rise faster than stated", () => {
    const [finding] = found(drift("≤ 1 g/year"), ...own);
    expect(finding?.severity).toBe("needs an answer");
    expect(finding?.overClaims).toEqual(["claim-0"]);
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The bid states a change of at most 1.0 g/year for G-max; its own levels change by 4.0 g/year from the youngest to the oldest.",
    );
  });

  test("fires without calling the claim too high where the levels rise more slowly", () =>
    expect(found(drift("7 g/year"), ...own).map(({ overClaims }) => overClaims)).toEqual([[]]));

  test("is silent where they agree, and where a bound leaves room", () => {
    expect(found(drift("4 g/year"), ...own)).toEqual([]);
    expect(found(drift("2–4 g/year"), ...own)).toEqual([]);
    expect(found(drift("1 g/year"), level("max 125 g", "new"), level("≤ 140 g", "year 5"))).toEqual([]);
  });

  test("allows the scatter of repeated tests, and no more", () => {
    expect(found(drift("3.26 g/year"), ...own)).toEqual([]);
    expect(found(drift("3.24 g/year"), ...own)).toHaveLength(1);
    expect(found(drift("4.74 g/year"), ...own)).toEqual([]);
    expect(found(drift("4.76 g/year"), ...own)).toHaveLength(1);
  });

  test("looks at the youngest and the oldest of several levels", () =>
    expect(found(drift("1 g/year"), level("121 g", "year 1"), ...own)[0]?.claims).toEqual([
      "claim-0",
      "claim-2",
      "claim-3",
    ]));

  test("is silent with one age, by unlike missiles, and without a stated change", () => {
    expect(found(drift("1 g/year"), level("120 g", "new"))).toEqual([]);
    expect(found(drift("1 g/year"), level("120 g", "new"), level("125 g", "6 months"))).toEqual([]);
    expect(found(drift("1 g/year"), level("120 g", "new"), level("152 g", "year 8", "clegg-on-turf"))).toEqual([]);
    expect(found(...own)).toEqual([]);
  });

  test("takes the method of the requirements where the claim names none", () =>
    expect(found(drift("1 g/year", "not-stated"), ...own)).toHaveLength(1));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(drift("1 g/year"), level("121 g", "year 1"), ...own)));

  test("a straight rise never contradicts itself", () =>
    fc.assert(
      fc.property(fc.integer({ min: 80, max: 150 }), fc.integer({ min: 0, max: 10 }), (start, rise) => {
        const later = `${start + 6 * rise} g`;
        expect(found(drift(`${rise} g/year`), level(`${start} g`, "new"), level(later, "year 6"))).toEqual([]);
      }),
    ));
});
