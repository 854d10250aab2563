import { oldestUsualReport, usualReportAge } from "#lib/claim";
import type { ReportCheck } from "./model";

export const dateOfReport: ReportCheck = {
  id: "date-of-report",
  title: "Date",
  find: ({ date }, { asOf }) => {
    if (date === null) return [{ severity: "needs an answer", sentence: "The report has no date." }];
    if (date.earliest > asOf)
      return [{ severity: "needs an answer", sentence: `The report is dated ${date.text}, which is still to come.` }];
    if (date.latest < oldestUsualReport(asOf))
      return [
        { severity: "note", sentence: `The report is dated ${date.text} and is older than ${usualReportAge.inWords}.` },
      ];
    return [];
  },
};
