import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findings } from "#lib/crosscheck";
import { tell } from "#lib/figure";
import { checkedBid, claims, written } from "./checked-bid";

const kinds = (bid: Parameters<typeof findings>[0]) => findings(bid, []).map(({ rule }) => rule);
const total = (figure: string) => claims({ property: "infill-total-areal-density", figure });

describe("components against the stated total", () => {
  const sum = written("arealDensity", "9 lb/ft²");

  test("fires where 6 and 3 lb/ft² are said to be 9.6", () =>
    expect(kinds(checkedBid({ claims: total("9.6 psf"), totalArealDensity: sum }))).toEqual([
      "components-against-total",
    ]));

  test("is silent where they agree in other units", () =>
    // 9 lb/ft² are 43.942 kg/m² (NIST SP 811: 4.882428 kg/m² each)
    expect(kinds(checkedBid({ claims: total("43.94 kg/m²"), totalArealDensity: sum }))).toEqual([]));

  test("allows one part in a hundred for rounding, and no more", () => {
    expect(kinds(checkedBid({ claims: total("9.089 psf"), totalArealDensity: sum }))).toEqual([]);
    expect(kinds(checkedBid({ claims: total("9.091 psf"), totalArealDensity: sum }))).toEqual([
      "components-against-total",
    ]);
  });

  test("is silent where ranges overlap", () => {
    const bid = checkedBid({ claims: total("9.5–10 psf"), totalArealDensity: written("arealDensity", "8–9.6 lb/ft²") });
    expect(kinds(bid)).toEqual([]);
  });

  test("is silent where nothing is stated or no component is known", () => {
    expect(kinds(checkedBid({ totalArealDensity: sum }))).toEqual([]);
    expect(kinds(checkedBid({ claims: total("9.6 psf") }))).toEqual([]);
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
        expect(kinds(inPounds)).toEqual(kinds(inKilograms));
      }),
    ));

  test("says both figures in the reader's units", () => {
    const [finding] = findings(checkedBid({ claims: total("9.6 psf"), totalArealDensity: sum }), []);
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The components add up to 9.00 lb/ft²; the bid states a total of 9.60 lb/ft². Both can’t be true.",
    );
    expect(tell(finding.question, "metric")).toBe(
      "Your bid states a total infill of 46.9 kg/m², while its components add up to 43.9 kg/m². Which is right, and which component changes?",
    );
  });
});

describe("infill and pile", () => {
  const pile = claims({ property: "pile-height", figure: '2"', method: "d5823", condition: "new" });

  test("fires where infill is deeper than the pile", () =>
    expect(kinds(checkedBid({ claims: pile, infillDepth: written("length", "2.1–2.3 in") }))).toEqual([
      "infill-buries-pile",
    ]));

  test("is silent where the depth may still fit", () =>
    expect(kinds(checkedBid({ claims: pile, infillDepth: written("length", "2–2.3 in") }))).toEqual([]));

  test("is silent where either is missing", () => {
    expect(kinds(checkedBid({ claims: pile }))).toEqual([]);
    expect(kinds(checkedBid({ infillDepth: written("length", "3 in") }))).toEqual([]);
  });
});

describe("light infill without a shock layer", () => {
  const shockLayer = (figure: string) => claims({ property: "shock-layer", figure });

  test("fires for 3.2 lb/ft² over nothing", () => {
    const bid = checkedBid({ claims: shockLayer("none"), totalArealDensity: written("arealDensity", "3.2 lb/ft²") });
    expect(kinds(bid)).toEqual(["light-infill-without-shock-layer"]);
  });

  test.each([
    ["a shock layer lies below", "expanded-bead", "3.2 lb/ft²"],
    ["the infill is heavy", "none", "9.5 lb/ft²"],
    ["the infill may be heavier than light", "none", "3–4 lb/ft²"],
  ])("is silent where %s", (_why, kind, mass) => {
    expect(kinds(checkedBid({ claims: shockLayer(kind), totalArealDensity: written("arealDensity", mass) }))).toEqual(
      [],
    );
  });

  test("is silent where the bid does not say what lies below", () =>
    expect(kinds(checkedBid({ totalArealDensity: written("arealDensity", "2 lb/ft²") }))).toEqual([]));
});

describe("impact levels by another method", () => {
  const level = (method: string) => claims({ property: "g-max", figure: "68 g", method, condition: "new" });

  // ASTM F1702, scope: not comparable with another mass, geometry, drop height or method
  test("fires for a lighter missile", () =>
    expect(kinds(checkedBid({ claims: level("clegg-on-turf") }))).toEqual(["impact-by-another-method"]));

  test("is silent for the same missile and height", () =>
    expect(kinds(checkedBid({ claims: level("f355-a") }))).toEqual([]));
});

test("the most serious finding stands first, whatever the order of the claims", () => {
  const written9 = written("arealDensity", "3.2 lb/ft²");
  const all = claims(
    { property: "g-max", figure: "68 g", method: "clegg-on-turf", condition: "new" },
    { property: "shock-layer", figure: "none" },
    { property: "infill-total-areal-density", figure: "9.6 psf" },
  );
  const severities = (list: typeof all) =>
    findings(checkedBid({ claims: list, totalArealDensity: written9 }), []).map(({ severity }) => severity);
  expect(severities(all)[0]).toBe("can't be true");
  expect(severities(all.toReversed())).toEqual(severities(all));
});
