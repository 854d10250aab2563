import { z } from "zod";
import { plainDateField } from "#lib/quantity";
import type { Issue } from "./issue";

const text = z.string().max(5000);

const article = z.strictObject({
  id: text,
  number: text,
  title: text,
  paragraphs: z
    .array(z.strictObject({ level: z.number().int().min(0).max(9), number: text, text, note: text, from: text }))
    .max(2000),
});

const section = z.strictObject({
  number: text,
  title: text,
  parts: z.array(z.strictObject({ number: text, title: text, articles: z.array(article).max(60) })).max(9),
  appendices: z.array(article).max(20),
});

const seal = z.string().regex(/^[0-9a-f]{64}$/, "Expected a SHA-256 in 64 small hexadecimal digits.");

/** A section as it was given out. It is written by the app, never typed. */
export const issueSchema = z
  .strictObject({
    sequence: z.number().int().min(0).max(99),
    date: plainDateField,
    reason: z.string().trim().max(1000, "Expected a reason of at most 1,000 characters."),
    section,
    text: z.string().max(400_000),
    requirements: z.unknown(),
    specification: z.unknown(),
    seals: z.strictObject({ text: seal, basis: seal }),
  })
  .superRefine(({ sequence, reason }, context) => {
    if (sequence > 0 && reason === "")
      context.addIssue({ code: "custom", path: ["reason"], message: "Say in a sentence why the addendum is made." });
  }) satisfies z.ZodType<Issue, unknown>;

export type IssueText = z.input<typeof issueSchema>;
