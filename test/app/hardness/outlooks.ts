import { type HardnessOutlook, hardnessOutlook, type ImpactRequirement } from "#lib/impact";
import { type ExactQuantity, measured, parseExact } from "#lib/quantity";

function written<D extends "impactLevel" | "rateOfChange" | "fraction">(dimension: D, text: string): ExactQuantity<D> {
  const read = parseExact(dimension, text);
  if (!read.ok) throw new Error(`“${text}” is no ${dimension}`);
  return read.value;
}

/** Limit 165 g, target window 90–130 g, 8 years, the owner's change 1 to 6 g a year and likely 3. */
const requirement: ImpactRequirement = {
  method: "f1936",
  targetWindow: { low: written("impactLevel", "90 g"), high: written("impactLevel", "130 g") },
  limit: written("impactLevel", "165 g"),
  limitSource: "contract",
  testLocations: 10,
  horizonYears: 8,
  ownersDrift: {
    low: written("rateOfChange", "1 g/year"),
    likely: written("rateOfChange", "3 g/year"),
    high: written("rateOfChange", "6 g/year"),
  },
  chanceLevel: written("fraction", "95 %"),
  depthSensitivity: { kind: "common-practice" },
};

/** An outlook from levels in g by age in years. */
export const outlookOf = (levels: Readonly<Record<number, number>>): HardnessOutlook => {
  const stated = Object.entries(levels).map(([years, level]) => ({
    years: Number(years),
    level: { low: measured("impactLevel", level), high: measured("impactLevel", level) },
    from: { kind: "constant" } as const,
  }));
  return hardnessOutlook({
    newLevel: stated.find(({ years }) => years === 0) ?? null,
    agedPoints: stated.filter(({ years }) => years > 0),
    requirement,
    years: requirement.horizonYears,
  });
};
