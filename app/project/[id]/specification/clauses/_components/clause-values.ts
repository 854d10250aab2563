import type { RequirementsText } from "#lib/evaluation";
import type { ClausesText } from "#lib/requirement";
import { freshId } from "../../../../../_components/form/fresh-id";

type ClauseText = Required<ClausesText[number]>;
type SubmittalText = NonNullable<RequirementsText["submittals"]>[number];

/** Requirements with a clause beside each criterion and text in every field of every clause, so that all have fields. */
export type ClausesValues = RequirementsText & {
  clauses: ClauseText[];
  submittals: (SubmittalText & { usedBy: string[] })[];
};

/** A clause before anybody has written it. */
export const emptyClause = (id: string, criterion: string): ClauseText => ({
  ...{ id, criterion, label: "", reason: "", measure: "", limit: { kind: "none" }, asked: "", place: "performance" },
  ...{ evidence: "stated", isOn: true, method: "", edition: "", condition: "", holdsAt: "not-stated", tolerance: "" },
  ...{ submittals: [], acceptance: "", laterTests: "", remedy: "", limitSource: "" },
});

/** Fills in what the requirements do not say yet: clauses beside the criteria in their order, then the others. */
export function filledClauses(body: RequirementsText): ClausesValues {
  const written = (body.clauses ?? []).map((clause): ClauseText => ({ ...emptyClause(clause.id, ""), ...clause }));
  const taken = written.map(({ id }) => id);
  const beside = body.criteria.map(({ id }) => {
    const found = written.find(({ criterion }) => criterion === id);
    if (found !== undefined) return found;
    const fresh = freshId(`${id}-clause`, taken);
    taken.push(fresh);
    return emptyClause(fresh, id);
  });
  const others = written.filter((clause) => !beside.includes(clause));
  return {
    ...body,
    clauses: [...beside, ...others],
    submittals: (body.submittals ?? []).map((submittal) => ({ ...submittal, usedBy: [...(submittal.usedBy ?? [])] })),
  };
}
