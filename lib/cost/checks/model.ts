import type { Working } from "#lib/figure";

/** What a check of prices found: a difference that the rule of precedence settles, or something to look at. */
export type MoneyFinding = Readonly<{
  /** Stays the same while the check and its lines do. */
  key: string;
  check: "extension" | "sum" | "sum-in-words" | "currency" | "total-spread" | "item-spread" | "unbalanced-unit-price";
  /** A difference in the bid's own figures, or a note that is no verdict. */
  severity: "differs" | "note";
  /** Price lines that it speaks of. */
  priceLines: readonly string[];
  sentence: string;
  question: string;
  working: Working;
}>;
