import { z } from "zod";
import type { FigureField } from "./gate";
import { boundsOf, notRising, partOfTheWay, type ScoredFigure, type ValueFunction } from "./value-function";

/** Knots in rising order of figure, at least two. */
export type KnotAnchors = Readonly<{ knots: readonly ScoredFigure[] }>;

/** @throws RangeError if there is no knot: a schema let it through */
function valueBetweenKnots(figure: number, { knots }: KnotAnchors): number {
  const after = knots.find(({ at }) => figure <= at.value);
  const before = knots.findLast(({ at }) => at.value <= figure);
  if (before === undefined && after === undefined) throw new RangeError(`no knots to place ${figure} between`);
  if (before === undefined || after === undefined) return (before ?? after)?.value ?? Number.NaN;
  if (before === after) return before.value;
  const part = partOfTheWay(figure, before.at.value, after.at.value);
  return (1 - part) * before.value + part * after.value;
}

export const piecewise: ValueFunction<KnotAnchors> = {
  label: "straight lines between knots",
  explanation:
    "Scores the value of each knot at its figure, evenly in between, and level beyond the first and last knot.",
  value: valueBetweenKnots,
  // straight pieces turn at knots only, so the extremes are at the ends or at knots inside
  bounds: ({ low, high }, anchors) => {
    const inside = anchors.knots.filter(({ at }) => low < at.value && at.value < high);
    return boundsOf([
      valueBetweenKnots(low, anchors),
      valueBetweenKnots(high, anchors),
      ...inside.map(({ value }) => value),
    ]);
  },
  curve: ({ knots }) => knots.map(({ at, value }) => ({ figure: at.value, value })),
  orderProblem: ({ knots }) => notRising("knots", knots),
};

export const piecewiseSchema = <F extends z.ZodType, V extends z.ZodType>(figure: FigureField<F>, value: V) =>
  z.strictObject({
    kind: z.literal("piecewise"),
    knots: z
      .array(z.strictObject({ at: figure("the figure of the knot"), value }))
      .min(2, "A line needs at least two knots."),
  });
