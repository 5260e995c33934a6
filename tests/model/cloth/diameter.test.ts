import { expect, test } from 'vitest';
import { ashenhurstSideBySide, threadsSideBySide, yarnDiameterMm } from '../../../src/model/cloth/diameter.ts';

test('four times as heavy, twice as thick', () => {
  expect(yarnDiameterMm(80)).toBeCloseTo(2 * yarnDiameterMm(20), 12);
});
test('as many threads lie side by side as diameters go into an inch', () => {
  expect(threadsSideBySide(20) * yarnDiameterMm(20)).toBeCloseTo(25.4, 12);
});
test('the handweaver leaves a little more room than Peirce', () => {
  expect(ashenhurstSideBySide(20) / threadsSideBySide(20)).toBeCloseTo((0.9 * Math.sqrt(840)) / 28, 12);
});
