import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "implausible-figure";
const pile = (figure: string) => checkedBid({ claims: claims({ property: "pile-height", figure }) });
const found = (figure: string) => foundBy(rule, pile(figure));

describe("figures far from what is usual", () => {
  // common practice, no source: pile of sports turf is 44–64 mm; the catalogue's band is wider, 15–80 mm
  test("passes usual piles and both ends of the band", () => {
    for (const figure of ["44 mm", "2.5 in", "15 mm", "80 mm"]) expect(found(figure)).toEqual([]);
    expect(found("14.9 mm")).toHaveLength(1);
    expect(found("80.1 mm")).toHaveLength(1);
  });

  test("shows the band, its source and the unit that was probably meant", () => {
    const [finding] = found("2.25 mm");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("needs an answer");
    expect(tell(finding.sentence, "metric")).toBe(
      "The bid states a pile height of 2.3 mm, written as “2.25 mm”; usual is 15.0–80.0 mm (common practice, no source). A slip of unit or digit is likely. With the unit “in” it would be usual.",
    );
    expect(finding.working.source).toBe("common practice, no source");
  });

  test("does not guess at a unit where none would help", () => {
    const [finding] = found("9 m");
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "metric")).not.toContain("With the unit");
  });

  test("is silent where a bound or a range reaches the band, in words, and for choices", () => {
    expect(found("at least 1 mm")).toEqual([]);
    expect(found("10–20 mm")).toEqual([]);
    expect(found("at most 10 mm")).toHaveLength(1);
    const others = claims(
      { property: "pile-height", words: "tall" },
      { property: "shock-layer", figure: "none" },
      { property: "infill-migration", words: "none" },
    );
    expect(foundBy(rule, checkedBid({ claims: others }))).toEqual([]);
    expect(foundBy(rule, checkedBid())).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (inches) => {
        fc.pre([15, 80].every((edge) => Math.abs(inches * 25.4 - edge) > 1e-3));
        expectSameFindings(rule, pile(`${inches.toFixed(6)} in`), pile(`${(inches * 25.4).toFixed(5)} mm`));
      }),
    );
    const two = claims({ property: "pile-height", figure: "2.25 mm" }, { property: "g-max", figure: "1200 g" });
    orderNeverMatters(rule, checkedBid({ claims: two }));
  });
});
