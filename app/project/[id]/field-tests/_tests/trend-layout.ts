import type { PromisedLevels, TrendPoint } from "#lib/fieldtest";
import type { In } from "#lib/quantity";

/** How far the axes of a trend reach: whole years and round levels around everything that is drawn. */
export type TrendReach = Readonly<{ years: readonly [number, number]; levels: readonly [number, number] }>;

const fewestYears = 3;
const step = 20; // g: round levels for the ends of the axis

export function trendReach(
  points: readonly TrendPoint[],
  { claimed, guaranteed }: PromisedLevels,
  limit: In<"g">,
): TrendReach {
  const ages = points.map(({ years }) => years);
  const levels = [
    ...points.flatMap(({ mean, worst }) => [mean, worst]),
    ...(claimed === null ? [] : [claimed]),
    ...(guaranteed === null ? [] : [guaranteed.level]),
    limit,
  ];
  return {
    years: [Math.min(0, Math.floor(Math.min(...ages))), Math.max(fewestYears, Math.ceil(Math.max(...ages)))],
    levels: [
      Math.max(0, Math.floor((Math.min(...levels) - 5) / step) * step),
      Math.ceil((Math.max(...levels) + 5) / step) * step,
    ],
  };
}

/** Horizontal rules of a trend with their words; where two would stand in each other, the words share one rule. */
export type Rule = Readonly<{ level: number; words: string; tone: "limit" | "promise"; until: number | null }>;

export function trendRules(
  { claimed, guaranteed }: PromisedLevels,
  limit: In<"g">,
  grams: (level: In<"g">) => string,
): readonly Rule[] {
  const promise = { tone: "promise", until: null } as const;
  return [
    { level: limit, words: `limit ${grams(limit)}`, tone: "limit", until: null },
    ...(claimed === null ? [] : [{ level: claimed, words: `claimed as new ${grams(claimed)}`, ...promise }]),
    ...(guaranteed === null
      ? []
      : [
          {
            level: guaranteed.level,
            words: `guaranteed ${grams(guaranteed.level)}`,
            tone: "promise",
            until: guaranteed.years,
          } as const,
        ]),
  ];
}
