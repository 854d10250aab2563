import { describe, expect, test } from "vitest";
import type { ClaimInput } from "#lib/claim";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "guarantee-against-aged";
type Differing = Partial<ClaimInput>;

const guarantee = (figure: string, differing: Differing = {}) => ({
  property: "warranty-hardness-limit",
  figure,
  method: "f1936",
  ...differing,
});
const level = (figure: string, condition: string, differing: Differing = {}) => ({
  property: "g-max",
  figure,
  method: "f355-a",
  condition,
  ...differing,
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const atEveryPoint = { words: "not above this at any one point" };

describe("a guarantee against the bid's own levels", () => {
  // a city's public specification asks for at most 110 as new and at most 140 through the warranty: both can hold
  test("is silent where the guarantee leaves room above the level as new", () =>
    expect(found(guarantee("140 g", atEveryPoint), level("110 g", "new"))).toEqual([]));

  test("fires where a guarantee for every point is below the level as new", () => {
    const [finding] = found(guarantee("at most 110 g", atEveryPoint), level("118 g", "new"));
    expect(finding?.severity).toBe("can't be true");
    expect(finding?.claims).toEqual(["claim-0", "claim-1"]);
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The warranty promises at most 110 g; in the condition “new” the bid itself states 118 g by a method that compares. The guarantee names ASTM F1936 and holds at every point.",
    );
    expect(finding && tell(finding.question, "metric")).toBe(
      "Your warranty promises at most 110 g, while your bid states 118 g in the condition “new”. How is the promise kept, with which device is it tested, and does it hold at every point or on average?",
    );
  });

  test("takes the basis of the guarantee from the bid where its words say none", () => {
    const basis = (choice: string) => ({ property: "warranty-hardness-basis", figure: choice });
    const severities = (choice: string) =>
      found(guarantee("110 g"), level("118 g", "new"), basis(choice)).map(({ severity }) => severity);
    expect(severities("every-point")).toEqual(["can't be true"]);
    expect(severities("average")).toEqual(["needs an answer"]);
    const highest = { property: "g-max-highest-point", figure: "118 g", method: "f1936", condition: "new" };
    expect(found(guarantee("110 g"), highest, basis("average"))).toEqual([]);
  });

  test("fires above the guarantee and not at it", () => {
    expect(found(guarantee("118 g"), level("118 g", "new"))).toEqual([]);
    expect(found(guarantee("118 g"), level("118.1 g", "new"))).toHaveLength(1);
  });

  test("only asks where an average may keep what the hardest point does not", () => {
    expect(found(guarantee("110 g"), level("118 g", "new"))[0]?.severity).toBe("needs an answer");
    const average = { property: "g-max-basis", figure: "average" };
    expect(found(guarantee("110 g"), level("118 g", "new"), average)[0]?.severity).toBe("can't be true");
    const onAverage = guarantee("110 g", { words: "on average over the field" });
    expect(found(onAverage, level("118 g", "new"), { property: "g-max-basis", figure: "every-point" })).toEqual([]);
  });

  test("asks about aged levels within the years of the warranty", () => {
    const years = (figure: string) => ({ property: "warranty-years", figure });
    expect(found(guarantee("140 g"), level("146 g", "year 8"))[0]?.severity).toBe("needs an answer");
    expect(found(guarantee("140 g"), level("146 g", "year 8"), years("8 years"))).toHaveLength(1);
    expect(found(guarantee("140 g"), level("146 g", "year 8"), years("7 years"))).toEqual([]);
  });

  test("takes the highest point as it is", () => {
    const highest = { property: "g-max-highest-point", figure: "152 g", method: "f1936", condition: "new" };
    expect(found(guarantee("140 g", atEveryPoint), level("118 g", "new"), highest)).toMatchObject([
      { severity: "can't be true", claims: ["claim-0", "claim-2"] },
    ]);
    expect(found(guarantee("140 g", { words: "as the mean of the field" }), highest)).toEqual([]);
  });

  // a city's public specification guarantees at 70 °F
  test("is silent where the level is from a frozen field", () => {
    const at70 = guarantee("140 g", { condition: "70 °F" });
    expect(found(at70, level("150 g", "new, 20 °F"))).toEqual([]);
    expect(found(at70, level("150 g", "new, 65 °F"))).toHaveLength(1);
  });

  test("is silent where figures may still agree", () => {
    expect(found(guarantee("120 g"), level("115–125 g", "new"))).toEqual([]);
    expect(found(guarantee("120 g"), level("at most 150 g", "new"))).toEqual([]);
  });

  // ASTM F1702, scope: figures by another mass, geometry, drop height or method do not compare
  test("is silent across unlike devices", () =>
    expect(found(guarantee("100 g", { method: "clegg-on-turf" }), level("118 g", "new"))).toEqual([]));

  test("is silent where guarantee, level, method or condition is missing", () => {
    expect(found(guarantee("110 g"))).toEqual([]);
    expect(found(level("118 g", "new"))).toEqual([]);
    expect(found(guarantee("110 g", { method: "" }), level("118 g", "new"))).toEqual([]);
    expect(found(guarantee("110 g"), level("118 g", ""))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(
      rule,
      bidWith(guarantee("110 g"), level("118 g", "new"), level("131 g", "year 5"), level("125 g", "year 3")),
    ));
});
