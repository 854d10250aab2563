import { type Figure, figureFromInterval, intervalOfFigure, unknown, type WorkingSource } from "#lib/figure";
import { type DimensionName, type Interval, type SiUnit, type Span, tagged } from "#lib/quantity";

/** The figure of a span. One that is open on both sides says nothing: then it is unknown, and `missing` says what would close it. */
export const boundedFigure = <D extends DimensionName>(
  dimension: D,
  span: Span,
  working: WorkingSource,
  missing: string,
): Figure<D> =>
  Number.isFinite(span.low) || Number.isFinite(span.high)
    ? figureFromInterval(dimension, tagged(dimension, span), working)
    : unknown(dimension, { kind: "missing-input", what: missing });

/** Figures of a system that names no component: nothing is claimed, which is not the same as nothing being there. */
export const noInfillClaimed = <D extends DimensionName>(dimension: D): Figure<D> =>
  unknown(dimension, { kind: "not-claimed", what: "the components of the infill" });

/** What follows from a figure; unknown for the same reason where the figure itself is. */
export function derivedFrom<From extends DimensionName, D extends DimensionName>(
  figure: Figure<From>,
  dimension: D,
  derive: (interval: Interval<SiUnit<From>>) => Figure<D>,
): Figure<D> {
  if (figure.kind === "unknown") return unknown(dimension, figure.because);
  const interval = intervalOfFigure(figure);
  if (interval === null) throw new RangeError(`a ${figure.kind} figure has an interval`);
  return derive(interval);
}
