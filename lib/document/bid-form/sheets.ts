import { type ClaimField, claimFieldLabels, claimFields } from "#lib/claim";
import { fieldInWords } from "../field-in-words";
import { type PriceField, priceColumns } from "./price-columns";

/** A column of a sheet. Given columns are filled by the form and not read; entry columns are what the bidder fills. */
export type Column<Field extends string> = Readonly<{ heading: string; width: number }> &
  (Readonly<{ kind: "given" }> | Readonly<{ kind: "entry"; field: Field }>);

/** A table on a sheet: where its headings stand and how many rows the form offers below them. */
export type Table<Field extends string> = Readonly<{
  sheet: string;
  headingRow: number;
  columns: readonly Column<Field>[];
}>;

/** The note of a claim is the owner's own remark, so a bidder's form has no column for it. */
export type FormClaimField = Exclude<ClaimField, "note">;
const formClaimFields = claimFields.filter((field): field is FormClaimField => field !== "note");

/** Headings that say more than the name of their field; every other field is headed by its name. */
const claimHeadings: Readonly<Record<string, string>> = {
  ...{ method: "Test method", words: "In the bid's words" },
  ...{ testField: claimFieldLabels.testField, fieldCount: claimFieldLabels.fieldCount },
  spread: claimFieldLabels.spread,
};
const claimWidths: Readonly<Record<string, number>> = {
  property: 30,
  figure: 22,
  method: 26,
  evidence: 20,
  document: 24,
  page: 8,
  words: 40,
};

const given = (heading: string, width: number) => ({ kind: "given", heading, width }) as const;

const claimColumn = (field: FormClaimField): Column<FormClaimField> => ({
  kind: "entry",
  field,
  heading: claimHeadings[field] ?? fieldInWords(field),
  width: claimWidths[field] ?? 16,
});

export const claimsTable: Table<FormClaimField> = {
  sheet: "Claims",
  headingRow: 1,
  columns: formClaimFields.flatMap((field) =>
    field === "property"
      ? [given("Asked for", 12), claimColumn(field), given("What is asked, and how to write it", 48)]
      : [claimColumn(field)],
  ),
};

export type ComponentField = "material" | "arealDensity" | "bulkDensity" | "evidence" | "document" | "page" | "words";

export const infillTable: Table<ComponentField> = {
  sheet: "Infill",
  headingRow: 3,
  columns: [
    { kind: "entry", field: "material", heading: "Material", width: 34 },
    { kind: "entry", field: "arealDensity", heading: "Mass per area", width: 20 },
    { kind: "entry", field: "bulkDensity", heading: "Loose density, if known", width: 22 },
    { kind: "entry", field: "evidence", heading: "Evidence", width: 20 },
    { kind: "entry", field: "document", heading: "Document", width: 24 },
    { kind: "entry", field: "page", heading: "Page", width: 8 },
    { kind: "entry", field: "words", heading: "In the bid's words", width: 40 },
  ],
};

export const pricesTable: Table<PriceField> = {
  sheet: "Prices",
  headingRow: 4,
  columns: priceColumns.map(({ field, heading, width }) => ({ kind: "entry", field, heading, width })),
};

/** Cells that stand by themselves, the words beside them first. */
export const singleCells = {
  project: { sheet: "Instructions", label: "A2", labelText: "Project", entry: "B2" },
  owner: { sheet: "Instructions", label: "A3", labelText: "Owner", entry: "B3" },
  version: { sheet: "Instructions", label: "A4", labelText: "Form version", entry: "B4" },
  key: { sheet: "Instructions", label: "A5", labelText: "Project key", entry: "B5" },
  bidder: { sheet: "Instructions", label: "A7", labelText: "Bidder", entry: "B7" },
  system: { sheet: "Instructions", label: "A8", labelText: "Kind of surface", entry: "B8" },
  statedTotal: { sheet: "Prices", label: "A1", labelText: "Sum of the bid in figures", entry: "B1" },
  statedTotalInWords: { sheet: "Prices", label: "A2", labelText: "The same sum in words", entry: "B2" },
  placement: { sheet: "Infill", label: "A1", labelText: "How the materials lie", entry: "B1" },
} as const;

export const instructionsSheet = "Instructions";
export const listsSheet = "Lists";
/** The sheets that a filled form must have, in their order. */
export const formSheets: readonly string[] = [
  instructionsSheet,
  claimsTable.sheet,
  infillTable.sheet,
  pricesTable.sheet,
];
