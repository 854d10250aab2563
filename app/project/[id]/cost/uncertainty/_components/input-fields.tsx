"use client";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { costCategories, technicalLinks } from "#lib/cost";
import { type DistributionKind, distributions } from "#lib/sampling";
import { type Choice, ChoiceField } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { KindField } from "../../../../../_components/form/kind-field";
import { TextField } from "../../../../../_components/form/text-field";
import { useUndo } from "../../../_components/use-undo";
import styles from "./uncertainty.module.css";
import type { UncertaintyValues } from "./uncertainty-values";

/** A bid with the lines that count, by their names. */
export type NamedBid = Readonly<{
  id: string;
  letter: string;
  lines: readonly Readonly<{ id: string; label: string; hasLife: boolean }>[];
}>;

type InputText = UncertaintyValues["uncertainty"]["inputs"][number];
type TargetKind = InputText["target"]["kind"];

const targets: readonly Choice[] = [
  { value: "line", label: "One price line of one bid" },
  { value: "category", label: "All prices of a category, in all bids" },
  { value: "parts", label: "All parts with a life, in all bids" },
  { value: "purpose", label: "All that is spent on one thing, in all bids" },
  { value: "life", label: "The life of one part" },
  { value: "growth", label: "The growth of one price" },
  { value: "real-rate", label: "The real rate" },
];
const figuresOfLine: readonly Choice[] = [
  { value: "price", label: "The price" },
  { value: "quantity", label: "The quantity" },
  { value: "unit-price", label: "The price of one unit" },
  { value: "renewal-price", label: "The price of renewals" },
  { value: "removal-price", label: "The price of removal" },
];
const figuresOfParts = figuresOfLine.filter(({ value }) => ["price", "renewal-price", "removal-price"].includes(value));
const categories: readonly Choice[] = Object.entries(costCategories).map(([value, { label }]) => ({ value, label }));
const purposes: readonly Choice[] = Object.values(technicalLinks).map(({ id, label }) => ({ value: id, label }));
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
  const add = () => {
    const taken = getValues("uncertainty.inputs").map(({ id }) => id);
    append(
      {
        ...{ id: freshId("figure", taken), label: "Prices of renewals" },
        target: { kind: "parts", part: "renewal-price" },
        ...{ kind: "pert", figures: "90 % / 100 % / 125 %", driver: "" },
      },
      { focusName: `uncertainty.inputs.${fields.length}.label` },
    );
  };
  return (
    <>
      {fields.map(({ key, label }, index) => {
        const name = `uncertainty.inputs.${index}` as const;
        return (
          <fieldset key={key} className={styles.input}>
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
        );
      })}
      {notice}
      <button type="button" onClick={add}>
        Add an uncertain figure
      </button>
      <div className={styles.drawing}>
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

function TargetFields({ name, kind, bids }: { name: string; kind: TargetKind; bids: readonly NamedBid[] }) {
  switch (kind) {
    case "line":
      return (
        <>
          <BidAndLine name={name} bids={bids} fits="any" />
          <ChoiceField name={`${name}.part`} label="Which figure of it" choices={figuresOfLine} />
        </>
      );
    case "category":
      return <ChoiceField name={`${name}.category`} label="Category" choices={categories} />;
    case "parts":
      return <ChoiceField name={`${name}.part`} label="Which figure of them" choices={figuresOfParts} />;
    case "purpose":
      return <ChoiceField name={`${name}.purpose`} label="Spent on" choices={purposes} />;
    case "life":
      return <BidAndLine name={name} bids={bids} fits="with-life" />;
    case "growth":
      return <BidAndLine name={name} bids={bids} fits="any" />;
    case "real-rate":
      return null;
  }
}

function BidAndLine({ name, bids, fits }: { name: string; bids: readonly NamedBid[]; fits: "any" | "with-life" }) {
  const bid: unknown = useWatch({ name: `${name}.bid` });
  const lines = bids.find(({ id }) => id === bid)?.lines ?? [];
  return (
    <>
      <ChoiceField
        name={`${name}.bid`}
        label="Bid"
        choices={bids.map(({ id, letter }) => ({ value: id, label: `Bid ${letter}` }))}
      />
      <ChoiceField
        key={String(bid)}
        name={`${name}.line`}
        label="Price line"
        choices={[
          { value: "", label: "Choose a line" },
          ...lines.filter(({ hasLife }) => fits === "any" || hasLife).map(({ id, label }) => ({ value: id, label })),
        ]}
      />
    </>
  );
}

/** How the doubt is stated, with an example of how it is written. */
function DoubtFields({ name }: { name: string }) {
  const kind: DistributionKind = useWatch({ name: `${name}.kind` }) ?? "pert";
  const target: unknown = useWatch({ name: `${name}.target.kind` });
  const written =
    target === "life"
      ? "For instance “8: 25 %, 10: 50 %, 12: 25 %”."
      : `${distributions[kind].written}, for instance ${examples[kind]}.`;
  return (
    <>
      <ChoiceField name={`${name}.kind`} label="How sure it is" choices={ways} />
      <TextField name={`${name}.figures`} label="Figures" hint={written} />
    </>
  );
}

/** As shares of the entered figure, which is how prices are told here. */
const examples: Readonly<Record<DistributionKind, string>> = {
  fixed: "“100 %”",
  uniform: "“90 % / 120 %”",
  triangular: "“90 % / 100 % / 125 %”",
  pert: "“90 % / 100 % / 125 %”",
  normal: "“100 % ± 10 %”",
  lognormal: "“100 % / 20 %”",
  discrete: "“90 %: 25 %, 100 %: 75 %”",
};
