import { describe, expect, test } from 'vitest';
import { sweepPlace, sweepSetUps } from '../../../src/model/bench/sweep.ts';
import { sweepLimits } from '../../../src/model/bench/sweep-limits.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { quiltingBench, quiltingSetUp } from './benches.ts';

const placesOf = (setUp: typeof quiltingSetUp, input: 'staple' | 'count') =>
  sweepSetUps(setUp, input).map((each) => sweepPlace(each, input));

describe('along the count', () => {
  const limits = sweepLimits(placesOf(quiltingSetUp, 'count'));
  test('the limits are those of the verdict', () => {
    const { comfortableNe, ceilingNe } = quiltingBench.warp.spinning.verdict;
    expect(limits.map(({ bounds }) => bounds)).toEqual(['comfort', 'reach']);
    expect(limits[0]?.at).toBeCloseTo(comfortableNe, 6);
    expect(limits[1]?.at).toBeCloseTo(ceilingNe, 6);
  });
  test('carded yarn ends where 75 fibers are left in the section (Rieter: 75 at micronaire 4.3 is Ne 46.5)', () => {
    const atMicronaire = { ...quiltingSetUp, card: { ...quiltingSetUp.card, micronaire: 4.3 } };
    const reach = sweepLimits(placesOf(atMicronaire, 'count')).find(({ bounds }) => bounds === 'reach');
    expect(reach?.reason).toBe('fibresInSection');
    expect(reach?.at).toBeCloseTo(46.5, 1);
  });
});

test('along the staple, the yarn is as fine as it may be where the limit is drawn', () => {
  const [limit] = sweepLimits(placesOf(quiltingSetUp, 'staple'));
  expect(limit?.reason).toBe('staple');
  const there = workBench({ ...quiltingSetUp, card: { ...quiltingSetUp.card, lengthIn: limit!.at } });
  expect(Math.abs(there.warp.spinning.verdict.comfortableNe - there.warp.singleNe)).toBeLessThan(0.3);
});

test('a yarn that every staple spins with ease has no limit on the curve', () => {
  expect(sweepLimits(placesOf({ ...quiltingSetUp, warp: '5Ne', weft: '5Ne' }, 'staple'))).toEqual([]);
});
