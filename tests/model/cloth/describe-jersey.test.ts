import { expect, test } from 'vitest';
import { describeJersey, jerseyShrinkPercent, usualLoopLengthMm } from '../../../src/model/cloth/describe-jersey.ts';

test('the usual loop has the usual tightness', () => {
  const loop = usualLoopLengthMm(20);
  expect(describeJersey(20, loop, 'wet').tightness).toBeCloseTo(15, 12);
});
test('a tighter loop is heavier', () => {
  expect(describeJersey(20, 2.6, 'wet').gramsPerSquareMetre).toBeGreaterThan(
    describeJersey(20, 3.1, 'wet').gramsPerSquareMetre,
  );
});
test('relaxing conserves loops: weight rises by the area lost', () => {
  const { length, width } = jerseyShrinkPercent('dry', 'full');
  const dry = describeJersey(20, 2.8, 'dry').gramsPerSquareMetre;
  const full = describeJersey(20, 2.8, 'full').gramsPerSquareMetre;
  expect(full * (1 - length / 100) * (1 - width / 100)).toBeCloseTo(dry, 9);
});
test('a state does not shrink to itself', () => {
  expect(jerseyShrinkPercent('wet', 'wet')).toEqual({ length: 0, width: 0 });
});
