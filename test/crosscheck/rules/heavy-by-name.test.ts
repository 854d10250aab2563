import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, infill } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "heavy-by-name";
const rubber = infill("layered", ["rubber-ambient", "3.2 lb/ft²"]);
const called = (system: string, build = rubber) => foundBy(rule, checkedBid({ system, infill: build }));

describe("words that promise weight", () => {
  test("asks where a heavy surface carries little infill", () => {
    const [finding] = called("Heavy layered sand and rubber, no shock layer");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("needs an answer");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid speaks of “heavy”; its infill weighs 3.20 lb/ft², while the trade calls an infill heavy above 9.00 lb/ft². That is a rule of thumb (common practice, no source).",
    );
  });

  // common practice, no source: heavy above 9 lb/ft²
  test("takes the trade's limit for heavy, and not the limit itself", () => {
    const of = (mass: string) => infill("layered", ["silica-sand", mass]);
    expect(called("Heavyweight infill", of("9.01 lb/ft²"))).toEqual([]);
    expect(called("Heavyweight infill", of("9 lb/ft²"))).toHaveLength(1);
    expect(called("Heavyweight infill", of("8–9.5 lb/ft²"))).toEqual([]);
  });

  test("asks where a sand-filled surface holds less than half of sand", () => {
    const mixed = (sand: string) => infill("layered", ["silica-sand", sand], ["rubber-ambient", "3 lb/ft²"]);
    expect(called("Sand-filled system", mixed("3 lb/ft²"))).toEqual([]);
    expect(called("Sand-filled system", mixed("2.9 lb/ft²"))).toHaveLength(1);
    expect(called("Sand infilled system", rubber)).toHaveLength(1);
  });

  test("asks where ballast weighs no more than rubber alone", () => {
    expect(called("Ballasted carpet", infill("layered", ["silica-sand", "3.75 lb/ft²"]))).toHaveLength(1);
    expect(called("Ballasted carpet", infill("layered", ["silica-sand", "3.76 lb/ft²"]))).toEqual([]);
  });

  test.each([
    ["something else is heavy", "Made for heavy use by heavy infill machines"],
    ["metals are meant", "Free of heavy metals in infill and carpet"],
    ["rain is meant", "Drains heavy rain, infill stays"],
    ["it is denied", "Light system, not heavy infill, without ballast, not sand-filled"],
    ["nothing is said", ""],
  ])("is silent where %s", (_why, words) => expect(called(words)).toEqual([]));

  test("reads the bid's words in claims, and never the owner's note", () => {
    const inClaim = claims({
      property: "infill-total-areal-density",
      figure: "3.2 psf",
      words: "Ballasted throughout",
    });
    const [finding] = foundBy(rule, checkedBid({ claims: inClaim, infill: rubber }));
    expect(finding?.overClaims).toEqual(["claim-0"]);
    const noted = claims({ property: "infill-total-areal-density", figure: "3.2 psf", note: "They said ballasted" });
    expect(foundBy(rule, checkedBid({ claims: noted, infill: rubber }))).toEqual([]);
  });

  test("reads the words of an infill component", () => {
    const [only] = rubber.components;
    if (only === undefined) throw new Error("expected a component");
    const described = [{ id: only.id, material: only.material, particleSize: null, words: "Heavy rubber infill" }];
    const [finding] = foundBy(rule, checkedBid({ infill: rubber, described }));
    expect(finding?.key).toBe("heavy-by-name:component-0");
  });

  test("is silent where no infill is known", () => expect(called("Heavy infill", infill("layered"))).toEqual([]));

  test("does not depend on unit or order", () => {
    const metric = infill("layered", ["rubber-ambient", "15.6 kg/m²"]);
    const both = claims(
      { property: "infill-total-areal-density", figure: "3.2 psf", words: "A heavy infill" },
      { property: "infill-migration", words: "The ballast stays put" },
    );
    expectSameFindings(
      rule,
      checkedBid({ claims: both, infill: rubber }),
      checkedBid({ claims: both, infill: metric }),
    );
    orderNeverMatters(rule, checkedBid({ claims: both, infill: rubber, system: "Heavy rubber infill" }));
  });
});
