import { comparability, type MethodId, methodOf } from "#lib/claim";
import { formatValue, type In, measured } from "#lib/quantity";
import { type CampaignPoint, campaignPoints } from "./campaign-points";
import { type LocationVerdict, locationVerdict } from "./location-verdict";
import type { ReducedCampaign } from "./reduced-campaign";

/** What the bid said of the field, by which the campaigns are read. Null where it said nothing. */
export type PromisedLevels = Readonly<{
  method: MethodId;
  /** As new. */
  claimed: In<"g"> | null;
  /** Every location stays below it for so many years; without an end where no years are stated. */
  guaranteed: Readonly<{ level: In<"g">; years: number | null }> | null;
}>;

export type TrendPoint = CampaignPoint &
  Readonly<{
    /** Mean less the claimed level as new; null where there is none or methods differ. */
    aboveClaim: In<"g"> | null;
    /** How the worst location stands to the guarantee. */
    guarantee: LocationVerdict | "not-guaranteed" | "guarantee-has-ended" | "another-method";
  }>;

export type CampaignTrend = Readonly<{ points: readonly TrendPoint[]; sentences: readonly string[] }>;

/** Whether levels of a test can be held against a promise: by one method, or by methods that measure alike. */
const compares = (tested: MethodId, promised: MethodId): boolean =>
  comparability("g-max", promised, tested).kind === "comparable";

const grams = (level: In<"g">) => formatValue("impactLevel", level, { unit: "g", decimals: 0 });

/** The campaigns against what the bid claimed and guaranteed, the oldest first. */
export function campaignTrend(campaigns: readonly ReducedCampaign[], promised: PromisedLevels): CampaignTrend {
  const byId = new Map(campaigns.map((reduced) => [reduced.campaign.id, reduced]));
  const points = campaignPoints(campaigns).map((point): TrendPoint => {
    const comparable = compares(point.method, promised.method);
    return {
      ...point,
      aboveClaim:
        comparable && promised.claimed !== null ? measured("impactLevel", point.mean - promised.claimed) : null,
      guarantee: guaranteeAt(point, promised, byId.get(point.campaign)),
    };
  });
  return { points, sentences: points.map((point) => inWords(point, promised)) };
}

function guaranteeAt(
  { method, years, worst }: CampaignPoint,
  { method: promisedMethod, guaranteed }: PromisedLevels,
  reduced: ReducedCampaign | undefined,
): TrendPoint["guarantee"] {
  if (guaranteed === null) return "not-guaranteed";
  if (!compares(method, promisedMethod)) return "another-method";
  if (guaranteed.years !== null && years > guaranteed.years) return "guarantee-has-ended";
  return locationVerdict(worst, guaranteed.level, reduced?.uncertainty?.guardBand ?? measured("impactLevel", 0));
}

function inWords(point: TrendPoint, promised: PromisedLevels): string {
  const { date, mean, worst, aboveClaim, guarantee, locations } = point;
  const tested = `${date}: mean ${grams(mean)}, worst of ${locations} ${locations === 1 ? "location" : "locations"} ${grams(worst)}`;
  const claim =
    aboveClaim === null || promised.claimed === null
      ? ""
      : `; the mean is ${grams(measured("impactLevel", Math.abs(aboveClaim)))} ${aboveClaim < 0 ? "below" : "above"} the ${grams(promised.claimed)} claimed as new`;
  return `${tested}${claim}${guaranteeInWords(guarantee, promised)}.`;
}

function guaranteeInWords(guarantee: TrendPoint["guarantee"], { guaranteed, method }: PromisedLevels): string {
  if (guaranteed === null) return "";
  const level = grams(guaranteed.level);
  switch (guarantee) {
    case "not-guaranteed":
      return "";
    case "guarantee-has-ended":
      return `; the guarantee of ${level} has ended`;
    case "another-method":
      return `; the guarantee of ${level} is by ${methodOf(method).designation} and can't be compared`;
    case "meets":
      return `; the guarantee of ${level} is kept`;
    case "meets-within-uncertainty":
      return `; the guarantee of ${level} is kept, but within the measuring uncertainty`;
    case "does-not-meet-within-uncertainty":
      return `; the guarantee of ${level} is not kept, but within the measuring uncertainty`;
    case "does-not-meet":
      return `; the guarantee of ${level} is not kept`;
  }
}
