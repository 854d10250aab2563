import { z } from "zod";
import { paperParts } from "./model";

const mostCharacters = 3000;
const own = z
  .string()
  .trim()
  .min(1, "Write the words that should stand here, or choose the generated text alone.")
  .max(mostCharacters, `Expected at most ${mostCharacters.toLocaleString("en-US")} characters.`);

/** Longer than any generated part; it is kept by the form and typed by nobody. */
const beside = z.string().max(20_000).default("");

const partWordsSchema = z
  .discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("generated") }),
    z.strictObject({ kind: z.literal("added"), words: own, beside }),
    z.strictObject({ kind: z.literal("instead"), words: own, beside }),
  ])
  .default({ kind: "generated" });

const dissentSchema = z.strictObject({
  name: z.string().trim().min(1, "Name who holds this view.").max(200, "Expected at most 200 characters."),
  words: own,
});

/** What people write into the board's paper; every part may be absent and is generated then. */
export const ownersWordsSchema = z.strictObject({
  parts: z
    .strictObject(
      Object.fromEntries(paperParts.map((part) => [part, partWordsSchema])) as Record<
        (typeof paperParts)[number],
        typeof partWordsSchema
      >,
    )
    .prefault({}),
  dissents: z.array(dissentSchema).max(20, "Expected at most 20 views.").default([]),
});
