"use client";
import { useEffect } from "react";
import { useFormContext, useWatch } from "react-hook-form";
import { ChoiceField } from "../../../../_components/form/choice-field";
import { KindField } from "../../../../_components/form/kind-field";
import { TextField } from "../../../../_components/form/text-field";
import type { CriterionText } from "./measure-choices";
import styles from "./requirements.module.css";
import { typedWeights } from "./typed-weights";
import {
  type PairRow,
  pairChoices,
  pairRows,
  type RankRow,
  rankRows,
  type SwingRow,
  scoredOf,
  swingInWords,
  swingRows,
  type WeighingKind,
  type WeighingText,
  weighingChoices,
  weighingTemplates,
} from "./weighing-rows";

const rules = [
  { value: "centroid", label: "The middle of all weights in this order" },
  { value: "sum", label: "Falling evenly from first to last" },
  { value: "reciprocal", label: "One over the place" },
];

/** How weights come about, with the judgements of the way that is chosen. */
export function WeighingFields() {
  const criteria: readonly CriterionText[] = useWatch({ name: "criteria" });
  const weighing: WeighingText | undefined = useWatch({ name: "weighing" });
  const { said, isLacking } = typedWeights(criteria, weighing);
  return (
    <>
      <KindField<WeighingKind>
        name="weighing"
        label="How the weights come about"
        choices={weighingChoices}
        templates={weighingTemplates}
        className={styles.wide}
        fields={(kind) => <OfKind kind={kind} criteria={criteria} />}
      />
      <p role="status">{isLacking ? "" : said}</p>
    </>
  );
}

function OfKind({ kind, criteria }: { kind: WeighingKind; criteria: readonly CriterionText[] }) {
  switch (kind) {
    case "direct":
      return <p className={styles.note}>The points stand with each criterion above, under its score.</p>;
    case "swing":
      return <Swings criteria={criteria} />;
    case "rank-order":
      return <Ranks criteria={criteria} />;
    case "pairwise":
      return <Pairs criteria={criteria} />;
  }
}

/** The rows of a list in the form, kept in step with the criteria. */
function useRows<Row>(
  name: string,
  criteria: readonly CriterionText[],
  rowsFor: (criteria: readonly CriterionText[], rows: readonly Row[]) => readonly Row[],
): readonly Row[] {
  const { setValue } = useFormContext();
  const rows: readonly Row[] = useWatch({ name }) ?? [];
  const wanted = rowsFor(criteria, rows);
  useEffect(() => {
    if (wanted !== rows) setValue(name, wanted, { shouldDirty: true });
  });
  return wanted === rows ? rows : [];
}

const labelOf = (criteria: readonly CriterionText[], id: string): string =>
  criteria.find((criterion) => criterion.id === id)?.label || id;

function Swings({ criteria }: { criteria: readonly CriterionText[] }) {
  const rows = useRows<SwingRow>("weighing.points", criteria, swingRows);
  const scored = scoredOf(criteria);
  return (
    <>
      <ol className={styles.note}>
        <li>Imagine a bid that has the worst figure everywhere.</li>
        <li>Which one figure would you lift to its full score first? That swing has 100 points.</li>
        <li>
          Give every other swing points beside it: 50 where it is worth half as much, 0 where it is worth nothing.
        </li>
      </ol>
      <div className={styles.group}>
        {rows.map(({ criterion }, at) => {
          const name = `weighing.points.${at}.points`;
          const about = scored.find(({ id }) => id === criterion);
          return (
            <TextField
              key={`${name} ${criterion}`}
              name={name}
              label={`Points for “${labelOf(criteria, criterion)}”`}
              {...(about === undefined ? {} : { hint: `The swing ${swingInWords(about)}.` })}
            />
          );
        })}
      </div>
    </>
  );
}

function Ranks({ criteria }: { criteria: readonly CriterionText[] }) {
  const rows = useRows<RankRow>("weighing.ranks", criteria, rankRows);
  return (
    <>
      <p className={styles.note}>
        Think of the step from the worst figure to the full score. 1 is the step that matters most; steps that matter
        alike have the same place.
      </p>
      <div className={styles.group}>
        {rows.map(({ criterion }, at) => {
          const name = `weighing.ranks.${at}.rank`;
          return (
            <TextField key={`${name} ${criterion}`} name={name} label={`Place of “${labelOf(criteria, criterion)}”`} />
          );
        })}
      </div>
      <ChoiceField name="weighing.rule" label="Weights from the order" choices={rules} className={styles.wide} />
    </>
  );
}

function Pairs({ criteria }: { criteria: readonly CriterionText[] }) {
  const rows = useRows<PairRow>("weighing.judgements", criteria, pairRows);
  const count = scoredOf(criteria).length;
  return (
    <>
      <p className={styles.note}>
        For each pair, say which step from the worst figure to the full score matters more, and how many times. {count}{" "}
        criteria make {(count * (count - 1)) / 2} pairs
        {count > 10 ? "; an order of importance or swings ask far less." : "."}
      </p>
      <div className={styles.pairs}>
        {rows.map(({ first, second }, at) => {
          const name = `weighing.judgements.${at}.times`;
          const [one, other] = [labelOf(criteria, first), labelOf(criteria, second)];
          return (
            <ChoiceField
              key={`${name} ${first} ${second}`}
              name={name}
              label={`“${one}” and “${other}”`}
              choices={pairChoices(one, other)}
            />
          );
        })}
      </div>
    </>
  );
}
