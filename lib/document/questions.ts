import { type Finding, isSettled } from "#lib/crosscheck";
import { type BidEvaluation, openFigures } from "#lib/evaluation";
import { tell } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";

/** One question to a bidder; the finding behind it, or null where a figure of a criterion is open. */
export type Question = Readonly<{ text: string; finding: Finding | null }>;

/**
 * What to ask a bidder, each thing once: what excludes itself, then figures that decide a gate or that the owner asks about first, then what needs an
 * answer, sums of the form that differ, scope without a figure, then the other open figures, most points first. Notes are worth knowing and not asked.
 * What an answer has settled is not asked again.
 */
export function questionsTo(
  { findings, priceFindings, cost, answers, score }: BidEvaluation,
  units: UnitSystem,
): readonly Question[] {
  const open = openFigures(score);
  const reasons = new Set(open.flatMap(({ because }) => (because?.kind === "not-comparable" ? [because.reason] : [])));
  const found = (severity: Finding["severity"]) =>
    findings
      .filter((finding) => finding.severity === severity && !isSettled(finding, answers))
      .filter(({ sentence }) => !reasons.has(tell(sentence, units))) // the open figure asks for the same already
      .map((finding) => ({ text: tell(finding.question, units), finding }));
  const isFirst = ({ atGate, when }: (typeof open)[number]) =>
    atGate === "decides a gate" || when === "before deciding";
  const asQuestions = (some: typeof open) => some.map(({ question }) => ({ text: question, finding: null }));
  const differing = priceFindings.filter(({ severity }) => severity === "differs");
  const scope = cost.scope.flatMap(({ outcome }) => (outcome.kind === "open" ? [outcome.question] : []));
  const asked = (texts: readonly string[]) => texts.map((text) => ({ text, finding: null }));
  const all: readonly Question[] = [
    ...found("can't be true"),
    ...asQuestions(open.filter(isFirst)),
    ...found("needs an answer"),
    ...asked(differing.map(({ question }) => question)),
    ...asked(scope),
    ...asQuestions(open.filter((figure) => !isFirst(figure))),
  ];
  return all.filter(({ text }, at) => all.findIndex((other) => other.text === text) === at);
}
