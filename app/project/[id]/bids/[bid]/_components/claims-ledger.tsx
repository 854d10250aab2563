"use client";
import { useCallback, useMemo, useRef, useState } from "react";
import { useFieldArray, useFormContext, useWatch } from "react-hook-form";
import { matchProperty, type PropertyId, propertyOf } from "#lib/claim";
import type { BidText } from "#lib/evaluation";
import { freshId } from "../../../../../_components/form/fresh-id";
import { useUndo } from "../../../_components/use-undo";
import { AddClaim } from "./add-claim";
import { ClaimRow } from "./claim-row";
import { idsOf } from "./ids-of";
import styles from "./ledger.module.css";
import { ledgerColumns } from "./ledger-columns";
import { ledgerMove } from "./ledger-keys";
import { PasteRows } from "./paste-rows";

type ClaimRowText = BidText["claims"][number];

const usualConditions = [
  "new",
  "new, dry",
  "new, wet",
  "year 3",
  "year 5",
  "year 8",
  "after 2,000 h of use",
  "after 20,000 cycles",
  "new, 0.5 in less infill",
  "not stated",
];

const blankClaim = (id: string, property: string): ClaimRowText => {
  const shown = { figure: "", method: "not-stated", condition: "not stated", evidence: "stated" };
  const report = { edition: "", date: "", laboratory: "", accreditation: "not-stated", build: "not-stated" };
  const fields = { testField: "", fieldCount: "", spread: "" };
  return { id, property, ...shown, document: "", page: "", words: "", note: "", ...report, ...fields };
};

/** All claims of one bid, one a row, exactly as the bid writes them. */
export function ClaimsLedger({ wanted }: { wanted: readonly PropertyId[] }) {
  const { control, getValues } = useFormContext<BidText>();
  const { fields, append, insert, remove } = useFieldArray({ control, name: "claims", keyName: "key" });
  const { keep, notice } = useUndo<ClaimRowText>(insert);
  const [pasted, setPasted] = useState("");
  const table = useRef<HTMLTableElement>(null);
  const claimed = useWatch({
    control,
    name: "claims",
    compute: (claims) => claims.map(({ property }) => matchProperty(property) ?? "").join(" "),
  });
  const missing = useMemo(() => {
    const said = new Set(claimed.split(" "));
    return wanted.filter((property) => !said.has(property)).map(propertyOf);
  }, [claimed, wanted]);

  const takeOut = useCallback(
    (index: number) => {
      const value = getValues(`claims.${index}`);
      const matched = matchProperty(value.property);
      const label = matched === null ? value.property || "claim" : propertyOf(matched).label;
      remove(index);
      keep({ index, value, words: [label, value.figure].filter(Boolean).join(", ") });
    },
    [getValues, keep, remove],
  );
  const add = (property: string) =>
    append(blankClaim(freshId(property === "" ? "claim" : property, idsOf(getValues())), property), {
      focusName: `claims.${fields.length}.${property === "" ? "property" : "figure"}`,
    });

  const onKeyDown = (event: React.KeyboardEvent) => {
    const cell = event.target;
    const row = Number(cell instanceof HTMLElement ? cell.closest("tbody")?.dataset.row : undefined);
    if (!(cell instanceof HTMLInputElement || cell instanceof HTMLSelectElement) || Number.isNaN(row)) return;
    const isChoice = cell instanceof HTMLSelectElement;
    const suggests = !isChoice && cell.dataset.typed === "yes" && (cell.list?.options.length ?? 0) > 0;
    if ((isChoice || suggests) && event.key.startsWith("Arrow")) return; // they move in the choices then
    const move = ledgerMove(event, { row, column: cell.dataset.column ?? "", rows: fields.length });
    if (move === null || (isChoice && event.key === "Enter" && !event.ctrlKey && !event.metaKey)) return;
    event.preventDefault();
    if (move.kind === "add-below") {
      const at = move.row + 1;
      insert(at, blankClaim(freshId("claim", idsOf(getValues())), ""), { focusName: `claims.${at}.property` });
    } else {
      const selector = `tbody[data-row="${move.row}"] [data-column="${move.column}"]`;
      const next = table.current?.querySelector<HTMLElement>(selector);
      next?.focus();
      if (next instanceof HTMLInputElement) next.select();
    }
  };
  const onPaste = (event: React.ClipboardEvent) => {
    const text = event.clipboardData.getData("text/plain");
    if (!text.includes("\t")) return;
    event.preventDefault();
    setPasted(text);
  };
  const noteTyping = (event: React.SyntheticEvent) => {
    if (event.target instanceof HTMLInputElement) event.target.dataset.typed = event.type === "input" ? "yes" : "no";
  };

  return (
    <section aria-labelledby="claims" className="screen-only">
      <h2 id="claims">Claims</h2>
      <p>
        One row for each thing the bid says, with the figure as written: “2-1/4 in”, “≥ 8 lbf”, “118 g”. Under each
        figure stands how it was read.
      </p>
      {fields.length === 0 ? (
        <p>No claim is entered yet. Begin with what the owner asks for, or paste a block from a spreadsheet below.</p>
      ) : (
        <p className={`${styles.keys} screen-only`}>
          Tab moves along a row. Up and down move between rows, Enter goes to the row below, and Enter in the page or in
          the last row adds one, as Ctrl+Enter does anywhere. A block pasted into a figure is looked through first.
        </p>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys bubble here from the cells, which are controls */}
      <div className={styles.ledger} onKeyDown={onKeyDown} onPaste={onPaste} onInput={noteTyping} onBlur={noteTyping}>
        {fields.length === 0 ? null : (
          <table ref={table} className={styles.table}>
            <caption className="visually-hidden">Claims of the bid</caption>
            <thead>
              <tr>
                {ledgerColumns.map(({ field, label }) => (
                  <th key={field} scope="col">
                    {label}
                  </th>
                ))}
                <th scope="col">
                  <span className="visually-hidden">Report, words and removal</span>
                </th>
              </tr>
            </thead>
            {fields.map(({ key, id }, index) => (
              <ClaimRow
                key={key}
                control={control}
                getValues={getValues}
                index={index}
                id={id}
                missing={missing}
                remove={takeOut}
              />
            ))}
          </table>
        )}
        <datalist id="usual-conditions">
          {usualConditions.map((condition) => (
            <option key={condition} value={condition} />
          ))}
        </datalist>
      </div>
      {notice}
      <AddClaim missing={missing} add={add} />
      <PasteRows
        pasted={pasted}
        setPasted={setPasted}
        addAll={(claims) => {
          const taken = [...idsOf(getValues())];
          const named = claims.map((claim) => {
            const id = freshId(matchProperty(claim.property) ?? "pasted", taken);
            taken.push(id);
            return { ...claim, id };
          });
          append(named, { focusName: `claims.${fields.length}.figure` });
        }}
      />
    </section>
  );
}
