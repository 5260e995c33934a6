import { describe, expect, test } from 'vitest';
import {
  averageYarnNumber,
  isSquare,
  type TariffFeatures,
  tariffClass,
} from '../../../src/model/cloth/tariff-class.ts';

const base: TariffFeatures = {
  weave: 'plain',
  gramsPerSquareMetre: 120,
  endsPerCm: 27,
  picksPerCm: 27,
  averageYarnNumber: 47,
  plied: false,
  combed: false,
  napped: false,
  tapedWarp: false,
  dyedWarp: false,
};
const heavy: TariffFeatures = {
  ...base,
  gramsPerSquareMetre: 300,
  endsPerCm: 13,
  picksPerCm: 12,
  averageYarnNumber: 18,
};

describe('each line of the schedule, crossed', () => {
  test.each<[string, Partial<TariffFeatures>, string]>([
    ['printcloth', {}, 'printcloth'],
    ['number 42', { averageYarnNumber: 42 }, 'sheeting'],
    ['number 43', { averageYarnNumber: 43 }, 'printcloth'],
    ['number 68', { averageYarnNumber: 68 }, 'printcloth'],
    ['number 69', { averageYarnNumber: 69 }, 'lawnVoileBatiste'],
    ['combed', { combed: true }, 'sheeting'],
    ['plied', { plied: true }, 'sheeting'],
    ['33 threads', { endsPerCm: 17, picksPerCm: 16 }, 'cheesecloth'],
    ['34 threads', { endsPerCm: 17, picksPerCm: 17 }, 'printcloth'],
    ['difference 10.9', { endsPerCm: 32.9, picksPerCm: 22 }, 'printcloth'],
    ['difference 11', { endsPerCm: 33, picksPerCm: 22 }, 'poplinBroadcloth'],
    ['exactly 200 g', { gramsPerSquareMetre: 200 }, 'printcloth'],
    ['taped warp, light', { tapedWarp: true }, 'oxford'],
    ['taped warp, fine and heavy', { tapedWarp: true, gramsPerSquareMetre: 201 }, 'tapedWarp'],
    ['heavy, fine, square', { gramsPerSquareMetre: 201 }, 'sheeting'],
    ['heavy, fine, not square', { gramsPerSquareMetre: 201, picksPerCm: 12 }, 'poplinBroadcloth'],
    ['satin', { weave: 'sateen' }, 'sateen'],
    ['twill', { weave: 'twill' }, 'twill'],
    ['twill with a dyed warp', { weave: 'twill', dyedWarp: true }, 'denim'],
    ['even twill with a dyed warp', { weave: 'twill22', dyedWarp: true }, 'twill'],
  ])('%s', (_name, change, expected) => {
    expect(tariffClass({ ...base, ...change })).toBe(expected);
  });
  test.each<[string, Partial<TariffFeatures>, string]>([
    ['osnaburg', {}, 'osnaburg'],
    ['napped', { napped: true }, 'sheeting'],
    ['combed', { combed: true }, 'sheeting'],
    ['28 threads', { endsPerCm: 14, picksPerCm: 14 }, 'sheeting'],
    ['number 23', { averageYarnNumber: 23 }, 'sheeting'],
    ['plied', { plied: true }, 'duck'],
    ['plied, number 27', { plied: true, averageYarnNumber: 27 }, 'sheeting'],
    ['taped warp', { tapedWarp: true }, 'duck'],
  ])('heavy: %s', (_name, change, expected) => {
    expect(tariffClass({ ...heavy, ...change })).toBe(expected);
  });
});

test('from 79 threads on, square means neither way reaches 57 %', () => {
  expect(isSquare(45, 34)).toBe(true);
  expect(isSquare(45.1, 33.9)).toBe(false);
  expect(isSquare(45, 33.9)).toBe(false);
});

test('fractions are dropped, whole numbers kept', () => {
  expect(averageYarnNumber(54, 113)).toBe(47);
  expect(averageYarnNumber(63, 116.7)).toBe(53);
  expect(averageYarnNumber(60, 120)).toBe(50);
});
