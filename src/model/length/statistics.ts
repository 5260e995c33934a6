import { type LengthDistribution, lengthAtMm, lengthCount, shortBelowMm, stepMm } from './length-distribution.ts';
import { arrayFacts } from './reading-facts.ts';

/** Weight of each lattice length: by number, or by weight (length x one linear density). */
export type By = 'number' | 'weight';

const amount = (lengths: LengthDistribution, i: number, by: By): number =>
  by === 'number' ? lengths[i]! : lengths[i]! * lengthAtMm(i);

/** Mean length, mm: L(n) or L(w). */
export function meanLengthMm(lengths: LengthDistribution, by: By): number {
  let sum = 0;
  let weighted = 0;
  for (let i = 0; i < lengthCount; i++) {
    const a = amount(lengths, i, by);
    sum += a;
    weighted += a * lengthAtMm(i);
  }
  return weighted / sum;
}

/** Coefficient of variation of length, percent. */
export function lengthVariationPercent(lengths: LengthDistribution, by: By): number {
  const mean = meanLengthMm(lengths, by);
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < lengthCount; i++) {
    const a = amount(lengths, i, by);
    sum += a;
    squares += a * (lengthAtMm(i) - mean) ** 2;
  }
  return (100 * Math.sqrt(squares / sum)) / mean;
}

/**
 * Share shorter than a length, fraction. Each lattice length owns half a step either side, so the cumulative curve is
 * straight between.
 */
export function shareBelow(lengths: LengthDistribution, lengthMm: number, by: By): number {
  let sum = 0;
  let below = 0;
  for (let i = 0; i < lengthCount; i++) {
    const a = amount(lengths, i, by);
    sum += a;
    below += a * Math.min(1, Math.max(0, (lengthMm - (lengthAtMm(i) - stepMm / 2)) / stepMm));
  }
  return below / sum;
}

/** Short fibre content, percent below 12.7 mm. */
export const shortFibrePercent = (lengths: LengthDistribution, by: By): number =>
  100 * shareBelow(lengths, shortBelowMm, by);

/** Length exceeded by a share (fraction) of the fibres by number, or of the weight, mm. */
export function lengthExceededMm(lengths: LengthDistribution, share: number, by: By): number {
  let sum = 0;
  for (let i = 0; i < lengthCount; i++) sum += amount(lengths, i, by);
  let left = share * sum;
  for (let i = lengthCount - 1; i >= 0; i--) {
    const a = amount(lengths, i, by);
    if (left <= a && a > 0) return lengthAtMm(i) + stepMm / 2 - (left / a) * stepMm;
    left -= a;
  }
  return 0;
}

/** Upper quartile length by weight, mm: the length that a quarter of the weight exceeds (ASTM D1440, from memory). */
export const upperQuartileMm = (lengths: LengthDistribution): number =>
  lengthExceededMm(lengths, arrayFacts.upperQuartile.value, 'weight');

/**
 * The length array a hand sorter would lay out: fibres side by side in falling order of length.
 * @param fibreCount how many fibres are laid out
 * @returns their lengths, mm, longest first; fibre k stands for the share (k + 1/2) / fibreCount
 */
export function lengthArrayMm(lengths: LengthDistribution, fibreCount: number): number[] {
  return Array.from({ length: fibreCount }, (_, k) => lengthExceededMm(lengths, (k + 1 / 2) / fibreCount, 'number'));
}
