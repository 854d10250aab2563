import type { Accreditation, Edition, MethodId, ReportDate, TestedBuild } from "#lib/claim";
import type { PlainDate } from "#lib/quantity";

/** A laboratory report as the reviewer reads it off the paper. Text is kept as printed. */
export type LaboratoryReport = Readonly<{
  laboratory: string;
  accreditation: Accreditation;
  accreditationNumber: string;
  build: TestedBuild;
  date: ReportDate | null;
  method: MethodId | null;
  edition: Edition;
  /** How the report names the specimen, and how the bid or the delivery names it. */
  specimen: string;
  expectedSpecimen: string;
  /** Number of pages the report says it has, and those that are there. */
  pagesStated: number | null;
  pagesPresent: readonly number[];
  /** Averages that the report prints, with the readings behind them, as printed. */
  averages: readonly PrintedAverage[];
}>;

export type PrintedAverage = Readonly<{ label: string; readings: readonly string[]; average: string }>;

/** What the report is held against. */
export type Expected = Readonly<{ method: MethodId | null; edition: number | null; asOf: PlainDate }>;

/** What a check found: it needs an answer, or it is worth knowing. */
export type ReportFinding = Readonly<{ check: string; severity: "needs an answer" | "note"; sentence: string }>;

/** One check of a report. */
export type ReportCheck = Readonly<{
  id: string;
  title: string;
  find: (report: LaboratoryReport, expected: Expected) => readonly Omit<ReportFinding, "check">[];
}>;
