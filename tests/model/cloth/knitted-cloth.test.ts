import { expect, test } from 'vitest';
import { knittedCloth } from '../../../src/model/cloth/knitted-cloth.ts';
import { makeCloth } from '../../../src/model/cloth/making.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { yarnLot, yarnOf } from './yarn-lot.ts';

test.each(['grey', 'bleached'] as const)('%s: the weight described is the mass over the area', (finish) => {
  const made = makeCloth(yarnLot, 0, 0.01, finish);
  const cloth = knittedCloth(made, yarnOf(30), 172);
  expect(cloth.gramsPerSquareMetre).toBeCloseTo((totalKg(made.finished.masses) * 1000) / cloth.squareMetres, 8);
  expect(cloth.notes).toEqual(['settIgnored']);
});

test('the bath draws the loops together and leaves less for the wash', () => {
  const grey = knittedCloth(makeCloth(yarnLot, 0, 0.01, 'grey'), yarnOf(30), 172);
  const bleached = knittedCloth(makeCloth(yarnLot, 0, 0.01, 'bleached'), yarnOf(30), 172);
  expect(bleached.squareMetres).toBeLessThan(grey.squareMetres);
  expect(bleached.shrinkLeftPercent.length).toBeLessThan(grey.shrinkLeftPercent.length);
});
