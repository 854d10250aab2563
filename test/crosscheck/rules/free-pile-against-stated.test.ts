import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tell } from "#lib/figure";
import { checkedBid, claims, foundBy, written } from "../checked-bid";
import { expectSameFindings, orderNeverMatters } from "../laws";

const rule = "free-pile-against-stated";
const stated = (pile: string, depth: string, free: string) =>
  claims(
    { property: "pile-height", figure: pile },
    { property: "infill-depth", figure: depth },
    { property: "free-pile-height", figure: free },
  );
const found = (...figures: readonly [string, string, string]) =>
  foundBy(rule, checkedBid({ claims: stated(...figures) }));

describe("pile, infill depth and free pile as stated", () => {
  // geometry: 2.25 in less 1.75 in leaves 0.5 in
  test("is silent for 2.25, 1.75 and 0.5 in", () => expect(found("2.25 in", "1.75 in", "0.5 in")).toEqual([]));

  test("says that more than the pile can't be true", () => {
    const [finding] = found("2-1/4 in", "1-3/4 in", "3/4 in");
    if (finding === undefined) throw new Error("expected a finding");
    expect(finding.severity).toBe("can't be true");
    expect(tell(finding.sentence, "us")).toBe(
      "The bid states a pile of 2.25 in, an infill depth of 1.75 in and a free pile of 0.75 in. Together that is more than the pile, so not all three can be true.",
    );
  });

  test("asks where part of the pile is left out", () =>
    expect(found("2.25 in", "1.25 in", "0.5 in").map(({ severity }) => severity)).toEqual(["needs an answer"]));

  test("allows a millimetre and a half for rounding, and no more, on both sides", () => {
    expect(found("50 mm", "35 mm", "16.5 mm")).toEqual([]);
    expect(found("50 mm", "35 mm", "13.5 mm")).toEqual([]);
    expect(found("50 mm", "35 mm", "16.6 mm")).toHaveLength(1);
    expect(found("50 mm", "35 mm", "13.4 mm")).toHaveLength(1);
  });

  test("is silent where ranges leave room", () => {
    expect(found("48–52 mm", "33–37 mm", "18 mm")).toEqual([]);
    expect(found("50 mm", "at most 35 mm", "20 mm")).toEqual([]);
    expect(found("50 mm", "at least 35 mm", "20 mm")).toHaveLength(1);
  });

  test("is silent where a figure is missing or of another age", () => {
    const all = stated("50 mm", "35 mm", "30 mm");
    for (const [index] of all.entries())
      expect(foundBy(rule, checkedBid({ claims: all.filter((_claim, at) => at !== index) }))).toEqual([]);
    const aged = [
      ...all.slice(0, 2),
      ...claims({ property: "free-pile-height", figure: "30 mm", condition: "year 4" }).map((claim) => ({
        ...claim,
        id: "aged",
      })),
    ];
    expect(foundBy(rule, checkedBid({ claims: aged }))).toEqual([]);
  });

  test("does not depend on unit or order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 40 }), (free) => {
        fc.pre(free !== 15);
        const inInches = (mm: number) => `${(mm / 25.4).toFixed(7)} in`;
        expectSameFindings(
          rule,
          checkedBid({ claims: stated("50 mm", "35 mm", `${free} mm`) }),
          checkedBid({ claims: stated(inInches(50), inInches(35), inInches(free)) }),
        );
      }),
    );
    orderNeverMatters(rule, checkedBid({ claims: stated("50 mm", "35 mm", "30 mm") }));
  });
});

describe("pile and free pile with a depth from mass", () => {
  const withoutDepth = (free: string) =>
    claims({ property: "pile-height", figure: "50 mm" }, { property: "free-pile-height", figure: free });
  const derived = (free: string) =>
    foundBy(rule, checkedBid({ claims: withoutDepth(free), infillDepth: written("length", "30 mm") }));

  test("fires beyond a fifth of the depth and the rounding, as a question only", () => {
    // 30 mm within a fifth leaves 14 to 26 mm of 50 mm; rounding adds 1.5 mm
    expect(derived("12.5 mm")).toEqual([]);
    expect(derived("27.5 mm")).toEqual([]);
    expect(derived("12.4 mm").map(({ severity }) => severity)).toEqual(["needs an answer"]);
    expect(derived("27.6 mm")).toHaveLength(1);
  });

  test("is silent where neither depth is known", () =>
    expect(foundBy(rule, checkedBid({ claims: withoutDepth("40 mm") }))).toEqual([]));
});
