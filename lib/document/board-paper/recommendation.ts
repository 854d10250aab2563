import { inSentence } from "#lib/claim";
import { explainStability } from "#lib/criteria";
import {
  type BidEvaluation,
  bidsInWords,
  type Evaluation,
  formatPointSpan,
  gateSentences,
  measuredFigure,
  methodsOf,
  type OpenFigure,
  openFigures,
  outcomeOf,
  type Project,
} from "#lib/evaluation";
import { type Figure, formatFigure, listed } from "#lib/figure";
import type { UnitSystem } from "#lib/quantity";
import { conventionsInWords } from "../conventions-in-words";
import { costSentences } from "../cost-sentences";
import { pluggedSentences } from "../plugs";
import { questionsTo } from "../questions";
import { type Support, supportOf } from "./support";

/** The figures of all bids on one criterion, in the order of the bids. */
export type DecidingFigure = Readonly<{
  label: string;
  reason: string;
  bids: readonly Readonly<{ letter: string; text: string }>[];
}>;

/** What the board reads, in the order it is read. Plain text throughout. */
export type Recommendation = Readonly<{
  question: readonly string[];
  support: Support;
  bids: readonly Readonly<{ letter: string; line: string }>[];
  gates: readonly string[];
  deciding: readonly DecidingFigure[];
  firmness: readonly string[];
  /** For each bid what is not known; empty where all that counts is shown. */
  notKnown: readonly Readonly<{ letter: string; line: string }>[];
  ask: readonly Readonly<{ letter: string; questions: readonly string[] }>[];
  cautions: readonly string[];
  conventions: string;
}>;

/** What a board reads before it decides: the question, what the figures support and how firmly, and what to ask. */
export function recommendation(project: Project, evaluation: Evaluation, units: UnitSystem): Recommendation {
  const { bids } = evaluation;
  return {
    question: questionOf(project, evaluation, units),
    support: supportOf(evaluation),
    bids: bids.map((bid) => ({ letter: bid.letter, line: bidLine(bid, units) })),
    gates: gatesOf(evaluation),
    deciding: decidingFigures(project, evaluation, units),
    firmness: firmnessOf(project, evaluation),
    notKnown: bids.flatMap((bid) => unknownLine(bid)),
    ask: bids.flatMap((bid) => {
      const questions = questionsTo(bid, units).map(({ text }) => text);
      return questions.length === 0 ? [] : [{ letter: bid.letter, questions }];
    }),
    cautions: evaluation.cautions,
    conventions: conventionsInWords(project),
  };
}

const wholeNumber = (value: number) => new Intl.NumberFormat("en-US", { maximumFractionDigits: 0 }).format(value);

function questionOf({ brief }: Project, { area, bids }: Evaluation, units: UnitSystem): readonly string[] {
  const size = formatFigure(area, units);
  const hours = wholeNumber(brief.use.hoursPerYear.value);
  return [
    `${brief.owner} plans a field of ${size}. It is to be used ${hours} hours a year.`,
    ...(brief.purpose === "" ? [] : [brief.purpose]),
    bidsQuestion(bids.length),
  ];
}

function bidsQuestion(count: number): string {
  if (count === 0) return "No bid has come in yet.";
  if (count === 1) return "One bid has come in. Do the figures support it?";
  return `${count} bids have come in. Which of them do the figures support, and how firmly?`;
}

const standingWords = {
  "passes all gates": "It passes every gate.",
  "gate open": "It leaves a gate open.",
  "fails a gate": "It fails a gate.",
} as const;

function bidLine({ bidder, system, score, cost }: BidEvaluation, units: UnitSystem): string {
  const points = score.total === null ? "" : ` It has ${formatPointSpan(score.total)} of 100 points.`;
  const price =
    cost.presentValue.kind === "unknown"
      ? " No price yet."
      : [` It costs ${formatFigure(cost.presentValue, units)} over the whole study.`, ...pluggedSentences(cost)].join(
          " ",
        );
  const gate = score.criteria.some(({ criterion }) => criterion.gate.kind !== "none")
    ? ` ${standingWords[score.standing]}`
    : "";
  return `${bidder}. ${system}.${gate}${points}${price}`;
}

function gatesOf(evaluation: Evaluation): readonly string[] {
  const sentences = gateSentences(evaluation);
  return sentences.length === 0 ? ["No gate is set, so no bid can fail one."] : sentences;
}

const decidingCount = 3;

/** The criteria of most weight: the owner chose them, whatever the bids say. */
function decidingFigures(project: Project, { bids, area }: Evaluation, units: UnitSystem): readonly DecidingFigure[] {
  const weighing = (bids[0]?.score.criteria ?? []).filter(({ share }) => share > 0);
  const heaviest = weighing.toSorted((one, other) => other.share - one.share).slice(0, decidingCount);
  return heaviest.map(({ criterion }) => ({
    label: criterion.label,
    reason: criterion.reason,
    bids: bids.map((bid) => ({ letter: bid.letter, text: decidingText(project, { bid, area }, criterion.id, units) })),
  }));
}

function decidingText(
  { bids }: Project,
  { bid: evaluated, area }: Readonly<{ bid: BidEvaluation; area: Figure<"area"> }>,
  criterion: string,
  units: UnitSystem,
): string {
  const bid = bids.find(({ id }) => id === evaluated.id);
  const score = evaluated.score.criteria.find((candidate) => candidate.criterion.id === criterion);
  if (bid === undefined || score === undefined) return "not known";
  const { figure } = measuredFigure({ ...evaluated, bid, area }, score.criterion);
  if (score.asked === "no") return "not asked of it";
  if (figure.kind === "unknown") return score.because?.kind === "not-comparable" ? "not comparable" : "not shown";
  const text = formatFigure(figure, units);
  return score.because?.kind === "weak-evidence" ? `${text}, not proven as asked` : text;
}

function firmnessOf(project: Project, evaluation: Evaluation): readonly string[] {
  const outcome = outcomeOf(evaluation);
  if (outcome.kind !== "led") return [];
  const { stability } = evaluation;
  const nameOf = (id: string) =>
    bidsInWords(evaluation.bids.filter((bid) => bid.id === id).map(({ letter }) => letter));
  return [
    ...(stability === null || stability.kind !== "led" ? [] : [explainStability(stability, nameOf)]),
    ...costSentences(outcome.leader, evaluation.bids, project.brief.money),
    ...otherWaysToDecide(outcome.leader.id, evaluation, nameOf),
  ];
}

/** Which bid would come first if the owner decided in another way, where that is another bid than the one in front. */
function otherWaysToDecide(leader: string, evaluation: Evaluation, nameOf: (id: string) => string): readonly string[] {
  const outcomes = (methodsOf(evaluation)?.outcomes ?? []).filter(({ leaders }) => leaders.length > 0);
  const others = outcomes.filter(({ method }) => method !== "owners-score");
  if (others.length === 0) return [];
  const unlike = others.filter(({ leaders }) => !leaders.includes(leader));
  if (unlike.length === 0)
    return [`Other ways to decide put ${nameOf(leader)} first too: ${listed(others.map(({ label }) => label))}.`];
  return unlike.map(({ label, leaders }) => `Decided by ${label}, ${listed(leaders.map(nameOf))} would come first.`);
}

const whyOpen = ({ because }: OpenFigure): string => {
  if (because === null) return "range across the limit";
  if (because.kind === "not-comparable") return "not comparable";
  if (because.kind === "weak-evidence") return "not proven as asked";
  return because.kind === "missing-input" ? "not known" : "not shown";
};

function unknownLine(bid: BidEvaluation): Recommendation["notKnown"] {
  const open = openFigures(bid.score).map((figure) => `${inSentence(figure.criterion.label)} (${whyOpen(figure)})`);
  return open.length === 0 ? [] : [{ letter: bid.letter, line: `${open.join("; ")}.` }];
}
