import { expect, test } from 'vitest';
import { extraneousPoints } from '../../../src/model/classing/differences.ts';
import { barkChance, callChances, callExtraneous } from '../../../src/model/classing/extraneous.ts';
import { markets } from '../../../src/model/classing/markets.ts';
import { openStream } from '../../../src/model/random.ts';
import { fibreOf, lintLot, trashLb } from './lots.ts';

const lot = (trash: object) => lintLot(fibreOf(), 1, trash);

test('bark: about 19 % of field-cleaned stripped bales (Texas Tech, 2006-07), about 2 % of picked ones (Beltwide 2000, 2002)', () => {
  expect(barkChance(lot(trashLb.stripped2), true)).toBeCloseTo(0.19, 2);
  expect(barkChance(lot(trashLb.picked2), false)).toBeCloseTo(0.019, 2);
});
test('more sticks, more bark, up to a cap; no lint, no call', () => {
  expect(barkChance(lot({ sticks: 2.2 }), true)).toBeGreaterThan(barkChance(lot({ sticks: 1.2 }), true));
  expect(barkChance(lot({ sticks: 40 }), true)).toBe(0.6);
  expect(barkChance(lintLot(fibreOf(), 0), true)).toBe(0);
});
test('calls come as often as their chance', () => {
  const chances = callChances(lot(trashLb.stripped2), true);
  const random = openStream(9, 'classing');
  const bales = Array.from({ length: 20000 }, () => callExtraneous(chances, random));
  const share = (kind: string) => bales.filter((calls) => calls.some((call) => call.kind === kind)).length / 20000;
  expect(share('bark')).toBeCloseTo(chances.bark, 1);
  expect(share('grass')).toBeCloseTo(0.009, 2);
  expect(bales.flat().filter(({ level }) => level === 2).length / bales.flat().length).toBeLessThan(0.04);
});
test('of several calls the costliest counts: the record holds one', () => {
  const calls = [
    { kind: 'bark', level: 1 },
    { kind: 'plastic', level: 1 },
    { kind: 'prep', level: 1 },
  ] as const;
  // Lent by the Valley: 4000 points at 82.38 c are 3999 at 82.35 c.
  expect(extraneousPoints(markets.southeast, calls)).toEqual({ points: -3999, filled: ['otherMarket'] });
  expect(extraneousPoints(markets.southeast, []).points).toBe(0);
});
