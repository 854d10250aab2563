import type { CostConventions } from "./model";
import { fisherNominalRate } from "./nominal-rate";

/** The rate that belongs to the money of the conventions: real for constant money, nominal for current money. */
export const discountRate = (conventions: CostConventions): number =>
  conventions.money === "current" && conventions.nominalRate !== null
    ? conventions.nominalRate.value
    : rateOfMoney(conventions.realRate.value, conventions);

/** A real rate as it discounts the money of the conventions: as it is, or with inflation by Fisher's identity. */
export const rateOfMoney = (realRate: number, { money, inflation }: CostConventions): number =>
  money === "constant" || inflation === null ? realRate : fisherNominalRate(realRate, inflation.value);
