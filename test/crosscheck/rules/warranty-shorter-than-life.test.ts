import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, prices, type WrittenClaim } from "../checked-bid";

const rule = "warranty-shorter-than-life";
const warranty = (figure: string) => ({ property: "warranty-years", figure });
const life = (figure: string) => ({ property: "carpet-life", figure });
const chain = (years: string, lifeGivenBy = "bid") => ({
  ...{ kind: "replacement-chain", id: "turf", label: "Turf and infill", givenBy: "bid", life: years, lifeGivenBy },
  amount: { kind: "lump-sum", price: "$1,000,000" },
});
const bidWith = (lines: readonly unknown[], ...list: readonly WrittenClaim[]) =>
  checkedBid({ prices: prices(...lines), claims: claims(...list) });
const found = (...given: Parameters<typeof bidWith>) => foundBy(rule, bidWith(...given));

describe("length of the warranty and stated lives", () => {
  test("notes a warranty that ends before carpet life and priced life", () => {
    const [finding] = found([chain("12 years")], warranty("8 years"), life("10 years"));
    expect(finding).toMatchObject({ severity: "note", claims: ["claim-0", "claim-1"], priceLines: ["turf"] });
    expect(finding?.key).toBe(rule);
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The warranty ends after 8.0 years; the bid gives a carpet life of 10.0 years and a life in its price lines of “Turf and infill” at 12.0 years.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Your warranty ends after 8.0 years, before the life that your bid gives. What stands behind the years after it, and can the warranty be extended to the stated life?",
    );
  });

  test("is silent where the warranty reaches the life", () => {
    expect(found([chain("8 years")], warranty("8 years"), life("8 years"))).toEqual([]);
    expect(found([chain("9 years")], warranty("8 years"))).toHaveLength(1);
    expect(found([], warranty("8 years"), life("8.1 years"))).toHaveLength(1);
    expect(found([], warranty("96 months"), life("8 years"))).toEqual([]);
  });

  test("is silent where ranges leave room, and for the longest of several warranties", () => {
    expect(found([], warranty("at least 8 years"), life("12 years"))).toEqual([]);
    expect(found([], warranty("8 years"), life("8–12 years"))).toEqual([]);
    expect(found([], warranty("8 years"), warranty("12 years"), life("12 years"))).toEqual([]);
  });

  test("leaves the owner's estimates out", () =>
    expect(found([chain("12 years", "owner-estimate")], warranty("8 years"))).toEqual([]));

  test("is silent where warranty or life is missing", () => {
    expect(found([chain("12 years")], life("12 years"))).toEqual([]);
    expect(found([], warranty("8 years"))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(
      rule,
      bidWith([chain("12 years")], warranty("8 years"), life("10 years"), warranty("6 years")),
    ));
});
