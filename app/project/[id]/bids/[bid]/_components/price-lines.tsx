"use client";
import { useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { type CostSetting, costLines, type PriceLineKind } from "#lib/cost";
import type { BidText } from "#lib/evaluation";
import { freshId } from "../../../../../_components/form/fresh-id";
import { TextField } from "../../../../../_components/form/text-field";
import grid from "../../../_components/field-grid.module.css";
import { type PriceLineText, priceKinds } from "../../../_components/price/price-kinds";
import { PriceLineFields } from "../../../_components/price/price-line-fields";
import { useUndo } from "../../../_components/use-undo";
import styles from "./fields.module.css";
import { idsOf } from "./ids-of";
import { PriceOutcome } from "./price-outcome";

const kinds = Object.keys(priceKinds) as PriceLineKind[];

/** What the bid costs, line by line, with the owner's own estimates told apart from the bidder's prices. */
export function PriceLines({ costing }: { costing: CostSetting }) {
  const { control, getValues } = useFormContext<BidText>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "prices", keyName: "key" });
  const { keep, notice } = useUndo<PriceLineText>(insert);
  const add = (kind: PriceLineKind) =>
    append(priceKinds[kind].blank(freshId("price", idsOf(getValues()))), {
      focusName: `prices.${fields.length}.label`,
    });
  const takeOut = (index: number) => {
    const value = getValues(`prices.${index}`);
    remove(index);
    keep({ index, value, words: value.label || "price line" });
  };
  return (
    <section aria-labelledby="prices">
      <h2 id="prices">Prices</h2>
      <p>
        Amounts as the bid writes them: “$388,000”, “$4.85/ft²”, or a quantity and its unit price. What a bid leaves out
        is added as the owner’s estimate, and stays marked as such everywhere.
      </p>
      <div className={`${grid.fields} screen-only`}>
        <TextField
          name="statedTotal"
          label="Sum as the bid form states it"
          hint="Checked against the prices below."
          dimension="money"
        />
        <TextField name="statedTotalInWords" label="The same sum in words" className={grid.wide} />
      </div>
      <ol className={styles.entries}>
        {fields.map(({ key, id, kind, label }, index) => (
          <PriceEntry key={key} id={id} index={index}>
            <PriceOutcome name={`prices.${index}`} costing={costing} />
            <Entering place={index + 1} isNew={label === ""}>
              <PriceLineFields name={`prices.${index}`} kind={kind} place={index + 1} />
            </Entering>
            <button type="button" className="plain screen-only" onClick={() => takeOut(index)}>
              Remove price line {index + 1}
            </button>
          </PriceEntry>
        ))}
      </ol>
      {notice}
      <h3 className="screen-only">Add a price line</h3>
      <ul className={`${styles.kinds} screen-only`}>
        {kinds.map((kind) => (
          <li key={kind}>
            <button type="button" onClick={() => add(kind)}>
              {costLines[kind].label}
            </button>
            <p>{priceKinds[kind].explanation}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The fields of a line, out of sight until they are wanted; those of a line that was just added are wanted. */
function Entering({ place, isNew, children }: { place: number; isNew: boolean; children: React.ReactNode }) {
  const [beginsOpen] = useState(isNew);
  return (
    <details className="screen-only" open={beginsOpen}>
      <summary>Change price line {place}</summary>
      {children}
    </details>
  );
}

function PriceEntry({ id, index, children }: { id: string; index: number; children: React.ReactNode }) {
  const { control } = useFormContext<BidText>();
  const [label, kind, givenBy] = useWatch({
    control,
    name: [`prices.${index}.label`, `prices.${index}.kind`, `prices.${index}.givenBy`],
    exact: true,
  });
  const isEstimate = givenBy === "owner-estimate";
  return (
    <li id={id} className={isEstimate ? styles.estimate : undefined}>
      <h3>
        {label || costLines[kind].label}
        <span className={`${styles.stamp} ${isEstimate ? styles.estimateStamp : ""}`}>
          {isEstimate ? "Owner’s estimate" : "From the bid"}
        </span>
      </h3>
      {children}
    </li>
  );
}
