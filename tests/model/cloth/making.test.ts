import { describe, expect, test } from 'vitest';
import { clothFinishes } from '../../../src/model/cloth/facts.ts';
import { bathShares, greyKilometres, makeCloth } from '../../../src/model/cloth/making.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { yarnLot } from './yarn-lot.ts';

describe.each(clothFinishes)('%s', (finish) => {
  const made = makeCloth(yarnLot, 0.5, 0.02, finish);
  const dryKg = made.finished.masses.dryKg;
  test('the ledger closes', () => {
    expect(closingErrorRelative(made.ledger)).toBeLessThan(1e-12);
  });
  test('size stays on grey cloth alone, print on printed alone', () => {
    expect(dryKg.size > 0).toBe(finish === 'grey');
    expect(dryKg.finish > 0).toBe(finish === 'printed');
  });
  test('a bath takes lint and most of the specks', () => {
    const kept = yarnLot.dryKg.lint * 0.98;
    if (finish === 'grey') expect(dryKg.lint).toBeCloseTo(kept, 9);
    else expect(dryKg.lint / kept).toBeCloseTo(finish === 'scoured' ? 0.95 : 0.94, 9);
    expect(dryKg.leaf / yarnLot.dryKg.leaf).toBeCloseTo(finish === 'grey' ? 0.98 : 0.098, 9);
  });
});

test('an eighth of the warp is added as size', () => {
  const { ledger } = makeCloth(yarnLot, 0.6, 0, 'bleached');
  const size = ledger.in.find(({ account }) => account === 'warpSize')!;
  expect(size.dryKg.size).toBeCloseTo(0.125 * 0.6 * 200, 9);
});

test('no warp, no size; the grey cloth sees no bath', () => {
  const accounts = makeCloth(yarnLot, 0, 0.01, 'grey').ledger.in.map(({ account }) => account);
  expect(accounts).not.toContain('warpSize');
  expect(Object.values(bathShares('grey')).every((share) => share === 0)).toBe(true);
});

test('mercerised cloth holds more water', () => {
  const water = (finish: 'bleached' | 'mercerised') =>
    makeCloth(yarnLot, 0.5, 0.02, finish).finished.masses.waterKg.lint;
  expect(water('mercerised') / water('bleached')).toBeCloseTo(11 / 8.5, 9);
});

test('200 kg of dry yarn less 2 % is 10,632 km of 20 tex', () => {
  expect(greyKilometres(makeCloth(yarnLot, 0.5, 0.02, 'grey'), 20)).toBeCloseTo((196 * 1.085 * 1000) / 20, 6);
});
