/** A cell this small, in units of the last decimal shown, counts as nothing and is never rounded up. */
const nothing = 1e-6;

/**
 * Rounds a table so that it still adds. Every cell goes to the decimal below or above it; each column adds to its total;
 * each row total lands on the nearest decimal wherever the columns let it.
 * @param cells exact values, rows of columns, none negative
 * @param columnTotals what each column must add to, already rounded to the same decimals
 * @param decimals decimals shown
 */
export function roundToAdd(
  cells: readonly (readonly number[])[],
  columnTotals: readonly number[],
  decimals: number,
): number[][] {
  const scale = 10 ** decimals;
  const exact = cells.map((row) => row.map((cell) => cell * scale));
  const whole = exact.map((row) => row.map((cell) => Math.floor(cell + nothing)));
  const debt = exact.map(() => 0);

  columnTotals.forEach((total, column) => {
    let left = Math.round(total * scale) - whole.reduce((sum, row) => sum + row[column]!, 0);
    const order = exact
      .map((row, index) => ({ index, part: row[column]! - whole[index]![column]! }))
      .filter(({ part }) => part > nothing)
      .sort((a, b) => b.part + debt[b.index]! - (a.part + debt[a.index]!));
    for (const { index } of order) {
      if (left <= 0) break;
      whole[index]![column]! += 1;
      left -= 1;
    }
    for (const { index } of order) debt[index]! += exact[index]![column]! - whole[index]![column]!;
    // A total that differs by more than the cells can take up goes to the largest cell, so that the column still adds.
    if (left !== 0) {
      const largest = exact.reduce((best, row, index) => (row[column]! > exact[best]![column]! ? index : best), 0);
      if (exact.length > 0) whole[largest]![column]! += left;
    }
  });

  settleRows(exact, whole);
  return whole.map((row) => row.map((cell) => cell / scale));
}

/** Trades one unit within a column between a row that came out high and one that came out low. */
function settleRows(exact: readonly (readonly number[])[], whole: number[][]): void {
  const over = (row: number): number =>
    whole[row]!.reduce((sum, cell) => sum + cell, 0) - Math.round(exact[row]!.reduce((sum, cell) => sum + cell, 0));
  for (let high = 0; high < whole.length; high++) {
    for (let low = 0; low < whole.length && over(high) > 0; low++) {
      if (low === high || over(low) >= 0) continue;
      const column = whole[high]!.findIndex(
        (cell, at) => cell > exact[high]![at]! + nothing && whole[low]![at]! < exact[low]![at]! - nothing,
      );
      if (column < 0) continue;
      whole[high]![column]! -= 1;
      whole[low]![column]! += 1;
    }
  }
}
