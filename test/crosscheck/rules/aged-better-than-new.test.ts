import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "aged-better-than-new";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const level = (figure: string, condition: string, method = "f1936") => ({
  property: "g-max",
  figure,
  method,
  condition,
});
const draining = (figure: string, condition: string) => ({
  property: "system-infiltration",
  figure,
  method: "en-12616",
  condition,
});

describe("aged figures against figures as new", () => {
  test("fires where a field got softer", () => {
    const [finding] = found(level("120 g", "new"), level("105 g", "year 5"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding?.overClaims).toEqual(["claim-1"]);
    expect(finding && tell(finding.sentence, "us")).toBe(
      "For G-max the bid states 120 g as new and 105 g in the condition “year 5”. With use this usually gets worse, not better (rule of thumb: common practice, no source).",
    );
  });

  test("is silent where it got harder, and for what may go either way", () => {
    expect(found(level("120 g", "new"), level("135 g", "year 5"))).toEqual([]);
    const roll = (figure: string, condition: string) => ({
      ...{ property: "ball-rebound", figure, method: "en-12235", condition },
    });
    expect(found(roll("0.7 m", "new"), roll("0.9 m", "year 5"))).toEqual([]);
  });

  test("allows one part in twenty for scatter, and no more", () => {
    expect(found(level("120 g", "new"), level("114.1 g", "year 5"))).toEqual([]);
    expect(found(level("120 g", "new"), level("113.9 g", "year 5"))).toHaveLength(1);
    expect(found(draining("10 in/h", "new"), draining("10.49 in/h", "year 5"))).toEqual([]);
    expect(found(draining("10 in/h", "new"), draining("10.51 in/h", "year 5"))).toHaveLength(1);
  });

  test("also looks at figures after simulated wear", () => {
    const absorption = (figure: string, condition: string) => ({
      ...{ property: "shock-absorption", figure, method: "f3189", condition },
    });
    expect(found(absorption("60 %", "new"), absorption("66 %", "after 20,000 cycles"))).toHaveLength(1);
  });

  test("looks at figures that are after ageing by their name", () => {
    const tuft = (property: string, figure: string, method = "d1335") => ({ property, figure, method });
    const [finding] = found(tuft("tuft-bind", "9 lbf"), tuft("tuft-bind-aged", "9.5 lbf"));
    expect(finding && tell(finding.sentence, "us")).toBe(
      "For tuft bind the bid states 9.0 lbf as new and 9.5 lbf after ageing. With use this usually gets worse, not better (rule of thumb: common practice, no source).",
    );
    expect(found(tuft("tuft-bind", "9 lbf"), tuft("tuft-bind-aged", "9.4 lbf"))).toEqual([]);
    expect(found(tuft("tuft-bind", "9 lbf"), tuft("tuft-bind-aged", "9.5 lbf", "iso-4919"))).toEqual([]);
  });

  test("is silent between a frozen and a warm field", () => {
    expect(found(level("120 g", "new, 20 °F"), level("105 g", "year 5, 75 °F"))).toEqual([]);
    expect(found(level("120 g", "new, 70 °F"), level("105 g", "year 5, 75 °F"))).toHaveLength(1);
  });

  test("is silent where any figure as new leaves room", () =>
    expect(found(level("120 g", "new"), level("104 g", "new"), level("105 g", "year 5"))).toEqual([]));

  test("is silent where ranges leave room", () =>
    expect(found(level("105–120 g", "new"), level("102 g", "year 5"))).toEqual([]));

  test("is silent across unlike methods and where method or condition is missing", () => {
    expect(found(level("120 g", "new"), level("70 g", "year 5", "clegg-on-turf"))).toEqual([]);
    expect(found(level("120 g", "new", ""), level("100 g", "year 5", ""))).toEqual([]);
    expect(found(level("120 g", ""), level("100 g", "year 5"))).toEqual([]);
    expect(found(level("100 g", "year 5"))).toEqual([]);
  });

  // 1 in = 25.4 mm exactly (NIST SP 811)
  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.double({ min: 2, max: 60, noNaN: true }), (inches) => {
        fc.pre(Math.abs(inches - 21) > 0.01); // apart from the very edge
        const fresh = draining("20 in/h", "new");
        const inInches = found(fresh, draining(`${inches.toFixed(5)} in/h`, "year 5"));
        const inMillimetres = found(fresh, draining(`${(inches * 25.4).toFixed(5)} mm/h`, "year 5"));
        expect(inInches.length).toBe(inMillimetres.length);
      }),
    ));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(
      rule,
      bidWith(level("120 g", "new"), level("124 g", "new"), level("105 g", "year 5"), level("101 g", "year 8")),
    ));
});
