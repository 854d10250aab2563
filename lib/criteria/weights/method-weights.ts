import type { z } from "zod";
import { groupedWeights, type WeightBranch } from "./grouped-weights";
import { sharesOf, type WeightShares } from "./model";
import { type PairwiseWeights, pairwiseWeights } from "./pairwise-weights";
import { swingWeights } from "./point-weights";
import { rankWeights } from "./rank-weights";
import type { personsMethodSchema, weightMethodSchema } from "./schema";
import { combinedWeights, type PersonsWeights } from "./several-people";
import {
  type Heading,
  type Weighed,
  type WeightItem,
  type WeightLevel,
  weightLevels,
  weightTree,
} from "./weight-levels";

/** How the owner gives weights, with the judgements behind them. */
export type WeightMethod = Readonly<z.output<typeof weightMethodSchema>>;

/** How one person gives weights. */
export type PersonsMethod = Readonly<z.output<typeof personsMethodSchema>>;

type OnesMethod = PersonsMethod | Extract<WeightMethod, { kind: "direct" }>;

/** How the judgements of pairs fit together on one level. */
export type JudgedLevel = Readonly<{ level: WeightLevel; pairwise: PairwiseWeights }>;

/** Shares by the method, or the sentence on what is still lacking. */
export type MethodWeights = Readonly<
  | {
      kind: "weighed";
      shares: WeightShares;
      /** One per level that was judged in pairs. */
      judged: readonly JudgedLevel[];
      /** Each person's own weights; empty where one method speaks for all. */
      people: readonly PersonsWeights[];
    }
  | { kind: "lacking"; message: string }
>;

type LevelWeights = Readonly<
  { kind: "weighed"; shares: WeightShares; pairwise: PairwiseWeights | null } | { kind: "lacking"; message: string }
>;

const weighed = (shares: WeightShares, pairwise: PairwiseWeights | null = null): LevelWeights => ({
  kind: "weighed",
  shares,
  pairwise,
});

/**
 * The weights that a method and its judgements come to: on each level among its neighbours, then from the top down.
 * What is said of other criteria is passed over, so that removing one asks for nothing.
 * @param headings under which criteria are weighed among themselves; none for one flat list
 */
export function methodWeights(
  method: WeightMethod,
  criteria: readonly Weighed[],
  headings: readonly Heading[] = [],
): MethodWeights {
  const tree = weightTree(criteria, headings);
  const inOrder = (shares: WeightShares): WeightShares =>
    criteria.map(({ id }) => ({ criterion: id, share: shares.find(({ criterion }) => criterion === id)?.share ?? 0 }));
  if (method.kind !== "several-people") {
    const found = onesWeights(method, tree);
    return found.kind === "lacking" ? found : { ...found, shares: inOrder(found.shares), people: [] };
  }
  if (method.people.length === 0) return { kind: "lacking", message: "Nobody has given weights yet. Add a person." };
  const people: PersonsWeights[] = [];
  const judged: JudgedLevel[] = [];
  for (const { person, method: own } of method.people) {
    const found = onesWeights(own, tree);
    if (found.kind === "lacking") return { kind: "lacking", message: `${person}: ${found.message}` };
    people.push({ person, shares: inOrder(found.shares) });
    judged.push(...found.judged);
  }
  const ids = criteria.map(({ id }) => id);
  return { kind: "weighed", shares: combinedWeights(ids, people).shares, judged, people };
}

type OnesWeights = Readonly<
  { kind: "weighed"; shares: WeightShares; judged: readonly JudgedLevel[] } | { kind: "lacking"; message: string }
>;

function onesWeights(method: OnesMethod, tree: readonly WeightItem[]): OnesWeights {
  const judged: JudgedLevel[] = [];
  const weights = new Map<string, number>();
  for (const level of weightLevels(tree)) {
    const found = levelWeights(method, level.items);
    if (found.kind === "lacking")
      return level.heading === null ? found : { ...found, message: `Under “${level.heading}”: ${found.message}` };
    if (found.pairwise !== null) judged.push({ level, pairwise: found.pairwise });
    for (const { criterion, share } of found.shares) weights.set(criterion, share);
  }
  const branch = ({ key, label, of }: WeightItem): WeightBranch => {
    const weight = weights.get(key) ?? 0;
    return of.length === 0
      ? { kind: "criterion", criterion: key, weight }
      : { kind: "group", label, weight, of: of.map(branch) };
  };
  return { kind: "weighed", shares: groupedWeights(tree.map(branch)), judged };
}

/** Weights among neighbours. One alone has all there is, and nothing is asked of it. */
function levelWeights(method: OnesMethod, items: readonly WeightItem[]): LevelWeights {
  const keys = items.map(({ key }) => key);
  if (method.kind === "direct")
    return weighed(sharesOf(items.map(({ key, points }) => ({ criterion: key, weight: points }))));
  if (items.length < 2) return weighed(keys.map((criterion) => ({ criterion, share: 1 })));
  const lacking = (given: ReadonlySet<string>, what: string): LevelWeights | null => {
    const missing = items.find(({ key }) => !given.has(key));
    return missing === undefined ? null : { kind: "lacking", message: `“${missing.label}” has no ${what} yet.` };
  };
  switch (method.kind) {
    case "points":
    case "swing": {
      const points = keys.flatMap((key) => method.points.filter(({ criterion }) => criterion === key));
      const isSwing = method.kind === "swing";
      const gap = lacking(
        new Set(points.map(({ criterion }) => criterion)),
        isSwing ? "points for its swing" : "points",
      );
      if (gap !== null) return gap;
      if (!isSwing) return weighed(sharesOf(points.map(({ criterion, points: weight }) => ({ criterion, weight }))));
      const swings = swingWeights(points);
      return swings.kind === "weighed" ? weighed(swings.shares) : { kind: "lacking", message: swings.message };
    }
    case "rank-order": {
      const ranks = keys.flatMap((key) => method.ranks.filter(({ criterion }) => criterion === key));
      return (
        lacking(new Set(ranks.map(({ criterion }) => criterion)), "place") ?? weighed(rankWeights(ranks, method.rule))
      );
    }
    case "pairwise": {
      const pairwise = pairwiseWeights(keys, method.judgements);
      if (pairwise.kind === "weighed") return weighed(pairwise.shares, pairwise);
      const nameOf = (key = "") => items.find((item) => item.key === key)?.label ?? key;
      const [first] = pairwise.pairs;
      const more = pairwise.pairs.length > 1 ? ` and ${pairwise.pairs.length - 1} more` : "";
      return {
        kind: "lacking",
        message: `Not every pair is judged yet: “${nameOf(first?.[0])}” against “${nameOf(first?.[1])}”${more}.`,
      };
    }
  }
}
