/** Where the arrow keys lead from a cell of a matrix; null where a key means something else or there is no cell. */
export function matrixMove(
  {
    key,
    altKey,
    ctrlKey,
    metaKey,
    shiftKey,
  }: Pick<KeyboardEvent, "key" | "altKey" | "ctrlKey" | "metaKey" | "shiftKey">,
  { row, column }: Readonly<{ row: number; column: number }>,
  { rows, columns }: Readonly<{ rows: number; columns: number }>,
): Readonly<{ row: number; column: number }> | null {
  if (altKey || ctrlKey || metaKey || shiftKey) return null;
  const step = steps[key];
  if (step === undefined) return null;
  const to = { row: row + step[0], column: column + step[1] };
  return to.row >= 0 && to.row < rows && to.column >= 0 && to.column < columns ? to : null;
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};
