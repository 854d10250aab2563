import { reviewCaution } from "./caution";
import type { RegisterItem } from "./model";
import { reviewActions } from "./review-actions";
import type { ReportReview, ReviewRow } from "./version-review";

/** The answer to one version of a submittal as plain text: action, comments, findings in the reports, what follows. */
export function reviewLetter(
  { item, versions }: Pick<RegisterItem, "item" | "versions">,
  index: number,
  { rows, reports }: Readonly<{ rows: readonly ReviewRow[]; reports: readonly ReportReview[] }>,
): string {
  const version = versions[index];
  if (version === undefined) throw new RangeError(`no version ${index + 1}`);
  const { received, action, answered, reviewer } = version;
  const findings = reports.flatMap(({ report, findings: found }) =>
    found.map(({ sentence }) => (report.document === "" ? sentence : `${report.document}: ${sentence}`)),
  );
  const numbered = (sentences: readonly string[]) => sentences.map((sentence, place) => `${place + 1}. ${sentence}`);
  const part = (head: string, sentences: readonly string[]) =>
    sentences.length === 0 ? [] : ["", head, ...numbered(sentences)];
  return [
    `${item}, version ${index + 1}, received ${received}`,
    action === null
      ? "In review, not answered yet"
      : `${reviewActions[action].label}${answered === null ? "" : `, ${answered}`}. ${reviewActions[action].next}`,
    ...(reviewer === "" ? [] : [`Reviewed by ${reviewer}`]),
    ...part(
      "Comments",
      rows.map(({ comment }) => comment).filter((comment) => comment !== ""),
    ),
    ...part("Reports", findings),
    "",
    reviewCaution,
    "",
  ].join("\n");
}
