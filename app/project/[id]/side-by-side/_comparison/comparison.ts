import { propertyGroups } from "#lib/claim";
import type { Evaluation, Project } from "#lib/evaluation";
import type { UnitSystem } from "#lib/quantity";
import { claimedRows } from "./claimed-rows";
import { costRows, impactRows, infillRows } from "./derived-rows";
import { evaluationRows } from "./evaluation-rows";
import type { Group, Row } from "./model";

/** Worked-out rows with ids of their own: a bid may claim a property of the same name. */
const derived = (rows: readonly Row[]): readonly Row[] => rows.map((row) => ({ ...row, id: `derived.${row.id}` }));

/** Everything that is claimed and worked out, group by group, one cell for each bid. A group without rows is left out. */
export function comparison(project: Project, evaluation: Evaluation, units: UnitSystem): readonly Group[] {
  const { bids } = evaluation;
  const claimed = propertyGroups.map(({ id, label }) => ({
    id: `claimed-${id}`,
    label: `Claimed: ${label}`,
    rows: claimedRows(id, project, evaluation, units),
  }));
  return [
    { id: "infill-and-mass", label: "Infill and mass", rows: derived(infillRows(project, bids, units)) },
    { id: "impact", label: "Impact", rows: derived(impactRows(bids, units)) },
    ...claimed,
    { id: "cost", label: "Cost", rows: derived(costRows(bids, units)) },
    { id: "evaluation", label: "Evaluation", rows: derived(evaluationRows(evaluation, units)) },
  ].filter(({ rows }) => rows.length > 0);
}
