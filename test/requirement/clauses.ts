import { properties } from "#lib/claim";
import { type CriterionText, criteriaSchema } from "#lib/criteria";
import { claimedMeasures, derivedMeasures, evidenceLevels, measures } from "#lib/evaluation";
import { type ClausesText, clausesSchema, type Requirement, requirementsOf } from "#lib/requirement";

/** The measures as the pages hand them in. */
export const subjects = [...derivedMeasures, ...claimedMeasures];

export const criterionText = (id: string, measure: string, gate: CriterionText["gate"]): CriterionText => ({
  id,
  measure,
  label: labelOf(measure),
  reason: "It matters to the players.",
  gate,
  valueFunction:
    gate.kind === "none" ? { kind: "more-is-better", worst: "1 lb/ft²", best: "9 lb/ft²" } : { kind: "none" },
  weight: gate.kind === "none" ? "10" : "0",
  evidence: { least: "accredited-laboratory", shortfall: "ask-first" },
});

const labelOf = (measure: string) =>
  properties.find(({ id }) => id === measure.split(".")[0])?.label ??
  measures.find(({ id }) => id === measure)?.label ??
  measure;

export const criteriaOf = (texts: readonly CriterionText[]) => criteriaSchema(measures, evidenceLevels).parse(texts);

/** Requirements from text, as a project holds them. */
export const requirementsFrom = (
  criteria: readonly CriterionText[],
  clauses: ClausesText = [],
): readonly Requirement[] => requirementsOf(criteriaOf(criteria), clausesSchema(subjects).parse(clauses));

/** An own clause on a measure with everything said, so that a test can leave one thing out. */
export const wholeClause = (id: string, measure: string, limit: ClausesText[number]["limit"]): ClausesText[number] => ({
  id,
  label: labelOf(measure),
  reason: "It matters to the players.",
  measure,
  limit,
  edition: "current edition",
  condition: "new",
  holdsAt: "each-point",
  acceptance: "Tested on the finished field by a laboratory that the Owner engages.",
  remedy: "Repair and test again within 20 days.",
  limitSource: "common practice",
  submittals: ["test-report"],
});
