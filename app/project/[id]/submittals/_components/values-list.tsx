"use client";
import { useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { matchProperty, propertyOf } from "#lib/claim";
import { options } from "../../../../_components/form/choice-field";
import { freshId } from "../../../../_components/form/fresh-id";
import { useUndo } from "../../_components/use-undo";
import { type ClaimValues, emptyClaim } from "../_register/claim-values";
import { propertyChoices, ValueFields } from "./value-fields";
import styles from "./values-list.module.css";

/** The values of one paper or test, each with its own fields. */
export function ValuesList({
  name,
  what,
  proposed = [],
  condition = "",
}: {
  /** Path of the list in the form. */
  name: string;
  /** What an entry is called: “value of version 1”. */
  what: string;
  /** Properties that are asked for and offered first. */
  proposed?: readonly string[];
  /** What a new entry starts with as its condition. */
  condition?: string;
}) {
  const { control, getValues } = useFormContext();
  const { fields, append, insert, remove } = useFieldArray({ control, name, keyName: "key" });
  const { keep, notice } = useUndo<ClaimValues>((index, value) => insert(index, value));
  const [next, setNext] = useState("");
  const held: readonly ClaimValues[] = useWatch({ name }) ?? [];
  const open = proposed.filter((property) => held.every((value) => value.property !== property));
  const property = next === "" ? (open[0] ?? "g-max") : next;
  const labelAt = (index: number): string => {
    const known = matchProperty(held[index]?.property ?? "");
    return known === null ? "no property yet" : propertyOf(known).label;
  };
  const add = () => {
    const taken = (getValues(name) as readonly ClaimValues[]).map(({ id }) => id);
    append(emptyClaim(freshId(property, taken), property, condition), { focusName: `${name}.${fields.length}.figure` });
    setNext("");
  };
  return (
    <>
      <ol className={styles.values}>
        {fields.map(({ key }, index) => (
          <li key={key} id={`${name}.${index}`}>
            <fieldset>
              <legend>
                <span className="visually-hidden">
                  {what} {index + 1}:{" "}
                </span>
                {labelAt(index)}
              </legend>
              <ValueFields at={`${name}.${index}`} />
              <button
                type="button"
                className="plain screen-only"
                onClick={() => {
                  const value = structuredClone(getValues(`${name}.${index}`)) as ClaimValues;
                  remove(index);
                  keep({ index, value, words: `“${labelAt(index)}”` });
                }}
              >
                Remove<span className="visually-hidden"> {labelAt(index)}</span>
              </button>
            </fieldset>
          </li>
        ))}
      </ol>
      {notice}
      <div className={`${styles.add} screen-only`}>
        <label htmlFor={`${name}-next`}>Next {what}</label>
        <select id={`${name}-next`} value={property} onChange={({ target }) => setNext(target.value)}>
          {options(propertyChoices)}
        </select>
        <button type="button" onClick={add}>
          Add the value
        </button>
      </div>
    </>
  );
}
