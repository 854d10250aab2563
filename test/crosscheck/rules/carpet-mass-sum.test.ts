import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "carpet-mass-sum";
const stated = (pile: string, primary: string, secondary: string, total: string) =>
  claims(
    { property: "pile-mass", figure: pile },
    { property: "primary-backing-mass", figure: primary },
    { property: "secondary-backing-mass", figure: secondary },
    { property: "carpet-total-mass", figure: total },
  );
const found = (...figures: readonly [string, string, string, string]) =>
  foundBy(rule, checkedBid({ claims: stated(...figures) }));

describe("pile and backings against the whole carpet", () => {
  // a published specification sheet of a carpet: 50 oz/yd² of pile and 27 oz/yd² of backing make 77 oz/yd²
  test("is silent for 50, 7 and 20 oz/yd² that make 77", () =>
    expect(found("50 oz/yd²", "7 oz/yd²", "20 oz/yd²", "77 oz/yd²")).toEqual([]));

  test("says that parts heavier than the whole can't be true", () => {
    const [finding] = found("50 oz/yd²", "7 oz/yd²", "20 oz/yd²", "70 oz/yd²");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("can't be true");
    expect(tell(finding.sentence, "us")).toBe(
      "Pile, primary and secondary backing add up to 77.0 oz/yd²; the bid states a carpet of 70.0 oz/yd² in total. Both can’t be true.",
    );
  });

  test("asks where the whole is heavier than its parts, for a layer may not be listed", () =>
    expect(found("50 oz/yd²", "7 oz/yd²", "20 oz/yd²", "84 oz/yd²").map(({ severity }) => severity)).toEqual([
      "needs an answer",
    ]));

  test("allows two parts in a hundred for rounding, and no more, on both sides", () => {
    expect(found("51 oz/yd²", "11 oz/yd²", "40 oz/yd²", "100 oz/yd²")).toEqual([]);
    expect(found("49 oz/yd²", "9 oz/yd²", "40 oz/yd²", "100 oz/yd²")).toEqual([]);
    expect(found("51.1 oz/yd²", "11 oz/yd²", "40 oz/yd²", "100 oz/yd²")).toHaveLength(1);
    expect(found("48.9 oz/yd²", "9 oz/yd²", "40 oz/yd²", "100 oz/yd²")).toHaveLength(1);
  });

  test("holds some of the parts against the whole from above only", () => {
    const some = (total: string) =>
      claims({ property: "pile-mass", figure: "50 oz/yd²" }, { property: "carpet-total-mass", figure: total });
    expect(foundBy(rule, checkedBid({ claims: some("90 oz/yd²") }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: some("48 oz/yd²") }))).toHaveLength(1);
  });

  test("is silent where ranges leave room or the whole or every part is missing", () => {
    expect(found("48–52 oz/yd²", "7 oz/yd²", "20–24 oz/yd²", "81 oz/yd²")).toEqual([]);
    const all = stated("50 oz/yd²", "7 oz/yd²", "20 oz/yd²", "60 oz/yd²");
    expect(foundBy(rule, checkedBid({ claims: all.slice(0, 3) }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: all.slice(3) }))).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    // 1 oz/yd² is 33.90575 g/m² (NIST SP 811)
    const inGrams = (ounces: number) => `${(ounces * 33.905747).toFixed(4)} g/m²`;
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 80 }), (pile) => {
        expectSameFindings(
          rule,
          checkedBid({ claims: stated(`${pile} oz/yd²`, "7 oz/yd²", "20 oz/yd²", "77 oz/yd²") }),
          checkedBid({ claims: stated(inGrams(pile), inGrams(7), inGrams(20), inGrams(77)) }),
        );
      }),
    );
    orderNeverMatters(rule, checkedBid({ claims: stated("50 oz/yd²", "7 oz/yd²", "20 oz/yd²", "60 oz/yd²") }));
  });
});
