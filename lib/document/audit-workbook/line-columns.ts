import { columnName, quoted } from "./laid";

export const inputsSheet = "Inputs";

/** The columns of the price lines, in their order. */
const columns = [
  ["ref", "Line", 32],
  ["label", "What for", 32],
  ["costed", "Bid", 8],
  ["category", "Category", 22],
  ["givenBy", "Given by", 10],
  ["from", "Where from", 22],
  ["role", "Place in the bid", 18],
  ["kind", "How it is paid", 22],
  ["priced", "How it is priced", 18],
  ["price", "Price, or share of a sum", 14],
  ["per", "For each", 12],
  ["quantity", "Quantity", 13],
  ["unit", "Unit", 10],
  ["factor", "Units of the price in a unit of the quantity", 14],
  ["plain", "Amount, shares left out", 15],
  ["sum", "Sum that the share is taken of", 15],
  ["amount", "Amount at the base date", 15],
  ["paidThen", "Of it paid at the base date, shares left out", 15],
  ["growth", "Growth a year over inflation", 11],
  ["first", "First year", 8],
  ["last", "Last year", 8],
  ["every", "Every so many years", 9],
  ["except", "Years left out", 12],
  ["lives", "Lives of the other part", 9],
  ["life", "Life, years", 8],
  ["lifeGivenBy", "Life given by", 10],
  ["replaced", "Share that a renewal replaces", 11],
  ["saving", "Saved at a renewal", 11],
  ["residual", "Value left at the end", 14],
  ["statedResidual", "Value left at the end, as stated", 14],
  ["removalPriced", "Removal: how it is priced", 18],
  ["removalPrice", "Removal: price or share", 14],
  ["removalPer", "Removal: for each", 12],
  ["removalQuantity", "Removal: quantity", 13],
  ["removalUnit", "Removal: unit", 10],
  ["removalFactor", "Removal: units of the price in a unit of the quantity", 14],
  ["removalSum", "Removal: sum that the share is taken of", 15],
  ["removalAmount", "Removal: amount at the base date", 15],
  ["removalGivenBy", "Removal given by", 10],
  ["removalAtEnd", "Removal at the end of the study", 18],
  ["levelled", "Counts in the levelled cost (1 or 0)", 10],
  ["inBid", "Stands in the bid as handed in (1 or 0)", 10],
  ["asEntered", "As entered", 34],
  ["document", "Document", 18],
  ["page", "Page", 8],
  ["note", "Note", 60],
] as const;

export type LineColumn = (typeof columns)[number][0];

export const lineHeadings = columns.map(([, heading]) => heading);
export const lineWidths = columns.map(([, , width]) => width);

const numbers = new Map(columns.map(([key], index) => [key, index + 1]));

/** The number of a column of the price lines. */
export const lineColumn = (key: LineColumn): number => numbers.get(key) ?? 0;

/** A cell of a line as other sheets and cells refer to it: "Inputs!$Q12". */
export const lineCell = (key: LineColumn, row: number): string =>
  `${quoted(inputsSheet)}!$${columnName(lineColumn(key))}$${row}`;

/** A cell of a line within its own sheet: "$Q12". */
export const ownCell = (key: LineColumn, row: number): string => `$${columnName(lineColumn(key))}${row}`;

/** Words that formulas compare with: what stands in the cells is the same text. */
export const words = {
  bid: "Bid",
  owner: "Owner",
  yes: "yes",
  usedShare: "share of the life that is used up",
  full: "in full",
  none: "none",
  straightLine: "straight line",
  stated: "as stated",
} as const;
