import { expect, test } from 'vitest';
import { emergenceFraction, plantsStanding, rowFeetPerAcre } from '../../../src/model/field/stand.ts';

test.each([
  [40, 13068],
  [38, 13756],
  [36, 14520],
  [30, 17424],
  [15, 34848],
])('%d-inch rows: %d feet in an acre (Mississippi State, Estimating Yield by Boll Counting)', (inches, feet) => {
  expect(Math.round(rowFeetPerAcre(inches))).toBe(feet);
});
test('seed that comes up in time stands at the usual share; late seed thins, to a floor', () => {
  expect(emergenceFraction(5)).toBe(0.75);
  expect(emergenceFraction(10)).toBe(0.75);
  expect(emergenceFraction(15)).toBeCloseTo(0.65, 12);
  expect(emergenceFraction(60)).toBe(0.4);
});
test('nothing sown, nothing standing', () => {
  expect(plantsStanding(0, 0.75)).toBe(0);
});
