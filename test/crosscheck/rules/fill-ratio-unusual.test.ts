import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "fill-ratio-unusual";
const stated = (pile: string, depth: string) =>
  claims({ property: "pile-height", figure: pile }, { property: "infill-depth", figure: depth });
const found = (pile: string, depth: string) => foundBy(rule, checkedBid({ claims: stated(pile, depth) }));

describe("share of the pile that is filled", () => {
  // Penn State University, 2012: 35 mm of infill in a 2.0 in pile and 36 mm in a 2.5 in pile
  test("takes the surveyed fields as usual", () => {
    expect(found("2.0 in", "35 mm")).toEqual([]);
    expect(found("2.5 in", "36 mm")).toEqual([]);
  });

  test("notes what is beyond the usual band, and nothing at its ends", () => {
    expect(found("40 mm", "20 mm")).toEqual([]);
    expect(found("40 mm", "34 mm")).toEqual([]);
    expect(found("40 mm", "19.9 mm").map(({ severity }) => severity)).toEqual(["note"]);
    expect(found("40 mm", "34.1 mm")).toHaveLength(1);
  });

  test("takes the depth from mass where none is stated", () => {
    const pile = claims({ property: "pile-height", figure: "50 mm" });
    const [finding] = foundBy(rule, checkedBid({ claims: pile, infillDepth: written("length", "15–20 mm") }));
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The infill fills 30–40 % of the pile; usual is 50–85 %, a rule of thumb (common practice, no source).",
    );
  });

  test("is silent where ranges reach the band, figures are missing or the pile is buried", () => {
    expect(found("40–50 mm", "18–20 mm")).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: claims({ property: "pile-height", figure: "2 in" }) }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ infillDepth: written("length", "5 mm") }))).toEqual([]);
    expect(found("40 mm", "45 mm")).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 49 }), (depth) => {
        fc.pre(depth !== 25);
        expectSameFindings(
          rule,
          checkedBid({ claims: stated("50 mm", `${depth} mm`) }),
          checkedBid({ claims: stated("5 cm", `${(depth / 25.4).toFixed(8)} in`) }),
        );
      }),
    );
    orderNeverMatters(rule, checkedBid({ claims: stated("50 mm", "10 mm") }));
  });
});
