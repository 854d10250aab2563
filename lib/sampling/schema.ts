import { z } from "zod";
import { distributions } from "./distributions";
import type { Distribution, DistributionKind } from "./model";
import { parseDistribution, type ReadFigure } from "./parse-distribution";

const kinds = Object.keys(distributions) as [DistributionKind, ...DistributionKind[]];

/** The text as entered beside the distribution it says. */
export type StatedDistribution = Readonly<{ asEntered: string; distribution: Distribution }>;

/**
 * A distribution from the text of a form or file: its kind, and its figures as one text.
 * @param read reads one figure in the unit that is counted in
 */
export const distributionSchema = (read: ReadFigure) =>
  z
    .strictObject({
      kind: z.enum(kinds, { error: `Choose how sure the figure is: ${kinds.join(", ")}.` }),
      figures: z
        .string({ error: "Write the figures, for example “4.20 / 4.85 / 6.00”." })
        .max(400, "Expected at most 400 characters."),
    })
    .transform(({ kind, figures }, context): StatedDistribution => {
      const parsed = parseDistribution(kind, figures, read);
      if (parsed.ok) return { asEntered: figures, distribution: parsed.value };
      context.addIssue({ code: "custom", path: ["figures"], message: parsed.problem });
      return z.NEVER;
    });

/** The seed of a record: a whole number that is kept, so that the same figures can be drawn again. */
export const seedField = z
  .string({ error: "Write the seed as a whole number, for example “2027”." })
  .transform((text, context) => {
    const seed = /^\s*\d{1,15}\s*$/.test(text) ? Number(text) : Number.NaN;
    if (Number.isSafeInteger(seed)) return seed;
    const message = `The seed reads “${text}”; expected a whole number of at most 15 digits, for example “2027”.`;
    context.addIssue({ code: "custom", message });
    return z.NEVER;
  });
