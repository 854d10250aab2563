import { z } from "zod";
import { doerSchema, keyField, momentField, sealedSchema } from "#lib/procedure";
import type { AgreedValue, Committee, OpenSheet, Scoresheet, Sheet, Statement } from "./model";

const id = z.string().max(64);
const longText = z.string().trim().max(2000, "Expected at most 2,000 characters.");
const conflictWords = longText.min(1, "Say in a few words what the interest is.");

const statementSchema = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({ kind: z.literal("none") }),
    z.strictObject({
      kind: z.literal("some-bids"),
      bids: z.array(id).min(1, "Mark the bids that the interest is in.").max(40),
      words: conflictWords,
    }),
    z.strictObject({ kind: z.literal("all-bids"), words: conflictWords }),
  ],
  { error: "State first whether you have an interest in any of the bids." },
) satisfies z.ZodType<Statement, unknown>;

const ratingSchema = z.strictObject({ criterion: id, bid: id, level: id, comment: longText.default("") });

/** A sheet as an evaluator fills it in. */
export const sheetSchema = z.strictObject({
  statement: statementSchema,
  ratings: z.array(ratingSchema).max(2400),
}) satisfies z.ZodType<Sheet, unknown>;

/** One sheet that was handed in, a document with the id of its evaluator. */
export const scoresheetSchema = z.strictObject({
  evaluator: doerSchema,
  handedInAt: momentField,
  contents: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("sealed"), sealed: sealedSchema }),
    z.strictObject({ kind: z.literal("open"), sheet: sheetSchema }),
  ]),
}) satisfies z.ZodType<Scoresheet, unknown>;

const openSheetSchema = z.strictObject({
  evaluator: doerSchema,
  handedInAt: momentField,
  sheet: sheetSchema,
}) satisfies z.ZodType<OpenSheet, unknown>;

/** "0.7" or "70 %" → 0.7. */
function betweenValue(typed: string): number | null {
  const [, digits, percent] = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(typed) ?? [];
  const value = Number(digits) / (percent === "%" ? 100 : 1);
  return value <= 1 ? value : null;
}

/** `level` names a level, is "between" for the value beside it, or is empty while nothing is agreed. */
const agreedSchema = z
  .strictObject({
    criterion: id,
    bid: id,
    level: id.default(""),
    between: z.string().max(40).default(""),
    reason: longText.default(""),
    dissent: longText.default(""),
  })
  .transform(({ criterion, bid, level, between, reason, dissent }, context): AgreedValue => {
    const words = { criterion, bid, reason, dissent };
    if (level === "") return { ...words, value: null };
    if (reason === "")
      context.addIssue({
        code: "custom",
        path: ["reason"],
        message: "Say why the committee agreed on this value, so that the bidder and the public can follow it.",
      });
    if (level !== "between") return { ...words, value: { kind: "level", level } };
    const value = betweenValue(between);
    if (value !== null) return { ...words, value: { kind: "between", value } };
    const message = `The agreed value reads “${between}”. Expected a number from 0 to 1, or a percentage such as 70 %.`;
    context.addIssue({ code: "custom", path: ["between"], message });
    return z.NEVER;
  });

const openingSchema = z.strictObject({ at: momentField, by: doerSchema, key: keyField });

const committeeFields = {
  opened: openingSchema.nullable().default(null),
  agreed: z.array(agreedSchema).max(2400).default([]),
};

/** What the committee did together, as a document. Absent in what was stored before there were committees. */
export const committeeSchema = z.strictObject(committeeFields);

/** The same with the sheets, as a project file holds it. */
export const committeeInFileSchema = z.strictObject({
  ...committeeFields,
  sheets: z.array(openSheetSchema).max(60).default([]),
}) satisfies z.ZodType<Committee, unknown>;

export type SheetText = z.input<typeof sheetSchema>;
export type ScoresheetText = z.input<typeof scoresheetSchema>;
export type CommitteeText = z.input<typeof committeeSchema>;
export type CommitteeInFile = z.input<typeof committeeInFileSchema>;
