import type { ShownGroup, ShownRow } from "./packed-table";
import { type CellGist, gistOf, isChosen, isEqual } from "./row-choice";
import type { TableChoice } from "./table-choice";

/** The gists of a table, worked out once: by row, in the order of the bids. */
export type Gists = ReadonlyMap<string, readonly CellGist[]>;

export const gistsOf = (groups: readonly ShownGroup[]): Gists =>
  new Map(groups.flatMap(({ rows }) => rows.map(({ id, cells }) => [id, cells.map(gistOf)] as const)));

/** The ids of the rows that a choice keeps, looking only at the bids that are shown. */
export function rowsKept(
  rows: readonly ShownRow[],
  gists: Gists,
  { rows: choice, hidesEqual, shown }: TableChoice,
  bids: readonly string[],
): ReadonlySet<string> {
  const isShown = bids.map((id) => shown.includes(id));
  const kept = rows.filter(({ id }) => {
    const cells = (gists.get(id) ?? []).filter((_, index) => isShown[index]);
    return isChosen(cells, choice) && !(hidesEqual && isEqual(cells));
  });
  return new Set(kept.map(({ id }) => id));
}
