import { type Figure, figureFromInterval, unknown, type Working } from "#lib/figure";
import type { DimensionName } from "#lib/quantity";
import { type Span, tagged } from "./span";

/** The figure of a span. One that is open on both sides says nothing: then it is unknown, and `missing` says what would close it. */
export const boundedFigure = <D extends DimensionName>(
  dimension: D,
  span: Span,
  working: Working,
  missing: string,
): Figure<D> =>
  Number.isFinite(span.low) || Number.isFinite(span.high)
    ? figureFromInterval(dimension, tagged(dimension, span), working)
    : unknown(dimension, { kind: "missing-input", what: missing });

/** Figures of a system that names no component: nothing is claimed, which is not the same as nothing being there. */
export const noInfillClaimed = <D extends DimensionName>(dimension: D): Figure<D> =>
  unknown(dimension, { kind: "not-claimed", what: "the components of the infill" });
