import { columnName, quoted } from "./laid";

export const flowsSheet = "Yearly flows";
export const livesSheet = "Lives";
export const discountingSheet = "Discounting";

/** The column of the base date on every sheet that has years, so that a year stands in one column everywhere. */
export const firstYearColumn = 11;

/** The row with the numbers of the years on every such sheet. */
export const yearRow = 4;

export const yearColumn = (year: number): string => columnName(firstYearColumn + year);

/** All years of one row: "$J12:$AD12". */
export const yearsOf = (row: number, studyYears: number): string =>
  `$${yearColumn(0)}$${row}:$${yearColumn(studyYears)}$${row}`;

/** The rows of the factors on the sheet “Discounting”. */
export const factorRows = {
  levelSingle: 5,
  levelYearly: 6,
  discountSingle: 7,
  discountYearly: 8,
  firstComparison: 9,
} as const;

/** One cell of a factor in the column of a year: "Discounting!K$5". */
export const factorCell = (row: number, column: string): string => `${quoted(discountingSheet)}!${column}$${row}`;
