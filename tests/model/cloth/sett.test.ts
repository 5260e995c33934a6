import { describe, expect, test } from 'vitest';
import { describeCloth } from '../../../src/model/cloth/describe-cloth.ts';
import { jamming, maximumSettPerInch } from '../../../src/model/cloth/sett.ts';
import { weaveIds } from '../../../src/model/cloth/weaves.ts';
import { single } from './yarn-lot.ts';

const ne = (count: number) => single(count).singleTex;
const square = (threads: number, weave: (typeof weaveIds)[number] = 'plain') =>
  jamming({
    weave,
    warpTex: ne(30),
    weftTex: ne(30),
    endsPerInch: threads,
    picksPerInch: threads,
    warpCrimpPercent: 6,
    weftCrimpPercent: 7,
  });

test('floats let threads lie closer', () => {
  expect(maximumSettPerInch(20, 20, 'sateen')).toBeGreaterThan(maximumSettPerInch(20, 20, 'twill'));
  expect(maximumSettPerInch(20, 20, 'twill')).toBeGreaterThan(maximumSettPerInch(20, 20, 'plain'));
});

test('plain square cloth of equal round yarns jams at the diameter / sqrt(3): 88.5 threads for 30s', () => {
  const limit = (28 * Math.sqrt(30)) / Math.sqrt(3);
  expect(square(limit * 0.999).jammed).toBe(false);
  expect(square(limit * 1.001).jammed).toBe(true);
  expect(square(limit).pressure).toBeCloseTo(1, 9);
});

describe.each(weaveIds)('%s', (weave) => {
  test('the highest sett is just not jammed', () => {
    const { highestEndsPerInch, highestPicksPerInch } = square(60, weave);
    const at = (endsPerInch: number, picksPerInch: number) =>
      jamming({
        weave,
        warpTex: ne(30),
        weftTex: ne(30),
        endsPerInch,
        picksPerInch,
        warpCrimpPercent: 6,
        weftCrimpPercent: 7,
      }).jammed;
    expect(at(highestEndsPerInch! * 0.9999, 60)).toBe(false);
    expect(at(highestEndsPerInch! * 1.0001, 60)).toBe(true);
    expect(at(60, highestPicksPerInch! * 0.9999)).toBe(false);
    expect(at(60, highestPicksPerInch! * 1.0001)).toBe(true);
  });
  test('more threads than lie side by side fit at no sett of the other', () => {
    expect(square(160, weave)).toMatchObject({ jammed: true, highestEndsPerInch: null, highestPicksPerInch: null });
  });
});

test.each([
  ['print cloth', 80, 80, 30, 40, 'plain'],
  ['lawn', 90, 88, 60, 60, 'plain'],
  ['percale type 200', 104, 88, 40, 40, 'plain'],
  ['poplin', 144, 76, 40, 40, 'plain'],
  ['batiste', 96, 92, 80, 80, 'plain'],
  ['denim', 68, 38, 7, 7, 'twill'],
  ['drill', 108, 56, 20, 20, 'twill'],
  ['sateen', 96, 64, 40, 30, 'sateen'],
] as const)('a cloth that is woven every day is not called jammed: %s', (_name, ends, picks, warp, weft, weave) => {
  const { jamming: found } = describeCloth({
    warp: single(warp),
    weft: single(weft),
    endsPerInch: ends,
    picksPerInch: picks,
    weave,
    warpCrimpPercent: null,
    weftCrimpPercent: null,
  });
  expect(found.jammed).toBe(false);
});
