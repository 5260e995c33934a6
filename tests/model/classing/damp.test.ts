import { expect, test } from 'vitest';
import { colourAtRisk, overMoistureLimit, paidWeight } from '../../../src/model/classing/damp.ts';

test('480 lb at 10 % hold 432 lb dry, paid as 467.03 lb at 7.5 % — worked by hand', () => {
  expect(paidWeight(480, 10, false, 2023)).toMatchObject({ waterRule: 'waterDeducted' });
  expect(paidWeight(480, 10, false, 2023).paidLb).toBeCloseTo(432 / 0.925, 9);
});
test('a bale at the limit, or one nobody measured, is paid as it weighs', () => {
  for (const moisture of [5, 7.5, 7.5 * (1 + 1e-12), null]) {
    expect(paidWeight(480, moisture, true, 2023)).toEqual({ paidLb: 480, waterRule: 'none' });
  }
});
test('the loan refuses what the market pays as dried', () => {
  expect(paidWeight(480, 8, true, 2023).waterRule).toBe('refusedForLoan');
  expect(paidWeight(480, 8, true, 2023).paidLb).toBe(paidWeight(480, 8, false, 2023).paidLb);
});
test('before the loan’s rule of 2006 no limit of moisture held — Federal Register 71:51422', () => {
  expect(paidWeight(480, 10, true, 2005)).toEqual({ paidLb: 480, waterRule: 'none' });
  expect(paidWeight(480, 10, false, 1937)).toEqual({ paidLb: 480, waterRule: 'none' });
  expect(paidWeight(480, 10, true, 2006).waterRule).toBe('refusedForLoan');
});
test('bales above 7.5 % are too damp, above 8 % they change color — Hughs et al. 2004', () => {
  expect([7.5, 7.6].map(overMoistureLimit)).toEqual([false, true]);
  expect([8, 8.1].map(colourAtRisk)).toEqual([false, true]);
});
