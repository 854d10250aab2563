/** Names of the cells that formulas everywhere use. Each names one cell of the sheet “Inputs”. */
export const names = {
  money: "Money_kind",
  rateGivenAs: "Rate_given_as",
  realGiven: "Real_rate_given",
  nominalGiven: "Nominal_rate_given",
  inflation: "Inflation_rate",
  realRate: "Real_rate",
  discountRate: "Discount_rate",
  studyYears: "Study_years",
  serviceStart: "Service_start",
  timing: "Timing_kind",
  squareFeet: "Area_sq_ft",
  squareMetres: "Area_sq_m",
  hours: "Hours_per_year",
} as const;

export type CellName = (typeof names)[keyof typeof names];

/** The name of the cell of a comparison rate, counted from 1. */
export const comparisonRateName = (index: number): string => `Comparison_rate_${index + 1}`;
