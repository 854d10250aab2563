import { type ImpactRequirement, impactRequirementSchema } from "#lib/impact";

/** A requirement as it would be typed. */
export const typed = {
  method: "f355-a",
  targetWindow: { low: "90 g", high: "140 g" },
  limit: "165 g",
  limitSource: "trade guideline, from memory",
  testLocations: "10",
  horizonYears: "12 years",
  ownersDrift: { low: "0 g/year", likely: "1 g/year", high: "3 g/year" },
  chanceLevel: "95 %",
  depthSensitivity: { kind: "common-practice" },
} as const;

export const requirement: ImpactRequirement = impactRequirementSchema.parse(typed);

/** The requirement with another yearly change, in g a year. */
export const withDrift = (low: number, likely: number, high: number): ImpactRequirement =>
  impactRequirementSchema.parse({
    ...typed,
    ownersDrift: { low: `${low} g/year`, likely: `${likely} g/year`, high: `${high} g/year` },
  });
