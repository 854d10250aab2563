import { describe, expect, test } from "vitest";
import { bid, claim, sideBySide } from "./project";

const complete = (method: string, total: string, sand: string) => [
  claim("infill-total-areal-density", total, { method: "infill-weigh-tickets" }),
  claim("pile-height", "2 in", { method: "d5823" }),
  claim("shock-layer", "expanded-bead"),
  claim("g-max", "118 g", { method }),
  claim("system-infiltration", "14 in/h", { method: "f2898" }),
  claim("warranty-years", sand),
  claim("critical-fall-height", "1.4 m", { method: "f1292" }),
  claim("surface-temperature-rise", "18 K", { method: "surface-thermometer" }),
];

describe("what stands out", () => {
  test("begins with how far the infill of the bids lies apart", () => {
    const { sentences } = sideBySide([
      bid("A", complete("f355-a", "9 lb/ft²", "8 years"), "9 lb/ft²"),
      bid("B", complete("f355-a", "3.2 lb/ft²", "8 years"), "3.2 lb/ft²"),
    ]);
    expect(sentences).toEqual(["The infill weighs from 3.20 lb/ft² (bid B) to 9.00 lb/ft² (bid A)."]);
  });

  test("speaks the reader's units", () => {
    const bids = [bid("A", [], "9 lb/ft²"), bid("B", [], "3 lb/ft²")];
    // 3 lb/ft² = 14.647 kg/m² and 9 lb/ft² = 43.942 kg/m², NIST SP 811
    expect(sideBySide(bids, "metric").sentences[0]).toBe(
      "The infill weighs from 14.6 kg/m² (bid B) to 43.9 kg/m² (bid A).",
    );
  });

  test("says where a sum does not add up", () => {
    const { sentences } = sideBySide([bid("A", complete("f355-a", "6.6 lb/ft²", "8 years"))]);
    expect(sentences).toEqual([
      "Bid A: The components add up to 6.00 lb/ft²; the bid states a total of 6.60 lb/ft². Both can’t be true.",
    ]);
  });

  test("says whose impact level rests on another missile", () => {
    const { sentences } = sideBySide([
      bid("A", complete("f355-a", "6 lb/ft²", "8 years")),
      bid("B", complete("clegg-on-turf", "6 lb/ft²", "8 years")),
      bid("C", complete("clegg-on-turf", "6 lb/ft²", "8 years")),
    ]);
    expect(sentences).toEqual([
      "Bids B and C give their impact level by Clegg hammer on synthetic turf, which drops a lighter missile than ASTM F355, missile A; nothing converts one into the other.",
    ]);
  });

  test("says whose impact level names no method", () => {
    const { sentences } = sideBySide([bid("A", complete("", "6 lb/ft²", "8 years"))]);
    expect(sentences).toEqual([
      "Bid A gives its impact level without a test method, so nobody can tell what it measures.",
    ]);
  });

  test("names other figures by unlike methods with their bids", () => {
    const others = complete("f355-a", "6 lb/ft²", "8 years").map((each) =>
      each.property === "system-infiltration" ? { ...each, method: "en-12616" } : each,
    );
    const { sentences } = sideBySide([
      bid("A", complete("f355-a", "6 lb/ft²", "8 years")),
      bid("B", complete("f355-a", "6 lb/ft²", "8 years")),
      bid("C", others),
    ]);
    expect(sentences).toEqual([
      "These figures are not by the same method as those of the other bids and stand on lines of their own: system infiltration rate (bid C).",
    ]);
  });

  test("says which bid leaves out what", () => {
    const all = complete("f355-a", "6 lb/ft²", "8 years");
    const without = (...properties: readonly string[]) => all.filter(({ property }) => !properties.includes(property));
    const { sentences } = sideBySide([
      bid("A", without("critical-fall-height")),
      bid("B", without("critical-fall-height", "surface-temperature-rise")),
      bid("C", []),
    ]);
    expect(sentences.at(-1)).toBe(
      "Bid C leaves out 8 properties that are asked for; bid B leaves out critical fall height and surface temperature rise; bid A leaves out critical fall height.",
    );
  });

  test("stays short, however many bids there are", () => {
    const letters = Array.from({ length: 12 }, (_, index) => String.fromCharCode(65 + index));
    const { sentences } = sideBySide(letters.map((letter, index) => bid(letter, [], `${index + 1} lb/ft²`)));
    expect(sentences.length).toBeLessThanOrEqual(5);
    expect(sentences.at(-1)).toContain("9 more bids leave out something.");
  });
});
