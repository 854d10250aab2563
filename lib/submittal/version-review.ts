import { type Claim, comparability, conditionsAgree, isConditionStated } from "#lib/claim";
import type { PlainDate } from "#lib/quantity";
import type { Requirement } from "#lib/requirement";
import type { SubmittalVersion, SubmittedReport } from "./model";
import type { ReportFinding } from "./report-checks/model";
import { reportFindings } from "./report-checks/report-findings";
import { type ReviewedValue, reviewValue, type ValueReview } from "./value-review";

/** One value, or one clause for which there is none, with what it was held against. */
export type ReviewRow = ReviewedValue &
  Readonly<{
    /** Tells the rows of a version apart. */
    key: string;
    review: ValueReview;
    /** What is sent: the reviewer’s words where there are any, else the draft. */
    comment: string;
    isOwnWords: boolean;
  }>;

/** What the version is held against. */
export type ReviewSetting = Readonly<{
  /** The requirements that the line of the register names. */
  asked: readonly Requirement[];
  /** All requirements, for values that the line does not ask for. */
  requirements: readonly Requirement[];
  /** What the winner bid. */
  bid: readonly Claim[];
  sameWithin: number;
}>;

const propertyIn = ({ subject }: Requirement) => subject?.property ?? null;

/**
 * The claim of the bid that a value is held against: of the same property, by a method and in a condition that compare
 * where there is one; else the first, so that the review can say why the two do not compare.
 */
function counterpart(bid: readonly Claim[], value: Claim): Claim | null {
  const same = bid.filter(({ property }) => property === value.property);
  const byMethod = same.filter(
    ({ property, method }) =>
      method === "not-stated" || comparability(property, method, value.method).kind === "comparable",
  );
  const alike = byMethod.filter(
    ({ condition }) => !isConditionStated(condition) || conditionsAgree(condition, value.condition).kind === "agree",
  );
  return alike[0] ?? byMethod[0] ?? same[0] ?? null;
}

function rowOf(reviewed: ReviewedValue, remarks: SubmittalVersion["remarks"]): ReviewRow {
  const key = `${reviewed.requirement?.id ?? "no-clause"}/${reviewed.submitted?.id ?? "nothing"}`;
  const review = reviewValue(reviewed);
  const own = remarks[key] ?? "";
  return { ...reviewed, key, review, comment: own === "" ? review.comment : own, isOwnWords: own !== "" };
}

/**
 * Every value of a version against the clauses that speak of its property and against the bid, and every clause of the
 * line for which no value came. A clause on something that no paper states a figure for is not a row.
 */
export function reviewVersion(
  { values, remarks }: Pick<SubmittalVersion, "values" | "remarks">,
  { asked, requirements, bid, sameWithin }: ReviewSetting,
): readonly ReviewRow[] {
  const ids = new Set(asked.map(({ id }) => id));
  const held = [...asked, ...requirements.filter(({ id, isOn }) => isOn && !ids.has(id))];
  const ofValues = values.flatMap((submitted) => {
    const speaking = held.filter((requirement) => propertyIn(requirement) === submitted.property);
    const against = speaking.length === 0 ? [null] : speaking;
    const promised = counterpart(bid, submitted);
    return against.map((requirement) => ({ requirement, submitted, bid: promised, sameWithin }));
  });
  const notShown = asked.flatMap((requirement) => {
    const property = propertyIn(requirement);
    if (property === null || values.some((value) => value.property === property)) return [];
    const promised = bid.find((claim) => claim.property === property) ?? null;
    return [{ requirement, submitted: null, bid: promised, sameWithin }];
  });
  return [...ofValues, ...notShown].map((reviewed) => rowOf(reviewed, remarks));
}

/** What the checks found in one report of a version. */
export type ReportReview = Readonly<{ report: SubmittedReport; findings: readonly ReportFinding[] }>;

/** The reports of a version, each held against the clause it is handed in for and the day on which it came. */
export const reviewReports = (
  reports: readonly SubmittedReport[],
  requirements: readonly Requirement[],
  asOf: PlainDate,
): readonly ReportReview[] =>
  reports.map((report) => {
    const clause = requirements.find(({ id }) => id === report.clause);
    const expected = { method: clause?.method ?? null, edition: clause?.edition.year ?? null, asOf };
    return { report, findings: reportFindings(report, expected) };
  });
