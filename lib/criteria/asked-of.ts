import { type Figure, inSentence, intervalOfFigure, type Shortfall } from "#lib/figure";
import { gateDecision } from "./gates";
import type { AskedOf } from "./model";

/** Whether a criterion is asked of a bid, or why that is not decided. */
export type Asked = Readonly<{ kind: "asked" } | { kind: "not-asked" } | { kind: "not-decided"; because: Shortfall }>;

/**
 * Whether a criterion is asked of a bid.
 * @param figure the bid's figure for the measure of the condition; undefined where it says nothing
 * @throws RangeError if the figure is of another dimension than the condition: the caller matched the two up amiss
 */
export function askedOfBid(askedOf: AskedOf, figure: Figure | undefined): Asked {
  if (askedOf.kind === "every-bid") return { kind: "asked" };
  const { measure, is } = askedOf;
  if (figure === undefined) return { kind: "not-decided", because: { kind: "not-claimed", what: measure.label } };
  if (figure.dimension !== measure.dimension)
    throw new RangeError(`${measure.id} is judged by ${measure.dimension}, got a figure of ${figure.dimension}`);
  if (figure.kind === "unknown") return { kind: "not-decided", because: figure.because };
  const interval = intervalOfFigure(figure);
  const decision = interval === null ? "not-decided" : gateDecision(is, interval).kind;
  if (decision === "meets") return { kind: "asked" };
  if (decision === "falls-short") return { kind: "not-asked" };
  const what = `one figure for ${inSentence(measure.label)}, which decides whether this is asked of the bid`;
  return { kind: "not-decided", because: { kind: "missing-input", what } };
}
