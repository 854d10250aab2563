import { lastColumn } from "./ledger-columns";

/** What a key asks for in the ledger. */
export type LedgerMove = Readonly<{ kind: "go"; row: number; column: string } | { kind: "add-below"; row: number }>;

type Key = Readonly<{ key: string; ctrlKey: boolean; metaKey: boolean; altKey: boolean; shiftKey: boolean }>;

/**
 * Up and down move between the rows of a column, Enter goes to the row below. Enter in the last cell, Enter in the last
 * row and Ctrl+Enter anywhere add a row below.
 */
export function ledgerMove(
  { key, ctrlKey, metaKey, altKey, shiftKey }: Key,
  { row, column, rows }: Readonly<{ row: number; column: string; rows: number }>,
): LedgerMove | null {
  if (altKey || shiftKey) return null;
  if (key === "Enter") {
    const addsBelow = ctrlKey || metaKey || column === lastColumn || row === rows - 1;
    return addsBelow ? { kind: "add-below", row } : { kind: "go", row: row + 1, column };
  }
  if (ctrlKey || metaKey) return null;
  if (key === "ArrowUp" && row > 0) return { kind: "go", row: row - 1, column };
  if (key === "ArrowDown" && row < rows - 1) return { kind: "go", row: row + 1, column };
  return null;
}
