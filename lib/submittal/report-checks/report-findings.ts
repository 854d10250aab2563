import { accreditationShown } from "./accreditation-shown";
import { averageArithmetic } from "./average-arithmetic";
import { buildTested } from "./build-tested";
import { dateOfReport } from "./date-of-report";
import { methodAndEdition } from "./method-and-edition";
import { missingPages } from "./missing-pages";
import type { Expected, LaboratoryReport, ReportCheck, ReportFinding } from "./model";
import { sampleIdentity } from "./sample-identity";

/** Every check of a report. A new check is a file and a line here. */
export const reportChecks: readonly ReportCheck[] = [
  buildTested,
  sampleIdentity,
  accreditationShown,
  methodAndEdition,
  dateOfReport,
  missingPages,
  averageArithmetic,
];

/** What the checks find in a report, in their order. Nothing found means that nothing was amiss in what was read off. */
export const reportFindings = (report: LaboratoryReport, expected: Expected): readonly ReportFinding[] =>
  reportChecks.flatMap(({ id: check, find }) => find(report, expected).map((finding) => ({ check, ...finding })));
