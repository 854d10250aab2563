"use client";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { costLines, type PriceLineKind } from "#lib/cost";
import { type Choice, options } from "../../../../../_components/form/choice-field";
import { freshId } from "../../../../../_components/form/fresh-id";
import { TextField } from "../../../../../_components/form/text-field";
import { priceKinds } from "../../../_components/price/price-kinds";
import { PriceLineFields } from "../../../_components/price/price-line-fields";
import { useUndo } from "../../../_components/use-undo";
import type { LinkedBid } from "./link-fields";
import styles from "./owners-figures.module.css";
import type { OwnersValues } from "./owners-values";

type LineText = NonNullable<NonNullable<OwnersValues["baseAlternative"]>["prices"]>[number];

const kinds = Object.keys(priceKinds) as PriceLineKind[];

/** What payback and savings are counted against, and the owner's own alternative line by line. */
export function AlternativeFields({ bids }: { bids: readonly LinkedBid[] }) {
  const { setValue, control } = useFormContext<OwnersValues>();
  const compared = useWatch({ control, name: "comparedWith" });
  const alternative = useWatch({ control, name: "baseAlternative" });
  const choices: readonly Choice[] = [
    { value: "nothing", label: "Nothing" },
    { value: "base-alternative", label: "An alternative of the owner’s own" },
    ...bids.map(({ id, letter }) => ({ value: `bid ${id}`, label: `Bid ${letter}` })),
  ];
  const chosen = compared.kind === "bid" ? `bid ${compared.bid}` : compared.kind;
  const choose = (value: string) => {
    const next: OwnersValues["comparedWith"] =
      value === "nothing" || value === "base-alternative"
        ? { kind: value }
        : { kind: "bid", bid: value.replace(/^bid /, "") };
    setValue("comparedWith", next, { shouldDirty: true });
    if (value === "base-alternative" && (alternative ?? null) === null)
      setValue("baseAlternative", { label: "Natural grass", hoursPerYear: "", prices: [] }, { shouldDirty: true });
  };
  return (
    <>
      <p>
        <label>
          Compared with{" "}
          <select value={chosen} onChange={({ target }) => choose(target.value)}>
            {options(choices)}
          </select>
        </label>
      </p>
      {(alternative ?? null) === null ? null : <Alternative />}
    </>
  );
}

function Alternative() {
  const { control, getValues } = useFormContext<OwnersValues>();
  const { fields, append, insert, remove } = useFieldArray({
    control,
    name: "baseAlternative.prices",
    keyName: "key",
  });
  const { keep, notice } = useUndo<LineText>(insert as (index: number, value: LineText) => void);
  const lines = fields as readonly (LineText & { key: string })[];
  const taken = () => (getValues("baseAlternative.prices") ?? []).map(({ id }) => id);
  return (
    <fieldset className={styles.alternative}>
      <legend>The owner’s own alternative</legend>
      <div className={styles.group}>
        <TextField name="baseAlternative.label" label="What it is" />
        <TextField
          name="baseAlternative.hoursPerYear"
          label="Hours it can be used a year"
          hint="Empty: as many as the brief asks for. Natural grass usually bears fewer."
          dimension="yearlyUse"
        />
      </div>
      {lines.map(({ key, id, kind, label }, index) => (
        <details key={key} id={`alternative-${id}`} open={label === ""} className={styles.line}>
          <summary>{label || costLines[kind].label}</summary>
          <PriceLineFields name={`baseAlternative.prices.${index}`} kind={kind} place={index + 1} givenBy="owner" />
          <button
            type="button"
            className="plain"
            onClick={() => {
              const value = structuredClone(getValues(`baseAlternative.prices.${index}`)) as LineText;
              remove(index);
              keep({ index, value, words: value.label || "price line" });
            }}
          >
            Remove this line
          </button>
        </details>
      ))}
      {notice}
      <p>
        <label>
          Add a price line{" "}
          <select
            value=""
            onChange={({ target }) => {
              const blank = priceKinds[target.value as PriceLineKind].blank(freshId("line", taken()));
              append({ ...blank, givenBy: "owner-estimate" } as LineText, {
                focusName: `baseAlternative.prices.${lines.length}.label`,
              });
            }}
          >
            {options([
              { value: "", label: "Choose how it is paid" },
              ...kinds.map((kind) => ({ value: kind, label: costLines[kind].label })),
            ])}
          </select>
        </label>
      </p>
    </fieldset>
  );
}
