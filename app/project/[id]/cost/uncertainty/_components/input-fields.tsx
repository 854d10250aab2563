"use client";
import { useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { type DistributionKind, distributions } from "#lib/sampling";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { KindField } from "../../../../../_components/form/kind-field";
import { TextField } from "../../../../../_components/form/text-field";
import { capitalised } from "../../../../../_components/in-words";
import { useUndo } from "../../../_components/use-undo";
import { statedInWords } from "./stated-words";
import { type NamedBid, TargetFields, type TargetKind } from "./target-fields";
import styles from "./uncertainty.module.css";
import type { UncertaintyValues } from "./uncertainty-values";

type InputText = UncertaintyValues["uncertainty"]["inputs"][number];

const targets: readonly Choice[] = [
  { value: "line", label: "One price line of one bid" },
  { value: "category", label: "All prices of a category, in all bids" },
  { value: "parts", label: "All parts with a life, in all bids" },
  { value: "purpose", label: "All that is spent on one thing, in all bids" },
  { value: "life", label: "The life of one part" },
  { value: "growth", label: "The growth of one price" },
  { value: "real-rate", label: "The real rate" },
];
const ways: readonly Choice[] = Object.entries(distributions).map(([value, { label }]) => ({ value, label }));

/** Each uncertain figure: what it is, what it moves, and how far it may lie from what is entered. */
export function InputFields({ bids }: { bids: readonly NamedBid[] }) {
  const { control, getValues } = useFormContext<UncertaintyValues>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "uncertainty.inputs", keyName: "key" });
  const { keep, notice } = useUndo<InputText>(insert);
  const [first] = bids;
  const templates = {
    line: { bid: first?.id ?? "", line: first?.lines[0]?.id ?? "", part: "price" },
    category: { category: "operation-and-maintenance" },
    parts: { part: "renewal-price" },
    purpose: { purpose: "grooming" },
    life: { bid: first?.id ?? "", line: first?.lines.find(({ hasLife }) => hasLife)?.id ?? "" },
    growth: { bid: first?.id ?? "", line: first?.lines[0]?.id ?? "" },
    "real-rate": {},
  };
  const [fresh, setFresh] = useState<string | null>(null); // the figure that has just been added stands open
  const add = () => {
    const taken = getValues("uncertainty.inputs").map(({ id }) => id);
    const id = freshId("figure", taken);
    setFresh(id);
    append(
      {
        ...{ id, label: "Prices of renewals" },
        target: { kind: "parts", part: "renewal-price" },
        ...{ kind: "pert", figures: "90 % / 100 % / 125 %", driver: "" },
      },
      { focusName: `uncertainty.inputs.${fields.length}.label` },
    );
  };
  return (
    <>
      {fields.length > 0 ? null : (
        <p>
          Nothing is stated yet, so there is nothing to draw. Begin with what is least sure, for instance the prices of
          renewals, the life of a carpet or the real rate.
        </p>
      )}
      {fields.map(({ key, id, label }, index) => {
        const name = `uncertainty.inputs.${index}` as const;
        return (
          <details key={key} open={id === fresh} className={styles.input}>
            <Stated name={name} />
            <fieldset className={styles.inputs}>
              <legend className="visually-hidden">Uncertain figure {index + 1}</legend>
              <TextField name={`${name}.label`} label="What is uncertain" className={styles.wide} />
              <KindField<TargetKind>
                name={`${name}.target`}
                label="What it moves"
                choices={targets}
                templates={templates}
                fields={(kind) => <TargetFields name={`${name}.target`} kind={kind} bids={bids} />}
              />
              <DoubtFields name={name} />
              <TextField
                name={`${name}.driver`}
                label="Moves together with"
                hint="Figures with the same word here share their luck. Empty: moves alone."
              />
              <p className={styles.commands}>
                <button
                  type="button"
                  className="plain"
                  onClick={() => {
                    const value = structuredClone(getValues(name));
                    remove(index);
                    keep({ index, value, words: value.label || "uncertain figure" });
                  }}
                >
                  Remove<span className="visually-hidden"> {label}</span>
                </button>
              </p>
            </fieldset>
          </details>
        );
      })}
      {notice}
      <p className={`${styles.add} screen-only`}>
        <button type="button" onClick={add}>
          Add an uncertain figure
        </button>
      </p>
      <div className={`${styles.drawing} screen-only`}>
        <TextField name="uncertainty.samples" label="How often to draw" hint="1,000 to 200,000 times." />
        <TextField
          name="uncertainty.seed"
          label="Seed"
          hint="A whole number, kept so that the same figures can be drawn again."
        />
      </div>
    </>
  );
}

/** One uncertain figure on one line: what it is, how far it may lie off, and what it moves with. */
function Stated({ name }: { name: `uncertainty.inputs.${number}` }) {
  const { control, getFieldState, formState } = useFormContext<UncertaintyValues>();
  const stated = useWatch({ control, name }) as InputText | undefined; // gone for a moment while it is removed
  return (
    <summary>
      {stated?.label || "No name yet"}:{" "}
      <span className={styles.stated}>{statedInWords(stated?.figures ?? "", stated?.driver ?? "")}</span>
      {getFieldState(name, formState).invalid ? <span className={styles.trouble}> Can’t be read yet</span> : null}
    </summary>
  );
}

/** How the doubt is stated, with an example of how it is written. */
function DoubtFields({ name }: { name: string }) {
  const kind: DistributionKind = useWatch({ name: `${name}.kind` }) ?? "pert";
  const target: unknown = useWatch({ name: `${name}.target.kind` });
  const written =
    target === "life"
      ? "In years, for instance “8: 25 %, 10: 50 %, 12: 25 %”."
      : `${capitalised(distributions[kind].written)}, for instance ${(isRate(target) ? rateExamples : shareExamples)[kind]}.`;
  return (
    <>
      <ChoiceField name={`${name}.kind`} label="How sure it is" choices={ways} />
      <TextField name={`${name}.figures`} label="Figures" hint={written} />
    </>
  );
}

const isRate = (target: unknown): boolean => target === "growth" || target === "real-rate";

/** As rates a year, which need both ends. */
const rateExamples: Readonly<Record<DistributionKind, string>> = {
  fixed: "“3 %”",
  uniform: "“2 % / 4 %”",
  triangular: "“2 % / 3 % / 5 %”",
  pert: "“2 % / 3 % / 5 %”",
  normal: "“3 % ± 0.5 %”",
  lognormal: "“3 % / 20 %”",
  discrete: "“2 %: 25 %, 3 %: 75 %”",
};

/** As shares of the entered figure, which is how prices are told here. */
const shareExamples: Readonly<Record<DistributionKind, string>> = {
  fixed: "“100 %”",
  uniform: "“90 % / 120 %”",
  triangular: "“90 % / 100 % / 125 %”",
  pert: "“90 % / 100 % / 125 %”",
  normal: "“100 % ± 10 %”",
  lognormal: "“100 % / 20 %”",
  discrete: "“90 %: 25 %, 100 %: 75 %”",
};
