import { expect, test } from 'vitest';
import { type AverageName, atCase, averageFacts, statedAverages } from '../../../src/model/trace/chain-averages.ts';

test('the middle case is what the facts state', () => {
  const stated = statedAverages('middle');
  for (const [name, { value }] of Object.entries(averageFacts)) expect(stated[name as AverageName]).toBe(value);
});
test('a thrifty mill and a heavy boll ask less of the field; more waste and a light boll ask more', () => {
  const [low, high] = [statedAverages('low'), statedAverages('high')];
  expect([low.bollGrams, high.bollGrams]).toEqual([6, 2]);
  expect([low.yarnRealisation, high.yarnRealisation]).toEqual([0.952, 0.85]);
  expect([low.seedPerLint, high.seedPerLint]).toEqual([1.26, 1.65]);
});
test('a number without a range is the same in every case', () => {
  expect(atCase({ value: 3 }, 'low')).toBe(3);
  expect(atCase({ value: 3, range: [2, 5] }, 'high', 'less')).toBe(2);
});
