import type { Transaction } from "kysely";
import type { ProjectSummary } from "./model";
import type { ProjectState } from "./record-entry";
import type { ProjectRow, Tables } from "./tables";

/** The row of a project, removed or not, without a lock. */
export async function projectRow(transaction: Transaction<Tables>, project: string): Promise<ProjectRow | null> {
  const row = await transaction.selectFrom("project").selectAll().where("id", "=", project).executeTakeFirst();
  return row ?? null;
}

/** How a project stands in the record, removed or not. */
export const projectState = ({ name, owner, origin }: ProjectRow): ProjectState => ({ name, owner, origin });

export const summaryFrom = (row: ProjectRow): ProjectSummary => ({
  id: row.id,
  name: row.name,
  owner: row.owner,
  origin: row.origin,
  organisation: row.organisation_id,
  createdAt: row.created_at,
  createdBy: row.created_by,
  changedAt: row.changed_at,
  changedBy: row.changed_by,
  record: { entries: row.head_seq, head: row.head_hash },
});
