import type { CostingText } from "#lib/evaluation";
import type { CostingStart } from "../project/[id]/_components/price/costing-start";
import { draftOf } from "./draft-of";

/**
 * The costing of a project for a form that edits part of it.
 * @param filled fills in what the form has fields for and the text does not say yet
 */
export async function costingStart<Values>(
  project: string,
  stored: Readonly<{ version: number; body: CostingText }> | null,
  filled: (costing: CostingText) => Values,
): Promise<CostingStart<Values>> {
  const where = { project, kind: "costing", id: "costing" } as const;
  const draft = await draftOf<CostingText>(where);
  return {
    where,
    version: stored?.version ?? 0,
    values: filled(stored?.body ?? {}),
    draft: draft && { ...draft, values: filled(draft.values) },
  };
}
