/** What a key asks for in a table of measurements. */
export type EntryMove = Readonly<{ kind: "go"; row: number } | { kind: "add-below"; row: number }>;

type Key = Readonly<{ key: string; ctrlKey: boolean; metaKey: boolean; altKey: boolean; shiftKey: boolean }>;

/** Up, down and Enter move in a column; Enter in the last row and Ctrl+Enter anywhere add a row below. */
export function entryMove(
  { key, ctrlKey, metaKey, altKey, shiftKey }: Key,
  { row, rows }: Readonly<{ row: number; rows: number }>,
): EntryMove | null {
  if (altKey || shiftKey) return null;
  if (key === "Enter")
    return ctrlKey || metaKey || row === rows - 1 ? { kind: "add-below", row } : { kind: "go", row: row + 1 };
  if (ctrlKey || metaKey) return null;
  if (key === "ArrowUp" && row > 0) return { kind: "go", row: row - 1 };
  if (key === "ArrowDown" && row < rows - 1) return { kind: "go", row: row + 1 };
  return null;
}
