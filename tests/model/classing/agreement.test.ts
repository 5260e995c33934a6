import { expect, test } from 'vitest';
import { agreementPercent } from '../../../src/model/classing/agreement.ts';

test('agreement within one and two standard deviations is 68.27 and 95.45 % (normal tables)', () => {
  expect(agreementPercent(1, 1)).toBeCloseTo(68.2689, 3);
  expect(agreementPercent(1, 2)).toBeCloseTo(95.45, 3);
});
