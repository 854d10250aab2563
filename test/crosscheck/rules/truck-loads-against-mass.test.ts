import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, infill, prices, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "truck-loads-against-mass";
const area = written("area", "80,000 ft²");
/** 6 lb/ft² over 80,000 ft² are 240 short tons. */
const sand = infill("layered", ["silica-sand", "6 lb/ft²"]);
const loads = (quantity: string, label = "Infill, delivered by truck") =>
  prices({
    ...{ kind: "at-base-date", category: "investment", givenBy: "bid", id: "delivery", label },
    amount: { kind: "per-unit", quantity, unitPrice: "$900" },
  });
const priced = (quantity: string) => foundBy(rule, checkedBid({ infill: sand, area, prices: loads(quantity) }));
const quoted = (words: string) =>
  foundBy(
    rule,
    checkedBid({
      ...{ infill: sand, area },
      claims: claims({ property: "infill-total-areal-density", figure: "6 psf", words }),
    }),
  );

describe("truck loads against the infill on the field", () => {
  // 23 U.S.C. 127 limits a truck to 80,000 lb; less 30,000 lb of empty truck that is 25 short tons, so 240 take 9.6 loads
  test("asks where the trucks would be overloaded", () => {
    expect(priced("10 loads")).toEqual([]);
    expect(priced("9 loads").map(({ severity }) => severity)).toEqual(["needs an answer"]);
  });

  // half of a usual load of 22 short tons is 11, so 240 fill 21.8 such trucks
  test("notes where the trucks would be more than half empty", () => {
    expect(priced("21 loads")).toEqual([]);
    expect(priced("22 loads").map(({ severity }) => severity)).toEqual(["note"]);
  });

  test("lets a load at the very end of the tolerance pass", () => {
    const of250 = infill("layered", ["silica-sand", "6.25 lb/ft²"]);
    expect(foundBy(rule, checkedBid({ infill: of250, area, prices: loads("10 loads") }))).toEqual([]);
  });

  test("reads loads in the bid's quoted words", () => {
    expect(quoted("Delivered in 11 truck loads")).toEqual([]);
    const [finding] = quoted("Delivered in 8 full truckloads");
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid counts 8 truck loads for 480,000 lb of infill, which is 60,000 lb a truck. A truck carries about 44,000 lb, a rule of thumb (common practice, no source).",
    );
  });

  test("reads loads that the bid claims, as a range where it gives one", () => {
    const claimed = (figure: string) =>
      foundBy(
        rule,
        checkedBid({ ...{ infill: sand, area }, claims: claims({ property: "infill-truck-loads", figure }) }),
      );
    expect(claimed("10")).toEqual([]);
    expect(claimed("9").map(({ severity, claims }) => [severity, claims])).toEqual([["needs an answer", ["claim-0"]]]);
    expect(claimed("8–10")).toEqual([]);
    expect(claimed("at most 9")).toHaveLength(1);
    expect(claimed("at least 9")).toEqual([]);
  });

  test("is silent on other counts, without loads and without infill", () => {
    expect(quoted("At least 6 psf everywhere")).toEqual([]);
    const crates = loads("4", "Infill samples");
    expect(foundBy(rule, checkedBid({ infill: sand, area, prices: crates }))).toEqual([]);
    const gravel = loads("4 loads", "Gravel by truck");
    expect(foundBy(rule, checkedBid({ infill: sand, area, prices: gravel }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ area, prices: loads("4 loads") }))).toEqual([]);
  });

  test("scales with the area, and does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 30 }), fc.integer({ min: 2, max: 4 }), (count, times) => {
        const bid = (trucks: number, squareFeet: number, mass: string) =>
          checkedBid({
            infill: infill("layered", ["silica-sand", mass]),
            area: written("area", `${squareFeet} ft²`),
            prices: loads(`${trucks} loads`),
          });
        const once = bid(count, 80_000, "6 lb/ft²");
        expectSameFindings(rule, once, bid(count * times, 80_000 * times, "6 lb/ft²"));
        expectSameFindings(rule, once, bid(count, 80_000, "29.29457 kg/m²"));
      }),
    );
    const both = checkedBid({
      ...{ infill: sand, area, prices: loads("8 loads") },
      claims: claims(
        { property: "infill-total-areal-density", figure: "6 psf", words: "some 7 truck loads" },
        { property: "infill-depth", figure: "1 in", words: "from 6 lorry loads" },
      ),
    });
    orderNeverMatters(rule, both);
  });
});
