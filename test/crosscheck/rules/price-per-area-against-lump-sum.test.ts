import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, prices, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "price-per-area-against-lump-sum";
const area = written("area", "80,000 ft²");
const stated = (figure: string) => claims({ property: "price-per-area-stated", figure });
const sum = (id: string, price: string, more: object = {}) => ({
  ...{ kind: "at-base-date", category: "investment", givenBy: "bid", id, label: id },
  amount: { kind: "lump-sum", price },
  ...more,
});
const found = (figure: string, ...lines: readonly unknown[]) =>
  foundBy(rule, checkedBid({ area, claims: stated(figure), prices: prices(...lines) }));

describe("stated price per area against the prices", () => {
  // arithmetic: $4.85 × 80,000 is $388,000; half a cent a square foot is $400
  test("allows half a cent per square foot, and no more, on both sides", () => {
    expect(found("$4.85/ft²", sum("system", "$388,000"))).toEqual([]);
    expect(found("$4.85/ft²", sum("system", "$388,400"))).toEqual([]);
    expect(found("$4.85/ft²", sum("system", "$387,600"))).toEqual([]);
    expect(found("$4.85/ft²", sum("system", "$388,401")).map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(found("$4.85/ft²", sum("system", "$387,599"))).toHaveLength(1);
  });

  test("says for which area the prices would do", () => {
    const [finding] = found("$5.00/ft²", sum("system", "$450,000"));
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid states $5.00/ft², which is $400,000 over the field of 80,000 ft²; its price lines at the base date come to $450,000. The stated price would suit an area of 90,000 ft².",
    );
  });

  test("lets the price be that of some of the lines", () => {
    const lines = [sum("base", "$240,000"), sum("carpet", "$300,000"), sum("infill", "$88,000")];
    expect(found("$7.85/ft²", ...lines)).toEqual([]);
    expect(found("$4.85/ft²", ...lines)).toEqual([]);
    expect(found("$3.00/ft²", ...lines)).toEqual([]);
    expect(found("$6.00/ft²", ...lines)).toHaveLength(1);
  });

  test("leaves out owner's estimates, credits and what is paid later", () => {
    const later = {
      ...{ kind: "yearly", id: "care", label: "Care", givenBy: "bid", category: "operation-and-maintenance" },
      amount: { kind: "lump-sum", price: "$10,000" },
    };
    const own = sum("machine", "$18,500", { category: "owners-addition", givenBy: "owner-estimate" });
    expect(found("$4.85/ft²", sum("system", "$388,000"), later, own, sum("credit", "-$2,000"))).toEqual([]);
  });

  test("is silent where the price, the lines or a closed area is missing, and where ranges leave room", () => {
    expect(foundBy(rule, checkedBid({ area, prices: prices(sum("system", "$1,000")) }))).toEqual([]);
    expect(found("$4.85/ft²")).toEqual([]);
    expect(found("$4.50–5.00/ft²", sum("system", "$380,000"))).toEqual([]);
    expect(found("at most $5/ft²", sum("system", "$380,000"))).toEqual([]);
  });

  test("scales with the area, and does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 700 }), fc.integer({ min: 2, max: 4 }), (cents, times) => {
        const bid = (price: string, dollars: number, field: string) =>
          checkedBid({
            area: written("area", field),
            claims: stated(price),
            prices: prices(sum("system", `$${dollars}`)),
          });
        const price = `$${(cents / 100).toFixed(2)}/ft²`;
        const once = bid(price, 400_001, "80,000 ft²");
        expectSameFindings(rule, once, bid(price, 400_001 * times, `${80_000 * times} ft²`));
        // $1/ft² is $9/yd², and half a cent is finer there: cents of 500 stay the only match
        expectSameFindings(rule, once, bid(`$${((cents * 9) / 100).toFixed(2)}/yd²`, 400_001, "80,000 ft²"));
      }),
    );
    const bid = checkedBid({
      ...{ area, claims: stated("$6/ft²") },
      prices: prices(sum("base", "$240,000"), sum("carpet", "$300,000"), sum("infill", "$88,000")),
    });
    orderNeverMatters(rule, bid);
  });
});
