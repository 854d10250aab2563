import {
  type RegisterItem,
  type ReportReview,
  type ReviewAction,
  type ReviewRow,
  reviewReports,
  reviewVersion,
  startingContract,
  suggestedAction,
} from "#lib/submittal";
import { awardedBid } from "./awarded-bid";
import type { Project } from "./model";
import { reviewedRequirements } from "./reviewed-requirements";

/** What one version of a submittal comes to. */
export type SubmittalReview = Readonly<{
  rows: readonly ReviewRow[];
  reports: readonly ReportReview[];
  suggested: ReviewAction;
}>;

/** The review of each version of a line of the register against the specification and the bid that was taken. */
export function submittalReviews(project: Project, { clauses, versions }: RegisterItem): readonly SubmittalReview[] {
  const { contract = startingContract } = project;
  const requirements = reviewedRequirements(project.requirements);
  const asked = clauses.flatMap((id) => requirements.find((requirement) => requirement.id === id) ?? []);
  const bid = awardedBid(project)?.bid.claims ?? [];
  return versions.map((version) => {
    const rows = reviewVersion(version, { asked, requirements, bid, sameWithin: contract.sameWithin.value });
    const reports = reviewReports(version.reports, requirements, version.received);
    const hasOpen = reports.some(({ findings }) => findings.some(({ severity }) => severity === "needs an answer"));
    const byValues = suggestedAction(rows.map(({ review }) => review));
    const suggested =
      hasOpen && ["no-exceptions-taken", "make-corrections-noted"].includes(byValues)
        ? "revise-and-resubmit"
        : byValues;
    return { rows, reports, suggested };
  });
}
