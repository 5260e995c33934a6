import { expect, test } from 'vitest';
import { turnsPerInch, turnsPerMetre, twistMultiplier } from '../../../src/model/mill/twist.ts';

const uses = ['knitting', 'weft', 'semiWarp', 'warp'] as const;

test.each(uses)('%s: longer staple never asks for more twist, and short asks for more than long', (use) => {
  const multipliers = [0.8, 1, 1.02, 1.06, 1.1, 1.14, 1.2, 1.5].map((inches) =>
    twistMultiplier(use, inches, 'ringCarded'),
  );
  for (const [i, value] of multipliers.slice(1).entries()) expect(value).toBeLessThanOrEqual(multipliers[i]!);
  expect(multipliers[0]).toBeGreaterThan(multipliers.at(-1)!);
});

test('warp is twisted harder than weft, weft harder than knitting yarn', () => {
  const [knitting, weft, semiWarp, warp] = uses.map((use) => twistMultiplier(use, 1.1, 'ringCombed'));
  expect(knitting).toBeLessThan(weft!);
  expect(weft).toBeLessThan(semiWarp!);
  expect(semiWarp).toBeLessThan(warp!);
});

test('rotor takes 10 to 25 % more', () => {
  const ratio = twistMultiplier('weft', 1.1, 'rotor') / twistMultiplier('weft', 1.1, 'ringCarded');
  expect(ratio).toBeGreaterThanOrEqual(1.1);
  expect(ratio).toBeLessThanOrEqual(1.25);
});

test('turns an inch grow with the root of the count', () => {
  expect(turnsPerInch(4, 36)).toBe(24);
  expect(turnsPerMetre(4, 36)).toBeCloseTo(24 / 0.0254, 9);
});
