import {
  type Claim,
  type Condition,
  claimsFor,
  formatClaimed,
  formatCondition,
  inSentence,
  isConditionStated,
  matchMethod,
  methodOf,
  propertyOf,
  type QuantityPropertyId,
  quantityOf,
  type StatedMethod,
} from "#lib/claim";
import { type CampaignPoint, campaignPoints, reducedCampaign } from "#lib/fieldtest";
import { formatValue, intervalOf, inUnit, measured, type UnitSystem } from "#lib/quantity";
import { limitInWords } from "#lib/requirement";
import {
  type PromiseColumn,
  type PromisedRow,
  type PromiseEntry,
  promisedRows,
  reviewActions,
  startingContract,
  widenedLimit,
} from "#lib/submittal";
import { awardedBid } from "./awarded-bid";
import { claimDetails, claimedInWords } from "./claim-in-words";
import type { Bid, Project } from "./model";
import { reviewedRequirements } from "./reviewed-requirements";

/** The age that a condition states in years, 0 for new; null where it states none or counts it otherwise. */
function yearsOf({ age }: Condition): number | null {
  if (age.kind === "new") return 0;
  return age.kind === "aged" ? age.years : null;
}

const yearColumn = (years: number): PromiseColumn => ({ kind: "year", year: Math.max(1, Math.round(years)) });

/** The value as a reader of the units sees it, and the rest of the claim in words. */
function ofClaim(
  claim: Claim,
  column: PromiseColumn,
  owner: PromiseEntry["owner"],
  units: UnitSystem,
  remark = "",
): PromiseEntry {
  const { property, value, document, page, condition } = claim;
  const quantity = value.kind === "quantity" ? value.quantity : null;
  return {
    property,
    method: claim.method,
    column,
    value: quantity === null ? claimedInWords(claim) : formatClaimed(property, quantity, units),
    detail: [claimDetails(claim), remark].filter((part) => part !== "").join(", "),
    span: quantity === null ? null : intervalOf(quantity.reading),
    choice: value.kind === "choice" ? value.choice : null,
    limit: null,
    years: yearsOf(condition),
    document,
    page,
    owner,
  };
}

const nobodys = { choice: null, limit: null, document: "", page: "", owner: { kind: "project" } } as const;

/** What the impact requirement asks of every location whenever it is tested. */
function impactLimit({ requirements: { impact } }: Project): readonly PromiseEntry[] {
  const method = matchMethod(impact.method);
  if (method === null) return [];
  const limit = { kind: "below", limit: impact.limit } as const;
  return [
    {
      ...nobodys,
      property: "g-max-highest-point",
      method,
      column: { kind: "specified" },
      value: limitInWords(limit),
      detail: impact.limitSource,
      span: null,
      limit,
      years: null,
    },
  ];
}

/** The limits of the requirements. One on the impact level holds for the mean, and for each point unless it says the average. */
function specified({ requirements }: Project): readonly PromiseEntry[] {
  return reviewedRequirements(requirements).flatMap((requirement): readonly PromiseEntry[] => {
    const { isOn, subject, limit, method, condition, holdsAt, tolerance } = requirement;
    if (!isOn || limit === null || subject?.property === undefined) return [];
    const entry = {
      ...nobodys,
      property: subject.property,
      method: method ?? ("not-stated" as StatedMethod),
      column: { kind: "specified" },
      value: limitInWords(limit),
      detail: isConditionStated(condition) ? formatCondition(condition) : "",
      span: null,
      limit: widenedLimit(limit, tolerance?.value ?? 0),
      years: yearsOf(condition),
    } as const satisfies PromiseEntry;
    const ofEachPoint = subject.property === "g-max" && holdsAt !== "average";
    return ofEachPoint ? [entry, { ...entry, property: "g-max-highest-point" }] : [entry];
  });
}

/** Claims that may promise a level: the limit of the warranty does by what it is, the others by their proof. */
function guaranteed(bid: Bid, units: UnitSystem): readonly PromiseEntry[] {
  const owner = { kind: "bid", bid: bid.id } as const;
  const [length] = claimsFor(bid.claims, "warranty-years").flatMap(
    (claim) => quantityOf(claim, "warranty-years") ?? [],
  );
  const end = length === undefined ? null : inUnit("time", intervalOf(length.reading).low, "year");
  const ofAverage = claimsFor(bid.claims, "warranty-hardness-basis").some(
    ({ value }) => value.kind === "choice" && value.choice === "average",
  );
  return bid.claims.flatMap((claim): readonly PromiseEntry[] => {
    const column = { kind: "guaranteed" } as const;
    const isLimit = claim.property === "warranty-hardness-limit";
    if (!isLimit && claim.evidence !== "guaranteed") return [];
    const entry = ofClaim(claim, column, owner, units);
    const years = entry.years === null || entry.years === 0 ? end : entry.years;
    const property = isLimit ? (ofAverage ? "g-max" : "g-max-highest-point") : claim.property;
    return [{ ...entry, property, years }];
  });
}

function submitted({ submittals = [] }: Project, units: UnitSystem): readonly PromiseEntry[] {
  return submittals.flatMap(({ id, versions }) => {
    const owner = { kind: "submittal", submittal: id } as const;
    const last = versions.findLast(({ values }) => values.length > 0);
    if (last === undefined) return [];
    const remark = last.action === null ? "in review" : reviewActions[last.action].label;
    return last.values.map((value) => ofClaim(value, { kind: "submitted" }, owner, units, remark));
  });
}

/** What was measured on the finished field beside the impact tests. An age in hours or cycles has no place in the years. */
function measuredOnField({ contract = startingContract }: Project, units: UnitSystem): readonly PromiseEntry[] {
  return contract.measured.flatMap((claim) => {
    const years = yearsOf(claim.condition);
    if (years === null) return [];
    const column = years === 0 ? ({ kind: "accepted" } as const) : yearColumn(years);
    return [ofClaim(claim, column, { kind: "project" }, units)];
  });
}

function ofPoint(
  { date, method, years, mean, worst, locations }: CampaignPoint,
  isAcceptance: boolean,
  units: UnitSystem,
): readonly PromiseEntry[] {
  const places = locations === 1 ? "1 location" : `${locations} locations`;
  const entry = (property: QuantityPropertyId, level: typeof mean, what: string): PromiseEntry => ({
    ...nobodys,
    property,
    method,
    column: isAcceptance ? { kind: "accepted" } : yearColumn(years),
    value: formatValue("impactLevel", level, units),
    detail: `${what} of ${places}, ${methodOf(method).designation}, field test of ${date}`,
    span: { low: level, high: level },
    years: isAcceptance ? 0 : Math.max(1, Math.round(years)),
  });
  return [entry("g-max", mean, "mean"), entry("g-max-highest-point", worst, "worst")];
}

/** Levels and depths of the test campaigns on the field of the bid that was taken. */
function tested(project: Project, bid: string, units: UnitSystem): readonly PromiseEntry[] {
  const { impact } = project.requirements;
  const limit = { limit: impact.limit.value, source: impact.limitSource, locations: impact.testLocations };
  const own = (project.campaigns ?? []).filter(({ installed }) => installed === bid || installed === "");
  const reduced = own.map((campaign) => reducedCampaign(campaign, limit, { repeatability: null, equipment: null }));
  const isAcceptance = (id: string) => own.some((campaign) => campaign.id === id && campaign.kind === "acceptance");
  const points = campaignPoints(reduced);
  const levels = points.flatMap((point) => ofPoint(point, isAcceptance(point.campaign), units));
  const depths = own.flatMap(({ id, date, depths: readings }): readonly PromiseEntry[] => {
    const years = points.find(({ campaign }) => campaign === id)?.years;
    if (readings.length === 0 || years === undefined) return [];
    const mean = readings.reduce((sum, { depth }) => sum + depth.value, 0) / readings.length;
    return [
      {
        ...nobodys,
        property: "infill-depth",
        method: "infill-depth-gauge",
        column: isAcceptance(id) ? { kind: "accepted" } : yearColumn(years),
        value: formatValue("length", measured("length", mean), units),
        detail: `mean of ${readings.length} readings, field test of ${date}`,
        span: { low: mean, high: mean },
        years: isAcceptance(id) ? 0 : Math.max(1, Math.round(years)),
      },
    ];
  });
  return [...levels, ...depths];
}

/** Promised against measured: the rows that somebody asked for, submitted or measured, and what the bid alone speaks of. */
export type PromisedAgainstMeasured = Readonly<{
  bid: Bid | null;
  rows: readonly PromisedRow[];
  /** Labels of properties that stand in the bid and nowhere else. */
  bidAlone: readonly string[];
}>;

/** What was specified, bid, submitted, accepted, measured since and guaranteed, in rows of figures that compare. */
export function promisedAgainstMeasured(project: Project, units: UnitSystem): PromisedAgainstMeasured {
  const bid = awardedBid(project)?.bid ?? null;
  const entries = [
    ...impactLimit(project),
    ...specified(project),
    ...(bid === null
      ? []
      : bid.claims
          .filter(({ value }) => value.kind !== "words")
          .map((claim) => ofClaim(claim, { kind: "bid" }, { kind: "bid", bid: bid.id }, units))),
    ...submitted(project, units),
    ...measuredOnField(project, units),
    ...tested(project, bid?.id ?? "", units),
    ...(bid === null ? [] : guaranteed(bid, units)),
  ];
  const rows = promisedRows(entries);
  const isBidAlone = (row: PromisedRow) =>
    row.entries.every(({ column: { kind } }) => kind === "bid" || kind === "guaranteed");
  return {
    bid,
    rows: rows.filter((row) => !isBidAlone(row)),
    bidAlone: [...new Set(rows.filter(isBidAlone).map(({ property }) => inSentence(propertyOf(property).label)))],
  };
}
