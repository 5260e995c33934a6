import { expect, test } from 'vitest';
import { breakAtRandom, breakByLength } from '../../../src/model/length/breakage.ts';
import { machineBreakagePerMm, moistureFactor } from '../../../src/model/length/facts.ts';
import {
  gaussianByMass,
  lengthCount,
  totalLengthMm,
  uniformLength,
} from '../../../src/model/length/length-distribution.ts';
import { meanLengthMm, shortFibrePercent } from '../../../src/model/length/statistics.ts';

const peak = gaussianByMass(30.7, 0.16);

test('fifty thousand tiny steps keep the total length to 1e-11 and every number at or above zero', () => {
  let lengths = uniformLength(32);
  for (let i = 0; i < 50_000; i++) lengths = breakAtRandom(lengths, 1e-7);
  expect(Math.abs(totalLengthMm(lengths) - 1)).toBeLessThan(1e-11);
  expect(Math.min(...lengths)).toBeGreaterThanOrEqual(0);
});

test('no breaks leave every fibre', () => {
  expect([...breakAtRandom(peak, 0)]).toEqual([...peak]);
  expect(breakByLength(peak, 0)).toBe(peak);
});

test('with exponent 1 the machine law follows the exact random law', () => {
  const exact = breakAtRandom(peak, 0.003);
  const stepped = breakByLength(peak, 0.003, 1);
  expect(totalLengthMm(stepped)).toBeCloseTo(1, 13);
  expect(meanLengthMm(stepped, 'weight')).toBeCloseTo(meanLengthMm(exact, 'weight'), 3);
  expect(shortFibrePercent(stepped, 'weight')).toBeCloseTo(shortFibrePercent(exact, 'weight'), 3);
});

test('at equal breaks the steeper law spares the short fibres and takes more of the long', () => {
  const breaks = (after: ArrayLike<number>) => Array.from(after).reduce((sum, count) => sum + count, 0);
  const steep = breakByLength(peak, 0.0033);
  let low = 0;
  let high = 0.02;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (breaks(breakByLength(peak, middle, 1)) < breaks(steep)) low = middle;
    else high = middle;
  }
  expect(meanLengthMm(steep, 'weight')).toBeLessThan(meanLengthMm(breakByLength(peak, low, 1), 'weight'));
});

test('the shortest fibre of the lattice cannot break', () => {
  const shortest = uniformLength(0.5);
  expect([...breakByLength(shortest, 0.01)]).toEqual([...shortest]);
  expect(breakAtRandom(shortest, 0.01)[0]).toBeCloseTo(shortest[0]!, 12);
});

test('a saw stand breaks four times as much as a roller stand and leaves no negative number', () => {
  const saw = breakByLength(peak, machineBreakagePerMm.sawStand.value);
  const roller = breakByLength(peak, machineBreakagePerMm.rollerStand.value);
  expect(shortFibrePercent(saw, 'weight')).toBeGreaterThan(shortFibrePercent(roller, 'weight'));
  expect(Math.min(...saw)).toBeGreaterThanOrEqual(0);
  expect(saw).toHaveLength(lengthCount);
});

test('drier lint breaks more, and above 8 % the effect is held', () => {
  expect(moistureFactor(6)).toBe(1);
  expect(moistureFactor(4)).toBeGreaterThan(moistureFactor(5));
  expect(moistureFactor(9)).toBe(moistureFactor(8));
});
