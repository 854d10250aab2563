"use client";
import { useMemo, useState } from "react";
import { useFieldArray, useFormContext } from "react-hook-form";
import type { CampaignText } from "#lib/evaluation";
import { pastedDrops } from "#lib/fieldtest";
import { freshId } from "../../../../../_components/form/fresh-id";
import { problemAt } from "../../../../../_components/form/problem-at";
import { useUndo } from "../../../_components/use-undo";
import { newLocation, pastedPlaces, rowNumbers, withPastedDrops } from "../../_tests/pasted-places";
import styles from "./campaign-form.module.css";
import { cellReading, wordsCell } from "./cell-reading";
import { dropColumns } from "./entry-columns";
import { EntryTable } from "./entry-table";
import { type BlockRead, PasteBlock } from "./paste-block";

type LocationText = CampaignText["locations"][number];

const blank = (id: string): LocationText => ({ id, label: "", x: "", y: "", drops: ["", "", ""], note: "" });
const pasteColumns = ["Location", "Drop 1", "Drop 2", "Drop 3", "Note"];

/** Every location with its three drops, typed or pasted. */
export function DropsTable({ planned }: { planned: readonly LocationText[] }) {
  const { control, getValues, setValue, formState } = useFormContext<CampaignText>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "locations", keyName: "key" });
  const { keep, notice } = useUndo<LocationText>(insert);
  const [pasted, setPasted] = useState("");
  const read = useMemo(() => (pasted.trim() === "" ? null : pastedDrops(pasted)), [pasted]);
  const locations = () => getValues("locations");
  const idsTaken = () => locations().map(({ id }) => id);
  const problem = problemAt(formState.errors, "locations");
  const addBelow = (row: number, column: string) =>
    insert(row + 1, blank(freshId("location", idsTaken())), { focusName: `locations.${row + 1}.${column}` });
  const takeOut = (index: number) => {
    const value = locations()[index];
    if (value === undefined) return;
    remove(index);
    keep({ index, value, words: `location ${index + 1}${value.label ? `, ${value.label}` : ""}` });
  };
  const missing = planned.filter(
    ({ label, x, y }) => !fields.some((field) => field.label === label && field.x === x && field.y === y),
  );
  const addPlanned = () => {
    const taken = idsTaken();
    append(
      missing.map((location) => {
        const id = freshId(location.id, taken);
        taken.push(id);
        return { ...location, id };
      }),
      { focusName: `locations.${fields.length}.drops.0` },
    );
  };
  const take = () => {
    if (read === null || !read.ok) return;
    const { rows } = read.value;
    const now = locations();
    const places = pastedPlaces(now, rows);
    const taken = idsTaken();
    const added = rows.flatMap((row, index) => {
      if (places[index] !== null) return [];
      const id = freshId("location", taken);
      taken.push(id);
      return [newLocation(id, row)];
    });
    const filled = now.map((location, place) => {
      const row = rows[places.indexOf(place)];
      return row === undefined ? location : withPastedDrops(location, row);
    });
    setValue("locations", [...filled, ...added]);
  };
  const block = ((): BlockRead => {
    if (read === null) return { kind: "nothing" };
    if (!read.ok) return { kind: "not-read", message: read.problem };
    const { rows, problems, heading } = read.value;
    const now = locations();
    const places = pastedPlaces(now, rows);
    return {
      kind: "read",
      columns: pasteColumns,
      problems,
      firstRow: rowNumbers(pasted, heading),
      rows: rows.map(({ label, drops, note }, index) => {
        const place = places[index] ?? null;
        return {
          cells: [wordsCell(label), ...drops.map((drop) => cellReading("impactLevel", drop, "us")), wordsCell(note)],
          goesTo: place === null ? "a new location" : `location ${place + 1}, ${now[place]?.label ?? ""}`,
        };
      }),
    };
  })();
  return (
    <section aria-labelledby="drops">
      <h2 id="drops">Drops</h2>
      <p>
        Three drops on each location, in the order they were made: “117” or “117 g”. The first one only settles the
        spot. x and y are measured from the origin above, with their unit.
      </p>
      {problem === null ? null : <p className={styles.problem}>{problem}</p>}
      {fields.length === 0 ? (
        <p>No location is entered yet.</p>
      ) : (
        <>
          <p className={`${styles.keys} screen-only`}>
            Tab moves along a row. Up, down and Enter move in a column; Enter in the last row adds one, as Ctrl+Enter
            does anywhere. A block pasted into a cell is looked through first.
          </p>
          <EntryTable
            list="locations"
            caption="Locations with their drops"
            row="Location"
            columns={dropColumns}
            rows={fields}
            addBelow={addBelow}
            remove={takeOut}
            paste={setPasted}
          />
        </>
      )}
      {notice}
      <p className="row screen-only">
        <button type="button" onClick={() => addBelow(fields.length - 1, "label")}>
          Add a location
        </button>
        {missing.length === 0 ? null : (
          <button type="button" onClick={addPlanned}>
            {missing.length === 1 ? "Add 1 location of the plan" : `Add ${missing.length} locations of the plan`}
          </button>
        )}
      </p>
      <PasteBlock
        title="Paste drops from a spreadsheet"
        explain="Copy the rows and paste them here: location, drop 1, drop 2, drop 3. A location that is here already, by its name or number, takes the drops if it has none yet; every other row becomes a location of its own. An empty cell is a drop that was not made."
        what="rows of drops"
        pasted={pasted}
        setPasted={setPasted}
        block={block}
        take={take}
      />
    </section>
  );
}
