import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agedPoints, bestClaim, type Claim, type ClaimQuery, claimsFor, ofAge, quantityOf } from "#lib/claim";
import { explainShortfall } from "#lib/figure";
import { claimed, claimsAbout } from "./bid-claims";

/** The figure that stands, or the sentence that says why none does. */
function answer(claims: readonly Claim[], query: ClaimQuery): string {
  const best = bestClaim(claims, query);
  if (!best.ok) return explainShortfall(best.problem);
  const { value } = best.value.claim;
  return value.kind === "quantity" ? value.quantity.asEntered : value.kind === "choice" ? value.choice : value.words;
}

const hardness = (id: string, figure: string, rest: Partial<Parameters<typeof claimed>[0]> = {}) =>
  claimed({ id, property: "g-max", figure, method: "f355-a", condition: "new", ...rest });

describe("bestClaim", () => {
  test("says that nothing is claimed", () => {
    expect(answer([], { property: "g-max" })).toBe("The bid does not state G-max. Ask the bidder for it.");
  });

  test("says that there are only words", () => {
    const words = claimed({ property: "g-max", words: "Soft as grass" });
    expect(answer([words], { property: "g-max", method: "f355-a" })).toBe(
      "The bid describes G-max in words only: “Soft as grass”. Ask for a figure.",
    );
  });

  test("takes words where the property asks for words", () => {
    const terms = claimed({ property: "warranty-terms", words: "Grooming log required" });
    expect(answer([terms], { property: "warranty-terms" })).toBe("Grooming log required");
  });

  test("does not take a figure by an unlike method", () => {
    expect(answer([hardness("a", "95 g", { method: "f1702-clegg" })], { property: "g-max", method: "f1936" })).toMatch(
      /^The bid gives G-max by ASTM F1702, not by ASTM F1936: ASTM F1702 drops .* other\. Ask for a figure by ASTM F1936\.$/,
    );
  });

  test("does not take a figure without a method where one is wanted", () => {
    expect(answer([hardness("a", "95 g", { method: "not stated" })], { property: "g-max", method: "f355-a" })).toBe(
      "The bid gives G-max by a method that is not stated, not by ASTM F355, missile A: The method was not stated, so nobody can tell what the figure measures. Ask for a figure by ASTM F355, missile A.",
    );
  });

  test("does not take a new figure for an aged field", () => {
    const query = { property: "g-max", method: "f355-a", condition: ofAge({ kind: "aged", years: 5 }) } as const;
    expect(answer([hardness("a", "95 g")], query)).toBe(
      "The bid gives G-max by ASTM F355, missile A in the condition “new”, not by ASTM F355, missile A in the condition “year 5”: A figure for “new” says nothing certain about “year 5”. Ask for a figure by ASTM F355, missile A in the condition “year 5”.",
    );
  });

  test("prefers stronger evidence to a better figure", () => {
    const claims = [hardness("a", "95 g"), hardness("b", "120 g", { evidence: "field-tested" })];
    expect(answer(claims, { property: "g-max", method: "f1936" })).toBe("120 g");
  });

  test("takes the less favourable of two figures that are shown equally well, and keeps the other in sight", () => {
    const best = bestClaim([hardness("a", "95 g"), hardness("b", "120 g")], { property: "g-max", method: "f355-a" });
    expect(best).toMatchObject({ ok: true, value: { claim: { id: "b" }, others: [{ id: "a" }] } });
    const binds = [
      claimed({ id: "a", property: "tuft-bind", figure: "8 lbf", method: "d1335" }),
      claimed({ id: "b", property: "tuft-bind", figure: "10 lbf", method: "d1335" }),
    ];
    expect(answer(binds, { property: "tuft-bind" })).toBe("8 lbf");
  });

  test("takes a range at its less favourable end", () => {
    const claims = [hardness("a", "110 g"), hardness("b", "90-130 g")];
    expect(answer(claims, { property: "g-max", method: "f355-a" })).toBe("90-130 g");
  });

  test("takes the figure nearest to a new field where no condition is wanted", () => {
    const claims = [hardness("a", "150 g", { condition: "year 5", evidence: "field-tested" }), hardness("b", "95 g")];
    expect(answer(claims, { property: "g-max", method: "f355-a" })).toBe("95 g");
  });

  test("prefers a named method to none", () => {
    const claims = [hardness("a", "130 g", { method: "" }), hardness("b", "95 g")];
    expect(answer(claims, { property: "g-max" })).toBe("95 g");
  });

  test("lets neither of two unlike methods stand where none is wanted", () => {
    const claims = [hardness("a", "95 g"), hardness("b", "80 g", { method: "f1702-clegg" })];
    expect(answer(claims, { property: "g-max" })).toBe(
      "The bid gives G-max by ASTM F355, missile A and by ASTM F1702, not by one named method: The figures rest on unlike methods, so neither can stand for the other. Ask for a figure by one named method.",
    );
  });

  const gMaxes = claimsAbout(
    "g-max",
    ["95 g", "120 g", "90-130 g", "< 165 g", ""],
    ["f355-a", "f1936", "f1702-clegg", "f355-e", ""],
  );
  const query = fc.constantFrom<ClaimQuery>(
    { property: "g-max" },
    { property: "g-max", method: "f355-a" },
    { property: "g-max", method: "f1702-clegg", condition: ofAge({ kind: "new" }) },
    { property: "g-max", condition: ofAge({ kind: "aged", years: 5 }) },
  );

  test("does not depend on the order of the claims", () => {
    const twoOrders = gMaxes.chain((claims) =>
      fc.tuple(fc.constant(claims), fc.shuffledSubarray(claims, { minLength: claims.length })),
    );
    fc.assert(
      fc.property(twoOrders, query, ([claims, shuffled], asked) => {
        expect(bestClaim(shuffled, asked)).toEqual(bestClaim(claims, asked));
      }),
    );
  });

  test("never answers a wanted method with a claim by an unlike one", () => {
    fc.assert(
      fc.property(gMaxes, (claims) => {
        const best = bestClaim(claims, { property: "g-max", method: "f355-a" });
        if (best.ok) expect(["f355-a", "f1936"]).toContain(best.value.claim.method);
      }),
    );
  });

  test("never leaves a stronger claim standing in the same condition", () => {
    const guaranteed = hardness("guaranteed", "140 g", { evidence: "guaranteed" });
    fc.assert(
      fc.property(gMaxes, (claims) => {
        const best = bestClaim([...claims, guaranteed], {
          property: "g-max",
          method: "f355-a",
          condition: ofAge({ kind: "new" }),
        });
        expect(best.ok && best.value.claim.evidence).toBe("guaranteed");
      }),
    );
  });
});

describe("claimsFor", () => {
  test("keeps the claims of one property in their order", () => {
    const claims = [
      hardness("b", "95 g"),
      claimed({ id: "x", property: "gauge", figure: "1/2 in" }),
      hardness("a", "90 g"),
    ];
    expect(claimsFor(claims, "g-max").map(({ id }) => id)).toEqual(["b", "a"]);
  });
});

describe("quantityOf", () => {
  test("gives the figure in the dimension of the property", () => {
    const pile = claimed({ property: "pile-height", figure: "50 mm" });
    expect(quantityOf(pile, "pile-height")?.reading).toEqual({ kind: "exact", value: 0.05 });
  });

  test("gives null for words and for another property", () => {
    expect(quantityOf(claimed({ property: "pile-height", words: "tall" }), "pile-height")).toBeNull();
    expect(quantityOf(claimed({ property: "pile-height", figure: "50 mm" }), "gauge")).toBeNull();
  });
});

describe("agedPoints", () => {
  test("puts new and aged figures by comparable methods in the order of their age", () => {
    const claims = [
      hardness("five", "150 g", { condition: "year 5", method: "f1936" }),
      hardness("new", "95 g"),
      hardness("clegg", "80 g", { method: "f1702-clegg" }),
      hardness("cycles", "110 g", { condition: "after 20,000 cycles" }),
      hardness("words", "", { words: "stays soft", condition: "year 8" }),
      hardness("unknown", "100 g", { condition: "not stated" }),
      hardness("months", "101 g", { condition: "18 months" }),
      hardness("shallow", "130 g", { condition: "new, 0.5 in less infill" }),
    ];
    const points = agedPoints(claims, "g-max", "f355-a");
    expect(points.map(({ years, claim }) => [years, claim.id])).toEqual([
      [0, "new"],
      [1.5, "months"],
      [5, "five"],
    ]);
    expect(points[2]?.reading).toEqual({ kind: "exact", value: 150 });
  });

  test("turns hours of use into years where the use a year is known", () => {
    const claims = [hardness("hours", "130 g", { condition: "after 4,500 h of use" }), hardness("new", "110 g")];
    const agesAt = (hoursPerYear?: number) =>
      agedPoints(claims, "g-max", "f355-a", hoursPerYear).map(({ years, claim }) => [years, claim.id]);
    expect(agesAt(1500)).toEqual([
      [0, "new"],
      [3, "hours"],
    ]);
    expect(agesAt()).toEqual([[0, "new"]]);
    expect(agesAt(0)).toEqual([[0, "new"]]);
  });
});
