import { conditionsAgree, methodOf } from "#lib/claim";
import type { Requirement } from "../model";
import { allowedFigures, excludeEachOther } from "./limit-interval";
import type { CompletenessRule } from "./model";

/** What two clauses must share to be about one thing: the property, or else the measure. */
const subjectOf = ({ subject }: Requirement) => subject?.property ?? subject?.id;

function isSameMethod({ method: one }: Requirement, { method: other }: Requirement): boolean {
  return one === null || other === null || methodOf(one).measuresLike === methodOf(other).measuresLike;
}

/** Limits for unlike ages or surfaces may differ; where neither states a condition, they are about the same. */
const isSameCondition = ({ condition: one }: Requirement, { condition: other }: Requirement) =>
  (one.age.kind === "not-stated" && other.age.kind === "not-stated") || conditionsAgree(one, other).kind === "agree";

function fight(one: Requirement, other: Requirement): boolean {
  if (one.limit === null || other.limit === null || subjectOf(one) === undefined) return false;
  if (subjectOf(one) !== subjectOf(other) || !isSameMethod(one, other) || !isSameCondition(one, other)) return false;
  return excludeEachOther(allowedFigures(one.limit), allowedFigures(other.limit));
}

export const clausesThatFight: CompletenessRule = {
  id: "clauses-that-fight",
  title: "Two clauses that exclude each other",
  advice: "No product can meet both. Keep one of them, or say for which condition each holds.",
  find: ({ requirements }) =>
    requirements.flatMap((one, index) =>
      requirements
        .slice(index + 1)
        .filter((other) => fight(one, other))
        .map((other) => ({
          requirements: [one.id, other.id],
          sentence: `“${one.label}” and “${other.label}” limit the same property, and no figure meets both.`,
        })),
    ),
};
