import type { AgedLevel, StatedLevel } from "#lib/impact";
import { measured } from "#lib/quantity";

const from = { kind: "claim", bid: "a", claim: "level" } as const;

/** A level stated as one number, or as a range. */
export const stated = (low: number, high: number = low): StatedLevel => ({
  level: { low: measured("impactLevel", low), high: measured("impactLevel", high) },
  from,
});

export const aged = (years: number, low: number, high: number = low): AgedLevel => ({ years, ...stated(low, high) });

export const grams = (level: number) => measured("impactLevel", level);
export const inches = (length: number) => measured("length", length, "in");
