import type { WeightItem, WeightLevel } from "#lib/criteria";
import type { Choice } from "../../../../_components/form/choice-field";
import type { KindTemplate } from "../../../../_components/form/of-kind";
import type { CriterionText } from "./measure-choices";
import type { WeighingText } from "./typed-weights";

export type WeighingKind = WeighingText["kind"];
export type PersonText = Extract<WeighingText, { kind: "several-people" }>["people"][number];
export type PersonsKind = PersonText["method"]["kind"];

export const weighingChoices: readonly (Choice & Readonly<{ value: WeighingKind }>)[] = [
  { value: "direct", label: "Points, criterion by criterion" },
  { value: "swing", label: "Swings: what each step from worst to full score is worth" },
  { value: "rank-order", label: "An order of importance" },
  { value: "pairwise", label: "Pairs: two at a time" },
  { value: "several-people", label: "Several people, each by themselves" },
];

export const personsChoices: readonly (Choice & Readonly<{ value: PersonsKind }>)[] = [
  { value: "points", label: "Points" },
  { value: "swing", label: "Swings: what each step from worst to full score is worth" },
  { value: "rank-order", label: "An order of importance" },
  { value: "pairwise", label: "Pairs: two at a time" },
];

/** What each way of one person starts with; the rows follow from the criteria. */
export const personsTemplates: Readonly<Record<PersonsKind, KindTemplate>> = {
  points: { points: [] },
  swing: { points: [] },
  "rank-order": { rule: "centroid", ranks: [] },
  pairwise: { judgements: [] },
};

export const weighingTemplates: Readonly<Record<WeighingKind, KindTemplate>> = {
  ...personsTemplates,
  direct: {},
  "several-people": { shown: "apart", people: [] },
};

export type PointsRow = Readonly<{ criterion: string; points: string }>;
export type RankRow = Readonly<{ criterion: string; rank: string }>;
export type PairRow = Readonly<{ first: string; second: string; times: string }>;

/** Levels on which there is something to weigh: one alone has all there is. */
export const weighingLevels = (levels: readonly WeightLevel[]): readonly WeightLevel[] =>
  levels.filter(({ items }) => items.length > 1);

/** The rows themselves where they fit already, so that nothing is written for nothing. */
const fitting = <Row>(rows: readonly Row[], wanted: readonly Row[]): readonly Row[] =>
  rows.length === wanted.length && rows.every((row, at) => row === wanted[at]) ? rows : wanted;

/** One row an item, level by level. `start` is for a level that has no row yet, `late` for what comes to one that has. */
function itemRows<Row extends Readonly<{ criterion: string }>>(
  levels: readonly WeightLevel[],
  rows: readonly Row[],
  start: (item: WeightItem, items: readonly WeightItem[]) => Row,
  late: (item: WeightItem, items: readonly WeightItem[]) => Row,
): readonly Row[] {
  const rowOf = ({ key }: WeightItem) => rows.find(({ criterion }) => criterion === key);
  return fitting(
    rows,
    weighingLevels(levels).flatMap(({ items }) => {
      const isStart = items.every((item) => rowOf(item) === undefined);
      return items.map((item) => rowOf(item) ?? (isStart ? start : late)(item, items));
    }),
  );
}

const none = ({ key }: WeightItem): PointsRow => ({ criterion: key, points: "0" });

/** A new level starts with the points that stand with its criteria; what comes later starts with none. */
export const pointsRows = (levels: readonly WeightLevel[], rows: readonly PointsRow[]): readonly PointsRow[] =>
  itemRows(levels, rows, ({ key, points }) => ({ criterion: key, points: String(points) }), none);

/** A new level starts where its points put it beside the greatest, so that nothing moves at first. */
export const swingRows = (levels: readonly WeightLevel[], rows: readonly PointsRow[]): readonly PointsRow[] =>
  itemRows(
    levels,
    rows,
    ({ key, points }, items) => {
      const greatest = Math.max(...items.map((item) => item.points));
      return { criterion: key, points: greatest > 0 ? String(Math.round((100 * points) / greatest)) : "100" };
    },
    none,
  );

/** At first the order is that of the points; later a new one comes last. */
export const rankRows = (levels: readonly WeightLevel[], rows: readonly RankRow[]): readonly RankRow[] =>
  itemRows(
    levels,
    rows,
    ({ key, points }, items) => ({
      criterion: key,
      rank: String(1 + items.filter((other) => other.points > points).length),
    }),
    ({ key }, items) => ({ criterion: key, rank: String(items.length) }),
  );

/** One row a pair of neighbours, in their order; a new pair is not judged yet. */
export function pairRows(levels: readonly WeightLevel[], rows: readonly PairRow[]): readonly PairRow[] {
  const judged = (one: string, other: string) =>
    rows.find(({ first, second }) => (first === one && second === other) || (first === other && second === one));
  return fitting(
    rows,
    levels.flatMap(({ items }) =>
      items.flatMap(({ key }, at) =>
        items.slice(at + 1).map((other) => judged(key, other.key) ?? { first: key, second: other.key, times: "" }),
      ),
    ),
  );
}

/** The step that a swing is about, as typed: "from 40 °F to 10 °F". */
export function swingInWords({ valueFunction }: Pick<CriterionText, "valueFunction">): string {
  switch (valueFunction.kind) {
    case "none":
      return "";
    case "more-is-better":
    case "less-is-better":
      return `from ${valueFunction.worst} to ${valueFunction.best}`;
    case "target-window":
      return `from ${valueFunction.nothingBelow} or ${valueFunction.nothingAbove} into ${valueFunction.fullFrom} to ${valueFunction.fullTo}`;
    case "rating":
      return `from “${valueFunction.levels[0]?.label ?? ""}” to “${valueFunction.levels.at(-1)?.label ?? ""}”`;
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
