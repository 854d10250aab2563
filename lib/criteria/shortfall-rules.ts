/** What a criterion has: a gate, a value function, or both. */
type Deciding = Readonly<{ gate: Readonly<{ kind: string }>; valueFunction: Readonly<{ kind: string }> }>;

type RuleTerms = Readonly<{
  /** As a choice in a form. */
  label: string;
  /** What it does to the score and the gate, for bidders and the public. */
  explanation: string;
  /** Why a criterion can't have this rule; null where it can. */
  unfit: (criterion: Deciding) => string | null;
}>;

const fitsAll = (): null => null;

/** What becomes of a figure that is missing, not comparable, or shown by less than the owner asked for. The one list. */
export const shortfallRules = {
  "keep-open": {
    label: "Keep it open: it may be anything from worst to best",
    explanation: "A figure that is not shown may be anything from no points to full points, and both ends are told.",
    unfit: fitsAll,
  },
  "ask-first": {
    label: "Keep it open and ask the bidder before deciding",
    explanation: "A bidder whose figure is not shown is asked before anything is decided.",
    unfit: fitsAll,
  },
  discount: {
    label: "Count a less proven figure at a discount",
    explanation:
      "A figure that is shown by less than asked for counts with part of its points taken off, and leaves a gate open. A figure that is missing or not comparable may be anything from no points to full points.",
    unfit: ({ valueFunction }) =>
      valueFunction.kind === "none"
        ? "A discount is taken off points, but nothing is scored here. Choose another rule, or a way to turn figures into points."
        : null,
  },
  "counts-as-worst": {
    label: "Count it as the worst; it does not pass a gate",
    explanation: "A figure that is not shown counts as the lowest, and does not pass a gate.",
    unfit: fitsAll,
  },
  "gate-fails": {
    label: "The gate fails; its points stay open",
    explanation: "A figure that is not shown fails the gate.",
    unfit: ({ gate }) =>
      gate.kind === "none" ? "There is no gate here that could fail. Choose another rule, or set a gate." : null,
  },
} as const satisfies Readonly<Record<string, RuleTerms>>;

export type ShortfallRule = keyof typeof shortfallRules;

export const shortfallRuleIds = Object.keys(shortfallRules) as [ShortfallRule, ...ShortfallRule[]];

/** Why a criterion can't have a rule, in a sentence; null where it can. */
export const unfitShortfallRule = (rule: ShortfallRule, criterion: Deciding): string | null =>
  shortfallRules[rule].unfit(criterion);
