import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "report-of-another-build";
const tested = (build: string, differing: object = {}) => ({
  ...{ property: "g-max", figure: "110 g", method: "f1936", evidence: "accredited-laboratory" as const },
  ...{ document: "Report 7", build, ...differing },
});
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));

describe("reports of another build", () => {
  test("asks for a test of the build on offer", () => {
    const [finding] = found(tested("other-build"), tested("other-build", { property: "tuft-bind", figure: "9 lbf" }));
    expect(finding).toMatchObject({ severity: "needs an answer", claims: ["claim-0", "claim-1"] });
    expect(finding && tell(finding.sentence, "us")).toBe(
      "By “Report 7”, another build than this bid’s was tested. What it shows for G-max and tuft bind need not hold here.",
    );
    expect(finding && tell(finding.question, "us")).toBe(
      "What does a test of the very build you offer show for G-max and tuft bind, and in what does the build of “Report 7” differ?",
    );
  });

  test("keeps reports apart", () =>
    expect(found(tested("other-build"), tested("other-build", { document: "Report 8" }))).toHaveLength(2));

  test("is silent for the build of the bid and where none is described", () => {
    expect(found(tested("bid-build"))).toEqual([]);
    expect(found(tested(""))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(tested("other-build"), tested("other-build"), tested("bid-build"))));
});
