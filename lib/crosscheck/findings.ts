import { onFirstReading, workedOutOnReading } from "#lib/once";
import type { CheckedBid, Finding, Found, Rule, Severity } from "./model";
import { rules } from "./rules";

/** From what excludes itself to what is worth knowing. */
const severities = ["can't be true", "needs an answer", "note"] as const satisfies readonly Severity[];

const named = ({ id, title }: Rule, found: Found): Finding => {
  const { claims, priceLines = [], figures = [], overClaims = [], severity } = found;
  const key = [id, ...(found.keyedBy ?? [...claims, ...priceLines]).toSorted()].join(":");
  const told = onFirstReading(found.told);
  return workedOutOnReading(
    { key, rule: id, title, severity, claims, priceLines, figures, overClaims },
    { sentence: () => told().sentence, question: () => told().question, working: () => told().working },
  );
};

const byKey = (one: Finding, other: Finding): number => {
  if (one.key === other.key) return 0;
  return one.key < other.key ? -1 : 1;
};

/**
 * What does not go together in a bid, by itself and beside the others, the most serious first.
 * @param bids all that were handed in, the asked one among them or not; what rules read in them is read once for all
 */
export function findingsAmong(bids: readonly CheckedBid[]): (bid: CheckedBid) => readonly Finding[] {
  const checks = rules.map((rule) => ({ rule, check: "among" in rule ? rule.among(bids) : rule.check }));
  return (bid) => {
    const all: Finding[] = [];
    for (const { rule, check } of checks) {
      const found = check(bid);
      // most rules find nothing in most bids, and leave nothing to name or order
      if (found.length > 0) all.push(...found.map((one) => named(rule, one)).sort(byKey));
    }
    return all.sort((one, other) => severities.indexOf(one.severity) - severities.indexOf(other.severity));
  };
}
