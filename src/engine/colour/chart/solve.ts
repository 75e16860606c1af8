/** Swaps the row with the largest entry of a column into place, so that no division blows rounding up. */
function pivot(rows: readonly Float64Array[], column: number): readonly Float64Array[] {
  const size = (row: Float64Array | undefined) => Math.abs(row?.[column] ?? 0);
  const below = rows.map((_, at) => at).slice(column);
  const best = below.reduce((a, b) => (size(rows[b]) > size(rows[a]) ? b : a), column);
  return rows.map((row, at) => (at === column ? rows[best] : at === best ? rows[column] : row) ?? row);
}

/** Takes a multiple of the pivot's row from another, so that the column becomes 0 there. */
function clear(row: Float64Array, from: Float64Array, column: number): void {
  const factor = (row[column] ?? 0) / (from[column] ?? 1);
  for (let at = column; at < row.length; at++) row[at] = (row[at] ?? 0) - factor * (from[at] ?? 0);
}

/**
 * Solves n linear equations for any number of right-hand sides, by Gauss–Jordan elimination with partial
 * pivoting. Each row holds its n coefficients, then its right-hand sides.
 * @returns for each right-hand side its n unknowns; null when the equations do not determine them
 * @see Golub & Van Loan, Matrix Computations, 4th ed. (2013), section 3.4
 */
export function solve(equations: readonly (readonly number[])[]): readonly (readonly number[])[] | null {
  const n = equations.length;
  let rows: readonly Float64Array[] = equations.map((row) => Float64Array.from(row));
  for (let column = 0; column < n; column++) {
    rows = pivot(rows, column);
    const from = rows[column];
    if (!from || !(Math.abs(from[column] ?? 0) > 1e-12)) return null;
    for (const row of rows) if (row !== from) clear(row, from, column);
  }
  const sides = (equations[0]?.length ?? n) - n;
  return Array.from({ length: sides }, (_, side) =>
    rows.map((row, at) => (row[n + side] ?? 0) / (row[at] ?? 1)),
  );
}
