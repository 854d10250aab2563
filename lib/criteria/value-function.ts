import type { ExactQuantity } from "#lib/quantity";
import type { OrderProblem, Span } from "./gate";

/** Least and greatest value over an interval of figures, each 0 to 1. */
export type ValueBounds = Readonly<{ low: number; high: number }>;

/** A corner of the drawn line: figure in SI, value 0 to 1. */
export type CurvePoint = Readonly<{ figure: number; value: number }>;

/** Maps a figure to 0…1 on anchors that the owner set beforehand, never on the set of bids. */
export type ValueFunction<Anchors> = Readonly<{
  label: string;
  explanation: string;
  /** @param figure in SI; ±Infinity stands for an open side */
  value: (figure: number, anchors: Anchors) => number;
  /** Exact: every figure in the interval has a value between the two, and both are reached or approached. */
  bounds: (interval: Span, anchors: Anchors) => ValueBounds;
  /** Corners in rising order of figure, straight lines between them and level lines beyond the ends. */
  curve: (anchors: Anchors) => readonly CurvePoint[];
  orderProblem: (anchors: Anchors) => OrderProblem | null;
}>;

/** The figure that scores nothing and the figure that scores in full. */
export type EndAnchors = Readonly<{ worst: ExactQuantity; best: ExactQuantity }>;

/** A figure of the owner's and the value it has, 0 to 1. */
export type ScoredFigure = Readonly<{ at: ExactQuantity; value: number }>;

/** How far `figure` is on the way from one figure to another, 0 to 1, level beyond both. */
export const partOfTheWay = (figure: number, from: number, to: number): number =>
  Math.min(1, Math.max(0, (figure - from) / (to - from)));

/** The two values in order. */
export const boundsOf = (values: readonly number[]): ValueBounds => ({
  low: Math.min(...values),
  high: Math.max(...values),
});

/** Says where a list of figures stops rising; null where it rises throughout. */
export function notRising(list: string, points: readonly ScoredFigure[]): OrderProblem | null {
  for (const [index, { at }] of points.entries()) {
    const before = points[index - 1];
    if (before !== undefined && at.value <= before.at.value) {
      const message = `“${at.asEntered}” comes after “${before.at.asEntered}”. Expected figures that rise from one line to the next.`;
      return { field: `${list}.${index}.at`, message };
    }
  }
  return null;
}
