import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "seam-or-tuft-bind-low";
const bid = (figure: string, method = "d1335") =>
  checkedBid({ claims: claims({ property: "tuft-bind", figure, method }) });
const severities = (figure: string, method?: string) =>
  foundBy(rule, bid(figure, method)).map(({ severity }) => severity);

describe("tuft bind", () => {
  // from memory: 8 lbf in specifications, 6.8 lbf in an older guideline; 8 lbf is 35.5858 N (NIST SP 811)
  test("is usual from 8 lbf, low below it, and a question below 6.8 lbf", () => {
    expect(severities("8 lbf")).toEqual([]);
    expect(severities("35.59 N")).toEqual([]);
    expect(severities("35.58 N")).toEqual(["note"]);
    expect(severities("7.9 lbf")).toEqual(["note"]);
    expect(severities("6.8 lbf")).toEqual(["note"]);
    expect(severities("6.7 lbf")).toEqual(["needs an answer"]);
  });

  test("says that the floor is from memory", () => {
    const [finding] = foundBy(rule, bid("6 lbf"));
    if (finding === undefined) throw new Error("expected a finding");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid states a tuft bind of 6.0 lbf; an older guideline asked for at least 6.8 lbf (from memory).",
    );
    expect(finding.working.source).toContain("from memory");
  });

  test("is silent where a range or bound leaves room, by another method or none, in words and without a claim", () => {
    expect(severities("7–9 lbf")).toEqual([]);
    expect(severities("at least 6 lbf")).toEqual([]);
    expect(severities("at most 7 lbf")).toEqual(["note"]);
    expect(severities("5 lbf", "iso-4919")).toEqual([]);
    expect(severities("5 lbf", "")).toEqual([]);
    const inWords = claims({ property: "tuft-bind", words: "very firm", method: "d1335" });
    expect(foundBy(rule, checkedBid({ claims: inWords }))).toEqual([]);
    expect(foundBy(rule, checkedBid())).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 12, noNaN: true }), (force) => {
        fc.pre([6.8, 8].every((floor) => Math.abs(force - floor) > 1e-4));
        expectSameFindings(rule, bid(`${force.toFixed(6)} lbf`), bid(`${(force * 4.4482216).toFixed(6)} N`));
      }),
    );
    const two = claims(
      { property: "tuft-bind", figure: "7 lbf", method: "d1335" },
      { property: "tuft-bind", figure: "5 lbf", method: "d1335", condition: "year 5" },
    );
    orderNeverMatters(rule, checkedBid({ claims: two }));
  });
});

describe("seam strength", () => {
  const seam = (figure: string, sewn = "sewn", method = "en-12228") =>
    foundBy(
      rule,
      checkedBid({
        claims: claims({ property: "seam-strength", figure, method }, { property: "seam-method", figure: sewn }),
      }),
    );

  // from memory: EN 15330-1 asks sewn seams for 1000 N/100 mm
  test("is noted below 1000 N over 100 mm, and not at it", () => {
    expect(seam("1000 N/100 mm")).toEqual([]);
    expect(seam("10 kN/m")).toEqual([]);
    expect(seam("999 N/100 mm").map(({ severity }) => severity)).toEqual(["note"]);
    expect(seam("57.2 lbf/in")).toEqual([]); // 1000 N/100 mm are 57.10 lbf/in (NIST SP 811)
    expect(seam("57.0 lbf/in")).toHaveLength(1);
  });

  test("is silent for glued seams, for another method or none, and where the joint is not stated", () => {
    expect(seam("500 N/100 mm", "glued")).toEqual([]);
    expect(seam("500 N/100 mm", "sewn", "")).toEqual([]);
    const alone = claims({ property: "seam-strength", figure: "500 N/100 mm", method: "en-12228" });
    expect(foundBy(rule, checkedBid({ claims: alone }))).toEqual([]);
  });
});
