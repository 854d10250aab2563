import type { BidCost } from "#lib/cost";
import type { Criterion } from "#lib/criteria";
import { type Figure, intervalOfFigure } from "#lib/figure";
import type { BidEvaluation } from "../model";

/** The measures that are one and the same money, counted in different ways. */
const costFigures: Readonly<Record<string, (cost: BidCost) => Figure>> = {
  "present-value": ({ presentValue }) => presentValue,
  "price-at-base-date": ({ priceAtBaseDate }) => priceAtBaseDate,
  "equivalent-annual-cost": ({ equivalentAnnualCost }) => equivalentAnnualCost,
  "annual-cost-per-area": ({ perAreaYear }) => perAreaYear,
  "cost-per-hour": ({ perHour }) => perHour,
};

/** Whether a criterion judges what a bid costs, in whichever unit. */
export const isCostCriterion = ({ measure }: Criterion): boolean => Object.hasOwn(costFigures, measure.id);

/** Life-cycle cost of a bid in cents at the base date. `at-least`: items that have no figure yet would come on top. */
export type LevelledCost = Readonly<{ kind: "known" | "at-least"; cents: number } | { kind: "not-known" }>;

/** The levelled present value of a bid. */
export function levelledCost({ cost: { presentValue } }: BidEvaluation): LevelledCost {
  switch (presentValue.kind) {
    case "known":
      return { kind: "known", cents: presentValue.value };
    case "range":
    case "at-least":
      return { kind: "at-least", cents: presentValue.low };
    case "at-most":
    case "unknown":
      return { kind: "not-known" };
  }
}

/**
 * By how much the figure of a cost criterion moves with each cent of the price at the base date; null where there is no
 * figure, or the criterion is not about cost.
 * @source yearly figures are the present value times one factor, and money at the base date is not discounted
 */
export function figurePerCent({ cost }: BidEvaluation, { measure }: Criterion): number | null {
  if (measure.id === "price-at-base-date" || measure.id === "present-value") return 1;
  const figure = costFigures[measure.id]?.(cost);
  const [yearly, whole] = [figure && intervalOfFigure(figure)?.low, intervalOfFigure(cost.presentValue)?.low];
  return yearly === undefined || whole === undefined || !(whole > 0) ? null : yearly / whole;
}
