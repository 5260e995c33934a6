import type { Practice } from '../../checks/practice.ts';
import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';

/** A figure, or a band of two, with its unit in words; dates as dates. */
export function toldText(
  [low, high]: readonly [number, number],
  unit: Practice['unit'],
  { messages, formats }: Words,
): string {
  const { practice } = messages;
  if (unit === 'none') return '';
  if (unit === 'dayOfYear')
    return low === high ? formats.day(low) : fill(practice.before, { low: formats.day(low), high: formats.day(high) });
  const number = (value: number) => formats.number(value, decimalsOf(value));
  const n = low === high ? number(low) : fill(practice.band, { low: number(low), high: number(high) });
  return fill(practice.units[unit], { n });
}

/** None, one or two: as many as the figure was told with. */
const decimalsOf = (value: number): number =>
  Number.isInteger(value) ? 0 : Math.round(value * 10) / 10 === value ? 1 : 2;
