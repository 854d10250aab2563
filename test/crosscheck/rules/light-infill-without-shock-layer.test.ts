import { describe, expect, test } from "vitest";
import { checkedBid, claims, foundBy, written } from "../checked-bid";

const rule = "light-infill-without-shock-layer";

describe("light infill without a shock layer", () => {
  const shockLayer = (figure: string) => claims({ property: "shock-layer", figure });

  test("fires for 3.2 lb/ft² over nothing", () => {
    const bid = checkedBid({ claims: shockLayer("none"), totalArealDensity: written("arealDensity", "3.2 lb/ft²") });
    expect(foundBy(rule, bid)).toHaveLength(1);
  });

  test.each([
    ["a shock layer lies below", "expanded-bead", "3.2 lb/ft²"],
    ["the infill is heavy", "none", "9.5 lb/ft²"],
    ["the infill may be heavier than light", "none", "3–4 lb/ft²"],
  ])("is silent where %s", (_why, kind, mass) => {
    expect(
      foundBy(rule, checkedBid({ claims: shockLayer(kind), totalArealDensity: written("arealDensity", mass) })),
    ).toEqual([]);
  });

  // 3.75 lb/ft² is the most that an infill of rubber alone usually weighs: common practice, no source
  test("fires up to what rubber alone usually weighs, and not above", () => {
    const weighing = (mass: string) =>
      foundBy(rule, checkedBid({ claims: shockLayer("none"), totalArealDensity: written("arealDensity", mass) }));
    expect(weighing("3.75 lb/ft²")).toHaveLength(1);
    expect(weighing("3.76 lb/ft²")).toEqual([]);
  });

  test("is silent where the mass is open to the heavy side", () =>
    expect(
      foundBy(
        rule,
        checkedBid({ claims: shockLayer("none"), totalArealDensity: written("arealDensity", "at least 2 lb/ft²") }),
      ),
    ).toEqual([]));

  test("is silent where the bid does not say what lies below", () =>
    expect(foundBy(rule, checkedBid({ totalArealDensity: written("arealDensity", "2 lb/ft²") }))).toEqual([]));
});
