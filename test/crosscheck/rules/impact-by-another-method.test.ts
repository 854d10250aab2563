import { describe, expect, test } from "vitest";
import { checkedBid, claims, foundBy } from "../checked-bid";

const rule = "impact-by-another-method";

describe("impact levels by another method", () => {
  const level = (method: string) => claims({ property: "g-max", figure: "68 g", method, condition: "new" });

  // ASTM F1702, scope: not comparable with another mass, geometry, drop height or method
  test("fires for a lighter missile", () =>
    expect(foundBy(rule, checkedBid({ claims: level("clegg-on-turf") }))).toHaveLength(1));

  test("is silent for the same missile and height", () =>
    expect(foundBy(rule, checkedBid({ claims: level("f355-a") }))).toEqual([]));

  test("is silent where no level is stated", () => expect(foundBy(rule, checkedBid())).toEqual([]));

  test("asks for the method where none is stated", () =>
    expect(foundBy(rule, checkedBid({ claims: level("") }))).toHaveLength(1));
});
