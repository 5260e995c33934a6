import { expect, test } from 'vitest';
import { dd60, hu8655 } from '../../../src/model/field/heat.ts';

test('DD60 is the mean of high and low above 60, never negative', () => {
  expect(dd60(90, 70)).toBe(20);
  expect(dd60(62, 50)).toBe(0);
});
test('a day wholly between the thresholds counts its mean above 55', () => {
  expect(hu8655(80, 60)).toBeCloseTo(15, 12);
});
test('a day wholly above both thresholds counts the whole band, one below neither nothing', () => {
  expect(hu8655(110, 90)).toBeCloseTo(31, 12);
  expect(hu8655(55, 40)).toBe(0);
});
test('the sine agrees with its own integral, summed in small steps', () => {
  const [maxF, minF] = [98, 48];
  let sum = 0;
  const steps = 20000;
  for (let k = 0; k < steps; k++) {
    const t = 73 + 25 * Math.sin((2 * Math.PI * (k + 0.5)) / steps);
    sum += Math.min(86, Math.max(55, t)) - 55;
  }
  expect(hu8655(maxF, minF)).toBeCloseTo(sum / steps, 3);
});
