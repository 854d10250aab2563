"use client";
import { memo, useId, useState } from "react";
import { type Control, type UseFormGetValues, useWatch } from "react-hook-form";
import {
  type ClaimField,
  comparesBy,
  fieldsInWords,
  matchAccreditation,
  matchTestedBuild,
  type Property,
  parseFieldCount,
  reportInWords,
} from "#lib/claim";
import type { BidText } from "#lib/evaluation";
import { AccreditationCell, BuildCell, EvidenceCell, MethodCell, PropertyCell, usePropertyOf } from "./choice-cells";
import { type Cell, TextCell } from "./claim-cell";
import { FigureCell } from "./figure-cell";
import styles from "./ledger.module.css";
import { ledgerColumns } from "./ledger-columns";

/** One claim: a line of cells and, when opened, a second line with report, the bid's words and the owner's note. */
export const ClaimRow = memo(function ClaimRow({
  control,
  getValues,
  index,
  id,
  missing,
  remove,
}: {
  control: Control<BidText>;
  getValues: UseFormGetValues<BidText>;
  index: number;
  id: string;
  missing: readonly Property[];
  remove: (index: number) => void;
}) {
  const [isOpen, setOpen] = useState(false);
  const second = useId();
  const cell = (field: ClaimField, label: string): Cell => ({ control, getValues, index, field, label });
  return (
    <tbody id={id} data-row={index}>
      <tr>
        {ledgerColumns.map(({ field, label }) => {
          const Tag = field === "property" ? "th" : "td";
          return (
            <Tag key={field} className={styles[field]} {...(field === "property" ? { scope: "row" } : {})}>
              <LedgerCell cell={cell(field, label)} missing={missing} />
            </Tag>
          );
        })}
        <td className={styles.commands}>
          <button
            type="button"
            className="plain"
            aria-expanded={isOpen}
            aria-controls={second}
            onClick={() => setOpen(!isOpen)}
          >
            Report<span className="visually-hidden"> and words of claim {index + 1}</span>
          </button>
          <button type="button" className="plain" onClick={() => remove(index)}>
            Remove<span className="visually-hidden"> claim {index + 1}</span>
          </button>
        </td>
      </tr>
      <tr id={second} className={styles.second}>
        <td colSpan={ledgerColumns.length + 1}>
          {isOpen ? (
            <div className={styles.words}>
              <TextCell cell={cell("laboratory", "Laboratory or tester")} />
              <AccreditationCell cell={cell("accreditation", "Accreditation for the method")} />
              <TextCell cell={cell("date", "Date of the report, such as May 2024")} />
              <TextCell cell={cell("edition", "Edition of the method, such as F1936-19")} />
              <BuildCell cell={cell("build", "Tested build")} />
              <TextCell cell={cell("testField", "Field tested, a short name")} />
              <TextCell cell={cell("fieldCount", "Fields behind the figure, such as 4 for a mean over four")} />
              <TextCell cell={cell("spread", "Standard deviation of single results, such as 6 g or 5 %")} />
              <TextCell cell={cell("words", "The bid’s words, as written")} />
              <TextCell cell={cell("note", "Your note; never the bidder’s words")} />
              <Question cell={cell("property", "")} />
            </div>
          ) : (
            <ClosedWords control={control} index={index} />
          )}
        </td>
      </tr>
    </tbody>
  );
});

function LedgerCell({ cell, missing }: { cell: Cell; missing: readonly Property[] }) {
  switch (cell.field) {
    case "property":
      return <PropertyCell cell={cell} missing={missing} />;
    case "figure":
      return <FigureCell cell={cell} />;
    case "method":
      return <MethodCell cell={cell} />;
    case "evidence":
      return <EvidenceCell cell={cell} />;
    case "accreditation":
      return <AccreditationCell cell={cell} />;
    case "build":
      return <BuildCell cell={cell} />;
    case "condition":
      return <TextCell cell={cell} list="usual-conditions" />;
    case "document":
    case "page":
    case "words":
    case "note":
    case "edition":
    case "date":
    case "laboratory":
    case "testField":
    case "fieldCount":
    case "spread":
      return <TextCell cell={cell} />;
  }
}

/** What a buyer would ask, and why. */
function Question({ cell }: { cell: Cell }) {
  const property = usePropertyOf(cell);
  if (property === null) return null;
  return (
    <p className={styles.question}>
      {property.question} {property.why} {comparesBy(property)}
    </p>
  );
}

function ClosedWords({ control, index }: { control: Control<BidText>; index: number }) {
  const at = `claims.${index}` as const;
  const [words, note, edition = "", date = "", laboratory = "", accreditation = "", build = "", ...fields] = useWatch({
    control,
    name: [
      `${at}.words`,
      `${at}.note`,
      `${at}.edition`,
      `${at}.date`,
      `${at}.laboratory`,
      `${at}.accreditation`,
      `${at}.build`,
      `${at}.testField`,
      `${at}.fieldCount`,
      `${at}.spread`,
    ],
    exact: true,
  });
  const report = reportInWords({
    date,
    laboratory,
    accreditation: matchAccreditation(accreditation) ?? "not-stated",
    build: matchTestedBuild(build) ?? "not-stated",
  });
  const [testField = "", fieldCount = "", spread = ""] = fields;
  const count = parseFieldCount(fieldCount);
  const measured = fieldsInWords({ testField, fieldCount: count.ok ? count.value : null });
  const scatter = spread === "" ? "" : `standard deviation ${spread}`;
  const shown = [edition === "" ? "" : `edition ${edition}`, ...report, ...measured, scatter]
    .filter((part) => part !== "")
    .join(", ");
  return (
    <>
      {shown === "" ? null : <span className={styles.report}>Report: {shown}</span>}
      {words ? <q>{words}</q> : null}
      {note ? <span className={styles.note}>Note: {note}</span> : null}
    </>
  );
}
