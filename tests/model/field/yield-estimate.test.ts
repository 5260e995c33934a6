import { expect, test } from 'vitest';
import { rowFeetPerAcre } from '../../../src/model/field/stand.ts';
import { bollsPerFootForBale, lintFromBolls } from '../../../src/model/field/yield-estimate.ts';

test('the two ways of counting agree: bolls for a bale, counted, make 480 lb', () => {
  const perFoot = bollsPerFootForBale(36, 4.2, 0.4);
  expect(lintFromBolls(rowFeetPerAcre(36), perFoot, 4.2 * 0.4)).toBeCloseTo(480, 9);
});
