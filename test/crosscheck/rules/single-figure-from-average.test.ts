import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "single-figure-from-average";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const level = (figure: string, differing: object = {}) => ({
  ...{ property: "g-max", figure, method: "f355-a", condition: "new", ...differing },
});
const basis = (figure: string) => ({ property: "g-max-basis", figure });

describe("averages against a limit for every point", () => {
  test("fires for an average", () => {
    const [finding] = found(level("118 g"), basis("average"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The stated 118 g is an average of the test points; the limit of 165 g holds at every point.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Your G-max of 118 g is an average. What was the highest level at a single point, at how many points was tested, and can you send the single values?",
    );
  });

  test("takes the words of the level before the basis of the bid", () => {
    expect(found(level("118 g", { words: "mean of ten points" }))).toHaveLength(1);
    expect(found(level("118 g", { words: "at each test location" }), basis("average"))).toEqual([]);
    expect(found(level("118 g", { words: "average, and below it at each location" }))).toEqual([]);
  });

  test("is silent where the highest point of the same condition is given as well", () => {
    const highest = (condition: string, method = "f1936") => ({
      ...{ property: "g-max-highest-point", figure: "131 g", method, condition },
    });
    expect(found(level("118 g"), basis("average"), highest("new"))).toEqual([]);
    expect(found(level("118 g"), basis("average"), highest("year 3"))).toHaveLength(1);
    expect(found(level("118 g"), basis("average"), highest("new", "clegg-on-turf"))).toHaveLength(1);
  });

  test("leaves an average at the limit to the limit", () => {
    expect(found(level("164.9 g"), basis("average"))).toHaveLength(1);
    expect(found(level("165 g"), basis("average"))).toEqual([]);
  });

  test("is silent for every point, another device and where the basis is missing or both are given", () => {
    expect(found(level("118 g"), basis("every-point"))).toEqual([]);
    expect(found(level("68 g", { method: "clegg-on-turf" }), basis("average"))).toEqual([]);
    expect(found(level("118 g"))).toEqual([]);
    expect(found(basis("average"))).toEqual([]);
    expect(found(level("118 g"), basis("average"), basis("every-point"))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(level("118 g"), basis("average"), level("125 g", { condition: "year 3" }))));
});
