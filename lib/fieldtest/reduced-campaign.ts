import { type Figure, known, unknown } from "#lib/figure";
import { impactCaution } from "#lib/impact";
import { formatValue, type In, measured } from "#lib/quantity";
import { type Drops, dropsOf, locationLevel } from "./location-level";
import { type LocationNote, noteOnDrops, noteOnLevel } from "./location-notes";
import { fieldVerdict, type LocationVerdict, locationVerdict, locationVerdicts } from "./location-verdict";
import type { Campaign, TestLocation } from "./model";
import {
  type LocationUncertainty,
  locationUncertainty,
  pooledRepeatability,
  type Repeatability,
} from "./repeatability";

/** What a campaign is held against. */
export type LevelLimit = Readonly<{
  limit: In<"g">;
  /** The standard with its edition, the guideline or the clause of the contract. */
  source: string;
  /** Locations that the method or contract asks for. */
  locations: number;
}>;

/** What is known of the measuring itself; null where nobody states it. */
export type MeasuringKnowledge = Readonly<{
  /** Of a single drop; pooled from the drops where it is null. */
  repeatability: Repeatability | null;
  /** Standard uncertainty of the equipment, from its calibration. */
  equipment: In<"g"> | null;
}>;

export type LocationResult = Readonly<{
  location: TestLocation;
  drops: Drops | null;
  level: Figure<"impactLevel">;
  verdict: LocationVerdict | "no-level";
  notes: readonly LocationNote[];
}>;

export type ReducedCampaign = Readonly<{
  campaign: Campaign;
  against: LevelLimit;
  /** In the order of the campaign. */
  locations: readonly LocationResult[];
  repeatability: Repeatability | null;
  uncertainty: LocationUncertainty | null;
  verdict: LocationVerdict | "nothing-tested";
  mean: Figure<"impactLevel">;
  worst: Figure<"impactLevel">;
  /** What the verdict rests on and what it is not, in sentences. */
  statements: readonly string[];
}>;

const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 1 });
const noLevel = unknown("impactLevel", { kind: "missing-input", what: "three drops on the location" });

/** Levels, uncertainty and verdicts of a campaign. The order of its locations changes nothing. */
export function reducedCampaign(
  campaign: Campaign,
  against: LevelLimit,
  knowledge: MeasuringKnowledge,
): ReducedCampaign {
  const complete = campaign.locations.map(dropsOf).filter((drops) => drops !== null);
  const levels = complete.map(locationLevel);
  const repeatability = knowledge.repeatability ?? pooledRepeatability(complete);
  const uncertainty =
    repeatability === null
      ? null
      : locationUncertainty(repeatability, knowledge.equipment ?? measured("impactLevel", 0));
  const locations = campaign.locations.map((location): LocationResult => {
    const drops = dropsOf(location);
    if (drops === null)
      return { location, drops, level: noLevel, verdict: "no-level", notes: [{ kind: "drop-missing" }] };
    const level = locationLevel(drops);
    const apart = noteOnLevel(level, levels);
    return {
      location,
      drops,
      level: levelFigure(location, level, uncertainty),
      verdict: locationVerdict(level, against.limit, uncertainty?.guardBand ?? measured("impactLevel", 0)),
      notes: [...noteOnDrops(drops, repeatability), ...(apart === null ? [] : [apart])],
    };
  });
  const verdict = fieldVerdict(locations.flatMap((result) => (result.verdict === "no-level" ? [] : [result.verdict])));
  return {
    campaign,
    against,
    locations,
    repeatability,
    uncertainty,
    verdict,
    ...overLocations(levels),
    statements: statementsOn(campaign, against, levels, uncertainty, repeatability, verdict),
  };
}

function levelFigure(
  { id, drops }: TestLocation,
  level: In<"g">,
  uncertainty: LocationUncertainty | null,
): Figure<"impactLevel"> {
  return known("impactLevel", level, {
    formula: "level = (drop 2 + drop 3) ÷ 2",
    inputs: drops.map((drop, index) => ({
      label: `drop ${index + 1}`,
      text: drop?.asEntered ?? "not made",
      from: { kind: "figure", figure: `drop-${id}-${index + 1}` },
    })),
    assumptions: [
      "The first drop settles the spot and does not count.",
      uncertainty === null
        ? "The measuring uncertainty is not known."
        : `The true level lies within ${grams(uncertainty.eitherSide)} of it, with a chance of 95 %.`,
    ],
    source: "ASTM F355/F1936 practice as described by Penn State University, sports surface research",
  });
}

function overLocations(levels: readonly In<"g">[]): Pick<ReducedCampaign, "mean" | "worst"> {
  if (levels.length === 0) return { mean: noLevel, worst: noLevel };
  const inputs = [
    { label: "locations", text: `${levels.length}`, from: { kind: "figure", figure: "location-levels" } },
  ] as const;
  const about = { inputs, source: "derived from the levels of the locations" };
  const sum = levels.toSorted((a, b) => a - b).reduce((total, level) => total + level, 0);
  return {
    mean: known("impactLevel", measured("impactLevel", sum / levels.length), {
      ...about,
      formula: "mean = Σ levels ÷ number of locations",
      assumptions: ["It describes the field; it does not decide, because every location has to meet the limit."],
    }),
    worst: known("impactLevel", measured("impactLevel", Math.max(...levels)), {
      ...about,
      formula: "worst = highest level of all locations",
      assumptions: ["Other spots of the field may be harder than those tested."],
    }),
  };
}

function statementsOn(
  campaign: Campaign,
  { limit, source, locations: wanted }: LevelLimit,
  levels: readonly In<"g">[],
  uncertainty: LocationUncertainty | null,
  repeatability: Repeatability | null,
  verdict: LocationVerdict | "nothing-tested",
): readonly string[] {
  const tested = levels.length;
  const places = tested === 1 ? "1 location" : `${tested} locations`;
  const standing = levels.filter((level) => !(level < limit)).length;
  return [
    verdict === "nothing-tested"
      ? `The test of ${campaign.date} has no location with three drops, so nothing can be said.`
      : `The field ${locationVerdicts[verdict]}: of ${places} tested on ${campaign.date}, ${standing === 0 ? "none is" : standing === 1 ? "1 is" : `${standing} are`} at or above ${grams(limit)} (${source}).`,
    ...(tested > 0 && tested < wanted
      ? [`${wanted} locations are asked for; ${tested === 1 ? "1 has" : `${tested} have`} a level.`]
      : []),
    uncertainty === null || repeatability === null
      ? "The measuring uncertainty is not known: fewer than 4 locations have three drops, and no repeatability is stated."
      : `A level is sure to ${grams(uncertainty.guardBand)} on the side of the limit (95 %), by ${
          repeatability.basis === "stated"
            ? "the stated repeatability"
            : `the scatter between drops 2 and 3 of ${repeatability.degreesOfFreedom + 1} locations`
        }.`,
    impactCaution,
  ];
}
