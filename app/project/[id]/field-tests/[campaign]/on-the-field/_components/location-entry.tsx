"use client";
import { useId } from "react";
import { useFormContext } from "react-hook-form";
import type { CampaignText } from "#lib/evaluation";
import { FieldFrame, fieldAttributes } from "../../../../../../_components/form/field-frame";
import { problemAt } from "../../../../../../_components/form/problem-at";
import { TextField } from "../../../../../../_components/form/text-field";
import styles from "./field-entry.module.css";

const drops = [0, 1, 2] as const;

/** One location with large fields for its three drops. */
export function LocationEntry({ index }: { index: number }) {
  const { getValues } = useFormContext<CampaignText>();
  const { label = "", x = "", y = "" } = getValues(`locations.${index}`) ?? {};
  return (
    <section aria-labelledby="this-location" className={styles.location}>
      <h2 id="this-location" tabIndex={-1}>
        {index + 1}. {label === "" ? "Location without a name" : label}
      </h2>
      <p className={styles.position}>{x === "" || y === "" ? "Position not noted." : `x ${x}, y ${y}`}</p>
      <div className={styles.drops}>
        {drops.map((drop) => (
          <DropField key={drop} name={`locations.${index}.drops.${drop}`} label={`Drop ${drop + 1}`} />
        ))}
      </div>
      <TextField name={`locations.${index}.note`} label="Note" />
      {x === "" || y === "" ? (
        <div className={styles.drops}>
          <TextField name={`locations.${index}.x`} label="x" dimension="coordinate" />
          <TextField name={`locations.${index}.y`} label="y" dimension="coordinate" />
        </div>
      ) : null}
    </section>
  );
}

function DropField({ name, label }: { name: string; label: string }) {
  const { register, getValues, formState } = useFormContext();
  const id = useId();
  const words = { name, label: `${label}, g`, className: styles.drop };
  const problem = problemAt(formState.errors, name);
  return (
    <FieldFrame id={id} words={words} problem={problem}>
      <input
        type="text"
        inputMode="decimal"
        enterKeyHint="next"
        autoComplete="off"
        defaultValue={getValues(name)}
        {...register(name)}
        {...fieldAttributes(id, words, problem)}
      />
    </FieldFrame>
  );
}
