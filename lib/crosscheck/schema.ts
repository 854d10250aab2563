import { z } from "zod";
import { claimFields } from "#lib/claim";
import { idField, textField } from "#lib/entry";
import { plainDateField } from "#lib/quantity";

const id = idField("finding-1");

/** A claim as it was entered before an answer changed it: the text of its fields, which nothing reads any more. */
const earlierClaimSchema = z.strictObject({
  claim: id,
  fields: z.partialRecord(z.enum(claimFields), textField("a field of the claim", 20_000)),
});

/** What a bidder answered to a question, and the claims that were amended through it. */
const answerSchema = z.strictObject({
  id,
  /** The key of the finding that was asked about. */
  finding: textField("the finding", 400).min(1, "Say which finding is answered."),
  /** The question as it was sent. */
  asked: textField("the question", 5000),
  answer: textField("the answer", 20_000).min(1, "Enter what the bidder answered."),
  received: z.union([z.literal("").transform(() => null), plainDateField]).default(null),
  outcome: z.enum(["settled", "still open"], "Say whether the answer settles the question."),
  amended: z.array(earlierClaimSchema).max(50, "Expected at most 50 amended claims.").default([]),
});

export const answersSchema = z
  .array(answerSchema)
  .max(200, "Expected at most 200 answers.")
  .superRefine((answers, context) => {
    for (const [index, answer] of answers.entries()) {
      if (answers.findIndex((other) => other.id === answer.id) === index) continue;
      context.addIssue({
        code: "custom",
        path: [index, "id"],
        message: `Another answer has the id “${answer.id}” as well.`,
      });
    }
  });
