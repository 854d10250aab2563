import { explainShortfall, type Figure, formatFigure, intervalOfFigure, type WorkingInput } from "#lib/figure";
import {
  type DimensionName,
  type ExactQuantity,
  failed,
  formatValue,
  type In,
  measured,
  type Result,
  type SiUnit,
  succeeded,
} from "#lib/quantity";

/** A derived figure as one number, and what was assumed to make it one. */
export type OneNumber<D extends DimensionName> = Readonly<{
  value: In<SiUnit<D>>;
  assumptions: readonly string[];
}>;

/** A figure as one number: the middle of a range, or the bound of a one-sided figure; a sentence where it is unknown. */
export function oneNumber<D extends DimensionName>(what: string, figure: Figure<D>): Result<OneNumber<D>, string> {
  if (figure.kind === "unknown") return failed(explainShortfall(figure.because));
  const interval = intervalOfFigure(figure);
  if (interval === null) return failed(`This needs ${what}.`);
  const { low, high } = interval;
  const [lowKnown, highKnown] = [Number.isFinite(low), Number.isFinite(high)];
  const value = lowKnown && highKnown ? (low + high) / 2 : lowKnown ? low : high;
  const words = formatFigure(figure, "us");
  const assumption =
    figure.kind === "range"
      ? `The middle of ${words} is taken for ${what}.`
      : `${words[0]?.toUpperCase()}${words.slice(1)} is all that is known of ${what}; the bound itself is taken.`;
  return succeeded({
    value: measured(figure.dimension, value),
    assumptions: figure.kind === "known" ? [] : [assumption],
  });
}

/** A figure that was worked out, as if somebody had entered it. */
export const workedOut = <D extends DimensionName>(dimension: D, value: In<SiUnit<D>>): ExactQuantity<D> => ({
  dimension,
  unit: "",
  asEntered: formatValue(dimension, value, "us"),
  value,
});

/** A parameter of the costing as an input of a working. */
export const parameterInput = (label: string, parameter: string, { asEntered }: ExactQuantity): WorkingInput => ({
  label,
  text: asEntered,
  from: { kind: "costing", field: `linkParameters.${parameter}` },
});

/** A derived figure of the bid as an input of a working. */
export const figureInput = (label: string, figure: Figure, name: string): WorkingInput => ({
  label,
  text: `${formatFigure(figure, "us")} (${formatFigure(figure, "metric")})`,
  from: { kind: "figure", figure: name },
});

/** What to say where the owner has not given a parameter. */
export const notGiven = (what: string): Result<never, string> =>
  failed(`This needs ${what}; the owner has not given it.`);
