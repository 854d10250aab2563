"use client";
import { useMemo, useState } from "react";
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
import { CellProblems, PasteArea, type PasteOutcome } from "../../../../../_components/form/paste-area";
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
  return (
    <PasteArea
      title="Paste rows from a spreadsheet"
      explain="Copy the rows and paste them here. A first row with headings names the columns in any order; without one they are read as property, figure, test method, condition, evidence, document, page, words, note, edition, date of the report, laboratory, accreditation, tested build, field tested, fields behind the figure."
      label="Pasted rows"
      pasted={pasted}
      setPasted={setPasted}
      outcome={outcomeOf(block, (layout) => setChosen({ text: pasted, layout }))}
      take={() => {
        if (block.kind === "read") addAll(block.claims.map(({ claim }) => claim));
      }}
    />
  );
}

function outcomeOf(block: ReturnType<typeof pastedBlock>, choose: (layout: PastedLayout) => void): PasteOutcome {
  if (block.kind !== "read") return block;
  const rows = block.claims.length;
  return {
    ...{ kind: "read", rows, summary: summary(block) },
    takeOver: rows === 1 ? "Add this claim" : `Add these ${rows} claims`,
    preview: (
      <>
        <ColumnChoice rows={block.rows} layout={block.layout} choose={choose} />
        <Scroller label="How the pasted rows were read">
          <Preview claims={block.claims} />
        </Scroller>
      </>
    ),
  };
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
              <CellProblems messages={problems.filter(({ field }) => field === "row").map(({ message }) => message)} />
            </th>
            {claimFields.map((field) => (
              <td key={field}>
                {shownText(claim, field)}
                {field === "figure" ? <span className={styles.reading}>{figureReading(claim)}</span> : null}
                <CellProblems
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
    case "testField":
    case "fieldCount":
    case "spread":
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
