import type { In } from "#lib/quantity";
import type { Drops } from "./location-level";
import type { Repeatability } from "./repeatability";

/** Something about a location that a reader should look at. It changes no level and no verdict. */
export type LocationNote = Readonly<
  | { kind: "drops-apart"; second: In<"g">; third: In<"g">; most: number }
  | { kind: "rises-from-drop-to-drop"; first: In<"g">; third: In<"g">; most: number }
  | { kind: "far-from-others"; level: In<"g">; median: number; side: "higher" | "lower" }
  | { kind: "drop-missing" }
>;

/** Two single drops differ by less than this many standard deviations 19 times in 20. @source ISO 5725-6: 2.8, from memory */
const repeatabilityLimitFactor = 2.8;
/** Distance from the median, in robust standard deviations, from which a location stands out. @source Iglewicz and Hoaglin (1993), as in NIST/SEMATECH e-Handbook 1.3.5.17 */
const standsOut = 3.5;
/** 0.6745 is the median absolute deviation of a normal distribution with standard deviation 1. */
const madOfNormal = 0.6745;
const fewestLocations = 5;

const medianOf = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
};

/** Whether the drops of one location agree with each other. */
export function noteOnDrops(
  [first, second, third]: Drops,
  repeatability: Repeatability | null,
): readonly LocationNote[] {
  if (repeatability === null) return [];
  const most = repeatabilityLimitFactor * repeatability.deviation;
  if (Math.abs(third - second) > most) return [{ kind: "drops-apart", second, third, most }];
  const rises = first < second && second < third && third - first > most;
  return rises ? [{ kind: "rises-from-drop-to-drop", first, third, most }] : [];
}

/** Whether one level stands far from those of the other locations; null for too few of them or none that scatter. */
export function noteOnLevel(level: In<"g">, all: readonly In<"g">[]): LocationNote | null {
  if (all.length < fewestLocations) return null;
  const median = medianOf(all);
  const spread = medianOf(all.map((other) => Math.abs(other - median)));
  if (spread === 0 || (madOfNormal * Math.abs(level - median)) / spread <= standsOut) return null;
  return { kind: "far-from-others", level, median, side: level > median ? "higher" : "lower" };
}

const grams = (level: number) => `${Number(level.toFixed(1))} g`;

/** One sentence for the table. */
export function explainLocationNote(note: LocationNote): string {
  switch (note.kind) {
    case "drops-apart":
      return `Drops 2 and 3 gave ${grams(note.second)} and ${grams(note.third)}, farther apart than the ${grams(note.most)} that drops on one spot usually keep to. Test the spot again.`;
    case "rises-from-drop-to-drop":
      return `The level rose from drop to drop, from ${grams(note.first)} to ${grams(note.third)}: the spot was still settling.`;
    case "far-from-others":
      return `${grams(note.level)} is far ${note.side} than the other locations, whose median is ${grams(note.median)}. It counts all the same; look at the spot and at the infill depth there.`;
    case "drop-missing":
      return "Fewer than three drops are noted, so the location has no level.";
  }
}
