import { onFirstReading } from "#lib/once";
import type { CheckedBid, Finding, Found, Rule, Severity } from "./model";
import { rules } from "./rules";

/** From what excludes itself to what is worth knowing. */
const severities = ["can't be true", "needs an answer", "note"] as const satisfies readonly Severity[];

const named = ({ id, title }: Rule, found: Found): Finding => {
  const { claims, priceLines = [], figures = [], overClaims = [], severity } = found;
  const key = [id, ...(found.keyedBy ?? [...claims, ...priceLines]).toSorted()].join(":");
  const told = onFirstReading(found.told);
  return {
    ...{ key, rule: id, title, severity, claims, priceLines, figures, overClaims },
    get sentence() {
      return told().sentence;
    },
    get question() {
      return told().question;
    },
    get working() {
      return told().working;
    },
  };
};

const byKey = (one: Finding, other: Finding): number => {
  if (one.key === other.key) return 0;
  return one.key < other.key ? -1 : 1;
};

/**
 * What does not go together in a bid, by itself and beside the others, the most serious first.
 * @param bids all that were handed in; best the same list for each of them, because some rules keep what they read in it
 */
export const findings = (bid: CheckedBid, bids: readonly CheckedBid[]): readonly Finding[] =>
  rules
    .flatMap((rule) => foundBy(rule, bid, bids))
    .sort((one, other) => severities.indexOf(one.severity) - severities.indexOf(other.severity));

const none: readonly Finding[] = [];

/** Most rules find nothing in most bids, and leave nothing to name or order. */
function foundBy(rule: Rule, bid: CheckedBid, bids: readonly CheckedBid[]): readonly Finding[] {
  const found = rule.check(bid, bids);
  return found.length === 0 ? none : found.map((one) => named(rule, one)).sort(byKey);
}
