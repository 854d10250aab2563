import { workedOutOnReading } from "#lib/once";
import type { DimensionName, In, Interval, SiUnit } from "#lib/quantity";
import type { Figure } from "./figure";
import type { Shortfall } from "./shortfall";
import type { Working, WorkingSource } from "./working";

/**
 * The figure that an interval amounts to: one number where both ends agree, a range, or a bound where one end is open.
 * @throws RangeError if the interval is empty, not a number, or open on both sides: its maker had nothing to say
 */
export function figureFromInterval<D extends DimensionName>(
  dimension: D,
  { low, high }: Interval<SiUnit<D>>,
  working: WorkingSource,
): Figure<D> {
  const lowKnown = Number.isFinite(low);
  const highKnown = Number.isFinite(high);
  if (!(low <= high) || (!lowKnown && !highKnown)) throw new RangeError(`no figure in the interval ${low} to ${high}`);
  if (low === high) return known(dimension, low, working);
  if (lowKnown && highKnown) return withWorking({ kind: "range", dimension, low, high }, working);
  return lowKnown
    ? withWorking({ kind: "at-least", dimension, low }, working)
    : withWorking({ kind: "at-most", dimension, high }, working);
}

/** A figure that is one number. */
export const known = <D extends DimensionName>(dimension: D, value: In<SiUnit<D>>, working: WorkingSource): Figure<D> =>
  withWorking({ kind: "known", dimension, value }, working);

const withWorking = <Value extends object>(
  value: Value,
  working: WorkingSource,
): Value & Readonly<{ working: Working }> =>
  typeof working === "function" ? workedOutOnReading(value, { working }) : { ...value, working };

/** A figure that can't be given, with the reason. */
export const unknown = <D extends DimensionName>(dimension: D, because: Shortfall): Figure<D> => ({
  kind: "unknown",
  dimension,
  because,
});

/** The interval a figure stands for, open sides as ±Infinity; null where the figure is unknown. */
export function intervalOfFigure<D extends DimensionName>(figure: Figure<D>): Interval<SiUnit<D>> | null {
  const open = (side: number) => side as In<SiUnit<D>>;
  switch (figure.kind) {
    case "known":
      return { low: figure.value, high: figure.value };
    case "range":
      return { low: figure.low, high: figure.high };
    case "at-least":
      return { low: figure.low, high: open(Number.POSITIVE_INFINITY) };
    case "at-most":
      return { low: open(Number.NEGATIVE_INFINITY), high: figure.high };
    case "unknown":
      return null;
  }
}
