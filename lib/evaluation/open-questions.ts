import type { ScopeRow } from "#lib/cost";
import { type BidScore, type Criterion, type CriterionScore, undiscountedValue } from "#lib/criteria";
import type { Shortfall } from "#lib/figure";
import { bidsAtStart, bidsInWords } from "./bids-in-words";
import { failsOnEvidenceOnly } from "./explain-ranking";
import type { BidEvaluation, Evaluation } from "./model";
import { formatPoints } from "./points";
import { questionToBidder } from "./question-to-bidder";

/** One figure that a bid leaves open. */
export type OpenFigure = Readonly<{
  criterion: Criterion;
  /** Null where the figure counts but its range lies across the limit of a gate. */
  because: Shortfall | null;
  /** What to ask the bidder, in plain words. */
  question: string;
  /** How much of the total, 0 to 1, hangs on the answer. */
  worth: number;
  /** Whether the answer decides if the bid stays in. */
  atGate: "decides a gate" | "no gate";
  /** Whether the owner wants the answer before deciding anything. */
  when: "before deciding" | "any time";
}>;

/** What the open figures of a bid can still do to the order. */
export type Reach =
  | "leads"
  | "could come first"
  | "only if the leader fails a gate"
  | "could not come first"
  | "could come back"
  | "fails a gate";

export type BidOpenings = Readonly<{
  bid: string;
  letter: string;
  reach: Reach;
  /** Largest first. */
  open: readonly OpenFigure[];
  /** How much of the total, 0 to 1, lies in the ranges of figures that do count. */
  inRanges: number;
  /** The same in sentences. */
  sentence: string;
  /** Items of scope for which no figure stands yet, with the question to the bidder. */
  scope: readonly ScopeRow[];
}>;

/** How much of the total hangs on the answer. Counted as worst, a contribution has no width left, yet proof is worth the whole share. */
function worthOf({ criterion, asked, because, contribution, counted, share, value }: CriterionScore): number {
  if (because === null || asked === "not decided") return contribution.high - contribution.low;
  if (counted !== "at a discount" || value === null) return share;
  return share * (undiscountedValue(criterion, value.high) - value.low);
}

/** The figures of a bid that are missing, not comparable, less proven than asked, or across a limit. */
export function openFigures({ criteria }: BidScore): readonly OpenFigure[] {
  const open = criteria.flatMap((score): readonly OpenFigure[] => {
    const question = questionToBidder(score);
    if (question === null) return [];
    const { criterion, because, gate } = score;
    const isFirst = because !== null && criterion.evidence.shortfall === "ask-first";
    return [
      {
        ...{ criterion, because, question, worth: worthOf(score) },
        atGate: gate.kind === "no-gate" ? "no gate" : "decides a gate",
        when: isFirst ? "before deciding" : "any time",
      },
    ];
  });
  return open.toSorted((one, other) => other.worth - one.worth);
}

const widthInRanges = ({ criteria }: BidScore): number =>
  criteria.reduce((sum, { because, contribution: { low, high } }) => (because === null ? sum + high - low : sum), 0);

/** Totals closer than this are one total: they differ by the rounding of sums only. */
const sumRounding = 1e-12;

function reachOf({ score }: BidEvaluation, leader: BidScore | null): Reach {
  if (score.standing === "fails a gate") return failsOnEvidenceOnly(score) ? "could come back" : "fails a gate";
  if (leader === null || leader.bid === score.bid) return "leads";
  if ((score.total?.high ?? 0) >= (leader.total?.low ?? 0) - sumRounding) return "could come first";
  return leader.standing === "gate open" ? "only if the leader fails a gate" : "could not come first";
}

const of100 = (score: number | undefined): string => `${formatPoints(score ?? 0)} of 100 points`;

function sentenceOf({ letter, score }: BidEvaluation, reach: Reach, leader: BidEvaluation | null): string {
  const name = bidsAtStart([letter]);
  const first = bidsInWords([leader?.letter ?? letter]);
  const most = of100(score.total?.high);
  const least = of100(leader?.score.total?.low);
  switch (reach) {
    case "leads":
      return `${name} leads. ${score.standing === "gate open" ? "It leaves a gate open; if it fails there, it drops out. " : ""}At the worst of what its figures leave open it has ${least}.`;
    case "could come first":
      return `${name} could come first. At the best of what its figures leave open it has ${most}; ${first} may have as few as ${formatPoints(leader?.score.total?.low ?? 0)}.`;
    case "only if the leader fails a gate":
      return `${name} could come first only if ${first} fails the gate it leaves open. At best it has ${most}; ${first} has at least ${formatPoints(leader?.score.total?.low ?? 0)}.`;
    case "could not come first":
      return `${name} could not come first, whatever the answers. At best it has ${most}; ${first} has at least ${formatPoints(leader?.score.total?.low ?? 0)}.`;
    case "could come back":
      return `${name} fails a gate only because proof is missing. With the proof asked for it could come back.`;
    case "fails a gate":
      return `${name} fails a gate on the figure it gives. No points make up for that.`;
  }
}

/**
 * What would change the answer: for each bid, in the order of the ranking and then those that fail a gate, how far the
 * best of its open figures could carry it against the worst the leader may have.
 */
export function openQuestions({ bids, ranking }: Evaluation): readonly BidOpenings[] {
  const order = [...ranking.places.map(({ bid }) => bid), ...ranking.failing];
  const ordered = order.flatMap((id) => bids.filter((bid) => bid.id === id));
  const leader = ordered.find(({ id }) => id === ranking.places[0]?.bid) ?? null;
  return ordered.map((bid) => {
    const reach = reachOf(bid, leader?.score ?? null);
    return {
      bid: bid.id,
      letter: bid.letter,
      reach,
      open: openFigures(bid.score),
      inRanges: widthInRanges(bid.score),
      sentence: sentenceOf(bid, reach, leader),
      scope: bid.cost.scope.filter(({ outcome }) => outcome.kind === "open"),
    };
  });
}
