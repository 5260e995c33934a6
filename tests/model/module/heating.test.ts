import { describe, expect, test } from 'vitest';
import { moduleVerdict, nextCoreF, settledRiseF } from '../../../src/model/module/heating.ts';

const start = 75;
const coreAfter = (days: number, moisture: number) => {
  let f = start;
  for (let day = 0; day < days; day++) f = nextCoreF(f, moisture);
  return f;
};

describe('the rule of the thermometer — Univ. of California Publ. 3352', () => {
  test.each([
    [10, 85, 'sound'],
    [15, 90, 'ginSoon'],
    [17, 92, 'ginSoon'],
    [10, 120, 'ginNow'],
  ] as const)('rise %i F, core %i F: %s', (rise, core, verdict) => {
    expect(moduleVerdict(rise, core)).toBe(verdict);
  });
});

describe('the core', () => {
  test('of sound cotton rises no more than 10-15 F and levels off — Univ. of California Publ. 3352', () => {
    for (const moisture of [8, 10, 12]) {
      expect(coreAfter(90, moisture) - start).toBeLessThanOrEqual(15);
      expect(Math.abs(coreAfter(90, moisture) - coreAfter(30, moisture))).toBeLessThan(0.1);
    }
  });
  test.each([13, 14, 16])(
    'of cotton at %i %% gains 15-20 F or more in 5 to 7 days — Univ. of California Publ. 3352',
    (moisture) => {
      expect(coreAfter(6, moisture) - start).toBeGreaterThanOrEqual(15);
    },
  );
  test('of very wet cotton passes 120 F — Univ. of California Publ. 3352', () => {
    expect(coreAfter(10, 18)).toBeGreaterThan(120);
  });
  test('is warmer when damper, and never absurd', () => {
    const rises = [6, 10, 12, 13, 15, 18, 25].map(settledRiseF);
    expect(rises).toEqual([...rises].sort((a, b) => a - b));
    expect(Math.max(...rises)).toBeLessThanOrEqual(75);
    expect(Math.min(...rises)).toBeGreaterThanOrEqual(0);
  });
  test('cools when its cotton has dried', () => {
    expect(nextCoreF(115, 9)).toBeLessThan(115);
  });
});
