import { propertyOf } from "#lib/claim";
import { methodsInWords, type ToldRow } from "#lib/document";
import { columnKey, columnLabel, inColumn, type PromiseEntry, promisedColumns } from "#lib/submittal";
import { Scroller } from "../../../../_components/scroller";
import type { Papers } from "../../_components/paper/document-address";
import { DocumentLink } from "../../_components/paper/document-link";
import styles from "./promised-table.module.css";

/** One row a property and kind of method: who promised what, and what was measured. */
export function PromisedTable({ told, papers }: { told: readonly ToldRow[]; papers: Omit<Papers, "owners"> }) {
  const columns = promisedColumns(told.map(({ row }) => row));
  return (
    <Scroller label="Promised against measured">
      <table className={styles.promised}>
        <caption className="visually-hidden">Promised against measured</caption>
        <thead>
          <tr>
            <th scope="col">Property</th>
            {columns.map((column) => (
              <th key={columnKey(column)} scope="col">
                {columnLabel(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {told.map(({ row, findings }) => {
            const methods = methodsInWords(row);
            const count = findings.deviations.length;
            return (
              <tr key={`${row.property} ${methods}`}>
                <th scope="row" className={styles.property}>
                  {propertyOf(row.property).label}
                  {methods === "" ? null : <span className={styles.detail}>{methods}</span>}
                  {count === 0 ? null : (
                    <span className={styles.trouble}>{count === 1 ? "1 deviation" : `${count} deviations`}</span>
                  )}
                </th>
                {columns.map((column) => (
                  <td key={columnKey(column)}>
                    {inColumn(row, column).map((entry) => (
                      <Entry key={`${entry.value} ${entry.detail} ${entry.document}`} entry={entry} papers={papers} />
                    ))}
                    {inColumn(row, column).length === 0 ? "–" : null}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}

function Entry({ entry, papers }: { entry: PromiseEntry; papers: Omit<Papers, "owners"> }) {
  const { value, detail, document, page, owner, column, years } = entry;
  const age = column.kind === "bid" && years !== null && years > 0 ? `year ${years}: ` : "";
  return (
    <p className={styles.entry}>
      {age}
      <strong>{value}</strong>
      {detail === "" ? null : <span className={styles.detail}>{detail}</span>}
      {document === "" ? null : (
        <span className={styles.detail}>
          <DocumentLink papers={{ ...papers, owners: [owner] }} named={{ document, page }} />
        </span>
      )}
    </p>
  );
}
