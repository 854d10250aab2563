import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "same-report-two-products";
const tested = (differing: object = {}) => ({
  ...{ property: "g-max", figure: "110 g", method: "f1936", document: "Report 7", laboratory: "Northern Lab" },
  ...{ date: "2026-03-02", ...differing },
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const otherWith = (...list: readonly WrittenClaim[]) =>
  checkedBid({ id: "bid-b", letter: "B", claims: claims(...list) });

const own = tested({ build: "bid-build" });
const another = tested({ build: "other-build", property: "tuft-bind", figure: "9 lbf" });

describe("one report for two products", () => {
  test("asks where one report stands for the build of the bid and for another", () => {
    const [finding] = foundBy(rule, bidWith(own, another));
    expect(finding).toMatchObject({ severity: "needs an answer", claims: ["claim-0", "claim-1"] });
    expect(finding && tell(finding.sentence, "us")).toBe(
      "“Report 7, Northern Lab, 2026-03-02” stands for the build of this bid with G-max, and for another build with tuft bind.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Which build does “Report 7, Northern Lab, 2026-03-02” describe: the one that you offer, or another?",
    );
  });

  test("notes a report that another bid uses as well, and does not name that bid to the bidder", () => {
    const [finding] = foundBy(rule, bidWith(tested()), [otherWith(tested({ document: "REPORT 7 " }))]);
    expect(finding?.severity).toBe("note");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "“Report 7, Northern Lab, 2026-03-02” is used in bid B as well.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "Whose product does “Report 7, Northern Lab, 2026-03-02” describe, and is it the very build that you offer?",
    );
  });

  test.each([["document"], ["laboratory"], ["date"]])("is silent where the %s differs or is missing", (field) => {
    for (const text of [field === "date" ? "2026-03-03" : "Something else", ""]) {
      expect(foundBy(rule, bidWith(tested()), [otherWith(tested({ [field]: text }))])).toEqual([]);
      expect(foundBy(rule, bidWith(own, { ...another, [field]: text }))).toEqual([]);
    }
  });

  test("is silent where nothing is said of the build and no other bid has the report", () =>
    expect(foundBy(rule, bidWith(tested(), tested()), [otherWith()])).toEqual([]));

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(own, another, tested({ document: "Report 8" })), [
      otherWith(tested(), tested({ document: "Report 8" })),
    ]));
});
