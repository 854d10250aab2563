import type { ClaimField } from "#lib/claim";

/** The fields of a claim that an answer usually changes, as sentences call them. Everything else is entered in the ledger. */
export const amendable = [
  "figure",
  "method",
  "condition",
  "evidence",
  "document",
  "page",
] as const satisfies ClaimField[];

export const fieldLabels: Readonly<Record<string, string>> = {
  figure: "Figure",
  method: "Test method",
  condition: "Condition",
  evidence: "Evidence",
  document: "Document",
  page: "Page",
};
