import type { Finding } from "#lib/crosscheck";
import type { BidEvaluation } from "#lib/evaluation";
import { tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import type { Mark } from "./model";

export const markOf = ({ severity, title, sentence, question }: Finding, units: UnitSystem): Mark => ({
  severity,
  title,
  sentence: tell(sentence, units),
  question: tell(question, units),
});

/** What was found about one claim. An unlike method is left out: the cell says so in its status already. */
export const marksOnClaim = ({ findings }: BidEvaluation, claim: string, units: UnitSystem): readonly Mark[] =>
  findings
    .filter(({ claims, rule }) => claims.includes(claim) && rule !== "impact-by-another-method")
    .map((finding) => markOf(finding, units));

/** What was found about the infill of a bid and not about one of its claims. */
export const marksOnInfill = ({ findings }: BidEvaluation, units: UnitSystem): readonly Mark[] =>
  findings.filter(({ figures }) => figures.includes("infill mass")).map((finding) => markOf(finding, units));

/** Whether a bid states more than what it is made of adds up to. */
export const isOverClaimed = ({ findings }: BidEvaluation, claim: string): boolean =>
  findings.some(({ overClaims }) => overClaims.includes(claim));
