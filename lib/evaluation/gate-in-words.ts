import { type AskedOf, type CriterionScore, deviationsCounted, type GateRule, type Measure } from "#lib/criteria";
import { explainShortfall, type Figure, inSentence } from "#lib/figure";
import { type DimensionName, formatValue, measured, type UnitSystem, withCurrencySign } from "#lib/quantity";

type Judged = Pick<Measure, "dimension" | "currency">;

/** A figure of what is judged, in the reader's units and the project's currency. */
export const judgedInWords = ({ dimension, currency = "USD" }: Judged, si: number, units: UnitSystem): string =>
  withCurrencySign(formatValue(dimension, measured(dimension, si), units), currency);

/** A gate with its limits in the reader's units: "below 165 g", "from 8 years", "8 to 10 in". */
export function gateInWords(gate: GateRule, measure: Judged, units: UnitSystem): string {
  switch (gate.kind) {
    case "below":
      return `below ${judgedInWords(measure, gate.limit.value, units)}`;
    case "at-most":
      return `at most ${judgedInWords(measure, gate.limit.value, units)}`;
    case "at-least":
      return `at least ${judgedInWords(measure, gate.limit.value, units)}`;
    case "within":
      return `from ${judgedInWords(measure, gate.low.value, units)} to ${judgedInWords(measure, gate.high.value, units)}`;
  }
}

/** Of which bids something is asked: "Asked of bids with infill mass per area below 6 lb/ft²."; empty where of all. */
export const askedOfInWords = (askedOf: AskedOf, units: UnitSystem): string =>
  askedOf.kind === "every-bid"
    ? ""
    : `Asked only of bids with ${inSentence(askedOf.measure.label)} ${gateInWords(askedOf.is, askedOf.measure, units)}.`;

/** A distance between two temperatures is no temperature: it has no freezing point. */
const differenceOf = (dimension: DimensionName): DimensionName =>
  dimension === "temperature" ? "temperatureDifference" : dimension;

/** A distance on the scale of a measure: "6 g". */
const distanceInWords = ({ dimension, currency }: Measure, si: number, units: UnitSystem): string =>
  judgedInWords({ dimension: differenceOf(dimension), ...(currency === undefined ? {} : { currency }) }, si, units);

/** How single results scatter about a figure that counts: "standard deviation 6 g"; empty where the bid does not say. */
export const scatterInWords = ({ spread, criterion }: CriterionScore, units: UnitSystem): string =>
  spread?.kind === "normal" ? `standard deviation ${distanceInWords(criterion.measure, spread.deviation, units)}` : "";

/** On which side of its limit a figure lies. */
function sideOf(gate: GateRule, side: "inside" | "outside"): string {
  switch (gate.kind) {
    case "below":
    case "at-most":
      return side === "inside" ? "below the limit" : "above the limit";
    case "at-least":
      return side === "inside" ? "above the limit" : "below the limit";
    case "within":
      return side === "inside" ? "inside the nearer limit" : "outside the nearer limit";
  }
}

/** Whether a single result could well lie on the other side of the limit. */
const isWithinScatter = ({ spread }: CriterionScore, margin: number): boolean =>
  spread?.kind === "normal" && Math.abs(margin) < deviationsCounted * spread.deviation;

/**
 * How a bid stands at a gate, in words: "47 g below the limit", "at least 2 years above the limit", or why nothing can
 * be said. `figure` is what the bid shows; a range gives the distance that is sure.
 */
export function marginInWords(score: CriterionScore, figure: Figure, units: UnitSystem): string {
  const { criterion, gate } = score;
  if (criterion.gate.kind === "none") return "";
  switch (gate.kind) {
    case "no-gate":
      return "";
    case "not-asked":
      return criterion.askedOf.kind === "every-bid"
        ? ""
        : `Not asked of this bid. ${askedOfInWords(criterion.askedOf, units)}`;
    case "not-decided":
      return "The range lies across the limit.";
    case "not-shown":
    case "falls-short-on-evidence":
      return explainShortfall(gate.because);
    case "meets":
    case "falls-short": {
      if (gate.margin === 0) return "exactly at the limit";
      const distance = distanceInWords(criterion.measure, Math.abs(gate.margin), units);
      const sure = figure.kind === "known" ? "" : "at least ";
      const stands = `${sure}${distance} ${sideOf(criterion.gate, gate.kind === "meets" ? "inside" : "outside")}`;
      return isWithinScatter(score, gate.margin)
        ? `${stands}, which is within the scatter of single results (${scatterInWords(score, units)})`
        : stands;
    }
  }
}
