import { oncePer } from "#lib/once";
import { type CurrencyCode, isForeignPrice } from "#lib/quantity";
import type { Amount, PriceLine } from "./model";
import { statedResidualOf } from "./replacement-chain";

/** A price that is written in another currency than the project's. */
export type ForeignPrice = Readonly<{ line: string; label: string; text: string }>;

function textsOf(amount: Amount | null): readonly string[] {
  switch (amount?.kind) {
    case "lump-sum":
    case "per-area":
      return [amount.price.asEntered];
    case "per-unit":
      return [amount.unitPrice.asEntered];
    default:
      return [];
  }
}

/** Every price of a line as entered. Kept, because a bid is costed more than once. */
const writtenPrices = oncePer((line: PriceLine): readonly string[] => {
  const [removal, left] = line.kind === "replacement-chain" ? [line.removal, statedResidualOf(line)] : [null, null];
  const stated = [line.statedExtension, left].flatMap((one) => (one === null ? [] : [one.asEntered]));
  return [...textsOf(line.amount), ...textsOf(removal), ...stated];
});

/** The prices among these lines whose sign or code is not the project's. */
export const foreignPrices = (lines: readonly PriceLine[], currency: CurrencyCode): readonly ForeignPrice[] =>
  lines.flatMap((line) =>
    writtenPrices(line)
      .filter((text) => isForeignPrice(text, currency))
      .map((text) => ({ line: line.id, label: line.label, text })),
  );
