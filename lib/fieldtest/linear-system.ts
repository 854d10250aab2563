/** A square system, decomposed once and solved for many right-hand sides. Null where it has no single solution. */
export type SolvedBy = (right: readonly number[]) => number[];

/** Share of the largest entry below which a pivot counts as nothing. */
const nothing = 1e-13;

/**
 * Gaussian elimination with partial pivoting (LU decomposition).
 * @source Golub and Van Loan, Matrix Computations, 3.4, from memory
 */
export function decomposed(matrix: readonly (readonly number[])[]): SolvedBy | null {
  const size = matrix.length;
  const rows = matrix.map((row) => Float64Array.from(row));
  const order = rows.map((_, index) => index);
  const largest = Math.max(...rows.map((row) => row.reduce((most, entry) => Math.max(most, Math.abs(entry)), 0)));
  for (let column = 0; column < size; column += 1) {
    const pivot = pivotRow(rows, column);
    if (!(Math.abs(entryOf(rows, pivot, column)) > nothing * largest)) return null;
    swap(rows, column, pivot);
    swap(order, column, pivot);
    for (let row = column + 1; row < size; row += 1) eliminate(rows, row, column);
  }
  return (right) =>
    solved(
      rows,
      order.map((index) => right[index] ?? 0),
    );
}

const entryOf = (rows: readonly Float64Array[], row: number, column: number): number => rows[row]?.[column] ?? 0;

function pivotRow(rows: readonly Float64Array[], column: number): number {
  let best = column;
  for (let row = column + 1; row < rows.length; row += 1)
    if (Math.abs(entryOf(rows, row, column)) > Math.abs(entryOf(rows, best, column))) best = row;
  return best;
}

function swap<T>(list: T[], one: number, other: number): void {
  const [first, second] = [list[one], list[other]];
  if (first === undefined || second === undefined) return;
  list[one] = second;
  list[other] = first;
}

/** Takes the pivot row off a lower row and leaves the factor where the zero would be. */
function eliminate(rows: readonly Float64Array[], row: number, column: number): void {
  const [target, pivot] = [rows[row], rows[column]];
  if (target === undefined || pivot === undefined) return;
  const factor = (target[column] ?? 0) / (pivot[column] ?? 1);
  target[column] = factor;
  for (let next = column + 1; next < target.length; next += 1)
    target[next] = (target[next] ?? 0) - factor * (pivot[next] ?? 0);
}

function solved(rows: readonly Float64Array[], right: number[]): number[] {
  const size = rows.length;
  const values = [...right];
  const reduced = (row: number, from: number, to: number) => {
    let rest = values[row] ?? 0;
    for (let column = from; column < to; column += 1) rest -= entryOf(rows, row, column) * (values[column] ?? 0);
    return rest;
  };
  for (let row = 0; row < size; row += 1) values[row] = reduced(row, 0, row);
  for (let row = size - 1; row >= 0; row -= 1) values[row] = reduced(row, row + 1, size) / entryOf(rows, row, row);
  return values;
}
