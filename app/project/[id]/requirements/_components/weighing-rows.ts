import type { RequirementsText } from "#lib/evaluation";
import type { Choice } from "../../../../_components/form/choice-field";
import type { KindTemplate } from "../../../../_components/form/of-kind";
import type { CriterionText } from "./measure-choices";
import { typedShares } from "./typed-shares";

/** How weights are given, as text. */
export type WeighingText = NonNullable<RequirementsText["weighing"]>;
export type WeighingKind = WeighingText["kind"];

export const weighingChoices: readonly (Choice & Readonly<{ value: WeighingKind }>)[] = [
  { value: "direct", label: "Points, criterion by criterion" },
  { value: "swing", label: "Swings: what each step from worst to full score is worth" },
  { value: "rank-order", label: "An order of importance" },
  { value: "pairwise", label: "Pairs: two criteria at a time" },
];

/** What each way starts with; the rows follow from the criteria. */
export const weighingTemplates: Readonly<Record<WeighingKind, KindTemplate>> = {
  direct: {},
  swing: { points: [] },
  "rank-order": { rule: "centroid", ranks: [] },
  pairwise: { judgements: [] },
};

export type SwingRow = Readonly<{ criterion: string; points: string }>;
export type RankRow = Readonly<{ criterion: string; rank: string }>;
export type PairRow = Readonly<{ first: string; second: string; times: string }>;

/** The criteria that score, in their order: only they can weigh. */
export const scoredOf = (criteria: readonly CriterionText[]): readonly CriterionText[] =>
  criteria.filter(({ valueFunction }) => valueFunction.kind !== "none");

/** The rows themselves where they fit already, so that nothing is written for nothing. */
const fitting = <Row>(rows: readonly Row[], wanted: readonly Row[]): readonly Row[] =>
  rows.length === wanted.length && rows.every((row, at) => row === wanted[at]) ? rows : wanted;

/** One row a scored criterion. A new one starts where its points put it beside the greatest, so that nothing moves at first. */
export function swingRows(criteria: readonly CriterionText[], rows: readonly SwingRow[]): readonly SwingRow[] {
  const scored = scoredOf(criteria);
  const shares = typedShares(scored);
  const greatest = Math.max(...shares);
  const start = (at: number) => (greatest > 0 ? String(Math.round((100 * (shares[at] ?? 0)) / greatest)) : "100");
  const isStart = rows.length === 0;
  return fitting(
    rows,
    scored.map(
      ({ id }, at) =>
        rows.find(({ criterion }) => criterion === id) ?? { criterion: id, points: isStart ? start(at) : "0" },
    ),
  );
}

/** One row a scored criterion. At first the order is that of the points; later a new one comes last. */
export function rankRows(criteria: readonly CriterionText[], rows: readonly RankRow[]): readonly RankRow[] {
  const scored = scoredOf(criteria);
  const shares = typedShares(scored);
  const start = (at: number) => String(1 + shares.filter((share) => share > (shares[at] ?? 0)).length);
  const isStart = rows.length === 0;
  return fitting(
    rows,
    scored.map(
      ({ id }, at) =>
        rows.find(({ criterion }) => criterion === id) ?? {
          criterion: id,
          rank: isStart ? start(at) : String(scored.length),
        },
    ),
  );
}

/** One row a pair of scored criteria, in the order of the criteria; a new pair is not judged yet. */
export function pairRows(criteria: readonly CriterionText[], rows: readonly PairRow[]): readonly PairRow[] {
  const scored = scoredOf(criteria);
  const judged = (one: string, other: string) =>
    rows.find(({ first, second }) => (first === one && second === other) || (first === other && second === one));
  return fitting(
    rows,
    scored.flatMap(({ id }, at) =>
      scored.slice(at + 1).map((other) => judged(id, other.id) ?? { first: id, second: other.id, times: "" }),
    ),
  );
}

/** The step that a swing is about, as typed: "from 40 °F to 10 °F". */
export function swingInWords({ valueFunction }: CriterionText): string {
  switch (valueFunction.kind) {
    case "none":
      return "";
    case "more-is-better":
    case "less-is-better":
      return `from ${valueFunction.worst} to ${valueFunction.best}`;
    case "target-window":
      return `from ${valueFunction.nothingBelow} or ${valueFunction.nothingAbove} into ${valueFunction.fullFrom} to ${valueFunction.fullTo}`;
    case "steps":
    case "piecewise":
      return "from its lowest score to its highest";
  }
}

const scale = [9, 8, 7, 6, 5, 4, 3, 2] as const;

/** What can be said of a pair, from the first far ahead to the second far ahead. */
export const pairChoices = (first: string, second: string): readonly Choice[] => [
  { value: "", label: "Not judged yet" },
  ...scale.map((times) => ({ value: String(times), label: `“${first}” ${times} times as important` })),
  { value: "1", label: "Equally important" },
  ...scale.toReversed().map((times) => ({ value: `1/${times}`, label: `“${second}” ${times} times as important` })),
];
