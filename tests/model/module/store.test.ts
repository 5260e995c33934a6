import { describe, expect, test } from 'vitest';
import type { DecisionsOf } from '../../../src/model/decisions.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { storeModules, yellowingOf } from '../../../src/model/module/store.ts';
import { delivered } from '../gin/hand-made-lot.ts';

const lotAt = (moisturePercent: number) =>
  delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent });
const stored = (moisture: number, decisions: Partial<DecisionsOf<'module'>> = {}, rainInchesInStorage = 0) =>
  storeModules(
    lotAt(moisture),
    { kind: 'round', cover: 'good', storageDays: 30, ...decisions },
    { rainInchesInStorage },
  );

describe('the balance', () => {
  test.each(['good', 'poor', 'none'] as const)('closes under a cover that is %s', (cover) => {
    for (const kind of ['round', 'conventional', 'wagon'] as const)
      expect(closingErrorRelative(stored(11, { kind, cover }, 5).ledger)).toBeLessThan(1e-12);
  });
  test('equal modules make up the lot', () => {
    const { lot, moduleCount, seedCottonKgEach } = stored(10);
    expect(moduleCount * seedCottonKgEach).toBeCloseTo(totalKg(lot), 6);
    // 111,111 kg in modules of 5,000 lb.
    expect(moduleCount).toBe(49);
  });
  test('no days, no change: not even in the rain', () => {
    const { lot, ledger, coreTemperatureF, verdict } = stored(14, { storageDays: 0, cover: 'none' }, 3);
    expect(lot.dryKg).toEqual(lotAt(14).dryKg);
    expect(lot.waterKg).toEqual(lotAt(14).waterKg);
    expect(ledger.in.find(({ account }) => account === 'moistureTakenUp')!.waterKg).toBe(0);
    expect(coreTemperatureF).toEqual([{ day: 0, f: 75 }]);
    expect(verdict).toBe('sound');
  });
});

describe('rain', () => {
  test('a worse cover means wetter cotton and less of it', () => {
    const [good, poor, none] = (['good', 'poor', 'none'] as const).map((cover) => stored(10, { cover }, 4));
    expect(good!.moisturePercent).toBeLessThan(poor!.moisturePercent);
    expect(poor!.moisturePercent).toBeLessThan(none!.moisturePercent);
    expect(good!.lot.dryKg.lint).toBeGreaterThan(poor!.lot.dryKg.lint);
    expect(poor!.lot.dryKg.lint).toBeGreaterThan(none!.lot.dryKg.lint);
  });
  test('never drowns a module', () => {
    expect(stored(18, { cover: 'none', storageDays: 90 }, 60).moisturePercent).toBeLessThanOrEqual(25);
  });
});

describe('heat and colour', () => {
  test.each([
    [9, 'sound'],
    [11.5, 'sound'],
    [13.5, 'ginSoon'],
    [18, 'ginNow'],
  ] as const)('at %d %: %s', (moisture, verdict) => {
    expect(stored(moisture).verdict).toBe(verdict);
  });
  test('a reading for each day', () => {
    const { coreTemperatureF } = stored(12, { storageDays: 14 });
    expect(coreTemperatureF.map(({ day }) => day)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]);
  });
  test('cotton below 13 % keeps its colour — Univ. of California Publ. 3352', () => {
    expect(stored(12).lot.fibre).toEqual(lotAt(12).fibre);
  });
  test('yellowing grows with days and stops at a limit', () => {
    expect(yellowingOf(0)).toBe(0);
    expect(yellowingOf(200)).toBeGreaterThan(yellowingOf(100));
    expect(yellowingOf(1e5)).toBeCloseTo(1.2, 9);
  });
});
