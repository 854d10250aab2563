import { z } from "zod";

/** "30" → 30 points. */
const pointsField = z.string({ error: "Write the points as a number of 0 or more." }).transform((text, context) => {
  const points = /^\s*\d{1,9}(\.\d{1,6})?\s*$/.test(text) ? Number(text) : Number.NaN;
  if (Number.isFinite(points)) return points;
  context.addIssue({
    code: "custom",
    message: `The points read “${text}”; expected a number of 0 or more, such as 30.`,
  });
  return z.NEVER;
});

/** "2" → the second place. */
const rankField = z.string({ error: "Write the place as a whole number from 1." }).transform((text, context) => {
  const rank = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : 0;
  if (rank >= 1) return rank;
  context.addIssue({
    code: "custom",
    message: `The place reads “${text}”; expected a whole number from 1, 1 for the most important.`,
  });
  return z.NEVER;
});

/** "3" or "1/3" → how many times as important, on the scale from 1/9 to 9. */
const timesField = z.string({ error: "Say how many times as important the first is." }).transform((text, context) => {
  if (text.trim() === "") {
    context.addIssue({ code: "custom", message: "This pair is not judged yet; say which of the two matters more." });
    return z.NEVER;
  }
  const [, above = "", below] = /^\s*(\d(?:\.\d+)?)\s*(?:\/\s*(\d(?:\.\d+)?))?\s*$/.exec(text) ?? [];
  const times = above === "" ? Number.NaN : Number(above) / (below === undefined ? 1 : Number(below));
  if (times >= 1 / 9 - 1e-9 && times <= 9) return times;
  context.addIssue({
    code: "custom",
    message: `The judgement reads “${text}”; expected 1 to 9, or 1/2 to 1/9 where the second is more important.`,
  });
  return z.NEVER;
});

const criterion = z.string().min(1, "Name the criterion.");
const once = <T extends Readonly<{ criterion: string }>>(rows: readonly T[], context: z.RefinementCtx): void => {
  for (const [index, { criterion: id }] of rows.entries()) {
    if (rows.findIndex((other) => other.criterion === id) === index) continue;
    context.addIssue({
      code: "custom",
      path: [index],
      message: `“${id}” stands there twice; expected each criterion once.`,
    });
  }
};

const points = z.array(z.strictObject({ criterion, points: pointsField })).superRefine(once);

const swing = z.strictObject({ kind: z.literal("swing"), points });

const rankOrder = z.strictObject({
  kind: z.literal("rank-order"),
  rule: z.enum(["centroid", "sum", "reciprocal"]).default("centroid"),
  ranks: z.array(z.strictObject({ criterion, rank: rankField })).superRefine(once),
});

const pairwise = z.strictObject({
  kind: z.literal("pairwise"),
  judgements: z.array(
    z
      .strictObject({ first: criterion, second: criterion, times: timesField })
      .refine(({ first, second }) => first !== second, {
        path: ["second"],
        error: "A criterion is compared with itself; expected two different ones.",
      }),
  ),
});

/** How one of several people is asked for weights; the points are the person's own. */
export const personsMethodSchema = z.discriminatedUnion(
  "kind",
  [z.strictObject({ kind: z.literal("points"), points }), swing, rankOrder, pairwise],
  { error: "Choose how this person gives weights: points, swing, rank-order or pairwise." },
);

const people = z
  .array(
    z.strictObject({
      person: z.string().trim().min(1, "Name the person.").max(200, "Expected at most 200 characters."),
      method: personsMethodSchema,
    }),
  )
  .max(20, "Expected at most 20 people.")
  .superRefine((rows, context) => {
    for (const [index, { person }] of rows.entries()) {
      if (rows.findIndex((other) => other.person === person) === index) continue;
      const message = `“${person}” stands there twice; expected each person once.`;
      context.addIssue({ code: "custom", path: [index, "person"], message });
    }
  });

/** How weights are asked for, from the text of a form or file. */
export const weightMethodSchema = z.discriminatedUnion(
  "kind",
  [
    // the points stand with each criterion
    z.strictObject({ kind: z.literal("direct") }),
    swing,
    rankOrder,
    pairwise,
    // their mean counts; `apart` also shows the order that each person's weights would give
    z.strictObject({ kind: z.literal("several-people"), shown: z.enum(["apart", "mean-only"]), people }),
  ],
  { error: "Choose how weights are given: direct, swing, rank-order, pairwise or several-people." },
);

const idPattern = /^[a-z0-9]+(-[a-z0-9]+)*$/;

/** Headings under which criteria are weighed among themselves, from the text of a form or file. */
export const headingsSchema = z
  .array(
    z.strictObject({
      id: z.string().regex(idPattern, "Expected an id of small letters, digits and single hyphens, such as safety."),
      label: z
        .string()
        .trim()
        .min(1, "Name the heading in a word or two.")
        .max(100, "Expected at most 100 characters."),
      points: pointsField,
    }),
  )
  .max(20, "Expected at most 20 headings.")
  .superRefine((headings, context) => {
    for (const [index, { id }] of headings.entries()) {
      if (headings.findIndex((other) => other.id === id) === index) continue;
      const message = `Another heading has the id “${id}” as well. Expected an id of its own.`;
      context.addIssue({ code: "custom", path: [index, "id"], message });
    }
  });
