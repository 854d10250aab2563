import type { SubmittalText } from "#lib/submittal";
import { type ClaimValues, filledClaim } from "./claim-values";

type VersionText = NonNullable<SubmittalText["versions"]>[number];
type ReportText = NonNullable<VersionText["reports"]>[number];

/** A laboratory report as forms edit it: every field is there. */
export type ReportValues = Required<ReportText>;

export type VersionValues = Required<Omit<VersionText, "values" | "reports">> & {
  values: ClaimValues[];
  reports: ReportValues[];
};

/** A line of the register as forms edit it: every field is there. */
export type SubmittalValues = Required<Omit<SubmittalText, "versions">> & { versions: VersionValues[] };

export const filledReport = (report: ReportText): ReportValues => ({
  document: "",
  page: "",
  clause: "",
  laboratory: "",
  accreditation: "not-stated",
  accreditationNumber: "",
  build: "not-stated",
  date: "",
  method: "",
  edition: "",
  specimen: "",
  expectedSpecimen: "",
  pagesStated: "",
  pagesPresent: "",
  averages: [],
  ...report,
});

export const filledVersion = ({ values = [], reports = [], ...version }: VersionText): VersionValues => ({
  reviewer: "",
  action: "",
  answered: "",
  remarks: {},
  ...version,
  values: values.map(filledClaim),
  reports: reports.map(filledReport),
});

export const filledSubmittal = ({ versions = [], ...submittal }: SubmittalText): SubmittalValues => ({
  from: "",
  clauses: [],
  due: "",
  ...submittal,
  versions: versions.map(filledVersion),
});
