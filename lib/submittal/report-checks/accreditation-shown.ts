import type { ReportCheck } from "./model";

export const accreditationShown: ReportCheck = {
  id: "accreditation-shown",
  title: "Accreditation",
  find: ({ laboratory, accreditation, accreditationNumber }) => {
    const findings: { severity: "needs an answer" | "note"; sentence: string }[] = [];
    if (laboratory === "")
      findings.push({ severity: "needs an answer", sentence: "The report does not name the laboratory." });
    if (accreditation === "not-accredited")
      findings.push({ severity: "needs an answer", sentence: "The laboratory is not accredited for the method." });
    if (accreditation === "not-stated")
      findings.push({
        severity: "needs an answer",
        sentence: "The report does not show an accreditation for the method.",
      });
    if (accreditation === "accredited" && accreditationNumber === "")
      findings.push({
        severity: "note",
        sentence: "The report gives no accreditation number, so nobody can look it up.",
      });
    return findings;
  },
};
