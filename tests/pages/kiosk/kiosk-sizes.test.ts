import { expect, test } from 'vitest';
import { capitalMm, capitalShare, kioskMm, kioskSizes } from '../../../src/pages/kiosk/kiosk-sizes.ts';

// 36 CFR 1194, 402.4: capitals of 3/16 in at least. Colle and Hiszem 2004: keys 20 mm square. EN 301 549, 5.1.4: 0.0122 of the distance.
test.each([
  ['10.1 in 1280x800', 0.17, 1280, 800],
  ['21.5 in 1920x1080', 0.248, 1920, 1080],
  ['32 in 1920x1080', 0.369, 1920, 1080],
  ['32 in upright', 0.369, 1080, 1920],
])('%s: keys, gaps and capitals hold on the glass', (_, mmPerPx, width, height) => {
  const sizes = kioskSizes(mmPerPx, width, height);
  const mm = (name: string) => Number.parseFloat(sizes[name]!) * mmPerPx;
  expect(mm('--kiosk-key')).toBeGreaterThanOrEqual(20);
  expect(mm('--kiosk-key')).toBeLessThan(20 + mmPerPx);
  expect(mm('--kiosk-gap')).toBeGreaterThanOrEqual(3);
  expect(mm('--kiosk-text') * capitalShare).toBeGreaterThanOrEqual((3 / 16) * 25.4);
  expect(mm('--mm')).toBeCloseTo(1, 2);
});

test('large screens reach the goal for a reader 600 mm away, small ones the least', () => {
  expect(capitalMm(1080 * 0.369)).toBe(kioskMm.goalCapital);
  expect(capitalMm(1080 * 0.369)).toBeCloseTo(0.0122 * 600, 1);
  expect(capitalMm(800 * 0.17)).toBe(kioskMm.leastCapital);
});
