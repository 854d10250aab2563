import type { YearOrOpen } from "./model";

/** A first year for the cell of a table: "year 6", "as new", "not through year 8". */
export function yearInWords(found: YearOrOpen): string {
  switch (found.kind) {
    case "known":
      return found.year === 0 ? "as new" : `year ${found.year}`;
    case "not-within-horizon":
      return `not through year ${found.horizon}`;
    case "open-side":
      return "not known: one side is open";
  }
}
