import type { Amount, CostCategory, PriceLine } from "#lib/cost";

/** What a bid sells for the first build, as one price line says it. */
export type Bought = Readonly<{ id: string; label: string; text: string; category: CostCategory; amount: Amount }>;

/**
 * What the bid itself prices and what is bought at the base date: single payments of that day and the first generation
 * of each part that is renewed. Owner's estimates, credits and what is taken away are left out.
 */
export const boughtAtBaseDate = (prices: readonly PriceLine[]): readonly Bought[] =>
  prices.flatMap((line) => {
    if (line.givenBy !== "bid") return [];
    if (line.kind !== "at-base-date" && line.kind !== "replacement-chain") return [];
    const category = line.kind === "at-base-date" ? line.category : "investment";
    const { id, label, note, amount } = line;
    if (category === "removal-and-disposal" || isCredit(amount)) return [];
    return [{ id, label, text: `${label} ${note}`, category, amount }];
  });

function isCredit(amount: Amount): boolean {
  switch (amount.kind) {
    case "per-unit":
      return amount.unitPrice.value < 0 || amount.quantity.value < 0;
    case "share":
      return amount.share.value < 0;
    default:
      return amount.price.value < 0;
  }
}
