import { type Figure, intervalOfFigure, type Shortfall } from "#lib/figure";
import type { Distribution } from "#lib/sampling";
import { askedOfBid } from "./asked-of";
import { discountedValue } from "./discount";
import { scoredSpan, spreadOfFigure } from "./figure-spread";
import type { Span } from "./gate";
import { gateDecision } from "./gates";
import type { Criterion, CriterionScore, GateOutcome, ScoreInterval, ShownFigure, StatusWord } from "./model";
import { valueAt, valueBounds } from "./value-functions";

const anything: Span = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
const nothing: ScoreInterval = { low: 0, likely: 0, high: 0 };

/** What a figure may be at a gate and in a score, how it scatters, and the number to reckon with. */
type Counting = Readonly<{ span: Span; scored: Span; spread: Distribution | null; likely: number }>;

/** A figure that counts, one that would with better proof, or the reason why there is none. */
type Admitted = Readonly<
  | { kind: "counts"; figure: Counting }
  | { kind: "weak"; figure: Counting; because: Shortfall }
  | { kind: "short"; because: Shortfall }
>;

/** What a figure decides, before weighing. */
type Judgement = Pick<CriterionScore, "asked" | "status" | "gate" | "value" | "spread" | "counted" | "because">;

/** The number to reckon with where one is needed: the middle of a range, the bound of a one-sided figure. */
export function likelyFigure(figure: Exclude<Figure, { kind: "unknown" }>): number {
  switch (figure.kind) {
    case "known":
      return figure.value;
    case "range":
      return (figure.low + figure.high) / 2;
    case "at-least":
      return figure.low;
    case "at-most":
      return figure.high;
  }
}

function admitted({ measure, evidence }: Criterion, shown: ShownFigure | undefined): Admitted {
  if (shown === undefined) return { kind: "short", because: { kind: "not-claimed", what: measure.label } };
  const { figure } = shown;
  if (figure.dimension !== measure.dimension) {
    throw new RangeError(`${measure.id} is judged by ${measure.dimension}, got a figure of ${figure.dimension}`);
  }
  if (figure.kind === "unknown") return { kind: "short", because: figure.because };
  const spread = spreadOfFigure(figure, shown.spread ?? null);
  const counting = {
    spread,
    likely: likelyFigure(figure),
    span: intervalOfFigure(figure) ?? anything,
    scored: scoredSpan(figure, spread) ?? anything,
  };
  if (shown.evidence.rank >= evidence.least.rank) return { kind: "counts", figure: counting };
  const { label: wanted } = evidence.least;
  const because = { kind: "weak-evidence", what: measure.label, wanted, got: shown.evidence.label } as const;
  return { kind: "weak", figure: counting, because };
}

const gateWords = { meets: "meets", "falls-short": "falls short", "not-decided": "not decided" } as const;

/** Without a gate a figure meets the criterion where it is sure to score something. */
function wordByValue(value: ScoreInterval | null): StatusWord {
  if (value === null || value.low > 0) return "meets";
  return value.high > 0 ? "not decided" : "falls short";
}

function figureValue({ valueFunction }: Criterion, { scored, likely }: Counting): ScoreInterval | null {
  if (valueFunction.kind === "none") return null;
  const { low, high } = valueBounds(valueFunction, scored);
  return { low, likely: valueAt(valueFunction, likely), high };
}

/** The least and the most that any figure may be worth; null where nothing is scored. */
const openValue = ({ valueFunction }: Criterion): ScoreInterval | null =>
  valueFunction.kind === "none" ? null : { ...valueBounds(valueFunction, anything), likely: null };

function judgedOnFigure(criterion: Criterion, figure: Counting): Judgement {
  const value = figureValue(criterion, figure);
  const rest = { asked: "yes", value, spread: figure.spread, counted: "in full", because: null } as const;
  const { gate } = criterion;
  if (gate.kind === "none") return { ...rest, status: wordByValue(value), gate: { kind: "no-gate" } };
  const outcome = gateDecision(gate, figure.span);
  return { ...rest, status: gateWords[outcome.kind], gate: outcome };
}

/** The gate of a figure that does not count in full. */
function gateWithoutProof({ gate, evidence }: Criterion, because: Shortfall): GateOutcome {
  if (gate.kind === "none") return { kind: "no-gate" };
  const isStrict = evidence.shortfall === "counts-as-worst" || evidence.shortfall === "gate-fails";
  return { kind: isStrict ? "falls-short-on-evidence" : "not-shown", because };
}

/** What evaluators have not settled was not left out by the bid. */
function statusWithoutFigure({ kind }: Shortfall): StatusWord {
  if (kind === "not-rated") return "not decided";
  return kind === "not-comparable" ? "not comparable" : "not shown";
}

function judgedWithoutFigure(criterion: Criterion, because: Shortfall): Judgement {
  const open = openValue(criterion);
  const isWorst = open !== null && criterion.evidence.shortfall === "counts-as-worst";
  return {
    asked: "yes",
    status: statusWithoutFigure(because),
    gate: gateWithoutProof(criterion, because),
    value: isWorst ? { low: open.low, likely: open.low, high: open.low } : open,
    spread: null,
    counted: "not",
    because,
  };
}

/** A figure shown by less than asked for: part of what it has above the worst is taken off, and it decides no gate. */
function judgedAtDiscount(criterion: Criterion, figure: Counting, because: Shortfall): Judgement {
  const full = figureValue(criterion, figure);
  const lessened = (value: number) => discountedValue(criterion, value);
  const value: ScoreInterval | null = full && {
    low: lessened(full.low),
    likely: full.likely === null ? null : lessened(full.likely),
    high: lessened(full.high),
  };
  const gate = gateWithoutProof(criterion, because);
  return { asked: "yes", status: "not shown", gate, value, spread: figure.spread, counted: "at a discount", because };
}

function judged(criterion: Criterion, shown: ShownFigure | undefined): Judgement {
  const found = admitted(criterion, shown);
  if (found.kind === "counts") return judgedOnFigure(criterion, found.figure);
  return found.kind === "weak" && criterion.evidence.shortfall === "discount"
    ? judgedAtDiscount(criterion, found.figure, found.because)
    : judgedWithoutFigure(criterion, found.because);
}

/** A bid that nothing is asked of here has all that could be asked. */
function notAsked(criterion: Criterion): Judgement {
  const most = openValue(criterion)?.high ?? null;
  return {
    asked: "no",
    status: "not asked",
    gate: criterion.gate.kind === "none" ? { kind: "no-gate" } : { kind: "not-asked" },
    value: most === null ? null : { low: most, likely: most, high: most },
    spread: null,
    counted: "in full",
    because: null,
  };
}

/** What holds whether it is asked or not: open from what the figure gives to what a bid has of which it is not asked. */
function perhapsAsked(criterion: Criterion, judgement: Judgement, because: Shortfall): Judgement {
  const free = notAsked(criterion).value;
  const { value, gate } = judgement;
  return {
    asked: "not decided",
    status: "not decided",
    gate: gate.kind === "no-gate" || gate.kind === "meets" ? gate : { kind: "not-shown", because },
    value: value && { low: value.low, likely: null, high: Math.max(value.high, free?.high ?? 0) },
    spread: null,
    counted: judgement.counted,
    because,
  };
}

/**
 * How one bid's figure does on one criterion. `shown` is undefined where the bid says nothing.
 * @param share the criterion's part of all weights, 0 to 1
 * @throws RangeError if the figure is of another dimension than the measure: the caller matched the two up amiss
 */
export function criterionScore(criterion: Criterion, share: number, shown: ShownFigure | undefined): CriterionScore {
  const asked = askedOfBid(criterion.askedOf, shown?.asked);
  const judgement =
    asked.kind === "not-asked"
      ? notAsked(criterion)
      : asked.kind === "asked"
        ? judged(criterion, shown)
        : perhapsAsked(criterion, judged(criterion, shown), asked.because);
  return withShare({ ...judgement, criterion }, share);
}

/** What a criterion adds to a total with this part of all weights. */
export function withShare(judged: Omit<CriterionScore, "share" | "contribution">, share: number): CriterionScore {
  const { low, likely, high } = judged.value ?? nothing;
  const contribution = { low: share * low, likely: likely === null ? null : share * likely, high: share * high };
  return { ...judged, share, contribution };
}
