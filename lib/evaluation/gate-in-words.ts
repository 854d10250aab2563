import type { CriterionScore, GateRule } from "#lib/criteria";
import { explainShortfall, type Figure } from "#lib/figure";
import { type DimensionName, formatValue, measured, type UnitSystem } from "#lib/quantity";

const shown = (dimension: DimensionName, si: number, units: UnitSystem) =>
  formatValue(dimension, measured(dimension, si), units);

/** A gate with its limits in the reader's units: "below 165 g", "from 8 years", "8 to 10 in". */
export function gateInWords(gate: GateRule, dimension: DimensionName, units: UnitSystem): string {
  switch (gate.kind) {
    case "below":
      return `below ${shown(dimension, gate.limit.value, units)}`;
    case "at-most":
      return `at most ${shown(dimension, gate.limit.value, units)}`;
    case "at-least":
      return `at least ${shown(dimension, gate.limit.value, units)}`;
    case "within":
      return `from ${shown(dimension, gate.low.value, units)} to ${shown(dimension, gate.high.value, units)}`;
  }
}

/** A distance between two temperatures is no temperature: it has no freezing point. */
const differenceOf = (dimension: DimensionName): DimensionName =>
  dimension === "temperature" ? "temperatureDifference" : dimension;

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
    case "not-decided":
      return "The range lies across the limit.";
    case "not-shown":
    case "falls-short-on-evidence":
      return explainShortfall(gate.because);
    case "meets":
    case "falls-short": {
      if (gate.margin === 0) return "exactly at the limit";
      const distance = shown(differenceOf(criterion.measure.dimension), Math.abs(gate.margin), units);
      const sure = figure.kind === "known" ? "" : "at least ";
      return `${sure}${distance} ${sideOf(criterion.gate, gate.kind === "meets" ? "inside" : "outside")}`;
    }
  }
}
