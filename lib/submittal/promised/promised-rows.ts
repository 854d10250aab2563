import { comparability, properties, propertyOf, type StatedMethod } from "#lib/claim";
import type { PromiseColumn, PromisedRow, PromiseEntry } from "./model";

/**
 * Whether two figures of a property may stand in one row. Where the property is tested, a figure without a method stands
 * with its like only: nobody can tell what it measures.
 */
export function sharesRow(
  one: Pick<PromiseEntry, "property" | "method">,
  other: Pick<PromiseEntry, "property" | "method">,
) {
  if (one.property !== other.property) return false;
  if (one.method === other.method || propertyOf(one.property).methods.length === 0) return true;
  if (one.method === "not-stated" || other.method === "not-stated") return false;
  return comparability(one.property, one.method, other.method).kind === "comparable";
}

const order = new Map(properties.map(({ id }, index) => [id as string, index]));

/**
 * Rows of promises and measurements, one a property and kind of method: unlike methods never stand in one row. Every entry
 * stands in exactly one row; the rows are in the order of the catalogue.
 */
export function promisedRows(entries: readonly PromiseEntry[]): readonly PromisedRow[] {
  const rows: PromiseEntry[][] = [];
  for (const entry of entries) {
    const row = rows.find((held) => held.every((each) => sharesRow(each, entry)));
    if (row === undefined) rows.push([entry]);
    else row.push(entry);
  }
  return rows
    .flatMap((held): readonly PromisedRow[] => {
      const [first] = held;
      if (first === undefined) return [];
      const methods = [...new Set(held.map(({ method }): StatedMethod => method))].filter(
        (method) => method !== "not-stated",
      );
      return [{ property: first.property, methods, entries: held }];
    })
    .toSorted((one, other) => (order.get(one.property) ?? 0) - (order.get(other.property) ?? 0));
}

/** The key of a column: “bid”, “year-3”. */
export const columnKey = (column: PromiseColumn): string =>
  column.kind === "year" ? `year-${column.year}` : column.kind;

/** The columns of a table that holds the rows, in the order of the job: every year between that was measured. */
export function promisedColumns(rows: readonly PromisedRow[]): readonly PromiseColumn[] {
  const years = rows.flatMap(({ entries }) =>
    entries.flatMap(({ column }) => (column.kind === "year" ? [column.year] : [])),
  );
  return [
    ...(["specified", "bid", "submitted", "accepted"] as const).map((kind) => ({ kind })),
    ...[...new Set(years)].sort((one, other) => one - other).map((year) => ({ kind: "year", year }) as const),
    { kind: "guaranteed" },
  ];
}

/** What a column is headed with. */
export function columnLabel(column: PromiseColumn): string {
  switch (column.kind) {
    case "specified":
      return "Specified";
    case "bid":
      return "Bid";
    case "submitted":
      return "Submitted";
    case "accepted":
      return "Acceptance";
    case "year":
      return `Year ${column.year}`;
    case "guaranteed":
      return "Guaranteed";
  }
}

/** The entries of a row in one column. */
export const inColumn = ({ entries }: PromisedRow, column: PromiseColumn): readonly PromiseEntry[] =>
  entries.filter((entry) => columnKey(entry.column) === columnKey(column));
