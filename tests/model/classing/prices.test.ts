import { expect, test } from 'vitest';
import { priceOfCrop, realUsd } from '../../../src/model/classing/prices.ts';

test('prices outside the tables are not made up', () => {
  expect(priceOfCrop(1950)).toBeNull();
  expect(realUsd(10, 1850, 2024)).toBeNull();
  expect(realUsd(10, 1931, 2030)).toBeNull();
});
test('between listed years consumer prices run straight', () => {
  // 1936 13.9 and 1940 14.0: 1938 is 13.95.
  expect(realUsd(13.95, 1938, 2024)).toBeCloseTo(313.7, 6);
});
test('prices say whether they were read or remembered', () => {
  expect([priceOfCrop(1937)!.mark, priceOfCrop(2021)!.mark]).toEqual(['published', 'memory']);
});
