import { expect, test } from 'vitest';
import { condition } from '../../../src/model/cloth/conditioning.ts';
import { partMasses } from '../../../src/model/lot.ts';

test('size and finish sit on the yarn and share its water', () => {
  const dryKg = partMasses({ lint: 90, size: 6, finish: 4 });
  const { masses, takenUpKg, evaporatedKg } = condition({ dryKg, waterKg: { lint: 10, seed: 0, trash: 0 } }, 0.085);
  expect(masses.waterKg.lint).toBeCloseTo(8.5, 12);
  expect(takenUpKg).toBe(0);
  expect(evaporatedKg).toBeCloseTo(1.5, 12);
});
