import { type Finding, isSettled, type Severity } from "#lib/crosscheck";
import type { BidEvaluation } from "#lib/evaluation";
import { tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import type { Mark } from "./model";

type Found = Pick<BidEvaluation, "findings" | "answers">;

const weight: Readonly<Record<Severity, number>> = { "can't be true": 0, "needs an answer": 1, note: 2 };

/** The findings of a bid that belong somewhere, the most serious first and settled ones last. */
export function marksOf({ findings, answers }: Found, belongs: (finding: Finding) => boolean, units: UnitSystem) {
  const marks = findings.filter(belongs).map(
    (finding): Mark => ({
      key: finding.key,
      severity: finding.severity,
      title: finding.title,
      sentence: tell(finding.sentence, units),
      question: tell(finding.question, units),
      isSettled: isSettled(finding, answers),
    }),
  );
  return marks.toSorted(
    (one, other) => Number(one.isSettled) - Number(other.isSettled) || weight[one.severity] - weight[other.severity],
  );
}

/** What was found about claims of a bid. An unlike method is left out: the cell says so in its status already. */
export const marksOnClaims = (bid: Found, ids: readonly string[], units: UnitSystem): readonly Mark[] =>
  marksOf(
    bid,
    ({ claims, rule }) => rule !== "impact-by-another-method" && claims.some((id) => ids.includes(id)),
    units,
  );

/** What was found beside a derived figure. */
export const marksOnFigure = (bid: Found, figure: Finding["figures"][number], units: UnitSystem): readonly Mark[] =>
  marksOf(bid, ({ figures }) => figures.includes(figure), units);

/** Whether a bid states more than what it is made of adds up to, and no answer settled it. */
export const isOverClaimed = ({ findings, answers }: Found, claim: string): boolean =>
  findings.some((finding) => finding.overClaims.includes(claim) && !isSettled(finding, answers));
