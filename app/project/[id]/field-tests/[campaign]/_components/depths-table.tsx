"use client";
import { useMemo, useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { CampaignText } from "#lib/evaluation";
import { type PastedUnits, pastedDepths } from "#lib/fieldtest";
import type { UnitSystem } from "#lib/quantity";
import { freshId } from "../../../../../_components/form/fresh-id";
import { problemAt } from "../../../../../_components/form/problem-at";
import { useUndo } from "../../../_components/use-undo";
import { rowNumbers } from "../../_tests/pasted-places";
import styles from "./campaign-form.module.css";
import { cellReading } from "./cell-reading";
import { depthColumns } from "./entry-columns";
import { EntryTable } from "./entry-table";
import { type BlockRead, PasteBlock } from "./paste-block";

type DepthText = NonNullable<CampaignText["depths"]>[number];

const usualUnits = {
  us: { position: "ft", depth: "in" },
  metric: { position: "m", depth: "mm" },
} as const satisfies Record<UnitSystem, PastedUnits>;

/** Depth of the infill at each spot that was probed. */
export function DepthsTable({ units }: { units: UnitSystem }) {
  const { control, getValues, setValue, formState } = useFormContext<CampaignText>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "depths", keyName: "key" });
  const { keep, notice } = useUndo<DepthText>(insert);
  const [pasted, setPasted] = useState("");
  const [bare, setBare] = useState<PastedUnits>(usualUnits[units]);
  const read = useMemo(() => (pasted.trim() === "" ? null : pastedDepths(pasted, bare)), [pasted, bare]);
  const idsTaken = () => (getValues("depths") ?? []).map(({ id }) => id);
  const problem = problemAt(formState.errors, "depths");
  const addBelow = (row: number, column: string) =>
    insert(
      row + 1,
      { id: freshId("depth", idsTaken()), x: "", y: "", depth: "" },
      { focusName: `depths.${row + 1}.${column}` },
    );
  const takeOut = (index: number) => {
    const value = getValues(`depths.${index}`);
    if (value === undefined) return;
    remove(index);
    keep({ index, value, words: `depth ${index + 1}, ${value.depth}` });
  };
  const take = () => {
    if (read === null || !read.ok) return;
    const taken = idsTaken();
    append(
      read.value.rows.map(({ x, y, depth }) => {
        const id = freshId("depth", taken);
        taken.push(id);
        return { id, x, y, depth };
      }),
      { focusName: `depths.${fields.length}.x` },
    );
    const notes = read.value.rows.flatMap(({ x, y, note }) => (note === "" ? [] : [`Depth at ${x}, ${y}: ${note}`]));
    if (notes.length > 0)
      setValue("note", [getValues("note") ?? "", ...notes].filter((line) => line !== "").join("\n"));
  };
  const block = ((): BlockRead => {
    if (read === null) return { kind: "nothing" };
    if (!read.ok) return { kind: "not-read", message: read.problem };
    const { rows, problems, heading } = read.value;
    return {
      kind: "read",
      columns: ["x", "y", "Depth"],
      problems,
      firstRow: rowNumbers(pasted, heading),
      rows: rows.map(({ x, y, depth, note }) => ({
        cells: [
          cellReading("coordinate", x, units),
          cellReading("coordinate", y, units),
          cellReading("length", depth, units),
        ],
        goesTo: note === "" ? "a new depth" : `a new depth; “${note}” goes to the remarks`,
      })),
    };
  })();
  return (
    <section aria-labelledby="depths">
      <h2 id="depths">Infill depths</h2>
      <p>Depth of the infill where it was probed, each with its place: “{units === "us" ? "1.9 in" : "48 mm"}”.</p>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {fields.length === 0 ? (
        <p>No depth is entered yet.</p>
      ) : (
        <details className={`${styles.long} printed-open`} open={fields.length <= 12 || undefined}>
          <summary>{fields.length === 1 ? "The depth" : `The ${fields.length} depths`}</summary>
          <EntryTable
            list="depths"
            caption="Depths of the infill"
            row="Depth"
            columns={depthColumns}
            rows={fields}
            addBelow={addBelow}
            remove={takeOut}
            paste={setPasted}
          />
        </details>
      )}
      {notice}
      <p className="row screen-only">
        <button type="button" onClick={() => addBelow(fields.length - 1, "x")}>
          Add a depth
        </button>
      </p>
      <PasteBlock
        title="Paste depths from a spreadsheet"
        explain="Copy the rows and paste them here: x, y, depth. What stands beyond these columns goes to the remarks of the campaign."
        what="rows of depths"
        pasted={pasted}
        setPasted={setPasted}
        block={block}
        take={take}
      >
        <div className={styles.fields}>
          <label className={styles.stacked}>
            Unit of x and y without one
            <select
              value={bare.position}
              onChange={({ target }) => setBare({ ...bare, position: target.value === "m" ? "m" : "ft" })}
            >
              <option value="ft">ft</option>
              <option value="m">m</option>
            </select>
          </label>
          <label className={styles.stacked}>
            Unit of depths without one
            <select
              value={bare.depth}
              onChange={({ target }) => setBare({ ...bare, depth: target.value === "mm" ? "mm" : "in" })}
            >
              <option value="in">in</option>
              <option value="mm">mm</option>
            </select>
          </label>
        </div>
      </PasteBlock>
    </section>
  );
}
