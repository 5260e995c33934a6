import { describe, expect, test } from 'vitest';
import { specificationOf, washClassOf } from '../../../src/model/bench/bench-cloth.ts';
import { startingSetUp } from '../../../src/model/bench/set-up.ts';
import { workBench } from '../../../src/model/bench/work-bench.ts';
import { yarnKilometresPerSquareMetre } from '../../../src/model/cloth/weight.ts';
import { quiltingBench, quiltingSetUp } from './benches.ts';

const flannelSetUp = startingSetUp('uplandMedium', 'flannel', 14);
const flannel = workBench(flannelSetUp).cloth;

describe('the first wash', () => {
  test('draws the cloth in by the range of its kind, with not a millimetre of yarn lost', () => {
    const { description, washed, shrinkPercent } = flannel;
    if (description.kind !== 'woven' || washed.kind !== 'woven') throw new Error('flannel is woven');
    const kept = (1 - shrinkPercent.length / 100) * (1 - shrinkPercent.width / 100);
    const before = yarnKilometresPerSquareMetre(description.construction);
    const after = yarnKilometresPerSquareMetre(washed.construction);
    expect(after.warp * kept).toBeCloseTo(before.warp, 12);
    expect(after.weft * kept).toBeCloseTo(before.weft, 12);
    expect(washed.gramsPerSquareMetre * kept).toBeCloseTo(description.gramsPerSquareMetre, 9);
  });
  test('takes more of flannel (5 to 10 %) than of quilting cotton (2 to 4 %), textbook ranges from memory', () => {
    expect(flannel.shrinkPercent.length).toBeGreaterThanOrEqual(5);
    expect(flannel.shrinkPercent.length).toBeLessThanOrEqual(10);
    expect(quiltingBench.cloth.shrinkPercent.length).toBeGreaterThanOrEqual(2);
    expect(quiltingBench.cloth.shrinkPercent.length).toBeLessThanOrEqual(4);
  });
  test('of a knit draws its loops together', () => {
    const { description, washed, shrinkPercent } = workBench(startingSetUp('pima', 'jersey', 14)).cloth;
    const kept = (1 - shrinkPercent.length / 100) * (1 - shrinkPercent.width / 100);
    expect(washed.gramsPerSquareMetre * kept).toBeCloseTo(description.gramsPerSquareMetre, 9);
  });
  test('goes by the cloth, or by being compacted or still grey', () => {
    expect(washClassOf(flannelSetUp)).toBe('open');
    expect(washClassOf({ ...flannelSetUp, preshrunk: true })).toBe('compacted');
    expect(washClassOf({ ...flannelSetUp, finish: 'grey' })).toBe('loomState');
  });
});

test('a napped cloth is never exempt from the flame test, whatever it weighs (16 CFR 1610)', () => {
  expect(flannel.description.gramsPerSquareMetre).toBeGreaterThan(88.2);
  expect(flannel.flameExempt).toBe(false);
  expect(quiltingBench.cloth.flameExempt).toBe(true);
});

test('threads that do not fit are seen', () => {
  expect(workBench({ ...quiltingSetUp, endsPerInch: 200, picksPerInch: 200 }).cloth.tightness).toBe('jammed');
});

test('a knit has no woven specification, no strip and no picks', () => {
  const setUp = startingSetUp('uplandMedium', 'interlock', 14);
  const { cloth, warp } = workBench(setUp);
  expect(specificationOf(setUp, warp.number, warp.number)).toBeNull();
  expect(cloth).toMatchObject({ warpNewtons: null, picksPerYard: 0, tightness: 'fits' });
});
