import {
  bidsAtStart,
  bidsInWords,
  comeBackSentences,
  type Evaluation,
  lettersOf,
  type Outcome,
  outcomeOf,
} from "#lib/evaluation";

/** What the figures support, in one line, and what follows from it. */
export type Support = Readonly<{ headline: string; sentences: readonly string[] }>;

type Led = Extract<Outcome, { kind: "led" }>;

/** A bid that contradicts itself has to say first which of its figures hold. */
function contradictions({ leader }: Led): readonly string[] {
  if (!leader.findings.some(({ severity }) => severity === "can't be true")) return [];
  return [
    `Some figures of ${bidsInWords([leader.letter])} can’t all be true. Have that cleared up before anything else.`,
  ];
}

function ledSupport(outcome: Led): Support {
  const { headline, sentences } = supportOfLeader(outcome);
  return {
    headline,
    sentences: [...contradictions(outcome), ...sentences, ...comeBackSentences(outcome.couldComeBack)],
  };
}

function supportOfLeader({ leader, certainOver, shownOver, out }: Led): Support {
  const name = bidsInWords([leader.letter]);
  const atStart = bidsAtStart([leader.letter]);
  if (leader.score.standing === "gate open") {
    return {
      headline: `${atStart} is ahead on the figures shown, but leaves a gate open. The figures support no bid yet.`,
      sentences: ["Ask the questions below about its gates. Decide when the answers are in."],
    };
  }
  if (certainOver.length + shownOver.length === 0) {
    return {
      headline: `The figures support ${name}, the only bid in the order.`,
      sentences: [
        "There is no other bid to hold it against. Its points say how it meets your own aims, and no more than that.",
      ],
    };
  }
  if (shownOver.length === 0) {
    return {
      headline: `The figures support ${name}. It is ahead for certain${out.length === 0 ? "" : " of the bids that fail no gate"}.`,
      sentences: ["Whatever the open figures of those bids turn out to be, none can reach its points."],
    };
  }
  const certain =
    certainOver.length === 0 ? [] : [`It is ahead of ${bidsInWords(lettersOf(certainOver))} for certain.`];
  const them = bidsInWords(lettersOf(shownOver));
  return {
    headline: `The figures support ${name}. It is ahead on the figures shown.`,
    sentences: [
      ...certain,
      `Against ${them} the order is not settled. Open figures could still put ${them} first.`,
      "Ask the questions below before you sign.",
    ],
  };
}

/** What the figures support. No figure makes the decision: that stays with the owner. */
export function supportOf(evaluation: Evaluation): Support {
  const outcome = outcomeOf(evaluation);
  switch (outcome.kind) {
    case "no-bids":
      return {
        headline: "There is nothing to support yet: no bid has been entered.",
        sentences: ["Enter the bids, each claim as it is written."],
      };
    case "no-criteria":
      return {
        headline: "The figures support no bid yet: no criterion has been set.",
        sentences: ["Set what every bid must meet and what counts for how much. Then read this page again."],
      };
    case "none-in-contention":
      return {
        headline: "The figures support no bid: every bid fails a gate.",
        sentences: [
          "Ask the questions below first. An answer with proof may open a gate.",
          "If no answer does, ask for new bids. To change a gate now, change it for all bids and give the reason.",
        ],
      };
    case "no-weights":
      return {
        headline: "The figures support no one bid: no criterion carries weight.",
        sentences: ["The gates tell which bids may stay. Give the criteria weights to put those bids in order."],
      };
    case "tied":
      return {
        headline: `The figures do not tell ${bidsInWords(lettersOf(outcome.bids))} apart.`,
        sentences: [
          "They have the same points on the figures shown. Ask the questions below, then read this page again.",
        ],
      };
    case "led":
      return ledSupport(outcome);
  }
}
