import { type Claim, formatClaimed, formatCondition, isConditionStated, methodOf, propertyOf } from "#lib/claim";
import { type Figure, formatFigure, intervalOfFigure, type WorkingInput } from "#lib/figure";
import { oncePer } from "#lib/once";
import { type DimensionName, formatInterval, type Interval, type SiUnit } from "#lib/quantity";
import type { CheckedBid } from "./model";

/** A claim as an input of a working: as entered, how it was read, by which method and in which condition. */
export const claimInput = ({ id: bid }: Pick<CheckedBid, "id">, claim: Claim): WorkingInput => ({
  label: propertyOf(claim.property).label,
  text: claimText(claim),
  from: { kind: "claim", bid, claim: claim.id },
});

/** Kept, because several rules look at one claim. */
const claimText = oncePer((claim: Claim): string => {
  const method = claim.method === "not-stated" ? "" : `, ${methodOf(claim.method).designation}`;
  const condition = isConditionStated(claim.condition) ? `, ${formatCondition(claim.condition)}` : "";
  return `${valueText(claim)}${method}${condition}`;
});

function valueText({ property, value }: Claim): string {
  switch (value.kind) {
    case "quantity": {
      const [us, metric] = [
        formatClaimed(property, value.quantity, "us"),
        formatClaimed(property, value.quantity, "metric"),
      ];
      return `${value.quantity.asEntered} = ${us} = ${metric}`;
    }
    case "choice":
      return value.choice;
    case "words":
      return `“${value.words}”`;
  }
}

/** A derived figure as an input of a working, in both systems of units. */
export const figureInput = <D extends DimensionName>(label: string, figure: Figure<D>): WorkingInput => ({
  label,
  text:
    intervalOfFigure(figure) === null
      ? "not known"
      : `${formatFigure(figure, "us")} (${formatFigure(figure, "metric")})`,
  from: { kind: "figure", figure: label },
});

/** A fixed number as an input of a working. */
export const constantInput = (label: string, text: string): WorkingInput => ({
  label,
  text,
  from: { kind: "constant" },
});

/** An interval in US units with the metric ones in brackets. */
export const inBoth = <D extends DimensionName>(dimension: D, interval: Interval<SiUnit<D>>): string =>
  `${formatInterval(dimension, interval, "us")} (${formatInterval(dimension, interval, "metric")})`;
