import type { CostFlow } from "../model";
import { type Discounting, flowPresentValue } from "../present-value";

/** Present values, in cents, of what an alternative costs by how life-cycle measures group it. */
export type GroupedCost = Readonly<{
  /** First costs, renewals, removal, less what is left: what is tied up in the field. */
  investment: number;
  /** What is paid to keep it in use. */
  operation: number;
}>;

/** A yearly addition of the owner's is for use, a single one for the build. */
const isInvestment = ({ category, recurrence }: CostFlow): boolean =>
  category === "owners-addition"
    ? recurrence === "single"
    : category !== "operation-and-maintenance" && category !== "testing";

/**
 * Groups flows into investment and operation.
 * @source 10 CFR 436.16(a): investment, operation and maintenance, replacement, salvage; removal goes with replacement
 */
export function groupedCost(flows: readonly CostFlow[], discounting: Discounting): GroupedCost {
  let [investment, operation] = [0, 0];
  for (const flow of flows) {
    const worth = flowPresentValue(flow, discounting);
    if (isInvestment(flow)) investment += worth;
    else operation += worth;
  }
  return { investment, operation };
}

/**
 * Savings for each unit of money invested more than in the base alternative. Null where nothing more is invested: there
 * is then nothing to divide by.
 * @source NIST Handbook 135, from memory
 */
export const savingsToInvestment = (savings: number, extraInvestment: number): number | null =>
  extraInvestment > 0 ? savings / extraInvestment : null;

/**
 * The yearly rate at which the extra investment grows where its savings earn the rate of the study.
 * @returns null where there is no ratio above zero to take it from
 * @source derived: (1 + rate) × ratio^(1 ÷ years) − 1; NIST Handbook 135, from memory
 */
export const adjustedRateOfReturn = (ratio: number | null, rate: number, years: number): number | null =>
  ratio !== null && ratio > 0 ? (1 + rate) * ratio ** (1 / years) - 1 : null;
