import type { ClaimField } from "#lib/claim";

/** The columns of the ledger, in the order of the Tab key. Words and note stand in a second line. */
export const ledgerColumns = [
  { field: "property", label: "Property" },
  { field: "figure", label: "Figure" },
  { field: "method", label: "Test method" },
  { field: "condition", label: "Condition" },
  { field: "evidence", label: "Evidence" },
  { field: "document", label: "Document" },
  { field: "page", label: "Page" },
] as const satisfies readonly Readonly<{ field: ClaimField; label: string }>[];

export const lastColumn = "page";

export type ClaimPath = `claims.${number}.${ClaimField}`;
