import type { CostPart } from "#lib/cost";

/** Which part of a price line a present value is. */
export const partWords: Readonly<Record<CostPart, string>> = {
  price: "Price",
  "first-cost": "At the base date",
  renewal: "Renewals",
  "removal-at-renewal": "Removal at renewals",
  "removal-at-study-end": "Removal at the end of the study",
  residual: "Residual value, a credit",
};
