"use client";
import { useFormContext, useWatch } from "react-hook-form";
import { type Choice, ChoiceField } from "../../../../_components/form/choice-field";
import { TextField } from "../../../../_components/form/text-field";
import styles from "../field-grid.module.css";

type LineText = Readonly<{ id: string; kind: string; label: string }>;

/** A part that stays through several lives of another part of the same list, as a shock layer does under carpets. */
export function ReuseFields({ name }: { name: string }) {
  const { setValue } = useFormContext();
  const list = name.replace(/\.\d+$/, "");
  const own = Number(name.slice(list.length + 1));
  const lines: readonly LineText[] = useWatch({ name: list }) ?? [];
  const reuse: unknown = useWatch({ name: `${name}.reuse` });
  const others = lines.filter(({ kind }, place) => kind === "replacement-chain" && place !== own);
  const isTied = reuse !== null && reuse !== undefined;
  if (others.length === 0 && !isTied) return null;
  const choices: readonly Choice[] = others.map(({ id, label }) => ({ value: id, label: label || id }));
  return (
    <>
      <p className={styles.full}>
        <button
          type="button"
          className="plain"
          onClick={() =>
            setValue(`${name}.reuse`, isTied ? null : { line: others[0]?.id ?? "", lives: "2" }, { shouldDirty: true })
          }
        >
          {isTied ? "Give it a life of its own" : "Let it stay through several lives of another part"}
        </button>
      </p>
      {isTied ? (
        <>
          <ChoiceField name={`${name}.reuse.line`} label="Stays under" choices={choices} />
          <TextField name={`${name}.reuse.lives`} label="Through how many of its lives" hint="For instance 2." />
        </>
      ) : null}
    </>
  );
}
