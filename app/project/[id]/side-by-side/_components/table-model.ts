import {
  columnFilteringFeature,
  columnOrderingFeature,
  columnPinningFeature,
  columnVisibilityFeature,
  createFilteredRowModel,
  type Row,
  rowExpandingFeature,
  type TableOptions,
  tableFeatures,
} from "@tanstack/react-table";
import { type CellGist, isChosen, isEqual, type RowChoice } from "../_comparison/row-choice";

/** A group or a row of the table. Groups have lines and no cells; what stands in the cells was laid out on the server. */
export type Line = Readonly<{
  id: string;
  label: string;
  apart: boolean;
  cells: readonly CellGist[];
  head: React.ReactNode;
  slots: readonly React.ReactNode[];
  lines: readonly Line[];
}>;

export type BidHead = Readonly<{ id: string; letter: string; name: string; head: React.ReactNode }>;

/** Which rows a reader wants to see. `shown` tells for each bid whether its column is shown: hidden bids don't count. */
export type RowFilter = Readonly<{ choice: RowChoice; hidesEqual: boolean; shown: readonly boolean[] }>;

export const features = tableFeatures({
  columnFilteringFeature,
  columnOrderingFeature,
  columnPinningFeature,
  columnVisibilityFeature,
  rowExpandingFeature,
  filteredRowModel: createFilteredRowModel(),
});

const nameColumn = "name";

function passes(row: Row<typeof features, Line>, _column: string, { choice, hidesEqual, shown }: RowFilter): boolean {
  const cells = row.original.cells.filter((_, index) => shown[index]);
  return cells.length > 0 && isChosen(cells, choice) && !(hidesEqual && isEqual(cells));
}

export const filterState = (filter: RowFilter) => [{ id: nameColumn, value: filter }];

/** Everything open, every row and every bid shown. */
export const tableOptions = (
  lines: readonly Line[],
  bids: readonly BidHead[],
): TableOptions<typeof features, Line> => ({
  features,
  data: [...lines],
  columns: [{ id: nameColumn, accessorFn: ({ label }) => label, filterFn: passes }, ...bids.map(({ id }) => ({ id }))],
  getRowId: ({ id }) => id,
  getSubRows: ({ lines: rows }) => [...rows],
  filterFromLeafRows: true,
  autoResetExpanded: false,
  initialState: { expanded: true, columnPinning: { start: [nameColumn], end: [] } },
});

export const pinningState = (pinned: string) => ({
  start: pinned === "" ? [nameColumn] : [nameColumn, pinned],
  end: [],
});
