import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, infill, prices, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "tonnage-against-mass";
const line = (id: string, label: string, amount: unknown, more: object = {}) => ({
  kind: "at-base-date",
  category: "investment",
  givenBy: "bid",
  ...{ id, label, amount },
  ...more,
});
const weighed = (quantity: string, unitPrice = "$60/short ton") => ({ kind: "per-unit", quantity, unitPrice });
const area = written("area", "80,000 ft²");
const sand = infill("layered", ["silica-sand", "6 lb/ft²"]);
const sandAndRubber = infill("layered", ["silica-sand", "6 lb/ft²"], ["rubber-ambient", "3 lb/ft²"]);

describe("priced tonnage against mass per area and field", () => {
  // arithmetic: 6 lb/ft² over 80,000 ft² are 480,000 lb or 240 short tons, 217.724 t (1 lb is 0.45359237 kg, NIST SP 811)
  const found = (quantity: string) =>
    foundBy(rule, checkedBid({ infill: sand, area, prices: prices(line("infill", "Infill", weighed(quantity))) }));

  test("is silent for 240 short tons and 217.7 tonnes", () => {
    expect(found("240 short tons")).toEqual([]);
    expect(found("480,000 lb")).toEqual([]);
  });

  test("allows 5 %, and no more, on both sides", () => {
    expect(found("252 short tons")).toEqual([]);
    expect(found("228 short tons")).toEqual([]);
    expect(found("252.1 short tons").map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found("227.9 short tons")).toHaveLength(1);
  });

  test("says both masses", () => {
    const [finding] = found("180 short tons");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.priceLines).toEqual(["infill"]);
    expect(tell(finding.sentence, "us")).toBe(
      "The price lines count 360,000 lb of infill; at the stated mass per area the field takes 480,000 lb.",
    );
  });

  test("holds a line that names a material against that component", () => {
    const bid = (sandTons: string, rubberTons: string) =>
      checkedBid({
        infill: sandAndRubber,
        area,
        prices: prices(
          line("sand", "Sand for the infill", weighed(sandTons)),
          line("rubber", "Granules", weighed(rubberTons), { note: "Rubber infill" }),
        ),
      });
    expect(foundBy(rule, bid("240 short tons", "120 short tons"))).toEqual([]);
    expect(foundBy(rule, bid("240 short tons", "180 short tons"))).toHaveLength(1);
    const sandOnly = prices(line("sand", "Infill sand", weighed("240 short tons")));
    expect(foundBy(rule, checkedBid({ infill: sandAndRubber, area, prices: sandOnly }))).toEqual([]);
    const tooMuch = prices(line("sand", "Infill sand", weighed("360 short tons")));
    expect(foundBy(rule, checkedBid({ infill: sandAndRubber, area, prices: tooMuch }))).toHaveLength(1);
  });

  test("counts the first generation of a part that is renewed, and nothing that is bought later", () => {
    const chain = prices({
      ...{ kind: "replacement-chain", id: "infill", label: "Infill", givenBy: "bid" },
      ...{ amount: weighed("180 short tons"), life: "10 years", lifeGivenBy: "bid" },
    });
    expect(foundBy(rule, checkedBid({ infill: sand, area, prices: chain }))).toHaveLength(1);
    const topUp = prices({
      ...{ kind: "yearly", id: "top-up", label: "Infill top-up", givenBy: "bid" },
      ...{ category: "operation-and-maintenance", amount: weighed("4,000 lb", "$0.38/lb") },
    });
    expect(foundBy(rule, checkedBid({ infill: sand, area, prices: topUp }))).toEqual([]);
  });

  test("is silent where the rest may be sold in another line, where the owner estimates, and on other things", () => {
    const silent = (...lines: readonly unknown[]) =>
      expect(foundBy(rule, checkedBid({ infill: sand, area, prices: prices(...lines) }))).toEqual([]);
    const part = line("part", "Infill, second delivery", weighed("40 short tons"));
    silent(part, line("system", "Carpet and infill", { kind: "per-area", price: "$4.85/ft²" }));
    silent({ ...part, givenBy: "owner-estimate" });
    silent(line("bedding", "Sand bed", weighed("40 short tons")));
    silent(line("credit", "Credit for infill", weighed("40 short tons", "-$60/short ton")));
  });

  test("is silent where the infill or its upper limit is missing", () => {
    const priced = prices(line("infill", "Infill", weighed("900 short tons")));
    expect(foundBy(rule, checkedBid({ area, prices: priced }))).toEqual([]);
    const open = infill("layered", ["silica-sand", "at least 6 lb/ft²"]);
    expect(foundBy(rule, checkedBid({ infill: open, area, prices: priced }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ infill: sand, area }))).toEqual([]);
  });
});

describe("stated infill mass against mass per area and field", () => {
  const mass = (figure: string) => claims({ property: "infill-total-mass", figure });
  const found = (figure: string) => foundBy(rule, checkedBid({ infill: sand, area, claims: mass(figure) }));

  test("allows 5 %, and no more, on both sides", () => {
    expect(found("217.7 tonnes")).toEqual([]);
    expect(found("252 short tons")).toEqual([]);
    expect(found("228 short tons")).toEqual([]);
    expect(found("252.1 short tons")).toHaveLength(1);
    expect(found("227.9 short tons")).toHaveLength(1);
  });

  test("says for which area the stated mass would do", () => {
    const [finding] = found("300 short tons");
    if (finding === undefined) throw new Error("expected a finding");
    // 600,000 lb at 6 lb/ft² lie on 100,000 ft²
    expect(tell(finding.sentence, "us")).toBe(
      "The bid states 600,000 lb of infill for the field; at its mass per area the field takes 480,000 lb. The stated mass would suit an area of 100,000 ft².",
    );
    expect(finding.overClaims).toEqual(["claim-0"]);
  });

  test("takes the stated mass per area where the bid lists no component", () => {
    const both = claims(
      { property: "infill-total-areal-density", figure: "6 lb/ft²" },
      { property: "infill-total-mass", figure: "300 short tons" },
    );
    expect(foundBy(rule, checkedBid({ area, claims: both }))).toHaveLength(1);
    expect(foundBy(rule, checkedBid({ area, claims: both.slice(1) }))).toEqual([]);
  });

  test("says nothing of an area where the mass is open", () => {
    const [finding] = found("at least 300 short tons");
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid states at least 600,000 lb of infill for the field; at its mass per area the field takes 480,000 lb.",
    );
  });

  test("scales with the area, and does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 400 }), fc.integer({ min: 2, max: 5 }), (tons, times) => {
        const bid = (short: string, squareFeet: number) =>
          checkedBid({ infill: sand, area: written("area", `${squareFeet} ft²`), claims: mass(short) });
        expectSameFindings(rule, bid(`${tons} short tons`, 80_000), bid(`${tons * times} short tons`, 80_000 * times));
        expectSameFindings(rule, bid(`${tons} short tons`, 80_000), bid(`${tons * 2000} lb`, 80_000));
      }),
    );
    const both = checkedBid({
      ...{ infill: sandAndRubber, area },
      claims: claims({ property: "infill-total-mass", figure: "300 t" }, { property: "infill-depth", figure: "2 in" }),
      prices: prices(
        line("one", "Infill, first delivery", weighed("300 short tons")),
        line("two", "Infill, second delivery", weighed("300 short tons")),
      ),
    });
    orderNeverMatters(rule, both);
  });
});
