import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bestClaim, claimComparability, ofAge, propertyOf } from "#lib/claim";
import { claimed, claimsAbout } from "./bid-claims";

const full = { property: "g-max", figure: "95 g", method: "f1936", condition: "new, dry, 70 °F" };

describe("claimComparability", () => {
  test("has nothing to say where method and conditions are stated and alike", () => {
    const claim = claimed({ ...full, edition: "F1936-19" });
    expect(claimComparability({ property: "g-max", method: "f1936" }, claim)).toEqual({
      kind: "comparable",
      cautions: [],
    });
  });

  test("warns of an older edition, an open condition and another build", () => {
    const claim = claimed({ ...full, condition: "new", edition: "F1936-10", build: "other-build" });
    expect(claimComparability({ property: "g-max", method: "f1936" }, claim)).toEqual({
      kind: "comparable",
      cautions: [
        "The report names the edition of 2010; the one of 2019 is newer.",
        "The bid does not say whether the surface was wet or dry.",
        "The bid does not say how warm the surface was.",
        "The report is of another build than this bid’s, so the figure need not hold for it.",
      ],
    });
  });

  test("sets a figure apart that was got in another condition", () => {
    const query = { property: "g-max", method: "f1936", condition: ofAge({ kind: "aged", years: 5 }) } as const;
    expect(claimComparability(query, claimed(full))).toEqual({
      kind: "not-comparable",
      reason: "A figure for “new, dry, 70 °F” says nothing certain about “year 5”.",
      ask: "What is the figure for G-max in the condition that is wanted?",
    });
  });

  test("takes another property where the wanted one follows by definition", () => {
    const claim = claimed({ property: "infill-total-mass", figure: "240 short tons", method: "infill-weigh-tickets" });
    expect(claimComparability({ property: "infill-total-areal-density" }, claim)).toMatchObject({
      kind: "comparable-after-conversion",
      conversion: { formula: "mass per area = mass ÷ area of the field", needs: ["field-area"] },
      cautions: ["The mass is the one for the whole field, spread over all of it."],
    });
  });

  test("takes no other property for G-max, and no other missile", () => {
    expect(
      claimComparability({ property: "g-max" }, claimed({ property: "shock-absorption", figure: "60 %" })),
    ).toEqual({
      kind: "not-comparable",
      reason: "The claim is about shock absorption, from which G-max does not follow.",
      ask: "What is the figure for G-max?",
    });
    const hammer = claimed({ ...full, method: "f1702-clegg" });
    expect(claimComparability({ property: "g-max", method: "f1936" }, hammer).kind).toBe("not-comparable");
  });

  test("sets a figure apart that was got by an unlike edition", () => {
    const report = { property: "shock-absorption", figure: "60 %", method: "aaa-shock-absorption", condition: "new" };
    const query = { property: "shock-absorption", method: "aaa-shock-absorption" } as const;
    const old = claimed({ ...report, id: "old", edition: "2009" });
    expect(claimComparability(query, old).kind).toBe("not-comparable");
    expect(bestClaim([old], query)).toMatchObject({
      ok: false,
      problem: { kind: "not-comparable", reason: expect.stringContaining("another apparatus") },
    });
    expect(bestClaim([old, claimed({ ...report, id: "young", edition: "2015" })], query)).toMatchObject({
      ok: true,
      value: { claim: { id: "young" } },
    });
  });

  test("lets through what bestClaim takes, and nothing else", () => {
    const claims = claimsAbout("g-max", ["95 g", "120 g"], ["f355-a", "f1936", "f1702-clegg", ""]);
    const query = { property: "g-max", method: "f1936", condition: ofAge({ kind: "new" }) } as const;
    fc.assert(
      fc.property(claims, (all) => {
        const through = all.filter((claim) => claimComparability(query, claim).kind === "comparable");
        const best = bestClaim(all, query);
        expect(best.ok).toBe(through.length > 0);
        if (best.ok) expect(through).toContainEqual(best.value.claim);
      }),
    );
  });

  test("gives whole sentences", () => {
    const verdict = claimComparability(
      { property: "ball-rebound-share" },
      claimed({ property: "ball-rebound", figure: "0.8 m" }),
    );
    if (verdict.kind !== "comparable-after-conversion") throw new Error("a share follows from a height");
    for (const caution of verdict.cautions) expect(caution).toMatch(/^\p{Lu}.*\.$/u);
    expect(propertyOf(verdict.conversion.to).id).toBe("ball-rebound-share");
  });
});
