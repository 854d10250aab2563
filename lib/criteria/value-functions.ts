import { z } from "zod";
import type { FigureField, OrderProblem, Span } from "./gate";
import { lessIsBetter, lessIsBetterSchema } from "./less-is-better";
import { moreIsBetter, moreIsBetterSchema } from "./more-is-better";
import { type KnotAnchors, piecewise, piecewiseSchema } from "./piecewise";
import { type RatingAnchors, rating, ratingSchema } from "./rating";
import { type StepAnchors, steps, stepsSchema } from "./steps";
import { targetWindow, targetWindowSchema, type WindowAnchors } from "./target-window";
import type { CurvePoint, EndAnchors, ValueBounds, ValueFunction } from "./value-function";

type AnchorsByKind = {
  "more-is-better": EndAnchors;
  "less-is-better": EndAnchors;
  "target-window": WindowAnchors;
  steps: StepAnchors;
  piecewise: KnotAnchors;
  rating: RatingAnchors;
};

/** The one list of value functions: schema, scoring, forms and drawings read it. A new one is a file, its anchors above, and a line in each of the two lists below. */
export const valueFunctions: { readonly [K in keyof AnchorsByKind]: ValueFunction<AnchorsByKind[K]> } = {
  "more-is-better": moreIsBetter,
  "less-is-better": lessIsBetter,
  "target-window": targetWindow,
  steps,
  piecewise,
  rating,
};

export const valueFunctionSchema = <F extends z.ZodType, V extends z.ZodType>(figure: FigureField<F>, value: V) =>
  z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("none") }),
    moreIsBetterSchema(figure),
    lessIsBetterSchema(figure),
    targetWindowSchema(figure),
    stepsSchema(figure, value),
    piecewiseSchema(figure, value),
    ratingSchema(value),
  ]);

export type ValueFunctionKind = keyof AnchorsByKind;
/** A value function with the owner's anchors. */
export type ScoreRule<K extends ValueFunctionKind = ValueFunctionKind> = {
  [P in K]: Readonly<{ kind: P }> & AnchorsByKind[P];
}[K];

/** The value of a figure in SI, 0 to 1. */
export const valueAt = <K extends ValueFunctionKind>(rule: ScoreRule<K>, figure: number): number =>
  valueFunctions[rule.kind].value(figure, rule);

/** Least and greatest value of the figures in an interval. */
export const valueBounds = <K extends ValueFunctionKind>(rule: ScoreRule<K>, interval: Span): ValueBounds =>
  valueFunctions[rule.kind].bounds(interval, rule);

/** The corners of the line to draw. */
export const valueCurve = <K extends ValueFunctionKind>(rule: ScoreRule<K>): readonly CurvePoint[] =>
  valueFunctions[rule.kind].curve(rule);

export const valueOrderProblem = <K extends ValueFunctionKind>(rule: ScoreRule<K>): OrderProblem | null =>
  valueFunctions[rule.kind].orderProblem(rule);
