import type { HardnessOutlook, ImpactRequirement } from "#lib/impact";
import type { Interval } from "#lib/quantity";

/** A bid whose level can be followed over the years. */
export type OutlookLine = Readonly<{
  letter: string;
  index: number;
  outlook: Extract<HardnessOutlook, { kind: "outlook" }>;
  /** What the bid itself states, by age. */
  stated: readonly Readonly<{ years: number; level: Interval<"g"> }>[];
}>;

/** Both sides are known; where one is open there is no likely level between them. */
export const isClosed = ({ low, high }: Interval<"g">): boolean => Number.isFinite(low) && Number.isFinite(high);

/** Levels that a drawing has room for. */
export type LevelDomain = readonly [lowest: number, highest: number];

const step = 20; // g between two ticks

/** Levels that hold every range, the window and the limit; what lies far beyond the limit is cut and stands in the table. */
export function levelDomain(
  lines: readonly OutlookLine[],
  { limit, targetWindow }: Pick<ImpactRequirement, "limit" | "targetWindow">,
): LevelDomain {
  const levels = lines
    .flatMap(({ outlook, stated }) => [...outlook.years, ...stated.map(({ level }) => level)])
    .flatMap(({ low, high }) => [low, high])
    .filter(Number.isFinite);
  const least = Math.min(targetWindow.low.value, ...levels);
  const greatest = Math.max(limit.value, ...levels);
  return [
    Math.max(0, Math.floor((least - step / 2) / step) * step),
    Math.ceil(Math.min(greatest + step / 2, limit.value * 1.8) / step) * step,
  ];
}
