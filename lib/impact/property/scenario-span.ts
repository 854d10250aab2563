import type { Change } from "../chance/field-value";
import type { AgedValue, ValueSpan } from "./model";

/** Years of change between a stated value and the year looked at, resets taken off. */
export type ElapsedSince = (age: number) => number;

/**
 * Every stated value is a start and the range spans what they lead to, so that a later value on the far side is not
 * forgotten; the likely value runs on from the last one known by that year.
 * @throws RangeError without any value
 */
export function scenarioSpan(
  year: number,
  used: readonly AgedValue[],
  change: Change,
  elapsedSince: ElapsedSince,
): ValueSpan {
  const paths = used.map((start) => pathFrom(start, elapsedSince(start.years), change));
  const start = startAge(year, used);
  const likely = paths.filter(({ years }) => years === start).map((path) => path.likely);
  if (likely.length === 0) throw new RangeError("a scenario needs a value to start from");
  return {
    low: Math.min(...paths.map(({ low }) => low)),
    likely: likely.reduce((sum, value) => sum + value, 0) / likely.length,
    high: Math.max(...paths.map(({ high }) => high)),
  };
}

/** The age of the last value known by that year, or of the first one of all. */
export function startAge(year: number, used: readonly AgedValue[]): number {
  const ages = used.map(({ years }) => years);
  const lastKnown = Math.max(...ages.filter((age) => age <= year));
  return Number.isFinite(lastKnown) ? lastKnown : Math.min(...ages);
}

/** Where one stated value leads: low with low, high with high. Backwards in time the changes trade places. */
function pathFrom(start: AgedValue, elapsed: number, change: Change) {
  const changes = [change.low * elapsed, change.high * elapsed];
  return {
    years: start.years,
    low: start.low + Math.min(...changes),
    likely: likelyValue(start) + change.likely * elapsed,
    high: start.high + Math.max(...changes),
  };
}

/** The middle, or the bound of a value stated with one side. */
function likelyValue({ low, high }: AgedValue): number {
  if (!Number.isFinite(low)) return high;
  return Number.isFinite(high) ? (low + high) / 2 : low;
}
