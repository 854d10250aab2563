import { propertyGroups, propertyOf } from "#lib/claim";
import { type Measure, ratingMeasure, startingLevels } from "#lib/criteria";
import { claimedMeasures, derivedMeasures, measures, type RequirementsText } from "#lib/evaluation";
import type { Choice } from "../../../../_components/form/choice-field";

export type CriterionText = RequirementsText["criteria"][number];

const byGroup = propertyGroups.flatMap(({ id, label }): readonly Choice[] =>
  claimedMeasures
    .filter(({ property }) => propertyOf(property).group === id)
    .map((measure) => ({ value: measure.id, label: measure.label, group: `Claimed: ${label}` })),
);

/** All that a criterion can judge: what is worked out from the bids first, then their claims by group. */
export const measureChoices: readonly Choice[] = [
  ...derivedMeasures.map(({ id, label }) => ({ value: id, label, group: "Worked out from the bid" })),
  { value: ratingMeasure.id, label: ratingMeasure.label, group: "Judged by people" },
  ...byGroup,
];

export const measureOf = (id: string): Measure | null => measures.find((measure) => measure.id === id) ?? null;

/** A criterion before the owner has set anything: named and explained as the measure is, so far without gate or score. */
export function startingCriterion(id: string, measure: string): CriterionText {
  const claimed = claimedMeasures.find((candidate) => candidate.id === measure);
  const property = claimed && propertyOf(claimed.property);
  const isRated = measure === ratingMeasure.id;
  return {
    id,
    measure,
    label: property?.label ?? (isRated ? "" : (measureOf(measure)?.label ?? "")),
    reason: property?.why ?? "",
    gate: { kind: "none" },
    valueFunction: isRated ? { kind: "rating", levels: [...startingLevels] } : { kind: "none" },
    weight: "0",
    source: "",
    askedOf: { kind: "every-bid" },
    heading: "",
    evidence: { least: "stated", shortfall: "keep-open", discount: "" },
  };
}
