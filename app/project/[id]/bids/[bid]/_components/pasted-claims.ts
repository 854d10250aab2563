import {
  type ClaimText,
  claimFields,
  claimsFromRows,
  explainPaste,
  type PastedClaim,
  parseCommaSeparated,
  parsePastedRows,
  type Rows,
  unguarded,
} from "#lib/claim";

/** A pasted block as it would go into the ledger, or the sentence that says why it is not read. */
export type PastedBlock = Readonly<
  | { kind: "nothing" }
  | { kind: "not-read"; message: string }
  | { kind: "read"; claims: readonly PastedClaim[]; unreadHeadings: readonly string[]; blankRows: number }
>;

export function pastedBlock(text: string): PastedBlock {
  if (text.trim() === "") return { kind: "nothing" };
  const read = parsePastedRows(text);
  if (!read.ok) return { kind: "not-read", message: explainPaste(read.problem) };
  const rows = isCommaSeparated(text) ? parseCommaSeparated(text) : read.value.map((cells) => cells.map(unguarded));
  const { claims, unreadHeadings, blankRows } = claimsFromRows(rows);
  const headings = rows.length > claims.length + blankRows ? (rows[0] ?? []) : null;
  const kept = claims.map((pasted) => {
    const rest = restOf(rows[pasted.row - 1] ?? [], headings, unreadHeadings);
    if (rest === "") return pasted;
    return {
      ...pasted,
      claim: withNote(pasted.claim, `Also in the pasted row: ${rest}`),
      problems: pasted.problems.filter(({ field }) => field !== "row"), // cells beyond the columns stand in the note now
    };
  });
  return { kind: "read", claims: kept, unreadHeadings, blankRows };
}

/** A file of claims as it is exported: its first line has headings between commas, a property among them. */
function isCommaSeparated(text: string): boolean {
  const [first = ""] = text.split(/[\r\n]/, 1);
  if (first.includes("\t") || !first.includes(",")) return false;
  return (parseCommaSeparated(first)[0] ?? []).some((heading) => heading.trim().toLowerCase() === "property");
}

/** The cells of a row that no field takes, with their headings: they go into the note, so that nothing is dropped. */
function restOf(cells: Rows[number], headings: Rows[number] | null, unreadHeadings: readonly string[]): string {
  const columns = headings?.length ?? claimFields.length;
  return cells
    .map((cell, at) => ({ cell: cell.trim(), heading: headings?.[at]?.trim() ?? "", at }))
    .filter(({ cell, at }) => cell !== "" && (at >= columns || unreadHeadings.includes(headings?.[at] ?? "")))
    .map(({ cell, heading }) => (heading === "" ? `“${cell}”` : `${heading}: “${cell}”`))
    .join("; ");
}

const withNote = (claim: ClaimText, text: string): ClaimText => ({
  ...claim,
  note: [claim.note, text].filter((part) => part !== "").join("; "),
});
