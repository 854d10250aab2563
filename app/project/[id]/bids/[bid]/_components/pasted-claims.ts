import {
  type ClaimText,
  claimsFromRows,
  explainPaste,
  layoutOf,
  type PastedClaim,
  type PastedLayout,
  parseCommaSeparated,
  parsePastedRows,
  type Rows,
  unguarded,
} from "#lib/claim";

/** A pasted block as it would go into the ledger, or the sentence that says why it is not read. */
export type PastedBlock = Readonly<
  | { kind: "nothing" }
  | { kind: "not-read"; message: string }
  | {
      kind: "read";
      rows: Rows;
      layout: PastedLayout;
      claims: readonly PastedClaim[];
      unreadHeadings: readonly string[];
      blankRows: number;
    }
>;

/** @param chosen which column holds what, where a person has said so; by its headings or its order otherwise */
export function pastedBlock(text: string, chosen: PastedLayout | null): PastedBlock {
  if (text.trim() === "") return { kind: "nothing" };
  const read = parsePastedRows(text);
  if (!read.ok) return { kind: "not-read", message: explainPaste(read.problem) };
  const rows = isCommaSeparated(text) ? parseCommaSeparated(text) : read.value.map((cells) => cells.map(unguarded));
  const layout = chosen ?? layoutOf(rows);
  const { claims, unreadHeadings, blankRows } = claimsFromRows(rows, (row) => `pasted-${row}`, layout);
  const kept = claims.map((pasted) => {
    const rest = restOf(rows[pasted.row - 1] ?? [], rows[0] ?? [], layout);
    if (rest === "") return pasted;
    return {
      ...pasted,
      claim: withNote(pasted.claim, `Also in the pasted row: ${rest}`),
      problems: pasted.problems.filter(({ field }) => field !== "row"), // cells beyond the columns stand in the note now
    };
  });
  return { kind: "read", rows, layout, claims: kept, unreadHeadings, blankRows };
}

/** A file of claims as it is exported: its first line has headings between commas, a property among them. */
function isCommaSeparated(text: string): boolean {
  const [first = ""] = text.split(/[\r\n]/, 1);
  if (first.includes("\t") || !first.includes(",")) return false;
  return (parseCommaSeparated(first)[0] ?? []).some((heading) => heading.trim().toLowerCase() === "property");
}

/** The cells of a row that no field takes, with their headings: they go into the note, so that nothing is dropped. */
function restOf(cells: Rows[number], first: Rows[number], { columns, headingRows }: PastedLayout): string {
  return cells
    .map((cell, at) => ({ cell: cell.trim(), heading: headingRows === 1 ? (first[at]?.trim() ?? "") : "", at }))
    .filter(({ cell, at }) => cell !== "" && (columns[at] ?? null) === null)
    .map(({ cell, heading }) => (heading === "" ? `“${cell}”` : `${heading}: “${cell}”`))
    .join("; ");
}

const withNote = (claim: ClaimText, text: string): ClaimText => ({
  ...claim,
  note: [claim.note, text].filter((part) => part !== "").join("; "),
});
