/**
 * The roles that the parts of a table have by themselves, to be said outright where a table is laid out in blocks on a
 * narrow page: some browsers take them away once `display` is another.
 */
export const tableRoles = {
  table: { role: "table" },
  rows: { role: "rowgroup" },
  row: { role: "row" },
  columnHead: { role: "columnheader" },
  rowHead: { role: "rowheader" },
  cell: { role: "cell" },
} as const;
