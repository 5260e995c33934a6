import { describe, expect, test } from 'vitest';
import { cardOf, withCloth } from '../../src/model/bench/set-up.ts';
import { decodeBench, encodeBench, firstBenches, plainSetUp } from '../../src/statechart/saved-bench.ts';

test('the benches as they come open without a query, and have a short link', () => {
  expect(decodeBench('')).toEqual({ saved: firstBenches, problems: [] });
  expect(encodeBench(firstBenches).length).toBeLessThan(90);
});

test('a lay-down, a twist of one’s own and a changed weave come back', () => {
  const saved = {
    a: { ...plainSetUp('desi', 'denim'), bales: [{ ...cardOf('pima'), netLb: 500 }], twist: 4.4 },
    b: { ...withCloth(firstBenches.b, 'jersey'), loopMm: 2.6, preshrunk: true },
  };
  expect(decodeBench(encodeBench(saved))).toEqual({ saved, problems: [] });
});

describe('junk is named, and the rest kept', () => {
  const found = (query: string) => decodeBench(query);
  test.each([
    ['a.cotton=silk', 'a.cotton', 'silk'],
    ['a.lengthIn=99', 'a.lengthIn', '99'],
    ['b.warp=thick', 'b.warp', 'thick'],
    ['b.endsPerInch=-4', 'b.endsPerInch', '-4'],
    ['c.cloth=lawn', 'c.cloth', 'lawn'],
    ['v=9', 'v', '9'],
    ['a.finish=gold', 'a.finish', 'gold'],
    ['a.bales=upland_1', 'a.bales 1, uniformityPercent', ''],
  ])('%s', (query, field, value) => {
    const { problems, saved } = found(`b.cloth=lawn&${query}`);
    expect(problems).toContainEqual(expect.objectContaining({ field, value }));
    expect(saved.b.cloth).toBe('lawn');
  });
  test('a knit that a link makes woven has threads', () => {
    expect(found('a.cloth=jersey&a.structure=plain').saved.a.endsPerInch).toBeGreaterThan(0);
  });
});
