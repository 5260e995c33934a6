import { expect, test } from 'vitest';
import { partMasses } from '../../../src/model/lot.ts';
import { blowroomShares, cleaningShares } from '../../../src/model/mill/blowroom.ts';
import { baledLint } from './lint-lot.ts';

test('half of the blowroom waste is fibre, and 50 to 60 % of the trash goes', () => {
  const { dryKg } = baledLint(0.02);
  const shares = blowroomShares(dryKg);
  let trash = 0;
  let before = 0;
  for (const part of ['burs', 'sticks', 'leaf', 'motes', 'dirt', 'seed'] as const) {
    trash += dryKg[part] * shares[part];
    before += dryKg[part];
  }
  expect(dryKg.lint * shares.lint).toBeCloseTo(trash, 12);
  expect(trash / before).toBeGreaterThan(0.5);
  expect(trash / before).toBeLessThan(0.62);
});

test('a lot that is mostly trash keeps 85 % of its lint, and one without lint loses none', () => {
  expect(blowroomShares(partMasses({ lint: 1, burs: 9 })).lint).toBe(0.15);
  expect(blowroomShares(partMasses({ burs: 9 })).lint).toBe(0);
});

test('cleaning takes every trash part and stray seed alike and touches neither size nor finish', () => {
  expect(cleaningShares(0.8, 0.04)).toEqual({
    lint: 0.04,
    seed: 0.8,
    burs: 0.8,
    sticks: 0.8,
    leaf: 0.8,
    motes: 0.8,
    dirt: 0.8,
    size: 0,
    finish: 0,
  });
});
