import type { ScoreInterval } from "#lib/criteria";

/** Figures shown beside an interval; more would claim a precision that the interval denies. @source common practice, no source */
const significantFigures = 3;

const short = (number: number) => String(Number(number.toPrecision(significantFigures)));

/** A score of 0 to 1 as points of 100: "80.3". */
export const formatPoints = (score: number): string => short(score * 100);

/** A score as points of 100: "94", or "55.1–83.6" where the figure behind it is a range or missing. */
export function formatPointSpan({ low, high }: Pick<ScoreInterval, "low" | "high">): string {
  const [from, to] = [formatPoints(low), formatPoints(high)];
  return from === to ? from : `${from}–${to}`;
}

/** A part of all weights in percent: "12 %". */
export const formatShare = (share: number): string => `${formatPoints(share)} %`;
