import { isConditionStated, ofAge, type PropertyId } from "#lib/claim";
import { oncePer } from "#lib/once";
import type { Requirement } from "#lib/requirement";
import type { DerivedMeasureId } from "./measures";
import type { Requirements } from "./model";
import { projectRequirements } from "./project-requirements";

/** Properties whose stated figure is what the measure speaks of: the measure is worked out where a bid gives parts only. */
const statedAs: Readonly<Partial<Record<DerivedMeasureId, PropertyId>>> = {
  "impact-level-as-new": "g-max",
  "impact-level-worst-point": "g-max-highest-point",
  "infill-mass-per-area": "infill-total-areal-density",
  "stabilising-mass": "infill-total-mass",
  "infill-depth": "infill-depth",
  "free-pile": "free-pile-height",
  "shock-layer": "shock-layer-thickness",
};

const ofNew = new Set<string>(["impact-level-as-new", "impact-level-worst-point"] satisfies DerivedMeasureId[]);

function stated(requirement: Requirement): Requirement {
  const { subject, condition } = requirement;
  if (subject === null || subject.property !== undefined) return requirement;
  const property = statedAs[subject.id as DerivedMeasureId];
  if (property === undefined) return requirement;
  const isNew = ofNew.has(subject.id) && !isConditionStated(condition);
  return {
    ...requirement,
    subject: { ...subject, property },
    condition: isNew ? ofAge({ kind: "new" }) : condition,
  };
}

/** The requirements of a project as a reviewer holds papers and tests against them: each with the property it speaks of. */
export const reviewedRequirements: (requirements: Requirements) => readonly Requirement[] = oncePer((requirements) =>
  projectRequirements(requirements).map(stated),
);
