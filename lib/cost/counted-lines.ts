import { type ExactQuantity, measured } from "#lib/quantity";
import type { Amount, CostConventions, PriceLine } from "./model";
import { standingOf } from "./roles";

/** A line that is entered and does not count, with the reason in a sentence. */
export type LeftOutLine = Readonly<{ line: PriceLine; because: string }>;

/** The lines that count in the sum of a bid, and those that don't. */
export type CountedLines = Readonly<{ counted: readonly PriceLine[]; leftOut: readonly LeftOutLine[] }>;

/**
 * Sorts the lines of a bid into those that count by their place in it and those that don't. An accepted deduction comes
 * back as a credit, an accepted unit price with the quantity accepted.
 */
export function countedLines(lines: readonly PriceLine[], conventions: CostConventions): CountedLines {
  const counted: PriceLine[] = [];
  const leftOut: LeftOutLine[] = [];
  for (const line of lines) {
    const standing = standingOf(line, conventions);
    if (standing.kind === "counts") counted.push(asCounted(line));
    else leftOut.push({ line, because: standing.because });
  }
  return { counted, leftOut };
}

function asCounted(line: PriceLine): PriceLine {
  const { role, amount } = line;
  if (role.kind === "unit-price" && amount.kind === "per-unit" && role.acceptedQuantity !== null) {
    return { ...line, amount: { ...amount, quantity: role.acceptedQuantity } };
  }
  if (role.kind !== "alternate-deduct") return line;
  if (line.kind !== "replacement-chain") return { ...line, amount: deducted(amount) };
  const { removal, statedResidual } = line;
  return {
    ...{ ...line, amount: deducted(amount), removal: removal === null ? null : deducted(removal) },
    statedResidual: statedResidual && { ...statedResidual, value: measured("money", -statedResidual.value) },
  };
}

/** The amount as a credit, whichever sign it was written with. */
function deducted(amount: Amount): Amount {
  switch (amount.kind) {
    case "lump-sum":
      return { ...amount, price: negative(amount.price) };
    case "per-area":
      return { ...amount, price: negative(amount.price) };
    case "per-unit":
      return { ...amount, unitPrice: negative(amount.unitPrice) };
    case "share":
      return { ...amount, share: negative(amount.share) };
  }
}

const negative = <Q extends ExactQuantity>(quantity: Q): Q =>
  quantity.value <= 0 ? quantity : { ...quantity, value: -quantity.value, asEntered: `−${quantity.asEntered}` };
