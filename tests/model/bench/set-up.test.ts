import { expect, test } from 'vitest';
import { cardOf, isKnit, listedCloth, withCloth, withCotton, withStructure } from '../../../src/model/bench/set-up.ts';
import { quiltingSetUp } from './benches.ts';

test('another cotton changes the card and lays the bales aside, and leaves the cloth', () => {
  const changed = withCotton({ ...quiltingSetUp, bales: [{ ...cardOf('desi'), netLb: 480 }] }, 'pima');
  expect(changed.card).toEqual(cardOf('pima'));
  expect(changed.bales).toEqual([]);
  expect(changed.warp).toBe(quiltingSetUp.warp);
});

test('another cloth brings its threads and its spinning, and leaves the cotton', () => {
  const changed = withCloth({ ...quiltingSetUp, twist: 5 }, 'lawn');
  expect(changed).toMatchObject({
    warp: '60Ne',
    endsPerInch: 90,
    system: 'ringCombed',
    twist: null,
    cotton: 'uplandMedium',
  });
  expect(withCloth(quiltingSetUp, 'jersey')).toMatchObject({ structure: 'jersey', use: 'knitting' });
  expect(withCloth(quiltingSetUp, 'denim').finish).toBe('dyed');
});

test('a knit made woven takes threads, and a woven cloth made a knit takes a loop', () => {
  const woven = withStructure(withCloth(quiltingSetUp, 'jersey'), 'plain', 20);
  expect(woven.endsPerInch).toBeGreaterThan(0);
  expect(woven.use).toBe('warp');
  const knit = withStructure(quiltingSetUp, 'jersey', 20);
  expect(knit.loopMm).toBeGreaterThan(2);
  expect(isKnit(knit.structure)).toBe(true);
});

test('a listed cloth says what it was read from', () => {
  expect(listedCloth('denim').mark).toBe('memory');
});
