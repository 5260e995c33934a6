import { describe, expect, test } from 'vitest';
import type { DecisionsOf } from '../../../src/model/decisions.ts';
import { readFibre } from '../../../src/model/fibre.ts';
import { harvest } from '../../../src/model/harvest/harvest.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import { partMasses, totalKg, totalWaterKg } from '../../../src/model/lot.ts';
import { poundsFromKilograms } from '../../../src/model/units.ts';
import { evenlyMoist, fibreOf } from '../gin/hand-made-lot.ts';

const dryKg = partMasses({ lint: 40_000, seed: 55_000, motes: 1_000 });
const crop = {
  grown: { dryKg, waterKg: evenlyMoist(dryKg, 8), fibre: fibreOf('medium') },
  weatheredFraction: 0.04,
  leafRemaining: 0.2,
  acres: 100,
  lintLbPerAcre: 880,
};
const by = (method: DecisionsOf<'harvest'>['method'], moisturePercent = 9) =>
  harvest(crop, { method, daysToHarvest: 5, pickings: 1, moisturePercent });
const methods = ['hand', 'spindle', 'stripper', 'stripperFieldCleaner'] as const;

describe.each(methods)('%s', (method) => {
  test.each([6, 9, 18])('closes at %i % moisture', (moisturePercent) => {
    expect(closingErrorRelative(by(method, moisturePercent).ledger)).toBeLessThan(1e-12);
  });
  test('weather takes its share first, the rest is gathered or left', () => {
    const { ledger, efficiency, lot } = by(method);
    const account = (name: string) => ledger.out.find((entry) => entry.account === name)!;
    expect(account('weathered').dryKg.lint).toBeCloseTo(1600, 6);
    const gathered = 38_400 * efficiency;
    const fieldCleanerLoss = method === 'stripperFieldCleaner' ? gathered * 0.01 : 0;
    expect(lot.dryKg.lint).toBeCloseTo(gathered - fieldCleanerLoss, 6);
    expect(account('leftInField').dryKg.lint).toBeCloseTo(38_400 - gathered + fieldCleanerLoss, 6);
  });
  test('holds the moisture decided', () => {
    const { lot, moisturePercent } = by(method);
    expect(moisturePercent).toBeCloseTo((100 * totalWaterKg(lot.waterKg)) / totalKg(lot), 12);
    // The field cleaner's rejects are a little damper than what stays.
    expect(Math.abs(moisturePercent - (method === 'spindle' ? 10 : 9))).toBeLessThan(0.02);
  });
});

test('what drying takes and what wetting gives are kept apart in the ledger', () => {
  const water = (side: 'in' | 'out', name: string, moisture: number) =>
    by('hand', moisture).ledger[side].find((entry) => entry.account === name)!.waterKg;
  expect(water('out', 'evaporated', 6)).toBeGreaterThan(0);
  expect(water('in', 'moistureTakenUp', 6)).toBe(0);
  expect(water('in', 'moistureTakenUp', 14)).toBeGreaterThan(0);
  expect(water('out', 'evaporated', 14)).toBe(0);
});

test('spindles add no more than two points of moisture — Cotton Australia, ginners advice', () => {
  const added = by('spindle').moisturePercent - by('hand').moisturePercent;
  expect(added).toBeGreaterThan(0);
  expect(added).toBeLessThanOrEqual(2);
});

test('the field cleaner leaves less than half of the foreign matter — Smith, Jones & Miller, Texas Agricultural Experiment Station', () => {
  const trashPerLint = (method: 'stripper' | 'stripperFieldCleaner') => {
    const { foreignMatterPercent, lot } = by(method);
    const clean = lot.dryKg.lint + lot.dryKg.seed;
    return ((foreignMatterPercent / (100 - foreignMatterPercent)) * clean) / lot.dryKg.lint;
  };
  expect(trashPerLint('stripperFieldCleaner') / trashPerLint('stripper')).toBeLessThan(0.5);
});

test('order of trash: hand, spindle, stripper with field cleaner, stripper', () => {
  const percents = (['hand', 'spindle', 'stripperFieldCleaner', 'stripper'] as const).map(
    (method) => by(method).foreignMatterPercent,
  );
  expect(percents).toEqual([...percents].sort((a, b) => a - b));
});

test('only the stripper breaks fibre, and makes neps', () => {
  const picked = readFibre(by('spindle').lot.fibre);
  const stripped = by('stripper').lot.fibre;
  expect(picked).toEqual(readFibre(crop.grown.fibre));
  expect(readFibre(stripped).shortFibrePercentByWeight).toBeGreaterThan(picked.shortFibrePercentByWeight);
  expect(readFibre(stripped).upperHalfMeanMm).toBeLessThan(picked.upperHalfMeanMm);
  expect(stripped.nepsRatio).toBeCloseTo(1.37, 12);
});

describe('labour', () => {
  test('by hand 200 lb of seed cotton a day — plantation records', () => {
    const { labour, lot } = by('hand');
    expect(labour.machineHours).toBeNull();
    expect(labour.personDays! * 200).toBeCloseTo(poundsFromKilograms(totalKg(lot)), 6);
  });
  test('a six-row picker covers 8 acres an hour — delta machinery budgets', () => {
    expect(by('spindle').labour).toEqual({ personDays: null, machineHours: 12.5 });
  });
});

describe('notes', () => {
  const notes = (change: Partial<typeof crop>, method: (typeof methods)[number], moisturePercent = 9) =>
    harvest({ ...crop, ...change }, { method, daysToHarvest: 5, pickings: 1, moisturePercent }).notes;
  test('say what is worth a sentence', () => {
    expect(notes({}, 'hand')).toEqual([]);
    expect(notes({ leafRemaining: 0.9 }, 'spindle')).toEqual(['leafyPlant', 'spindlesWetCotton']);
    expect(notes({ lintLbPerAcre: 250 }, 'stripperFieldCleaner')).toEqual(['poorCropForMachine', 'fieldCleanerUsed']);
    expect(notes({ lintLbPerAcre: 50 }, 'hand', 13)).toEqual(['tooWetToStore']);
  });
});
