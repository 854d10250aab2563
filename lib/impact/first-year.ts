import type { YearFound } from "./model";

/** The first year for which something holds; years run from 0 to the horizon. */
export function firstYear<Y extends Readonly<{ year: number }>>(
  years: readonly Y[],
  holds: (year: Y) => boolean,
): YearFound {
  const found = years.find(holds);
  if (found !== undefined) return { kind: "known", year: found.year };
  return { kind: "not-within-horizon", horizon: Math.max(0, ...years.map(({ year }) => year)) };
}
