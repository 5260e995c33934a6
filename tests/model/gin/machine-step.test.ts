import { expect, test } from 'vitest';
import { type MachineStep, removedTo, trashRemovedFraction, waterOnly } from '../../../src/model/gin/machine-step.ts';
import { partMasses } from '../../../src/model/lot.ts';
import { fibreOf } from './hand-made-lot.ts';

const fibre = fibreOf('medium');
const some = (leaf: number, water: number) => ({
  dryKg: partMasses({ lint: 100, leaf }),
  waterKg: { lint: 0, seed: 0, trash: water },
});
const step = (account: 'ginTrash' | 'seedHouse', leaf: number, water: number): MachineStep => ({
  machine: account,
  in: some(10, 1),
  added: [],
  removed: [{ account, masses: some(leaf, water) }],
  out: some(10 - leaf, 1 - water),
  fibreBefore: fibre,
  fibreAfter: fibre,
});

test('an account receives the sum over the machines', () => {
  const line = [step('ginTrash', 2, 0.2), step('seedHouse', 3, 0.3), step('ginTrash', 4, 0.4)];
  const { dryKg, waterKg } = removedTo(line, 'ginTrash');
  expect(dryKg.leaf).toBeCloseTo(6, 12);
  expect(waterKg.trash).toBeCloseTo(0.6, 12);
  expect(removedTo(line, 'evaporated').dryKg).toEqual(partMasses({}));
});
test('the share of trash removed', () => {
  expect(trashRemovedFraction(some(10, 0), some(4, 0))).toBeCloseTo(0.6, 12);
  expect(trashRemovedFraction(some(0, 0), some(0, 0))).toBe(0);
});
test('water alone weighs nothing dry', () => {
  expect(waterOnly({ lint: 1, seed: 2, trash: 3 }).dryKg).toEqual(partMasses({}));
});
