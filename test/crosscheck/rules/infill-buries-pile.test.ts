import { describe, expect, test } from "vitest";
import { checkedBid, claims, foundBy, written } from "../checked-bid";

const rule = "infill-buries-pile";

describe("infill and pile", () => {
  const pile = claims({ property: "pile-height", figure: '2"', method: "d5823", condition: "new" });

  test("fires where infill is deeper than the pile", () =>
    expect(foundBy(rule, checkedBid({ claims: pile, infillDepth: written("length", "2.1–2.3 in") }))).toHaveLength(1));

  test("is silent where the depth may still fit", () =>
    expect(foundBy(rule, checkedBid({ claims: pile, infillDepth: written("length", "2–2.3 in") }))).toEqual([]));

  test("fires for a stated depth as well, and not where both are equal", () => {
    const stated = (figure: string) =>
      foundBy(
        rule,
        checkedBid({
          claims: claims({ property: "pile-height", figure: "50.8 mm" }, { property: "infill-depth", figure }),
        }),
      );
    expect(stated("2 in")).toEqual([]);
    expect(stated("2.01 in").map(({ severity }) => severity)).toEqual(["can't be true"]);
  });

  test("is silent where either is missing", () => {
    expect(foundBy(rule, checkedBid({ claims: pile }))).toEqual([]);
    expect(foundBy(rule, checkedBid({ infillDepth: written("length", "3 in") }))).toEqual([]);
  });
});
