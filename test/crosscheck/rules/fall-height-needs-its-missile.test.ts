import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { expectSameInAnyOrder } from "../any-order";
import { checkedBid, claims, foundBy, type WrittenClaim } from "../checked-bid";

const rule = "fall-height-needs-its-missile";
const bidWith = (...list: readonly WrittenClaim[]) => checkedBid({ claims: claims(...list) });
const found = (...list: readonly WrittenClaim[]) => foundBy(rule, bidWith(...list));
const height = (method: string, document = "Report 3") => ({
  ...{ property: "critical-fall-height", figure: "1.4 m", method, document },
});
const level = (method: string, document = "Report 3") => ({ property: "g-max", figure: "110 g", method, document });

describe("the test behind a critical fall height", () => {
  test("fires for the flat missile", () => {
    const [finding] = found(height("f1936"));
    expect(finding?.severity).toBe("needs an answer");
    expect(finding?.overClaims).toEqual(["claim-0"]);
    expect(finding?.key).toBe("fall-height-needs-its-missile:claim-0");
    expect(finding && tell(finding.sentence, "us")).toBe(
      "The critical fall height rests on ASTM F1936, which drops a heavy flat missile and records the peak deceleration. A critical fall height takes a head-sized missile and the head injury criterion.",
    );
  });

  // missile E stands behind F355-E, F1292, F3146 and EN 1177 (from memory)
  test.each(["f355-e", "f1292", "f3146", "en-1177"])("is silent for %s", (method) =>
    expect(found(height(method))).toEqual([]),
  );

  test("looks into the same document where the height names no method", () => {
    const [finding] = found(height(""), level("f355-a", "report  3"));
    expect(finding?.claims).toEqual(["claim-0", "claim-1"]);
    expect(found(height(""), level("f355-a", "Report 4"))).toEqual([]);
    expect(found(height(""), level("f355-a"), level("f355-e"))).toEqual([]);
  });

  test("is silent where method and document are missing", () => {
    expect(found(height("", ""), level("f355-a", ""))).toEqual([]);
    expect(found(height(""), level(""))).toEqual([]);
    expect(found(level("f355-a"))).toEqual([]);
  });

  test("does not depend on the order of the claims", () =>
    expectSameInAnyOrder(rule, bidWith(height(""), level("f355-a"), level("f1936"))));
});
