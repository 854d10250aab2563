import { sharesOf, type WeightShares } from "./model";

/** A group of criteria, or one criterion, with its weight among its neighbours. Groups may hold groups. */
export type WeightBranch = Readonly<
  | { kind: "criterion"; criterion: string; weight: number }
  | { kind: "group"; label: string; weight: number; of: readonly WeightBranch[] }
>;

/**
 * Shares of criteria that are weighed in groups: each weight counts among its neighbours, and a group hands its share
 * on. A group in which nothing weighs hands on nothing, so that its neighbours share the whole.
 * @source product of the shares from the top down, derived
 */
export function groupedWeights(branches: readonly WeightBranch[]): WeightShares {
  const weights = (level: readonly WeightBranch[], share: number): { criterion: string; weight: number }[] => {
    const sum = level.reduce((total, branch) => total + branchWeight(branch), 0);
    return level.flatMap((branch) => {
      const part = sum > 0 ? (share * branchWeight(branch)) / sum : 0;
      return branch.kind === "criterion" ? [{ criterion: branch.criterion, weight: part }] : weights(branch.of, part);
    });
  };
  return sharesOf(weights(branches, 1));
}

/** A group counts only where something in it weighs. */
function branchWeight(branch: WeightBranch): number {
  if (branch.kind === "criterion") return branch.weight;
  return branch.of.some((inner) => branchWeight(inner) > 0) ? branch.weight : 0;
}
