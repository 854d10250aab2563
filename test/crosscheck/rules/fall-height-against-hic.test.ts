import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy } from "../checked-bid";

const rule = "fall-height-against-hic";
const both = (height: string, criterion: string, heightBy: object = {}, criterionBy: object = {}) =>
  checkedBid({
    claims: claims(
      { property: "critical-fall-height", figure: height, method: "f1292", condition: "new", ...heightBy },
      { property: "head-injury-criterion", figure: criterion, method: "f3146", condition: "new", ...criterionBy },
    ),
  });
const found = (...figures: Parameters<typeof both>) => foundBy(rule, both(...figures));

describe("critical fall height against the criterion at 1.3 m", () => {
  test("fires where the criterion is past 1000 below the critical height", () => {
    const [finding] = found("1.5 m", "1200");
    expect(finding?.severity).toBe("can't be true");
    expect(finding && tell(finding.sentence, "metric")).toBe(
      "The bid states a critical fall height of 1.5 m, and a head injury criterion of 1,200 at a fall from 1.3 m. Below the critical fall height the criterion is below 1000, so both can’t be true.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Your bid states a critical fall height of 4.9 ft and a head injury criterion of 1,200 at 4.3 ft. Are both from the same build and condition, and which reports show them?",
    );
  });

  test("allows a tenth for scatter, and no more", () => {
    expect(found("1.5 m", "1100")).toEqual([]);
    expect(found("1.5 m", "1101")[0]?.severity).toBe("can't be true");
    expect(found("1.2 m", "900")).toEqual([]);
    expect(found("1.2 m", "899")[0]?.severity).toBe("needs an answer");
  });

  // derived: on a lossless linear spring the criterion grows with the height to the power of 1.25, ×2.3784 for twice the height
  test("asks where the figures are more than a factor of two from a spring", () => {
    // 1000 · (1.3/2.6)^1.25 = 1000/2.3784 = 420.45, and half of that is 210.2
    expect(found("2.6 m", "420")).toEqual([]);
    expect(found("2.6 m", "211")).toEqual([]);
    expect(found("2.6 m", "210")[0]?.severity).toBe("needs an answer");
    // 1000 · 2.3784 = 2378.4 at twice the height, and twice that is 4756.8
    expect(found("0.65 m", "4756")).toEqual([]);
    expect(found("0.65 m", "4758")[0]?.severity).toBe("needs an answer");
  });

  test("takes the drop height that the bid states where the method leaves it open", () => {
    const bid = (drop: string) =>
      checkedBid({
        claims: claims(
          { property: "critical-fall-height", figure: "1.5 m", method: "f1292", condition: "new" },
          { property: "head-injury-criterion", figure: "1200", method: "f355-e", condition: "new" },
          { property: "hic-drop-height", figure: drop },
        ),
      });
    expect(foundBy(rule, bid("1.49 m"))[0]?.severity).toBe("can't be true");
    expect(foundBy(rule, bid("1.5 m"))).toEqual([]);
  });

  test("is silent where one-sided figures leave room", () => {
    expect(found("at least 1.3 m", "850")).toEqual([]);
    expect(found("at least 1.3 m", "at most 1000")).toEqual([]);
    expect(found("at most 1.5 m", "1300")).toEqual([]);
    expect(found("1.2–1.5 m", "1050")).toEqual([]);
  });

  test("is silent where method, drop height, condition or a figure is missing", () => {
    expect(found("1.5 m", "1200", {}, { method: "f355-e" })).toEqual([]);
    expect(found("1.5 m", "1200", {}, { method: "" })).toEqual([]);
    expect(found("1.5 m", "1200", { method: "f1936" })).toEqual([]);
    expect(found("1.5 m", "1200", { condition: "year 5" })).toEqual([]);
    const alone = claims({ property: "critical-fall-height", figure: "1.5 m", method: "f1292", condition: "new" });
    expect(foundBy(rule, checkedBid({ claims: alone }))).toEqual([]);
  });

  // 1 ft = 0.3048 m exactly (NIST SP 811)
  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 9, noNaN: true }),
        fc.integer({ min: 100, max: 2500 }),
        (feet, criterion) => {
          const inFeet = found(`${feet.toFixed(6)} ft`, String(criterion));
          const inMetres = found(`${(feet * 0.3048).toFixed(8)} m`, String(criterion));
          expect(inFeet.map(({ severity }) => severity)).toEqual(inMetres.map(({ severity }) => severity));
        },
      ),
    ));

  test("does not depend on the order of the claims", () => expectSameInAnyOrder(rule, both("1.5 m", "1200")));
});
