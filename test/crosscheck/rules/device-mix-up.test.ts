import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "device-mix-up";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const guarantee = (figure: string, method: string, words = "") => ({
  ...{ property: "warranty-hardness-limit", figure, method, words },
});

describe("limits and the devices they belong to", () => {
  // ASTM work item WK38153 for 200 with the flat missile; the light hammer is held to less than 100 (ISEA 2024 abstract)
  test("fires for the light hammer below 200", () => {
    const [finding] = found(guarantee("below 200 g", "clegg-on-turf"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "A limit of 200 g is given for Clegg hammer on synthetic turf. Limits of that size are known for the flat missile of 20 lb (9.1 kg); the light hammer is usually held to 100 g (rule of thumb: common practice, no source).",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Your bid gives Clegg hammer on synthetic turf as the method for hardness limit under warranty. With which device, mass and drop height is this figure tested?",
    );
  });

  test("notes the flat missile below 100", () =>
    expect(found(guarantee("below 100 g", "f355-a"))[0]?.severity).toBe("note"));

  test("fires from 165 g on and up to 100 g, and not between", () => {
    expect(found(guarantee("165 g", "clegg-on-turf"))).toHaveLength(1);
    expect(found(guarantee("164.9 g", "clegg-on-turf"))).toEqual([]);
    expect(found(guarantee("100 g", "f1936"))).toHaveLength(1);
    expect(found(guarantee("100.1 g", "f1936"))).toEqual([]);
  });

  test("takes a level as a limit only where it is one-sided", () => {
    expect(found({ property: "g-max", figure: "at most 200 g", method: "clegg-on-turf" })).toHaveLength(1);
    expect(found({ property: "g-max", figure: "96 g", method: "f355-a" })).toEqual([]);
  });

  test("fires where the words name the other device alone", () => {
    const clegg = "G-max not above 130 by Clegg hammer";
    expect(found(guarantee("130 g", "f1936", clegg))[0]?.severity).toBe("needs an answer");
    expect(found(guarantee("130 g", "f1936", `${clegg}, or the 20 lb missile`))).toEqual([]);
    expect(found(guarantee("80 g", "clegg-on-turf", clegg))).toEqual([]);
    expect(found(guarantee("80 g", "clegg-on-turf", "tested by ASTM F1936"))).toHaveLength(1);
  });

  test("is silent where no method is stated, and for other devices", () => {
    expect(found(guarantee("200 g", ""))).toEqual([]);
    expect(found(guarantee("200 g", "f355-e", "by Clegg"))).toEqual([]);
    expect(found(guarantee("at least 200 g", "clegg-on-turf"))).toEqual([]);
    expect(found()).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(guarantee("200 g", "clegg-on-turf"), guarantee("90 g", "f1936"))));
});
