import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundToAdd } from '../../src/ui/round-to-add.ts';
import { propertySeed, runs } from '../laws/runs.ts';

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
const table = fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })).chain(([rows, columns]) =>
  fc.array(
    fc.array(
      fc.integer({ min: 0, max: 900_000 }).map((n) => n / 1000),
      { minLength: columns, maxLength: columns },
    ),
    { minLength: rows, maxLength: rows },
  ),
);
const totalsOf = (cells: readonly (readonly number[])[]): number[] =>
  cells[0]!.map((_, at) => Math.round(sum(cells.map((row) => row[at]!)) * 10) / 10);

type Rounder = typeof roundToAdd;
/** Every column adds to its total, and no cell is further off than the decimals shown. */
function addsUp(rounder: Rounder): void {
  fc.assert(
    fc.property(table, (cells) => {
      const totals = totalsOf(cells);
      const shown = rounder(cells, totals, 1);
      totals.forEach((total, at) => {
        expect(Math.round(sum(shown.map((row) => row[at]!)) * 10)).toBe(Math.round(total * 10));
      });
      cells.forEach((row, r) => {
        for (const [c, cell] of row.entries()) expect(Math.abs(shown[r]![c]! - cell)).toBeLessThan(0.1 + 1e-6);
      });
      cells.forEach((row, r) => {
        expect(Math.abs(sum(shown[r]!) - sum(row))).toBeLessThan(0.2);
      });
    }),
    { numRuns: runs(1000), seed: propertySeed },
  );
}

describe('rounding a table so that it adds', () => {
  test('holds for any table', () => addsUp(roundToAdd));
  test('is seen to fail for plain rounding', () => {
    const plain: Rounder = (cells) => cells.map((row) => row.map((cell) => Math.round(cell * 10) / 10));
    expect(() => addsUp(plain)).toThrow();
  });
  test('nothing stays nothing', () => {
    expect(
      roundToAdd(
        [
          [0, 0.26],
          [0, 0.26],
        ],
        [0, 0.5],
        1,
      ),
    ).toEqual([
      [0, 0.3],
      [0, 0.2],
    ]);
  });
  test('whole numbers are left alone', () => {
    const cells = [
      [12, 7],
      [3, 0],
    ];
    expect(roundToAdd(cells, [15, 7], 0)).toEqual(cells);
  });
});
