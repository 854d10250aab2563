import { z } from "zod";
import { plainDateField } from "#lib/quantity";
import type { RoleKind } from "./model";
import { parseCounted } from "./parse-price";
import { optional } from "./text-fields";

const yesOrNo = (message: string) => z.enum(["yes", "no"], { error: message }).default("no");
const accepted = yesOrNo("Say whether the owner accepts the alternate: yes or no.");
const plain = <K extends RoleKind>(kind: K) => z.strictObject({ kind: z.literal(kind) });

/** What place a price has in its bid, from text. What was written before there were roles is part of the base bid. */
export const roleSchema = z
  .discriminatedUnion(
    "kind",
    [
      plain("base-bid"),
      z.strictObject({ kind: z.literal("alternate-add"), accepted }),
      z.strictObject({ kind: z.literal("alternate-deduct"), accepted }),
      plain("allowance"),
      z.strictObject({ kind: z.literal("unit-price"), acceptedQuantity: optional(parseCounted) }),
      plain("bond"),
      plain("tax"),
      plain("freight"),
      plain("owner-furnished"),
      z.strictObject({
        kind: z.literal("option"),
        expires: plainDateField,
        taken: yesOrNo("Say whether the owner takes the option: yes or no."),
      }),
    ],
    {
      error:
        "Choose the place of the price in the bid: base-bid, alternate-add, alternate-deduct, allowance, unit-price, bond, tax, freight, owner-furnished or option.",
    },
  )
  .default({ kind: "base-bid" });
