import { expect, test } from 'vitest';
import { condition } from '../../src/model/conditioning.ts';
import { partMasses } from '../../src/model/lot.ts';

test('each group comes to its regain; what it took up and what it gave are kept apart', () => {
  const dryKg = partMasses({ lint: 100, leaf: 10 });
  const { masses, takenUpKg, evaporatedKg } = condition({ dryKg, waterKg: { lint: 6, seed: 0, trash: 2 } }, 0.085);
  expect(masses.dryKg).toEqual(dryKg);
  expect(masses.waterKg.lint).toBeCloseTo(8.5, 12);
  expect(masses.waterKg.trash).toBeCloseTo(0.85, 12);
  expect(takenUpKg).toBeCloseTo(2.5, 12);
  expect(evaporatedKg).toBeCloseTo(1.15, 12);
});
