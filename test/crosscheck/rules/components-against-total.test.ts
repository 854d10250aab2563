import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, written } from "../checked-bid";

const rule = "components-against-total";
const total = (figure: string) => claims({ property: "infill-total-areal-density", figure });

describe("components against the stated total", () => {
  const sum = written("arealDensity", "9 lb/ft²");

  test("fires where 6 and 3 lb/ft² are said to be 9.6", () =>
    expect(foundBy(rule, checkedBid({ claims: total("9.6 psf"), totalArealDensity: sum }))).toHaveLength(1));

  test("is silent where they agree in other units", () =>
    // 9 lb/ft² are 43.942 kg/m² (NIST SP 811: 4.882428 kg/m² each)
    expect(foundBy(rule, checkedBid({ claims: total("43.94 kg/m²"), totalArealDensity: sum }))).toEqual([]));

  test("allows one part in a hundred for rounding, and no more", () => {
    expect(foundBy(rule, checkedBid({ claims: total("9.089 psf"), totalArealDensity: sum }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: total("9.091 psf"), totalArealDensity: sum }))).toHaveLength(1);
  });

  test("is silent where ranges overlap", () => {
    const bid = checkedBid({ claims: total("9.5–10 psf"), totalArealDensity: written("arealDensity", "8–9.6 lb/ft²") });
    expect(foundBy(rule, bid)).toEqual([]);
  });

  test("is silent where nothing is stated or no component is known", () => {
    expect(foundBy(rule, checkedBid({ totalArealDensity: sum }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: total("9.6 psf") }))).toEqual([]);
  });

  test("does not depend on the unit", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 15, noNaN: true }), (pounds) => {
        const inPounds = checkedBid({ claims: total(`${pounds.toFixed(6)} lb/ft²`), totalArealDensity: sum });
        const inKilograms = checkedBid({
          claims: total(`${(pounds * 4.88242764).toFixed(6)} kg/m²`),
          totalArealDensity: sum,
        });
        fc.pre(Math.abs(pounds / 9 - 1.01) > 1e-4 && Math.abs(9 / pounds - 1.01) > 1e-4); // apart from the very edge
        expect(foundBy(rule, inPounds).length).toBe(foundBy(rule, inKilograms).length);
      }),
    ));

  test("says both figures in the reader's units", () => {
    const [finding] = foundBy(rule, checkedBid({ claims: total("9.6 psf"), totalArealDensity: sum }));
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The components add up to 9.00 lb/ft²; the bid states a total of 9.60 lb/ft². Both can’t be true.",
    );
    expect(tell(finding.question, "metric")).toBe(
      "Your bid states a total infill of 46.9 kg/m², while its components add up to 43.9 kg/m². Which is right, and which component changes?",
    );
  });
});
