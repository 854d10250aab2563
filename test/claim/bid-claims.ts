import fc from "fast-check";
import { type Claim, type ClaimInput, claimSchema, evidenceLevels } from "#lib/claim";

/** A claim from the fields that matter to a test. */
export const claimed = (input: Partial<ClaimInput> & Pick<ClaimInput, "property">): Claim =>
  claimSchema.parse({ id: "a", evidence: "stated", ...input });

/** Claims of one property with all sorts of evidence, condition, method and figure, ids unique. */
export const claimsAbout = (property: string, figures: readonly string[], methods: readonly string[]) =>
  fc
    .array(
      fc.record({
        figure: fc.constantFrom(...figures),
        words: fc.constant("as the bid says"),
        method: fc.constantFrom(...methods),
        condition: fc.constantFrom(
          "new",
          "not stated",
          "year 2",
          "year 5, wet",
          "new, 40 °F",
          "dry",
          "after 900 h of use",
          "after 20,000 cycles",
          "frozen",
        ),
        evidence: fc.constantFrom(...evidenceLevels.map(({ id }) => id)),
      }),
      { maxLength: 7 },
    )
    .map((rows) => rows.map((row, index) => claimed({ ...row, property, id: `claim-${index}` })));

/** Text of any UTF-16 code units at all, halves of pairs and control characters included. */
export const anyText = fc.string({
  unit: fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code)),
  maxLength: 40,
});
