import {
  explainConsistency,
  methodWeights,
  type PersonsWeights,
  type WeightItem,
  weightMethodSchema,
  weightTree,
} from "#lib/criteria";
import type { RequirementsText } from "#lib/evaluation";
import type { CriterionText } from "./measure-choices";

/** How weights are given, as text. */
export type WeighingText = NonNullable<RequirementsText["weighing"]>;
export type HeadingText = NonNullable<RequirementsText["headings"]>[number];

/** What stands in the form that bears on weights. */
export type Typed = Readonly<{
  criteria: readonly CriterionText[];
  headings: readonly HeadingText[];
  weighing: WeighingText | undefined;
}>;

/** The shares that stand in the form, in the order of the criteria, and a sentence on how well they are founded. */
export type TypedWeights = Readonly<{
  shares: readonly number[];
  /** Each person's own, where several give weights. */
  people: readonly PersonsWeights[];
  said: readonly string[];
  isLacking: boolean;
}>;

/** Points as typed; 0 where they can't be read yet, which the field itself says. */
const pointsOf = (text: string): number => (/^\s*\d+(\.\d+)?\s*$/.test(text) ? Number(text) : 0);

/** The criteria that score, in their order: only they can weigh. */
export const scoredOf = (criteria: readonly CriterionText[]): readonly CriterionText[] =>
  criteria.filter(({ valueFunction }) => valueFunction.kind !== "none");

const weighedOf = (criteria: readonly CriterionText[]) =>
  scoredOf(criteria).map(({ id, label, weight, heading = "" }) => ({
    id,
    label: label || id,
    weight: pointsOf(weight),
    heading,
  }));

const headingsOf = (headings: readonly HeadingText[]) =>
  headings.map(({ id, label, points }) => ({ id, label: label || id, points: pointsOf(points) }));

/** Headings with what they hold, and criteria under none, as they stand in the form. */
export const typedTree = ({ criteria, headings }: Omit<Typed, "weighing">): readonly WeightItem[] =>
  weightTree(weighedOf(criteria), headingsOf(headings));

/** Each criterion's part of the whole by the way the owner chose; all 0 while something is lacking, which is said. */
export function typedWeights({ criteria, headings, weighing = { kind: "direct" } }: Typed): TypedWeights {
  const lacking = (message: string): TypedWeights => ({
    ...{ shares: criteria.map(() => 0), people: [], isLacking: true },
    said: [message],
  });
  const method = weightMethodSchema.safeParse(weighing);
  if (!method.success) return lacking(method.error.issues[0]?.message ?? "");
  const found = methodWeights(method.data, weighedOf(criteria), headingsOf(headings));
  if (found.kind === "lacking") return lacking(found.message);
  return {
    shares: criteria.map(({ id }) => found.shares.find(({ criterion }) => criterion === id)?.share ?? 0),
    people: found.people,
    said: found.judged.map(({ level, pairwise }) => {
      const nameOf = (key: string) => level.items.find((item) => item.key === key)?.label ?? key;
      const sentence = explainConsistency(pairwise, nameOf);
      return level.heading === null ? sentence : `Under “${level.heading}”: ${sentence}`;
    }),
    isLacking: false,
  };
}
