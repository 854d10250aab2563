import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, infill, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "depth-against-stated";
const depth = (figure: string, condition = "") => claims({ property: "infill-depth", figure, condition });

describe("infill depth from mass against the stated depth", () => {
  // derived from the definition of bulk density: 3 lb/ft² at 480 kg/m³ is 30.515 mm, 6 lb/ft² at 1550 kg/m³ is 18.900 mm,
  // so the layers come to 49.415 mm and 20 % to either side is 39.53 mm and 59.30 mm
  const layered = infill(
    "layered",
    ["silica-sand", "6 lb/ft²", "1550 kg/m³"],
    ["rubber-ambient", "3 lb/ft²", "480 kg/m³"],
  );
  const found = (figure: string) => foundBy(rule, checkedBid({ infill: layered, claims: depth(figure) }));

  test("is silent within a fifth and fires beyond it, on both sides", () => {
    expect(found("39.54 mm")).toEqual([]);
    expect(found("59.29 mm")).toEqual([]);
    expect(found("39.52 mm")).toHaveLength(1);
    expect(found("59.31 mm")).toHaveLength(1);
  });

  test("lets a figure at the very end of the tolerance pass", () => {
    const bid = (figure: string) => checkedBid({ infillDepth: written("length", "2 in"), claims: depth(figure) });
    expect(foundBy(rule, bid("2.4 in"))).toEqual([]);
    expect(foundBy(rule, bid("1.6 in"))).toEqual([]);
  });

  test("never says that it can't be true, and calls the tolerance a rule of thumb", () => {
    const [finding] = found("100 mm");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("needs an answer");
    expect(finding.overClaims).toEqual(["claim-0"]);
    expect(tell(finding.sentence, "metric")).toBe(
      "By mass and loose density the infill is 49.4 mm deep; the bid states 100.0 mm. They differ by more than 20 %, a rule of thumb (common practice, no source).",
    );
  });

  test("leaves a mixed bed the whole way from interlocked to layered", () => {
    // packing bounds of C. C. Furnas (1931): 3 lb/ft² of sand in 3 lb/ft² of rubber is 30.515–39.965 mm deep
    const mixed = infill(
      "blended",
      ["silica-sand", "3 lb/ft²", "1550 kg/m³"],
      ["rubber-ambient", "3 lb/ft²", "480 kg/m³"],
    );
    const blended = (figure: string) => foundBy(rule, checkedBid({ infill: mixed, claims: depth(figure) }));
    expect(blended("25 mm")).toEqual([]); // 30.515 × 0.8 is 24.41
    expect(blended("47.9 mm")).toEqual([]); // 39.965 × 1.2 is 47.96
    expect(blended("24.3 mm")).toHaveLength(1);
    expect(blended("48.1 mm")).toHaveLength(1);
  });

  test("is silent where one-sided figures leave room", () => {
    expect(found("at least 30 mm")).toEqual([]);
    expect(found("at most 45 mm")).toEqual([]);
    expect(found("at most 35 mm")).toHaveLength(1);
  });

  test("is silent where depth or infill is missing, in words only, or of an aged field", () => {
    expect(foundBy(rule, checkedBid({ infill: layered }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ claims: depth("10 mm") }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ infill: layered, claims: depth("10 mm", "year 5") }))).toEqual([]);
    const inWords = claims({ property: "infill-depth", words: "a generous depth" });
    expect(foundBy(rule, checkedBid({ infill: layered, claims: inWords }))).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 5, noNaN: true }), (inches) => {
        fc.pre([39.532, 59.298].every((edge) => Math.abs(inches * 25.4 - edge) > 0.01));
        expectSameFindings(
          rule,
          checkedBid({ infill: layered, claims: depth(`${inches.toFixed(6)} in`) }),
          checkedBid({ infill: layered, claims: depth(`${(inches * 25.4).toFixed(5)} mm`) }),
        );
      }),
    );
    const more = claims({ property: "infill-depth", figure: "4 in" }, { property: "pile-height", figure: "2 in" });
    orderNeverMatters(rule, checkedBid({ infill: layered, claims: more }));
  });
});
