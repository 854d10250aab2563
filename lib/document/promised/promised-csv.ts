import { commaSeparated, methodOf, propertyOf } from "#lib/claim";
import { columnLabel, inColumn, type PromisedRow, promisedColumns, type RowFindings } from "#lib/submittal";

/** A row of promises with what it shows. */
export type ToldRow = Readonly<{ row: PromisedRow; findings: RowFindings }>;

/** The methods behind a row, as they are called. */
export const methodsInWords = ({ methods }: PromisedRow): string =>
  methods.map((method) => (method === "not-stated" ? "" : methodOf(method).designation)).join(", ");

/** Promised against measured for a spreadsheet: one row a property and kind of method, deviations in the last column. */
export function promisedCsv(told: readonly ToldRow[]): string {
  const columns = promisedColumns(told.map(({ row }) => row));
  return commaSeparated([
    ["Property", "Test method", ...columns.map(columnLabel), "Deviations"],
    ...told.map(({ row, findings }) => [
      propertyOf(row.property).label,
      methodsInWords(row),
      ...columns.map((column) =>
        inColumn(row, column)
          .map(({ value, detail }) => (detail === "" ? value : `${value} (${detail})`))
          .join("; "),
      ),
      [...findings.deviations, ...findings.notes, ...findings.gaps].join(" "),
    ]),
  ]);
}
