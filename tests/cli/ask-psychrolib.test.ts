import { expect, test } from 'vitest';
import { askPsychrolib } from '../../src/cli/ask-psychrolib.ts';

test('water boils at 100 °C where the pressure is 101.3 kPa — steam tables', () => {
  expect(askPsychrolib('GetSatVapPres', [100])! / 1000).toBeCloseTo(101.3, 0);
});

test('a humidity there and back again', () => {
  const pascal = askPsychrolib('GetVapPresFromRelHum', [21, 0.6])!;
  expect(askPsychrolib('GetRelHumFromVapPres', [21, pascal])).toBeCloseTo(0.6, 9);
});

test('another function is refused', () => {
  expect(() => askPsychrolib('SetUnitSystem', [1])).toThrow(RangeError);
});
