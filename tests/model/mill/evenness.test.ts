import { expect, test } from 'vitest';
import { irregularityIndex, limitVariationPercent, yarnVariationPercent } from '../../../src/model/mill/evenness.ts';

test('four times the fibres, half the random unevenness', () => {
  expect(limitVariationPercent(400)).toBeCloseTo(limitVariationPercent(100) / 2, 12);
});

test('index of a yarn at the limit is 1', () => {
  expect(irregularityIndex(limitVariationPercent(90), limitVariationPercent(90))).toBe(1);
});

test('short fibre worsens, combing and rotor spinning improve', () => {
  const carded = yarnVariationPercent('ringCarded', 100, 8.5, 0);
  expect(yarnVariationPercent('ringCarded', 100, 12, 0)).toBeGreaterThan(carded);
  expect(yarnVariationPercent('ringCombed', 100, 8.5, 14)).toBeLessThan(carded);
  expect(yarnVariationPercent('rotor', 100, 8.5, 0)).toBeLessThan(carded);
});

test('ten more points of noil take off 1.5 U %, which is 1.875 CV %', () => {
  const difference = yarnVariationPercent('ringCombed', 60, 8.5, 8) - yarnVariationPercent('ringCombed', 60, 8.5, 18);
  expect(difference).toBeCloseTo(1.875, 12);
});

test('no yarn gets within 10 % of the random limit', () => {
  expect(irregularityIndex(yarnVariationPercent('ringCombed', 400, 2, 20), limitVariationPercent(400))).toBeCloseTo(
    1.1,
    12,
  );
});
