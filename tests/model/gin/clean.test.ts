import { describe, expect, test } from 'vitest';
import { cleanSeedCotton } from '../../../src/model/gin/clean.ts';
import { seedCottonWaterKg } from '../../../src/model/harvest/seed-cotton-water.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { totalKg } from '../../../src/model/lot.ts';
import { delivered, undried } from './hand-made-lot.ts';

const picked = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent: 10 });
const clean = (decisions: Partial<typeof undried>, context = {}) =>
  cleanSeedCotton(picked, { ...undried, ...decisions }, { harvestMethod: 'spindle', ...context });

describe('the line', () => {
  test('holds every machine in its order', () => {
    expect(clean({ dryers: 2, cylinderCleaners: 3, stickMachines: 2 }).machines.map(({ machine }) => machine)).toEqual([
      'moduleFeeder',
      'dryer1',
      'cylinderCleaner1',
      'stickMachine1',
      'dryer2',
      'cylinderCleaner2',
      'stickMachine2',
      'cylinderCleaner3',
      'distributor',
      'extractorFeeder',
    ]);
    expect(clean({ dryers: 0, cylinderCleaners: 0, stickMachines: 0 }).machines).toHaveLength(3);
  });
  test('hands each machine what the one before let go', () => {
    const { machines, lot } = clean({ dryers: 2 });
    machines.slice(1).forEach((step, index) => {
      expect(step.in).toEqual(machines[index]!.out);
      expect(step.fibreBefore).toEqual(machines[index]!.fibreAfter);
    });
    expect(lot.dryKg).toEqual(machines.at(-1)!.out.dryKg);
  });
  test('closes its ledger', () => {
    for (const dryers of [0, 1, 2]) expect(closingErrorRelative(clean({ dryers }).ledger)).toBeLessThan(1e-12);
  });
});

test('one or two dryers at 180 F bring seed cotton of 9-10 % to lint of about 5.5-6.5 %', () => {
  for (const moisture of [9, 9.5, 10]) {
    const lot = { ...picked, waterKg: seedCottonWaterKg(picked.dryKg, moisture) };
    for (const dryers of [1, 2]) {
      const { lintMoisturePercent } = cleanSeedCotton(lot, { ...undried, dryers }, { harvestMethod: 'spindle' });
      expect(lintMoisturePercent).toBeGreaterThan(5.25);
      expect(lintMoisturePercent).toBeLessThan(6.8);
    }
  }
});

describe('what changes the cleaning', () => {
  test('each further machine leaves less trash and loses a little cotton', () => {
    const steps = [
      clean({ cylinderCleaners: 0, stickMachines: 0 }),
      clean({ cylinderCleaners: 1, stickMachines: 0 }),
      clean({ cylinderCleaners: 1, stickMachines: 1 }),
      clean({ cylinderCleaners: 2, stickMachines: 1 }),
      clean({ cylinderCleaners: 2, stickMachines: 2 }),
      clean({ cylinderCleaners: 3, stickMachines: 2 }),
    ];
    steps.slice(1).forEach((step, index) => {
      expect(step.trashRemovedFraction).toBeGreaterThan(steps[index]!.trashRemovedFraction);
      expect(step.lot.dryKg.lint).toBeLessThan(steps[index]!.lot.dryKg.lint);
    });
  });
  test('dry leaf of stripped cotton comes away more easily, the rest alike', () => {
    const stripped = clean({}, { harvestMethod: 'stripper' });
    expect(stripped.lot.dryKg.leaf).toBeLessThan(clean({}).lot.dryKg.leaf);
    expect(stripped.lot.dryKg.burs).toBe(clean({}).lot.dryKg.burs);
  });
  test('crowded cleaners clean less and lose more — Hardin & Byler 2011 for the recommended loading', () => {
    const crowded = clean({}, { loadingBalesPerHourFoot: 4.5 });
    expect(crowded.trashRemovedFraction).toBeLessThan(clean({}).trashRemovedFraction);
    expect(crowded.lot.dryKg.lint).toBeLessThan(clean({}).lot.dryKg.lint);
    expect(clean({}, { loadingBalesPerHourFoot: 1.5 })).toEqual(clean({}));
  });
  test('a wet day dries less', () => {
    const wet = clean({ dryers: 1 }, { outsideF: 60, outsideHumidity: 0.95 });
    const dry = clean({ dryers: 1 }, { outsideF: 60, outsideHumidity: 0.3 });
    expect(wet.lintMoisturePercent).toBeGreaterThan(dry.lintMoisturePercent);
  });
});

test('seed-cotton cleaners leave length as it is and make a few neps — Boykin & Ray 2010; Armijo et al. 2019', () => {
  const { lot } = clean({});
  expect(lot.fibre.lengths).toEqual(picked.fibre.lengths);
  expect(lot.fibre.nepsRatio).toBeGreaterThan(1);
  expect(lot.fibre.nepsRatio).toBeLessThan(1.2);
});

test('the overflow is what the share of the distributor says', () => {
  const { overflow, overflowKg } = clean({}, { overflowShare: 0.15 });
  expect(overflowKg / totalKg(overflow.distributed)).toBeCloseTo(0.15, 9);
  const none = clean({}, { overflowShare: 0 });
  expect(none.overflowKg).toBe(0);
  expect(totalKg(none.overflow.removed)).toBe(0);
});
