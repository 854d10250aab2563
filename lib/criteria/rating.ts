import { z } from "zod";
import type { ValueFunction } from "./value-function";

/** One level that an evaluator may choose: a short word, what has to be so for it, and what it is worth, 0 to 1. */
export type RatingLevel = Readonly<{ id: string; label: string; description: string; value: number }>;

/** Levels from the least worth to the most, at least two. */
export type RatingAnchors = Readonly<{ levels: readonly RatingLevel[] }>;

/** The value of a rating is the owner’s, beside the description of its level, so the figure is the value already; none lies beyond the levels. */
export const rating: ValueFunction<RatingAnchors> = {
  label: "rating by evaluators",
  explanation:
    "Each evaluator chooses, alone, the level whose description fits the bid; the descriptions say what has to be so, never how a bid stands beside the others.",
  value: (figure, { levels }) => Math.min(levels.at(-1)?.value ?? 1, Math.max(levels[0]?.value ?? 0, figure)),
  bounds: ({ low, high }, anchors) => ({ low: rating.value(low, anchors), high: rating.value(high, anchors) }),
  curve: ({ levels }) => levels.map(({ value }) => ({ figure: value, value })),
  orderProblem: ({ levels }) => {
    for (const [index, { label, value }] of levels.entries()) {
      const before = levels[index - 1];
      if (before === undefined || value > before.value) continue;
      const message = `“${label}” comes after “${before.label}” but is not worth more. Expected levels from the least worth to the most.`;
      return { field: `levels.${index}.value`, message };
    }
    return null;
  },
};

/**
 * What a rated criterion starts with, for the owner to write over in words of the matter.
 * @source five levels told apart by what is shown for them: common practice, no source
 */
export const startingLevels: readonly Readonly<{ id: string; label: string; description: string; value: string }>[] = [
  {
    id: "level-1",
    label: "Not covered",
    description: "The bid does not speak of it, or what it says does not hold.",
    value: "0",
  },
  {
    id: "level-2",
    label: "In part",
    description: "The bid speaks of it and leaves out something that was asked for.",
    value: "0.25",
  },
  {
    id: "level-3",
    label: "Covered",
    description: "All that was asked for is there, in the bidder’s own words.",
    value: "0.5",
  },
  {
    id: "level-4",
    label: "Shown",
    description: "All that was asked for is there, with plans or documents that show it.",
    value: "0.75",
  },
  {
    id: "level-5",
    label: "Proven",
    description: "All that was asked for is there, and records of like fields prove it.",
    value: "1",
  },
];

const words = (message: string, most: number) =>
  z.string().trim().min(1, message).max(most, `Expected at most ${most} characters.`);

export const ratingSchema = <V extends z.ZodType>(value: V) =>
  z.strictObject({
    kind: z.literal("rating"),
    levels: z
      .array(
        z.strictObject({
          id: z
            .string()
            .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, "Expected an id of small letters, digits and single hyphens."),
          label: words("Name the level in a word or two.", 60),
          description: words("Say what has to be so for this level, so that two evaluators read it alike.", 500),
          value,
        }),
      )
      .min(2, "A rating needs at least two levels.")
      .max(9, "Expected at most nine levels; few people tell more apart.")
      .superRefine((levels, context) => {
        for (const [index, { id }] of levels.entries()) {
          if (levels.findIndex((other) => other.id === id) === index) continue;
          context.addIssue({
            code: "custom",
            path: [index, "id"],
            message: `Another level has the id “${id}” as well.`,
          });
        }
      }),
  });
