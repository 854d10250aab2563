"use client";
import { useEffect, useMemo, useRef, useState } from "react";
import {
  accreditations,
  type ClaimField,
  type ClaimText,
  claimFieldLabels,
  claimFields,
  evidenceLevels,
  formatCondition,
  matchEvidence,
  matchMethod,
  matchProperty,
  methodOf,
  type PastedClaim,
  type PastedLayout,
  parseCondition,
  propertyOf,
  shownIn,
  testedBuilds,
} from "#lib/claim";
import { Scroller } from "../../../../../_components/scroller";
import { ColumnChoice } from "./column-choice";
import styles from "./paste-rows.module.css";
import { pastedBlock } from "./pasted-claims";
import { readingText } from "./reading-text";

/** A block from a spreadsheet, shown as it was read before it goes into the ledger. */
export function PasteRows({
  pasted,
  setPasted,
  addAll,
}: {
  pasted: string;
  setPasted: (text: string) => void;
  addAll: (claims: readonly ClaimText[]) => void;
}) {
  // what was said of the columns holds for the block it was said of
  const [chosen, setChosen] = useState<Readonly<{ text: string; layout: PastedLayout }> | null>(null);
  const block = useMemo(
    () => pastedBlock(pasted, chosen !== null && chosen.text === pasted ? chosen.layout : null),
    [pasted, chosen],
  );
  const area = useRef<HTMLTextAreaElement>(null);
  // a block that was pasted into the table shows up here, out of sight of where it was pasted
  useEffect(() => {
    if (pasted !== "" && document.activeElement !== area.current) area.current?.focus();
  }, [pasted]);
  return (
    <details className={`${styles.paste} screen-only`} open={pasted !== "" || undefined}>
      <summary>Paste rows from a spreadsheet</summary>
      <p>
        Copy the rows and paste them here. A first row with headings names the columns in any order; without one they
        are read as property, figure, test method, condition, evidence, document, page, words, note, edition, date of
        the report, laboratory, accreditation, tested build.
      </p>
      <label htmlFor="pasted-rows">Pasted rows</label>
      <textarea
        id="pasted-rows"
        ref={area}
        rows={4}
        value={pasted}
        spellCheck={false}
        onChange={({ target }) => setPasted(target.value)}
      />
      {block.kind === "not-read" ? (
        <p role="alert" className={styles.trouble}>
          {block.message}
        </p>
      ) : null}
      {block.kind === "read" ? (
        <>
          <p role="status">{summary(block)}</p>
          <ColumnChoice
            rows={block.rows}
            layout={block.layout}
            choose={(layout) => setChosen({ text: pasted, layout })}
          />
          <Scroller label="How the pasted rows were read">
            <Preview claims={block.claims} />
          </Scroller>
          <p className="row">
            <button
              type="button"
              className="primary"
              aria-disabled={block.claims.length === 0}
              onClick={() => {
                if (block.claims.length === 0) return;
                addAll(block.claims.map(({ claim }) => claim));
                setPasted("");
              }}
            >
              {block.claims.length === 1 ? "Add this claim" : `Add these ${block.claims.length} claims`}
            </button>
            <button type="button" onClick={() => setPasted("")}>
              Leave them out
            </button>
          </p>
        </>
      ) : null}
    </details>
  );
}

function summary({
  claims,
  unreadHeadings,
  blankRows,
}: Readonly<{ claims: readonly PastedClaim[]; unreadHeadings: readonly string[]; blankRows: number }>): string {
  const troubled = claims.filter(({ problems }) => problems.length > 0).length;
  const sentences = [
    claims.length === 1 ? "1 row was found." : `${claims.length} rows were found.`,
    troubled === 0
      ? "All of it reads."
      : `${troubled === 1 ? "1 row needs" : `${troubled} rows need`} attention; it keeps its text and can be put right in the ledger, and until then the bid stays a draft.`,
    unreadHeadings.length === 0
      ? ""
      : `No field is called ${unreadHeadings.map((heading) => `“${heading}”`).join(", ")}; what stands there goes into the note.`,
    blankRows === 0 ? "" : blankRows === 1 ? "1 empty row is left out." : `${blankRows} empty rows are left out.`,
  ];
  return sentences.filter((sentence) => sentence !== "").join(" ");
}

function Preview({ claims }: { claims: readonly PastedClaim[] }) {
  return (
    <table className={styles.preview}>
      <caption>How the rows were read</caption>
      <thead>
        <tr>
          <th scope="col">Row</th>
          {claimFields.map((field) => (
            <th key={field} scope="col">
              {claimFieldLabels[field]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {claims.map(({ row, claim, problems }) => (
          <tr key={row}>
            <th scope="row">
              {row}
              <Problems messages={problems.filter(({ field }) => field === "row").map(({ message }) => message)} />
            </th>
            {claimFields.map((field) => (
              <td key={field}>
                {shownText(claim, field)}
                {field === "figure" ? <span className={styles.reading}>{figureReading(claim)}</span> : null}
                <Problems
                  messages={problems.filter((problem) => problem.field === field).map(({ message }) => message)}
                />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Problems({ messages }: { messages: readonly string[] }) {
  return messages.map((message) => (
    <span key={message} className={styles.trouble}>
      {message}
    </span>
  ));
}

/** A cell in the words of the ledger where it reads, as pasted where it does not. */
function shownText(claim: ClaimText, field: ClaimField): string {
  const text = claim[field];
  switch (field) {
    case "property": {
      const property = matchProperty(text);
      return property === null ? text : propertyOf(property).label;
    }
    case "method": {
      const method = matchMethod(text);
      if (method === "not-stated") return "not stated";
      return method === null ? text : methodOf(method).designation;
    }
    case "condition": {
      const condition = parseCondition(text);
      return condition.ok ? formatCondition(condition.value) : text;
    }
    case "evidence":
      return evidenceLevels.find(({ id }) => id === matchEvidence(text))?.label ?? text;
    case "accreditation":
      return text === "not-stated" ? "" : (accreditations.find(({ id }) => id === text)?.label ?? text);
    case "build":
      return text === "not-stated" ? "" : (testedBuilds.find(({ id }) => id === text)?.label ?? text);
    case "edition":
    case "date":
    case "laboratory":
    case "figure":
    case "document":
    case "page":
    case "words":
    case "note":
      return text;
  }
}

function figureReading(claim: ClaimText): string | null {
  const id = matchProperty(claim.property);
  const property = id === null ? null : propertyOf(id);
  return property?.kind === "quantity"
    ? readingText(property.dimension, claim.figure, [shownIn(property, "us"), shownIn(property, "metric")])
    : null;
}
