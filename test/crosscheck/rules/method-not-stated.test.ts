import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "method-not-stated";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const draining = { property: "system-infiltration", figure: "40 in/h" };
const guarantee = { property: "warranty-hardness-limit", figure: "165 g" };

describe("figures without their method", () => {
  test("gathers those that depend on the way of testing", () => {
    const list = found(draining, guarantee);
    expect(list).toMatchObject([{ severity: "note", claims: ["claim-0", "claim-1"] }]);
    expect(list[0] && tell(list[0].sentence, "us")).toBe(
      "For system infiltration rate and hardness limit under warranty no test method is stated. These can be tested in unlike ways that do not compare.",
    );
    expect(list[0] && tell(list[0].question, "us")).toBe(
      "Which test method stands behind your figures for system infiltration rate and hardness limit under warranty, and in which report and on which page is each?",
    );
  });

  // ring and flood methods for water, missiles of unlike shape for impact, two procedures for tuft bind (from memory)
  test.each([
    ["head-injury-criterion", "900"],
    ["critical-fall-height", "1.4 m"],
    ["shock-absorption", "60 %"],
    ["carpet-infiltration", "40 in/h"],
    ["tuft-bind", "9 lbf"],
    ["lead-content", "10 mg/kg"],
  ])("counts %s", (property, figure) => expect(found({ property, figure })).toHaveLength(1));

  test.each([
    ["pile-height, which is measured in one way", { property: "pile-height", figure: "2 in" }],
    ["what no test stands behind", { property: "warranty-years", figure: "8 years" }],
    ["G-max, which has a rule of its own", { property: "g-max", figure: "110 g" }],
    ["words", { property: "system-infiltration", figure: "", words: "drains well" }],
    ["a stated method", { ...draining, method: "f2898" }],
  ])("is silent for %s", (_what, claim) => expect(found(claim)).toEqual([]));

  test("does not depend on the order of the claims", () => expectSameInAnyOrder(rule, bidWith(draining, guarantee)));
});
