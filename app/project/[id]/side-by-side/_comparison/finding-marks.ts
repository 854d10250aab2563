import { explainFinding, type Finding } from "#lib/crosscheck";
import type { BidEvaluation } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import type { Mark } from "./model";

/** The claim a finding speaks of; null where it speaks of the bid as a whole. */
const claimOf = (finding: Finding): string | null => ("claim" in finding ? finding.claim : null);

export const markOf = (finding: Finding, units: UnitSystem): Mark => ({
  severity: finding.severity,
  ...explainFinding(finding, units),
});

/** What was found about one claim. An unlike method is left out: the cell says so in its status already. */
export const marksOnClaim = ({ findings }: BidEvaluation, claim: string, units: UnitSystem): readonly Mark[] =>
  findings
    .filter((finding) => claimOf(finding) === claim && finding.kind !== "impact-by-another-method")
    .map((finding) => markOf(finding, units));

/** What was found about the infill of a bid and not about one of its claims. */
export const marksOnInfill = ({ findings }: BidEvaluation, units: UnitSystem): readonly Mark[] =>
  findings.filter(({ kind }) => kind === "light-infill-without-shock-layer").map((finding) => markOf(finding, units));

/** Whether a bid states more than what it is made of adds up to. */
export const isOverClaimed = ({ findings }: BidEvaluation, claim: string): boolean =>
  findings.some(
    (finding) =>
      finding.kind === "components-against-total" && finding.claim === claim && finding.stated.low > finding.sum.high,
  );
