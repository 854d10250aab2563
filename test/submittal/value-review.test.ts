import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ClaimInput } from "#lib/claim";
import { reviewValue } from "#lib/submittal";
import { claimed } from "../claim/bid-claims";
import { requirementsFrom, wholeClause } from "../requirement/clauses";

const clause = wholeClause("tuft-bind", "tuft-bind.d1335", { kind: "at-least", limit: "8 lbf" });
const requirementOf = (change: Partial<typeof clause> = {}) => {
  const [requirement] = requirementsFrom([], [{ ...clause, evidence: "accredited-laboratory", ...change }]);
  if (requirement === undefined) throw new Error("no requirement");
  return requirement;
};
const value = (figure: string, change: Partial<ClaimInput> = {}) =>
  claimed({
    property: "tuft-bind",
    figure,
    method: "d1335",
    condition: "new",
    evidence: "accredited-laboratory",
    document: "Report 7",
    page: "3",
    ...change,
  });
const review = (
  submitted: ReturnType<typeof value> | null,
  bid: ReturnType<typeof value> | null = null,
  change: Partial<typeof clause> = {},
  sameWithin = 0,
) => reviewValue({ requirement: requirementOf(change), submitted, bid, sameWithin });

describe("a submitted value against the clause", () => {
  test("meets, falls short, or lies across, with a comment", () => {
    expect(review(value("9 lbf"))).toMatchObject({
      specification: { kind: "meets" },
      comment: "Tuft bind: 9 lbf (Report 7, p. 3) meets the limit, at least 8 lbf (35.6 N).",
    });
    expect(review(value("7.5 lbf")).comment).toBe(
      "Tuft bind: 7.5 lbf (Report 7, p. 3) does not meet the limit, at least 8 lbf (35.6 N). Hand in a product that meets it, or a request for substitution.",
    );
    expect(review(value("7 to 9 lbf")).comment).toBe(
      "Tuft bind: 7 to 9 lbf (Report 7, p. 3) lies across the limit, at least 8 lbf (35.6 N). Hand in the single readings by ASTM D1335.",
    );
  });

  test("the tolerance of the clause counts, and no more", () => {
    const withTolerance = { tolerance: "± 0.5 lbf" };
    expect(review(value("7.5 lbf"), null, withTolerance).specification.kind).toBe("meets");
    expect(review(value("7.49 lbf"), null, withTolerance).specification.kind).toBe("falls-short");
  });

  test("is not shown without a value or with weaker evidence than asked", () => {
    expect(review(null).comment).toBe(
      "Tuft bind: nothing was handed in for it. Hand in a figure for tuft bind by ASTM D1335; the limit is at least 8 lbf (35.6 N).",
    );
    expect(review(value("9 lbf", { evidence: "own-test" })).specification).toEqual({
      kind: "not-shown",
      reason: "it is not shown as asked, which is: accredited laboratory",
    });
  });

  test("is not comparable by an unlike method or in another condition", () => {
    expect(review(value("40 N", { method: "iso-4919" })).specification.kind).toBe("not-comparable");
    const aged = review(value("9 lbf", { condition: "year 5" }));
    expect(aged.specification.kind).toBe("not-comparable");
    expect(aged.comment).toContain("Tuft bind: 9 lbf (Report 7, p. 3) can’t be held against the clause.");
  });

  test("is noted where the clause sets no limit", () =>
    expect(review(value("9 lbf"), null, { limit: { kind: "none" } }).specification.kind).toBe("no-limit"));
});

describe("a submitted value against the bid", () => {
  const against = (submitted: string, bid: string, sameWithin = 0) =>
    review(value(submitted), value(bid), {}, sameWithin).bid.kind;

  test("is weaker, stronger or as bid, within what counts as the same", () => {
    expect(against("9 lbf", "10 lbf")).toBe("weaker");
    expect(against("11 lbf", "10 lbf")).toBe("stronger");
    expect(against("9 lbf", "10 lbf", 0.1)).toBe("as-bid");
    expect(against("44.482216152605 N", "10 lbf")).toBe("as-bid"); // 10 lbf, NIST SP 811
    expect(against("8 to 10 lbf", "9 to 10 lbf")).toBe("weaker");
    expect(against("9 to 10 lbf", "9 to 11 lbf")).toBe("weaker");
  });

  test("where less is better, more is weaker", () => {
    const lead = wholeClause("lead", "lead-content.f2765", { kind: "at-most", limit: "100 mg/kg" });
    const [requirement] = requirementsFrom([], [lead]);
    const of = (figure: string) =>
      claimed({
        property: "lead-content",
        figure,
        method: "f2765",
        condition: "new",
        evidence: "accredited-laboratory",
      });
    if (requirement === undefined) throw new Error("no requirement");
    const reviewed = reviewValue({ requirement, submitted: of("60 mg/kg"), bid: of("40 mg/kg"), sameWithin: 0 });
    expect(reviewed).toMatchObject({
      specification: { kind: "meets" },
      bid: { kind: "weaker" },
      comment:
        "Lead content: 60 mg/kg meets the limit, at most 100 mg/kg. The bid promised 40 mg/kg, and 60 mg/kg is weaker. Deliver what was bid, or say why not and at what credit.",
    });
  });

  test("differs where neither way is better, and is held against like methods only", () => {
    const pile = (figure: string) => claimed({ property: "pile-height", figure, method: "d5823", condition: "new" });
    const [requirement] = requirementsFrom([], [wholeClause("pile", "pile-height.d5823", { kind: "none" })]);
    if (requirement === undefined) throw new Error("no requirement");
    expect(reviewValue({ requirement, submitted: pile("2 in"), bid: pile("2.25 in"), sameWithin: 0.05 }).bid.kind).toBe(
      "differs",
    );
    expect(review(value("9 lbf"), value("40 N", { method: "iso-4919" })).bid.kind).toBe("not-comparable");
    expect(review(value("9 lbf")).bid.kind).toBe("not-bid");
    expect(review(null, value("9 lbf")).bid.kind).toBe("not-shown");
  });

  test("weaker one way round is never weaker the other way round", () => {
    const figure = fc.integer({ min: 1, max: 30 }).map((force) => `${force} lbf`);
    fc.assert(
      fc.property(figure, figure, fc.constantFrom(0, 0.05, 0.3), (one, other, within) => {
        const [there, back] = [against(one, other, within), against(other, one, within)];
        if (there === "weaker") expect(back).not.toBe("weaker");
        if (one === other) expect(there).toBe("as-bid");
      }),
      { numRuns: 60 },
    );
  });
});
