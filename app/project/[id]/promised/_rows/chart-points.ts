import type { GateRule } from "#lib/criteria";
import type { PromisedRow } from "#lib/submittal";

/** A figure in a drawing over the years, in SI. */
export type ChartPoint = Readonly<{ by: "bid" | "submitted" | "measured"; years: number; value: number }>;

/** The figures of a row that have a place over the years: those with both ends, at the middle of a range. */
export function pointsOf({ entries }: PromisedRow): readonly ChartPoint[] {
  return entries
    .flatMap(({ column: { kind }, span, years }): readonly ChartPoint[] => {
      if (span === null || kind === "specified" || kind === "guaranteed") return [];
      const ends = [span.low, span.high].filter(Number.isFinite);
      if (ends.length === 0) return [];
      const value = ends.reduce((sum, end) => sum + end, 0) / ends.length;
      return [{ by: kind === "bid" || kind === "submitted" ? kind : "measured", years: years ?? 0, value }];
    })
    .toSorted((one, other) => one.years - other.years);
}

const sidesOf = (limit: GateRule): readonly number[] =>
  limit.kind === "within" ? [limit.low.value, limit.high.value] : [limit.limit.value];

/** The limits and guarantees of a row as rules, each with its words; equal ones share a rule. */
export function limitRules(
  { entries }: PromisedRow,
  shown: (si: number) => string,
): readonly Readonly<{ value: number; words: string }>[] {
  const rules = entries.flatMap(({ column: { kind }, limit, span, years }) => {
    const who = years === 0 ? "specified as new" : "specified";
    if (limit !== null) return sidesOf(limit).map((value) => ({ value, who }));
    if (kind !== "guaranteed" || span === null) return [];
    return [span.low, span.high].filter(Number.isFinite).map((value) => ({ value, who: "guaranteed" }));
  });
  return [...new Set(rules.map(({ value }) => value))].map((value) => {
    const who = [...new Set(rules.filter((rule) => rule.value === value).map((rule) => rule.who))].join(", ");
    return { value, words: `${who} ${shown(value)}` };
  });
}

/** Whether a row was measured at two ages or more, so that a drawing over time says something. */
export const hasCourse = (row: PromisedRow): boolean =>
  new Set(pointsOf(row).flatMap(({ by, years }) => (by === "measured" ? [years] : []))).size > 1;
