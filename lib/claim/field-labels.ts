import type { ClaimField } from "./model";

/** What each field of a claim is called in a table: ledger, preview of pasted rows, bid form. */
export const claimFieldLabels: Readonly<Record<ClaimField, string>> = {
  property: "Property",
  figure: "Figure",
  method: "Test method",
  condition: "Condition",
  evidence: "Evidence",
  document: "Document",
  page: "Page",
  words: "Words",
  note: "Note",
  edition: "Edition of the method",
  date: "Date of the report",
  laboratory: "Laboratory",
  accreditation: "Accreditation",
  build: "Tested build",
  testField: "Field tested",
  fieldCount: "Fields behind the figure",
  spread: "Standard deviation",
};
