import type { Mark } from '../fact.ts';
import { type CropPrice, consumerPrices, cropPrices } from './price-facts.ts';

/** A crop's price with its table's mark. */
export function priceOfCrop(cropYear: number): (CropPrice & { readonly mark: Mark; readonly source: string }) | null {
  for (const { rows, mark, source } of cropPrices) {
    const row = rows.find((each) => each.cropYear === cropYear);
    if (row) return { ...row, mark, source };
  }
  return null;
}

/** The index of a year; between listed years a straight line. Null outside the tables. */
function indexOf(year: number): number | null {
  const rows = consumerPrices.flatMap((table) => table.rows);
  const next = rows.findIndex(([listed]) => listed >= year);
  const after = rows[next];
  if (after === undefined) return null;
  if (after[0] === year) return after[1];
  const before = rows[next - 1];
  if (before === undefined) return null;
  return before[1] + ((after[1] - before[1]) * (year - before[0])) / (after[0] - before[0]);
}

/**
 * What an old sum of money is worth in another year's dollars, by consumer prices.
 * @returns null where either year lies outside 1871 to 2024
 */
export function realUsd(usd: number, fromYear: number, toYear: number): number | null {
  const from = indexOf(fromYear);
  const to = indexOf(toYear);
  return from === null || to === null ? null : (usd * to) / from;
}
