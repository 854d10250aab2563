import { z } from "zod";
import type { Amount } from "./model";
import { parseLumpSum, parsePricedQuantity, parsePricePerArea } from "./parse-price";
import { parseShareOfSum } from "./parse-rate";
import { ask, read } from "./text-fields";

const price = ask("Write the price as it is given, for example “$18,500”.");

const pricedQuantity = z
  .strictObject({
    kind: z.literal("per-unit"),
    quantity: ask("Write the quantity with its unit, for example “4,000 lb”."),
    unitPrice: ask("Write the price of one unit, for example “$0.38/lb”."),
  })
  .transform(({ kind, quantity, unitPrice }, context) => {
    const parsed = parsePricedQuantity(quantity, unitPrice);
    if (parsed.ok) return { kind, ...parsed.value };
    context.addIssue({ code: "custom", path: [parsed.problem.field], message: parsed.problem.message });
    return z.NEVER;
  });

const shareOfSum = z
  .strictObject({
    kind: z.literal("share"),
    share: ask("Write the share of the sum, for example “1.2 %”.").transform(read(parseShareOfSum)),
    of: z.enum(["base-bid", "accepted-bid", "levelled-bid"], {
      error: "Choose what the share is taken of: base-bid, accepted-bid or levelled-bid.",
    }),
  })
  .transform((written) => ({ ...written, sum: null }));

/** A price as written: a lump sum, a price per area, a quantity and its unit price, or a share. A minus sign means a credit. */
export const amountOrCreditSchema = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({ kind: z.literal("lump-sum"), price: price.transform(read(parseLumpSum)) }),
    z.strictObject({ kind: z.literal("per-area"), price: price.transform(read(parsePricePerArea)) }),
    pricedQuantity,
    shareOfSum,
  ],
  { error: "Choose how the price is given: lump-sum, per-area, per-unit or share." },
);

type Written = Readonly<{ asEntered: string; value: number }>;

/** The texts of an amount under the names of their fields. */
function writtenIn(amount: Amount): Readonly<Record<string, Written>> {
  switch (amount.kind) {
    case "per-unit":
      return { quantity: amount.quantity, unitPrice: amount.unitPrice };
    case "share":
      return { share: amount.share };
    default:
      return { price: amount.price };
  }
}

/** A price that recurs or is renewed can't be a credit: only single payments can. */
export const amountSchema = amountOrCreditSchema.superRefine((written: Amount, context) => {
  for (const [field, { asEntered, value }] of Object.entries(writtenIn(written))) {
    if (value < 0) {
      const message = `“${asEntered}” is below zero; expected zero or more. Enter a credit as a single payment.`;
      context.addIssue({ code: "custom", path: [field], message });
    }
  }
});
