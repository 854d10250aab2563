"use client";
import { useEffect } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import type { WeightItem, WeightLevel } from "#lib/criteria";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { TextField } from "../../../../_components/form/text-field";
import type { CriterionText } from "./measure-choices";
import styles from "./requirements.module.css";
import {
  type PairRow,
  type PersonsKind,
  type PointsRow,
  pairChoices,
  pairRows,
  pointsRows,
  type RankRow,
  rankRows,
  swingInWords,
  swingRows,
  weighingLevels,
} from "./weighing-rows";

const rules = [
  { value: "centroid", label: "The middle of all weights in this order" },
  { value: "sum", label: "Falling evenly from first to last" },
  { value: "reciprocal", label: "One over the place" },
];

/** What is weighed, level by level, and the criteria behind it. */
export type ToWeigh = Readonly<{ levels: readonly WeightLevel[]; criteria: readonly CriterionText[] }>;

/** The judgements of one way to give weights. `at` is where they stand in the form. */
export function MethodFields({ at, kind, toWeigh }: { at: string; kind: PersonsKind; toWeigh: ToWeigh }) {
  switch (kind) {
    case "points":
      return <Points at={at} toWeigh={toWeigh} />;
    case "swing":
      return <Swings at={at} toWeigh={toWeigh} />;
    case "rank-order":
      return <Ranks at={at} toWeigh={toWeigh} />;
    case "pairwise":
      return <Pairs at={at} toWeigh={toWeigh} />;
  }
}

/** The rows of a list in the form, kept in step with the criteria. */
function useRows<Row>(
  name: string,
  levels: readonly WeightLevel[],
  rowsFor: (levels: readonly WeightLevel[], rows: readonly Row[]) => readonly Row[],
): readonly Row[] {
  const { setValue } = useFormContext();
  const rows: readonly Row[] = useWatch({ name }) ?? [];
  const wanted = rowsFor(levels, rows);
  useEffect(() => {
    if (wanted !== rows) setValue(name, wanted, { shouldDirty: true });
  });
  return wanted === rows ? rows : [];
}

/** One group of fields a level; without headings there is one level and no name is needed. */
function Levels({
  toWeigh,
  className,
  fields,
}: {
  toWeigh: ToWeigh;
  className: string | undefined;
  fields: (level: WeightLevel) => React.ReactNode;
}) {
  const isGrouped = toWeigh.levels.length > 1;
  return weighingLevels(toWeigh.levels).map((level) => (
    <fieldset key={level.heading ?? "top"} className={styles.level}>
      <legend className={isGrouped ? undefined : "visually-hidden"}>
        {level.heading ?? (isGrouped ? "The headings beside each other" : "Criteria")}
      </legend>
      <div className={className}>{fields(level)}</div>
    </fieldset>
  ));
}

/** The step that is judged: of a criterion its own, of a heading all of those under it. */
const swingOf = ({ key, of }: WeightItem, criteria: readonly CriterionText[]): string => {
  if (of.length > 0) return "All its criteria, each from its worst figure to its full score.";
  const about = criteria.find(({ id }) => id === key);
  return about === undefined ? "" : `The swing ${swingInWords(about)}.`;
};

function PointsFields({ at, rows, toWeigh }: { at: string; rows: readonly PointsRow[]; toWeigh: ToWeigh }) {
  return (
    <Levels
      toWeigh={toWeigh}
      className={styles.group}
      fields={({ items }) =>
        items.map((item) => {
          const row = rows.findIndex(({ criterion }) => criterion === item.key);
          return row < 0 ? null : (
            <TextField
              key={`${row} ${item.key}`}
              name={`${at}.points.${row}.points`}
              label={`Points for “${item.label}”`}
              hint={swingOf(item, toWeigh.criteria)}
            />
          );
        })
      }
    />
  );
}

function Points({ at, toWeigh }: { at: string; toWeigh: ToWeigh }) {
  const rows = useRows<PointsRow>(`${at}.points`, toWeigh.levels, pointsRows);
  return (
    <>
      <p className={styles.note}>Only proportions count, so the points need not add up to 100.</p>
      <PointsFields at={at} rows={rows} toWeigh={toWeigh} />
    </>
  );
}

function Swings({ at, toWeigh }: { at: string; toWeigh: ToWeigh }) {
  const rows = useRows<PointsRow>(`${at}.points`, toWeigh.levels, swingRows);
  return (
    <>
      <ol className={styles.note}>
        <li>Imagine a bid that has the worst figure everywhere.</li>
        <li>
          Which one figure {toWeigh.levels.length > 1 ? "under a heading " : ""}would you lift to its full score first?
          That swing has 100 points.
        </li>
        <li>
          Give every other swing points beside it: 50 where it is worth half as much, 0 where it is worth nothing.
        </li>
        {toWeigh.levels.length > 1 ? (
          <li>Then do the same with the headings, each as a whole: the one you would lift first has 100 points.</li>
        ) : null}
      </ol>
      <PointsFields at={at} rows={rows} toWeigh={toWeigh} />
    </>
  );
}

function Ranks({ at, toWeigh }: { at: string; toWeigh: ToWeigh }) {
  const rows = useRows<RankRow>(`${at}.ranks`, toWeigh.levels, rankRows);
  return (
    <>
      <p className={styles.note}>
        Think of the step from the worst figure to the full score. 1 is the step that matters most; steps that matter
        alike have the same place.
      </p>
      <Levels
        toWeigh={toWeigh}
        className={styles.group}
        fields={({ items }) =>
          items.map(({ key, label }) => {
            const row = rows.findIndex(({ criterion }) => criterion === key);
            return row < 0 ? null : (
              <TextField key={`${row} ${key}`} name={`${at}.ranks.${row}.rank`} label={`Place of “${label}”`} />
            );
          })
        }
      />
      <ChoiceField name={`${at}.rule`} label="Weights from the order" choices={rules} className={styles.wide} />
    </>
  );
}

function Pairs({ at, toWeigh }: { at: string; toWeigh: ToWeigh }) {
  const rows = useRows<PairRow>(`${at}.judgements`, toWeigh.levels, pairRows);
  const most = Math.max(0, ...toWeigh.levels.map(({ items }) => items.length));
  return (
    <>
      <p className={styles.note}>
        For each pair, say which step from the worst figure to the full score matters more, and how many times. There
        are {rows.length} pairs
        {most > 10 ? "; an order of importance, swings or headings ask far less." : "."}
      </p>
      <Levels
        toWeigh={toWeigh}
        className={styles.pairs}
        fields={({ items }) => {
          const labelOf = (key: string) => items.find((item) => item.key === key)?.label;
          return rows.map(({ first, second }, row) => {
            const name = `${at}.judgements.${row}.times`;
            const [one, other] = [labelOf(first), labelOf(second)];
            return one === undefined || other === undefined ? null : (
              <ChoiceField
                key={`${name} ${first} ${second}`}
                name={name}
                label={`“${one}” and “${other}”`}
                choices={pairChoices(one, other)}
              />
            );
          });
        }}
      />
    </>
  );
}
