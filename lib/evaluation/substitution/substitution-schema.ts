import { z } from "zod";
import { claimSchema, provenanceShape } from "#lib/claim";
import { type PriceLine, priceLinesSchema } from "#lib/cost";
import { infillComponentShape, infillSystemOf } from "#lib/infill";
import { orNotGiven, plainDateField } from "#lib/quantity";
import type { Substitution } from "../model";

const kept = (what: string, most = 300) =>
  z
    .string({ error: `Expected ${what} as text.` })
    .trim()
    .max(most, `Expected ${what} of at most ${most.toLocaleString("en-US")} characters.`)
    .default("");

/** “−$12,000” or “$4,500” → a payment at the base date; nothing where the price stays. */
const priceChangeField = z
  .string({ error: "Expected the change of the price as text." })
  .max(60, "Expected a price of at most 60 characters.")
  .default("")
  .transform((price, context): PriceLine | null => {
    if (price.trim() === "") return null;
    const read = priceLinesSchema.safeParse([
      {
        ...({ kind: "at-base-date", category: "investment", givenBy: "bid" } as const),
        ...{ id: "substitution", label: "Change of price by the substitution" },
        amount: { kind: "lump-sum", price: price.replace(/^\s*[–−]/, "-") },
      },
    ]);
    const [line] = read.data ?? [];
    if (line !== undefined) return line;
    context.addIssue({
      code: "custom",
      message: read.error?.issues[0]?.message ?? "Write the change as a sum, for example “-$12,000” for a credit.",
    });
    return z.NEVER;
  });

/** A request for substitution without its id, which the store or the file gives. */
export const substitutionFields = {
  item: z.string().trim().min(1, "Say what is to be substituted.").max(300, "Expected at most 300 characters."),
  requested: orNotGiven(plainDateField).prefault(""),
  reason: kept("the reason", 5000),
  claims: z
    .array(claimSchema)
    .max(300, "Expected at most 300 values.")
    .superRefine((claims, context) => {
      for (const [index, { id }] of claims.entries())
        if (claims.findIndex((other) => other.id === id) !== index)
          context.addIssue({
            code: "custom",
            path: [index, "id"],
            message: `Another value has the id “${id}” as well.`,
          });
    })
    .default([]),
  infill: infillSystemOf(z.strictObject({ ...infillComponentShape.shape, ...provenanceShape })).prefault({
    placement: "layered",
    components: [],
  }),
  priceChange: priceChangeField,
  decision: z.enum(["", "accepted", "rejected"], { error: "Say accepted or rejected; empty while open." }).default(""),
  decided: orNotGiven(plainDateField).prefault(""),
  note: kept("a note", 5000),
} as const;

export const substitutionSchema = z.strictObject(substitutionFields) satisfies z.ZodType<
  Omit<Substitution, "id">,
  unknown
>;

export type SubstitutionText = z.input<typeof substitutionSchema>;
