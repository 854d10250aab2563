import { explainConsistency, methodWeights, weightMethodSchema } from "#lib/criteria";
import type { CriterionText } from "./measure-choices";
import { typedShares } from "./typed-shares";
import { scoredOf, type WeighingText } from "./weighing-rows";

/** The shares that stand in the form, in the order of the criteria, and a sentence on how well they are founded. */
export type TypedWeights = Readonly<{ shares: readonly number[]; said: string; isLacking: boolean }>;

/** Each criterion's part of the whole by the way the owner chose; all 0 while something is lacking, which is said. */
export function typedWeights(criteria: readonly CriterionText[], weighing: WeighingText | undefined): TypedWeights {
  if (weighing === undefined || weighing.kind === "direct")
    return { shares: typedShares(criteria), said: "", isLacking: false };
  const none = criteria.map(() => 0);
  const method = weightMethodSchema.safeParse(weighing);
  if (!method.success) return { shares: none, said: method.error.issues[0]?.message ?? "", isLacking: true };
  const scored = scoredOf(criteria).map(({ id }) => ({ id, weight: 0 }));
  const nameOf = (id: string) => criteria.find((criterion) => criterion.id === id)?.label ?? id;
  const found = methodWeights(method.data, scored, nameOf);
  if (found.kind === "lacking") return { shares: none, said: found.message, isLacking: true };
  return {
    shares: criteria.map(({ id }) => found.shares.find(({ criterion }) => criterion === id)?.share ?? 0),
    said: found.pairwise === null ? "" : explainConsistency(found.pairwise, nameOf),
    isLacking: false,
  };
}
