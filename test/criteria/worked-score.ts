import {
  type BidFigures,
  type Criterion,
  type CriterionText,
  criteriaSchema,
  type EvidenceLevel,
  type Measure,
  ratingMeasure,
} from "#lib/criteria";
import { type Figure, known, type Working } from "#lib/figure";
import { type DimensionName, measured } from "#lib/quantity";

/** Criteria and bids of an invented comparison, as text through the real schema. */

export const working: Working = { formula: "as stated", inputs: [], assumptions: [], source: "invented" };
export const stated: EvidenceLevel = { level: "stated", label: "the bidder's statement", rank: 0 };
export const laboratory: EvidenceLevel = { level: "laboratory", label: "an accredited laboratory's report", rank: 2 };
export const levels = [stated, laboratory];

const measure = (id: string, label: string, dimension: DimensionName): Measure => ({ id, label, dimension, note: "" });
export const measures = [
  measure("impact", "G-max", "impactLevel"),
  measure("fall", "critical fall height", "distance"),
  measure("heat", "surface temperature rise", "temperatureDifference"),
  measure("cost", "equivalent annual cost per area", "moneyPerArea"),
  measure("warranty", "warranty period", "time"),
  measure("infill", "infill mass per area", "arealDensity"),
  ratingMeasure,
];

/** A criterion as text: scores infill mass from 2 to 8 lb/ft² unless told otherwise. */
export const criterionText = (differing: Partial<CriterionText> = {}): CriterionText => ({
  id: "infill",
  measure: "infill",
  label: "Infill mass",
  reason: "Heavier infill holds the carpet down.",
  gate: { kind: "none" },
  valueFunction: { kind: "more-is-better", worst: "2 lb/ft²", best: "8 lb/ft²" },
  weight: "10",
  evidence: { least: "stated", shortfall: "keep-open" },
  ...differing,
});

export const criteriaOf = (texts: readonly CriterionText[]): readonly Criterion[] =>
  criteriaSchema(measures, levels).parse(texts);

export const workedTexts: readonly CriterionText[] = [
  criterionText({
    id: "impact",
    measure: "impact",
    label: "Impact level",
    valueFunction: {
      kind: "target-window",
      nothingBelow: "80 g",
      fullFrom: "90 g",
      fullTo: "115 g",
      nothingAbove: "165 g",
    },
    weight: "100",
  }),
  criterionText({
    id: "fall",
    measure: "fall",
    label: "Fall height",
    valueFunction: { kind: "more-is-better", worst: "0.9 m", best: "1.5 m" },
    weight: "80",
  }),
  criterionText({
    id: "heat",
    measure: "heat",
    label: "Surface temperature",
    valueFunction: { kind: "less-is-better", worst: "40 K", best: "10 K" },
    weight: "60",
  }),
  criterionText({
    id: "cost",
    measure: "cost",
    label: "Yearly cost",
    valueFunction: { kind: "less-is-better", worst: "$1.75/ft²", best: "$0.75/ft²" },
    weight: "90",
  }),
  criterionText({
    id: "warranty",
    measure: "warranty",
    label: "Warranty period",
    valueFunction: {
      kind: "piecewise",
      knots: [
        { at: "6 years", value: "0" },
        { at: "8 years", value: "0.5" },
        { at: "10 years", value: "0.8" },
        { at: "12 years", value: "100 %" },
      ],
    },
    weight: "40",
  }),
];

const shownBy = (figure: Figure) => ({ figure, evidence: laboratory });

/** A bid's five figures in the order of the criteria: g, m, K, $/ft², years. */
export const bidOf = (bid: string, figures: readonly [number, number, number, number, number]): BidFigures => {
  const [impact, fall, heat, cost, warranty] = figures;
  return {
    bid,
    shown: {
      impact: shownBy(known("impactLevel", measured("impactLevel", impact, "g"), working)),
      fall: shownBy(known("distance", measured("distance", fall, "m"), working)),
      heat: shownBy(known("temperatureDifference", measured("temperatureDifference", heat, "K"), working)),
      cost: shownBy(known("moneyPerArea", measured("moneyPerArea", cost, "$/ft²"), working)),
      warranty: shownBy(known("time", measured("time", warranty, "year"), working)),
    },
  };
};

export const workedBids: readonly BidFigures[] = [
  bidOf("a", [128, 1.1, 32, 0.9701, 8]),
  bidOf("b", [104, 1.4, 30, 1.0542, 10]),
  bidOf("c", [112, 1.3, 18, 1.2318, 8]),
];
