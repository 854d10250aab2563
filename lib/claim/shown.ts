import { listed } from "#lib/figure";
import { type PlainDate, plainDate } from "#lib/quantity";
import { atLeastAsStrong, type EvidenceLevel, evidenceLevels } from "./evidence";
import { inSentence, propertyOf } from "./find";
import type { Claim } from "./model";
import type { PropertyId } from "./properties/properties";

/** Claims, by their ids, that ask for a second look. A claim can be in several of the lists. */
export type ClaimGaps = Readonly<{
  /** Figures that a test stands behind, without the test named. */
  noMethod: readonly string[];
  noDocument: readonly string[];
  otherBuild: readonly string[];
  /** With a report that was made before the day asked for. */
  oldReport: readonly string[];
}>;

/** How a bid stands towards the properties that are asked for. Each of them is in exactly one of the lists. */
export type ClaimsReading = Readonly<{
  /** Shown by an accredited laboratory, a field test or a guarantee. */
  shown: readonly PropertyId[];
  /** Said, or tested by the bidder alone. */
  said: readonly PropertyId[];
  missing: readonly PropertyId[];
  /** The same in plain words. */
  sentence: string;
  /** How many claims of the bid rest on each level of evidence. */
  provenBy: Readonly<Record<EvidenceLevel, number>>;
  gaps: ClaimGaps;
  /** Proof and gaps in short sentences; none where there is nothing to say. */
  remarks: readonly string[];
}>;

/** Reports older than this are asked about. @source common practice, no source */
export const usualReportAge = { years: 5, inWords: "five years" } as const;

/** The day of the calendar before which a report is asked about; 28 February for a leap day. */
export function oldestUsualReport(asOf: PlainDate): PlainDate {
  const year = String(Number(asOf.slice(0, 4)) - usualReportAge.years).padStart(4, "0");
  const day = asOf.slice(4) === "-02-29" ? "-02-28" : asOf.slice(4);
  return plainDate(`${year}${day}`);
}

/**
 * What the claims show, only say and leave out among the properties that are asked for, and what their proof rests on.
 * @param asOf the day from which the age of reports counts
 */
export function readClaims(claims: readonly Claim[], wanted: readonly PropertyId[], asOf: PlainDate): ClaimsReading {
  const asked = [...new Set(wanted)];
  const claimed = new Set(claims.map(({ property }) => property));
  const proven = new Set(claims.filter(isShown).map(({ property }) => property));
  const shown = asked.filter((property) => proven.has(property));
  const said = asked.filter((property) => claimed.has(property) && !proven.has(property));
  const missing = asked.filter((property) => !claimed.has(property));
  const oldest = oldestUsualReport(asOf);
  const [provenBy, gaps] = [countByEvidence(claims), gapsOf(claims, oldest)];
  return {
    ...{ shown, said, missing, provenBy, gaps },
    sentence: sentence({ asked: asked.length, shown: shown.length, said: said.length, missing }),
    remarks: [...proofSentence(claims.length, provenBy), ...gapSentences(gaps, oldest)],
  };
}

const isShown = ({ evidence }: Claim): boolean => atLeastAsStrong(evidence, "accredited-laboratory");

type Counts = Readonly<{ asked: number; shown: number; said: number; missing: readonly PropertyId[] }>;

function sentence({ asked, shown, said, missing }: Counts): string {
  if (asked === 0) return "No properties are asked for.";
  const counts = `Of ${asked} ${asked === 1 ? "property" : "properties"} asked for, ${shown} ${are(shown)} shown by a laboratory, a field test or a guarantee, ${said} ${are(said)} only said and ${missing.length} ${are(missing.length)} missing`;
  if (missing.length === 0) return `${counts}.`;
  return `${counts}: ${missing.map((property) => inSentence(propertyOf(property).label)).join(", ")}.`;
}

const are = (count: number): string => (count === 1 ? "is" : "are");

function countByEvidence(claims: readonly Claim[]): Readonly<Record<EvidenceLevel, number>> {
  const counts = { stated: 0, "own-test": 0, "accredited-laboratory": 0, "field-tested": 0, guaranteed: 0 };
  for (const { evidence } of claims) counts[evidence] += 1;
  return counts;
}

function gapsOf(claims: readonly Claim[], oldest: PlainDate): ClaimGaps {
  const those = (isGap: (claim: Claim) => boolean) => claims.filter(isGap).map(({ id }) => id);
  return {
    noMethod: those(lacksMethod),
    noDocument: those(({ document }) => document === ""),
    otherBuild: those(({ build }) => build === "other-build"),
    oldReport: those(({ date }) => date !== null && date.latest < oldest),
  };
}

const lacksMethod = ({ property, method, value }: Claim): boolean =>
  value.kind === "quantity" && method === "not-stated" && propertyOf(property).methods.length > 0;

/** What a claim rests on, behind "is" or "are". */
const restsOn: Readonly<Record<EvidenceLevel, string>> = {
  stated: "only stated",
  "own-test": "tested by maker or bidder",
  "accredited-laboratory": "tested by a laboratory",
  "field-tested": "tested on a field",
  guaranteed: "guaranteed",
};

function proofSentence(total: number, provenBy: ClaimsReading["provenBy"]): readonly string[] {
  const levels = evidenceLevels.map(({ id }) => id).toReversed();
  const parts = levels.flatMap((id) =>
    provenBy[id] === 0 ? [] : `${provenBy[id]} ${are(provenBy[id])} ${restsOn[id]}`,
  );
  return parts.length === 0 ? [] : [`Of ${total} ${total === 1 ? "claim" : "claims"}, ${listed(parts)}.`];
}

const longDay = new Intl.DateTimeFormat("en-US", { dateStyle: "long", timeZone: "UTC" });

function gapSentences(
  { noMethod, noDocument, otherBuild, oldReport }: ClaimGaps,
  oldest: PlainDate,
): readonly string[] {
  const day = oldReport.length === 0 ? "" : longDay.format(new Date(`${oldest}T00:00:00Z`));
  const told = (gap: readonly string[], one: string, many: string) =>
    gap.length === 0 ? [] : [gap.length === 1 ? `1 ${one}.` : `${gap.length} ${many}.`];
  return [
    ...told(noMethod, "figure names no test method", "figures name no test method"),
    ...told(noDocument, "claim names no document", "claims name no document"),
    ...told(otherBuild, "report is of another build than the one bid", "reports are of another build than the one bid"),
    ...told(oldReport, `report was made before ${day}`, `reports were made before ${day}`),
  ];
}
