import type { CriterionScore } from "#lib/criteria";
import { explainShortfall } from "#lib/figure";
import { formatShare } from "./points";

/** What becomes of a figure that does not count in full, by the owner's rule; empty where it does. */
export function consequenceInWords({ criterion, asked, counted, because, value }: CriterionScore): string {
  if (because === null) return "";
  if (asked === "not decided") return "Until that is known, it counts anywhere from this figure to in full.";
  const { shortfall, discount } = criterion.evidence;
  if (counted === "at a discount") return `It counts with ${formatShare(discount)} of its points taken off.`;
  if (shortfall === "ask-first") return "The owner asks before deciding.";
  if (shortfall === "gate-fails") return "The gate fails for want of proof.";
  if (value === null) return shortfall === "counts-as-worst" ? "It does not pass the gate." : "";
  return shortfall === "counts-as-worst"
    ? "It counts as the worst."
    : "It may be worth anything from its worst to its best.";
}

/** Why a figure does not count in full and what becomes of it, in sentences; none where it counts. */
export const shortfallSentences = (score: CriterionScore): readonly string[] =>
  score.because === null
    ? []
    : [explainShortfall(score.because), consequenceInWords(score)].filter((sentence) => sentence !== "");
