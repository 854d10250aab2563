import { matchMethod } from "#lib/claim";
import { oncePer } from "#lib/once";
import { type Requirement, requirementsOf } from "#lib/requirement";
import type { Requirements } from "./model";

/** The requirements of a project: its criteria with the clauses beside them, then the clauses of their own. */
export const projectRequirements: (requirements: Requirements) => readonly Requirement[] = oncePer(
  ({ criteria, clauses, impact }) => {
    const method = matchMethod(impact.method);
    const byMethod = method === null || method === "not-stated" ? {} : { "impact-level-as-new": method };
    return requirementsOf(criteria, clauses, byMethod);
  },
);
