import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, prices, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "quantity-against-area";
const area = written("area", "80,000 ft²");
const line = (id: string, label: string, quantity: string, more: object = {}) => ({
  ...{ kind: "at-base-date", category: "investment", givenBy: "bid", id, label },
  amount: { kind: "per-unit", quantity, unitPrice: "$4/ft²" },
  ...more,
});
const found = (...lines: readonly unknown[]) => foundBy(rule, checkedBid({ area, prices: prices(...lines) }));

describe("the area that a bid states", () => {
  const stated = (figure: string, field = area) =>
    foundBy(rule, checkedBid({ area: field, claims: claims({ property: "stated-field-area", figure }) }));

  test("is allowed the same room as the priced ones", () => {
    expect(stated("78,400 ft²")).toEqual([]);
    expect(stated("88,000 ft²")).toEqual([]);
    expect(stated("78,399 ft²")).toHaveLength(1);
    expect(stated("88,001 ft²")).toHaveLength(1);
    expect(stated("at least 70,000 ft²")).toEqual([]);
  });

  test("is asked about in the reader's units", () => {
    const [finding] = stated("57,600 ft²");
    if (finding === undefined) throw new Error("expected a finding");
    expect([finding.severity, finding.claims]).toEqual(["needs an answer", ["claim-0"]]);
    expect(tell(finding.sentence, "us")).toBe("The bid reckons with 57,600 ft²; the field is 80,000 ft².");
    // 57,600 ft² × 0.09290304 m²/ft² = 5,351.2 m², NIST SP 811
    expect(tell(finding.sentence, "metric")).toBe("The bid reckons with 5,351 m²; the field is 7,432 m².");
  });
});

describe("priced areas against the field", () => {
  test("allows 2 % below and 10 % above, and no more", () => {
    expect(found(line("carpet", "Carpet", "78,400 ft²"))).toEqual([]);
    expect(found(line("carpet", "Carpet", "88,000 ft²"))).toEqual([]);
    expect(found(line("carpet", "Carpet", "78,399 ft²")).map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found(line("carpet", "Carpet", "88,001 ft²"))).toHaveLength(1);
  });

  test("says both areas", () => {
    const [finding] = found(line("carpet", "Carpet, laid", "57,600 ft²"));
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The price lines count 57,600 ft² of carpet; the field is 80,000 ft². Usual is the field itself and up to 10 % of cutting waste, a rule of thumb (common practice, no source).",
    );
  });

  test("adds up lines on the same thing and keeps unlike things apart", () => {
    expect(found(line("a", "Turf, field of play", "57,600 ft²"), line("b", "Turf, run-off", "22,400 ft²"))).toEqual([]);
    expect(found(line("a", "Turf", "80,000 ft²"), line("b", "Shock layer", "80,000 ft²"))).toEqual([]);
    expect(found(line("a", "Turf", "80,000 ft²"), line("b", "Shock layer", "70,000 ft²"))).toHaveLength(1);
    expect(found(line("a", "Carpet and infill", "70,000 ft²"))).toHaveLength(1);
  });

  test("is silent on parts, on owner's estimates, on what else is sold, and where the rest is priced otherwise", () => {
    expect(found(line("a", "Logo in the carpet", "400 ft²"))).toEqual([]);
    expect(found(line("a", "Carpet", "400 ft²", { givenBy: "owner-estimate" }))).toEqual([]);
    expect(found(line("a", "Fence screens", "400 ft²"))).toEqual([]);
    const rest = line("b", "Carpet, rest", "1", { amount: { kind: "lump-sum", price: "$90,000" } });
    expect(found(line("a", "Carpet", "60,000 ft²"), rest)).toEqual([]);
    expect(found()).toEqual([]);
  });

  test("is silent where the field's area is open", () => {
    const open = written("area", "60,000–90,000 ft²");
    const priced = prices(line("a", "Carpet", "62,000 ft²"));
    expect(foundBy(rule, checkedBid({ area: open, prices: priced }))).toEqual([]);
  });

  test("scales with the area, and does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 60_000, max: 100_000 }), fc.integer({ min: 2, max: 4 }), (feet, times) => {
        fc.pre(feet !== 78_400 && feet !== 88_000);
        const bid = (quantity: string, field: string) =>
          checkedBid({ area: written("area", field), prices: prices(line("a", "Carpet", quantity)) });
        const once = bid(`${feet} ft²`, "80,000 ft²");
        expectSameFindings(rule, once, bid(`${feet * times} ft²`, `${80_000 * times} ft²`));
        expectSameFindings(rule, once, bid(`${(feet * 0.09290304).toFixed(6)} m²`, "7432.2432 m²"));
      }),
    );
    const two = prices(line("a", "Carpet", "30,000 ft²"), line("b", "Carpet, rest", "20,000 ft²"));
    orderNeverMatters(rule, checkedBid({ area, prices: two }));
  });
});
