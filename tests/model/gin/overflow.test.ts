import { describe, expect, test } from 'vitest';
import { distribute, removedInAllRounds } from '../../../src/model/gin/overflow.ts';
import { addMasses, parts, totalKg, waterGroups } from '../../../src/model/lot.ts';
import { delivered } from './hand-made-lot.ts';

const feed = delivered({ method: 'stripper', foreignMatter: 0.2, lintShare: 0.42, moisturePercent: 9 });
const separator = { leaf: 0.05, dirt: 0.1, lint: 0.0003 };

function expectEqual(a: ReturnType<typeof addMasses>, b: ReturnType<typeof addMasses>) {
  for (const part of parts) expect(Math.abs(a.dryKg[part] - b.dryKg[part])).toBeLessThan(1e-9 * totalKg(feed));
  for (const group of waterGroups)
    expect(Math.abs(a.waterKg[group] - b.waterKg[group])).toBeLessThan(1e-9 * totalKg(feed));
}

describe.each([0, 0.05, 0.1, 0.15, 0.9])('at an overflow share of %f', (share) => {
  const flows = distribute(feed, share, separator);
  test('feeders + removed = feed', () => {
    expectEqual(addMasses(flows.toFeeders, flows.removed), feed);
  });
  test('distributed = feed + returned = overflow + feeders', () => {
    expectEqual(flows.distributed, addMasses(feed, flows.returned));
    expectEqual(flows.distributed, addMasses(flows.overflow, flows.toFeeders));
  });
  test('overflow = removed + returned', () => {
    expectEqual(flows.overflow, addMasses(flows.removed, flows.returned));
  });
});

test('a share of nothing removes nothing; a sure separator removes the share once', () => {
  expect(removedInAllRounds(0, 0.5)).toBe(0);
  expect(removedInAllRounds(0.1, 1)).toBeCloseTo(0.1, 12);
  expect(removedInAllRounds(0.1, 0)).toBe(0);
});
