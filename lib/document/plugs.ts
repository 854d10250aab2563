import type { BidCost } from "#lib/cost";
import { inSentence, listed } from "#lib/figure";
import { formatMoney } from "#lib/quantity";

/** What stands in for what a bid leaves out, and what it is worth over the study in cents; null where nothing does. */
export function pluggedPart({
  scope,
  entries,
}: Pick<BidCost, "scope" | "entries">): Readonly<{ items: readonly string[]; presentValue: number }> | null {
  const plugged = scope.flatMap(({ label, outcome }) =>
    outcome.kind === "plugged" ? [{ label: inSentence(label), line: outcome.line }] : [],
  );
  if (plugged.length === 0) return null;
  const lines = new Set(plugged.map(({ line }) => line));
  return {
    items: plugged.map(({ label }) => label),
    presentValue: entries.reduce((sum, entry) => (lines.has(entry.line) ? sum + entry.presentValue : sum), 0),
  };
}

/** "Of this, $26,200 is put in by the owner for permits and inspections."; no sentence where nothing is. */
export function pluggedSentences(cost: BidCost): readonly string[] {
  const part = pluggedPart(cost);
  if (part === null || cost.presentValue.kind === "unknown") return [];
  const money = formatMoney(part.presentValue, cost.presentValue.currency ?? "USD");
  return [`Of this, ${money} is put in by the owner for ${listed(part.items)}.`];
}
