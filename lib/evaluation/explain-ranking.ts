import { type BidScore, placingTotal } from "#lib/criteria";
import { bidsAtStart, bidsInWords } from "./bids-in-words";
import type { BidEvaluation, Evaluation } from "./model";
import { formatPoints } from "./points";

/** Who is in front and how sure that is, looking at every other bid, not only at the next one. */
export type Outcome = Readonly<
  | { kind: "no-bids" }
  | { kind: "no-criteria" }
  | { kind: "none-in-contention" }
  | { kind: "no-weights" }
  | { kind: "tied"; bids: readonly BidEvaluation[] }
  | {
      kind: "led";
      leader: BidEvaluation;
      /** Those it is ahead of whatever the open figures turn out to be, and the rest. */
      certainOver: readonly BidEvaluation[];
      shownOver: readonly BidEvaluation[];
      /** Those that fail a gate, and among them those that fail for want of proof only. */
      out: readonly BidEvaluation[];
      couldComeBack: readonly BidEvaluation[];
    }
>;

const certainly = (ahead: BidScore, behind: BidScore): boolean =>
  ahead.standing === "passes all gates" && (ahead.total?.low ?? 0) > (behind.total?.high ?? 0);

/** Whether a bid that fails a gate does so only because its proof falls short. */
export const failsOnEvidenceOnly = ({ criteria }: BidScore): boolean =>
  criteria.every(({ gate }) => gate.kind !== "falls-short");

/** What the evaluation comes to. */
export function outcomeOf({ bids, ranking }: Evaluation): Outcome {
  const [any] = bids;
  if (any === undefined) return { kind: "no-bids" };
  if (any.score.criteria.length === 0) return { kind: "no-criteria" };
  const placed = ranking.places.flatMap(({ place, bid }) =>
    bids.filter(({ id }) => id === bid).map((evaluated) => ({ place, evaluated })),
  );
  const [first, ...others] = placed;
  if (first === undefined) return { kind: "none-in-contention" };
  const leader = first.evaluated;
  if (leader.score.total === null) return { kind: "no-weights" };
  const level = others.filter(({ place }) => place === first.place).map(({ evaluated }) => evaluated);
  if (level.length > 0) return { kind: "tied", bids: [leader, ...level] };
  const out = bids.filter(({ score }) => score.standing === "fails a gate");
  const behind = others.map(({ evaluated }) => evaluated);
  return {
    kind: "led",
    leader,
    certainOver: behind.filter((bid) => certainly(leader.score, bid.score)),
    shownOver: behind.filter((bid) => !certainly(leader.score, bid.score)),
    out,
    couldComeBack: out.filter(({ score }) => failsOnEvidenceOnly(score)),
  };
}

/** The letters of bids in the order of the alphabet: a list of names is no order of merit. */
export const lettersOf = (bids: readonly BidEvaluation[]): readonly string[] =>
  bids.map(({ letter }) => letter).toSorted();

/** Bids that proof alone would bring back, and so could still change the order. */
export function comeBackSentences(bids: readonly BidEvaluation[]): readonly string[] {
  if (bids.length === 0) return [];
  const one = bids.length === 1;
  return [
    `${bidsAtStart(lettersOf(bids))} ${one ? "is" : "are"} out only because proof is missing. With that proof ${one ? "it" : "they"} could come back.`,
  ];
}

function orderSentences(outcome: Outcome): readonly string[] {
  switch (outcome.kind) {
    case "no-bids":
      return ["No bid has been entered yet."];
    case "no-criteria":
      return ["No criterion has been set yet, so nothing can be judged."];
    case "none-in-contention":
      return ["Every bid fails a gate, so no bid has a place."];
    case "no-weights":
      return ["No criterion carries weight, so there are gates but no points and no order."];
    case "tied":
      return [`${bidsAtStart(lettersOf(outcome.bids))} are tied on the figures shown.`];
    case "led":
      return [...ledSentences(outcome), ...comeBackSentences(outcome.couldComeBack)];
  }
}

function ledSentences({ leader, certainOver, shownOver }: Extract<Outcome, { kind: "led" }>): readonly string[] {
  const name = bidsAtStart([leader.letter]);
  const { standing } = leader.score;
  const points = `${formatPoints(placingTotal(leader.score))} of 100 points`;
  if (certainOver.length + shownOver.length === 0) return [`${name} is the only bid in the order, with ${points}.`];
  if (shownOver.length === 0)
    return [`${name} is ahead for certain, with ${points}. No other bid in the order can reach its total.`];
  const open = standing === "gate open" ? [`${name} leaves a gate open and may still drop out.`] : [];
  const certain =
    certainOver.length === 0 ? [] : [`It is ahead of ${bidsInWords(lettersOf(certainOver))} for certain.`];
  return [
    `${name} is ahead on the figures shown, with ${points}.`,
    ...certain,
    `Against ${bidsInWords(lettersOf(shownOver))} the order is not settled.`,
    ...open,
  ];
}

/** Which bids pass, fail or leave open the gates; nothing where no gate is set. */
export function gateSentences({ bids }: Evaluation): readonly string[] {
  const gated = bids[0]?.score.criteria.filter(({ gate }) => gate.kind !== "no-gate") ?? [];
  if (gated.length === 0) return [];
  const standing = (wanted: BidScore["standing"]) => bids.filter(({ score }) => score.standing === wanted);
  const sentence = (some: readonly BidEvaluation[], one: string, many: string) =>
    some.length === 0 ? [] : [`${bidsAtStart(lettersOf(some))} ${some.length === 1 ? one : many}.`];
  return [
    ...sentence(standing("passes all gates"), "passes every gate", "pass every gate"),
    ...sentence(standing("gate open"), "leaves a gate open", "leave a gate open"),
    ...sentence(standing("fails a gate"), "fails a gate and has no place", "fail a gate and have no place"),
  ];
}

/** Who leads, how sure that is, and how the bids stand at the gates, in sentences. */
export const explainRanking = (evaluation: Evaluation): readonly string[] => [
  ...orderSentences(outcomeOf(evaluation)),
  ...(evaluation.bids.length === 0 ? [] : gateSentences(evaluation)),
];
