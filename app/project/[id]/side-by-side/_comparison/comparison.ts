import { propertyGroups } from "#lib/claim";
import type { Evaluation, Project } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { claimedRows } from "./claimed-rows";
import { costRows, impactRows, infillRows } from "./derived-rows";
import { evaluationRows } from "./evaluation-rows";
import type { Group } from "./model";

/** Everything that is claimed and worked out, group by group, one cell for each bid. A group without rows is left out. */
export function comparison(project: Project, evaluation: Evaluation, units: UnitSystem): readonly Group[] {
  const { bids } = evaluation;
  const claimed = propertyGroups.map(({ id, label }) => ({
    id: `claimed-${id}`,
    label: `Claimed: ${label}`,
    rows: claimedRows(id, project, bids, units),
  }));
  return [
    { id: "infill-and-mass", label: "Infill and mass", rows: infillRows(project, bids, units) },
    { id: "impact", label: "Impact", rows: impactRows(bids, units) },
    ...claimed,
    { id: "cost", label: "Cost", rows: costRows(bids, units) },
    { id: "evaluation", label: "Evaluation", rows: evaluationRows(evaluation, units) },
  ].filter(({ rows }) => rows.length > 0);
}
