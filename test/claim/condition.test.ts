import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Condition, conditionsAgree, explainCondition, formatCondition, parseCondition } from "#lib/claim";
import { anyText } from "./bid-claims";

const read = (text: string) => {
  const parsed = parseCondition(text);
  return parsed.ok ? parsed.value : explainCondition(parsed.problem);
};

describe("parseCondition", () => {
  test.each<[string, Condition]>([
    ["new", { kind: "new" }],
    ["Initial", { kind: "new" }],
    ["as  installed", { kind: "new" }],
    ["year 0", { kind: "new" }],
    ["year 5", { kind: "aged", years: 5 }],
    ["5 years", { kind: "aged", years: 5 }],
    ["aged 5 yr", { kind: "aged", years: 5 }],
    ["after 2.5 years of use", { kind: "aged", years: 2.5 }],
    ["5-year", { kind: "aged", years: 5 }],
    ["18 months", { kind: "aged", years: 1.5 }],
    ["after 20,000 cycles", { kind: "after-cycles", cycles: 20_000 }],
    ["20200 conditioning cycles", { kind: "after-cycles", cycles: 20_200 }],
    ["", { kind: "not-stated" }],
    ["Not stated", { kind: "not-stated" }],
    ["n/a", { kind: "not-stated" }],
    ["Frozen, -5 °C", { kind: "other", words: "Frozen, -5 °C" }],
    ["years 3 to 5", { kind: "other", words: "years 3 to 5" }],
  ])("reads “%s”", (text, condition) => expect(read(text)).toEqual(condition));

  test.each([
    [
      "year 1,5",
      "The number in “year 1,5” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.",
    ],
    [
      "after 20.000 cycles",
      "The number in “after 20.000 cycles” was not understood. Expected for instance “year 5”, “18 months” or “after 20,000 cycles”.",
    ],
    ["year 500", "“year 500” is longer than 100 years. Expected an age that a field can reach, for instance “year 5”."],
    ["0 cycles", "“0 cycles” is not between 1 and 10,000,000 cycles. Expected for instance “after 20,000 cycles”."],
    ["x".repeat(201), "The condition has 201 characters; at most 200 are read. Put the rest in the note."],
  ])("explains why it can't read “%s”", (text, sentence) => expect(read(text)).toBe(sentence));

  test("never throws", () => {
    fc.assert(fc.property(anyText, (text) => typeof parseCondition(text).ok === "boolean"));
  });
});

describe("formatCondition", () => {
  test("writes what parseCondition reads back", () => {
    const condition: fc.Arbitrary<Condition> = fc.oneof(
      fc.constantFrom<Condition>({ kind: "new" }, { kind: "not-stated" }, { kind: "other", words: "wet" }),
      fc.integer({ min: 1, max: 1200 }).map((months): Condition => ({ kind: "aged", years: months / 12 })),
      fc.integer({ min: 1, max: 10_000_000 }).map((cycles): Condition => ({ kind: "after-cycles", cycles })),
    );
    fc.assert(
      fc.property(condition, (given) => {
        expect(read(formatCondition(given))).toEqual(given);
      }),
    );
  });

  test("reads to the same condition after one round, whatever was typed", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (text) => {
        const parsed = parseCondition(text);
        if (parsed.ok) expect(parseCondition(formatCondition(parsed.value))).toEqual(parsed);
      }),
    );
  });
});

describe("conditionsAgree", () => {
  const yearFive: Condition = { kind: "aged", years: 5 };

  test("holds for the same condition", () => {
    expect(conditionsAgree(yearFive, { kind: "aged", years: 5 })).toEqual({ kind: "agree" });
    expect(conditionsAgree({ kind: "other", words: "Frozen" }, { kind: "other", words: "frozen" })).toEqual({
      kind: "agree",
    });
  });

  test("keeps new and aged apart", () => {
    expect(conditionsAgree(yearFive, { kind: "new" })).toEqual({
      kind: "differ",
      reason: "A figure for “new” says nothing certain about “year 5”.",
    });
  });

  test("does not let a condition that is not stated answer for any", () => {
    for (const wanted of [yearFive, { kind: "new" } as const, { kind: "not-stated" } as const]) {
      expect(conditionsAgree(wanted, { kind: "not-stated" })).toEqual({
        kind: "differ",
        reason: "The condition of the surface is not stated, and hardness and play change with age.",
      });
    }
  });
});
