import type { PlacedReading, WantedLength } from "./model";

/** How a reading stands to what is wanted. */
export type PlacedVerdict = "within" | "too little" | "too much";

export type PlacedFinding = Readonly<{ reading: PlacedReading; verdict: PlacedVerdict }>;

/** Converting units leaves a last bit. */
const lastBit = 1e-9;

/** Each reading against the length that is wanted, give or take; a reading at the tolerance itself is within. */
export const placedFindings = (
  readings: readonly PlacedReading[],
  { wanted, tolerance }: WantedLength,
): readonly PlacedFinding[] =>
  readings.map((reading) => {
    const stray = reading.reading.value - wanted.value;
    const verdict = Math.abs(stray) <= tolerance.value + lastBit ? "within" : stray < 0 ? "too little" : "too much";
    return { reading, verdict };
  });
