import { type PriceLineKind, priceFields, priceRoles, type RoleKind, type ShareOf, shareOfWords } from "#lib/cost";

/** The texts of a price line as a form asks for them: an amount is one price, with a quantity where it is per unit. */
export type PriceField =
  | "label"
  | "role"
  | "expires"
  | "kind"
  | "category"
  | "quantity"
  | "price"
  | "shareOf"
  | "extension"
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

type Labelled<K extends string> = Readonly<Partial<Record<K, Readonly<{ label: string }>>>>;

const { "owner-furnished": _owners, ...askedRoles } = priceRoles;

/** The places that a bidder can give a price; what the owner buys is no price of a bid. */
export const biddersRoles: Labelled<RoleKind> = askedRoles;

/** The sums of which a bidder can give a share; what the owner adds to a bid is no matter of the bidder's. */
export const biddersSums: Labelled<ShareOf> = {
  "base-bid": { label: shareOfWords["base-bid"] },
  "accepted-bid": { label: shareOfWords["accepted-bid"] },
};

/** The columns of the sheet of prices, in order. */
export const priceColumns: readonly PriceColumn[] = [
  { field: "label", heading: "What it is for", width: 34, hint: "For instance: carpet and infill.", fills: ["label"] },
  {
    field: "role",
    heading: "Place in the bid",
    width: 26,
    hint: "Choose one of the list; empty: base bid. Alternates and options count once the owner takes them, a unit price with the quantity that the owner accepts.",
    fills: ["role"],
  },
  {
    field: "expires",
    heading: "Open until",
    width: 13,
    hint: "The last day of an option, as year-month-day: 2027-12-31.",
    fills: ["role"],
  },
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
    width: 28,
    hint: "With its unit, for instance 4,000 lb. Leave it empty for a lump sum or a price per area.",
    fills: ["amount"],
  },
  {
    field: "price",
    heading: "Price",
    width: 18,
    hint: "A lump sum ($388,000), a price per area ($4.85/ft²), the price of one unit of the quantity ($0.38/lb), or a share of a sum (1.2 %), as bonds and taxes are often given.",
    fills: ["amount"],
  },
  {
    field: "shareOf",
    heading: "Share of which sum",
    width: 22,
    hint: "Choose one of the list where the price is a share.",
    fills: ["amount"],
  },
  {
    field: "extension",
    heading: "Extension",
    width: 16,
    hint: "What quantity × unit price, or area × price per area, comes to in your own figures. The unit price goes before it.",
    fills: ["statedExtension"],
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
    width: 18,
    hint: "For instance 30 % where infill is used again.",
    fills: ["renewalSaving"],
  },
  {
    field: "removal",
    heading: "Removal and disposal",
    width: 22,
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
