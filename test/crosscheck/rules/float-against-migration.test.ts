import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, infill, written } from "../checked-bid";
import { orderNeverMatters } from "../laws";

const rule = "float-against-migration";
const says = (words: string) => claims({ property: "infill-migration", words });
const sandAndCork = infill("layered", ["silica-sand", "12 kg/m²"], ["cork", "1.6 kg/m²"]);
const found = (words: string, build = sandAndCork) => foundBy(rule, checkedBid({ claims: says(words), infill: build }));

describe("infill that floats and is said to stay", () => {
  // Archimedes' principle: cork grains of 120–250 kg/m³ (from memory) float in water of 998 kg/m³
  test("asks for cork that does not migrate", () => {
    const [finding] = found("Does not migrate");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("needs an answer");
    // 1.6 of 13.6 kg/m² are 12 %
    expect(tell(finding.sentence, "metric")).toBe(
      "The bid says “Does not migrate”; 12 % of its infill’s mass floats in fresh water.",
    );
  });

  test.each([
    "Stays in place",
    "The infill stays where it is placed under normal play",
    "won’t float or wash out",
    "No migration",
    "migration-free",
    "never moves",
  ])("reads “%s”", (words) => expect(found(words)).toHaveLength(1));

  test.each(["Some infill moves and has to be brushed back", "May float in a flood", "Retained by kerbs and nets"])(
    "is silent where the bid says “%s”",
    (words) => expect(found(words)).toEqual([]),
  );

  test("asks where infill that floats is said to sink", () => {
    const flotation = (figure: string) =>
      foundBy(rule, checkedBid({ claims: claims({ property: "infill-flotation", figure }), infill: sandAndCork }));
    expect(flotation("sinks")).toHaveLength(1);
    expect(flotation("floats")).toEqual([]);
  });

  test("notes what only may float", () => {
    const wood = infill("layered", ["silica-sand", "12 kg/m²"], ["wood-granule", "2 kg/m²"]);
    expect(found("Does not migrate", wood).map(({ severity }) => severity)).toEqual(["note"]);
  });

  test("is silent for what sinks, for less than one part in a hundred, and where nothing is known", () => {
    expect(found("Does not migrate", infill("layered", ["rubber-ambient", "3 lb/ft²"]))).toEqual([]);
    const share = (text: string) =>
      foundBy(rule, checkedBid({ claims: says("Does not float"), floatProneShare: written("fraction", text) }));
    expect(share("1 %")).toEqual([]);
    expect(share("1.1 %")).toHaveLength(1);
    expect(found("Does not migrate", infill("layered"))).toEqual([]);
    expect(foundBy(rule, checkedBid({ infill: sandAndCork }))).toEqual([]);
  });

  test("does not depend on order", () => {
    const both = claims(
      { property: "infill-migration", words: "Does not migrate" },
      { property: "infill-migration", words: "Never floats" },
    );
    orderNeverMatters(rule, checkedBid({ claims: both, infill: sandAndCork }));
  });
});
