import { type PriceLineKind, priceFields } from "#lib/cost";

/** The texts of a price line as a form asks for them: an amount is one price, with a quantity where it is per unit. */
export type PriceField =
  | "label"
  | "kind"
  | "category"
  | "quantity"
  | "price"
  | "year"
  | "every"
  | "from"
  | "last"
  | "except"
  | "life"
  | "renewalSaving"
  | "removal"
  | "escalation"
  | "document"
  | "page";

type PriceColumn = Readonly<{
  field: PriceField;
  heading: string;
  width: number;
  hint: string;
  /** The fields of the cost schema that the column fills; a line takes those that its kind has. */
  fills: readonly string[];
}>;

/** The columns of the sheet of prices, in order. */
export const priceColumns: readonly PriceColumn[] = [
  { field: "label", heading: "What it is for", width: 34, hint: "For instance: carpet and infill.", fills: ["label"] },
  { field: "kind", heading: "How it is paid", width: 30, hint: "Choose one of the list.", fills: ["kind"] },
  {
    field: "category",
    heading: "Counted under",
    width: 24,
    hint: "Choose one of the list. A part with a life needs none.",
    fills: ["category"],
  },
  {
    field: "quantity",
    heading: "Quantity, if priced by unit",
    width: 18,
    hint: "With its unit, for instance 4,000 lb. Leave it empty for a lump sum or a price per area.",
    fills: ["amount"],
  },
  {
    field: "price",
    heading: "Price",
    width: 18,
    hint: "A lump sum ($388,000), a price per area ($4.85/ft²), or the price of one unit of the quantity ($0.38/lb).",
    fills: ["amount"],
  },
  { field: "year", heading: "In year", width: 10, hint: "For one payment in a later year.", fills: ["year"] },
  { field: "every", heading: "Every", width: 12, hint: "For instance 2 years.", fills: ["every"] },
  { field: "from", heading: "First year", width: 10, hint: "Empty: from the start.", fills: ["from"] },
  { field: "last", heading: "Last year", width: 10, hint: "Empty: to the end.", fills: ["to", "until"] },
  { field: "except", heading: "Years left out", width: 14, hint: "For instance 10, 20.", fills: ["except"] },
  {
    field: "life",
    heading: "Life",
    width: 12,
    hint: "Of a part that is renewed, for instance 10 years.",
    fills: ["life"],
  },
  {
    field: "renewalSaving",
    heading: "Saved at renewal",
    width: 14,
    hint: "For instance 30 % where infill is used again.",
    fills: ["renewalSaving"],
  },
  {
    field: "removal",
    heading: "Removal and disposal",
    width: 20,
    hint: "Of one generation of a part with a life: a lump sum or a price per area.",
    fills: ["removal"],
  },
  {
    field: "escalation",
    heading: "Growth a year",
    width: 14,
    hint: "Over general inflation, for instance 2 %; empty: none.",
    fills: ["escalation"],
  },
  { field: "document", heading: "Document", width: 24, hint: "", fills: ["document"] },
  { field: "page", heading: "Page", width: 8, hint: "", fills: ["page"] },
];

/** Whether a line of this kind takes what stands in a column. */
export const takes = (kind: PriceLineKind, field: PriceField): boolean =>
  priceColumns.some(
    (column) => column.field === field && column.fills.some((name) => priceFields[kind].includes(name)),
  );
