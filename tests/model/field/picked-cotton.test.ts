import { describe, expect, test } from 'vitest';
import { pickedCohorts } from '../../../src/model/field/picked-cotton.ts';
import { stepOpening } from '../../../src/model/field/step-opening.ts';
import { flowerOn, standingField, warmYear } from './hand-made-field.ts';
import { changedFrom, ordinary } from './plans.ts';

const picked = (pickDays: number[], rainFrom = 400) => {
  const weather = changedFrom(warmYear, rainFrom, { rainInches: 0.1 });
  const field = standingField(ordinary.midSouth, weather);
  flowerOn(field, 60, 2, 0.5);
  flowerOn(field, 80, 3);
  for (let i = 60; i < 140; i++) stepOpening(field, i);
  field.pickDays.push(...pickDays);
  return { field, cohorts: pickedCohorts(field) };
};

describe('the cohorts of a picking', () => {
  test('are the days that flowered and opened before it', () => {
    expect(picked([120]).cohorts.map((cohort) => cohort.flowerDay)).toEqual([60]);
    expect(picked([135]).cohorts.map((cohort) => cohort.flowerDay)).toEqual([60, 80]);
    expect(picked([]).cohorts).toEqual([]);
  });
  test('each goes to the first picking after it opened', () => {
    expect(picked([120, 145]).cohorts.map((cohort) => cohort.pickDay)).toEqual([120, 145]);
  });
  test('a full first-position boll has the variety’s seeds, lint and mass', () => {
    const { field, cohorts } = picked([120]);
    const { variety } = field;
    const [cohort] = cohorts;
    expect(cohort!.bolls).toBe(1);
    expect(cohort!.seeds).toBeCloseTo(variety.seedsPerBoll, 9);
    expect(cohort!.lintG + cohort!.seedG).toBeCloseTo(variety.bollGrams, 9);
    expect(cohort!.lintByPositionG[0]).toBeCloseTo(cohort!.lintG, 12);
  });
  test('rain counts from the day after opening to the picking', () => {
    const planted = ordinary.midSouth.plantingDayOfYear;
    const [first] = picked([120], planted + 108).cohorts;
    expect(first!.rainInches).toBeCloseTo(12 * 0.1, 9);
  });
  test('stress early costs seeds, stress late costs lint on the seed', () => {
    const { field, cohorts } = picked([120]);
    for (let i = 0; i < field.heat.stress.length; i++) field.heat.stress[i] = i * 0.5;
    const [dry] = pickedCohorts(field);
    expect(dry!.seeds).toBeLessThan(cohorts[0]!.seeds);
    expect(dry!.lintG / dry!.seeds).toBeLessThan(cohorts[0]!.lintG / cohorts[0]!.seeds);
    expect([dry!.earlyStress, dry!.fillStress]).toEqual([0.5, 0.5]);
  });
  test('a lighter position has fewer seeds with thinner lint, in the published mass', () => {
    const { field } = picked([120]);
    field.calendar.flowers[1]![60] = 1;
    field.calendar.keptShare[1]![60] = 1;
    const [cohort] = pickedCohorts(field);
    expect(cohort!.lintByPositionG[1]! / cohort!.lintByPositionG[0]!).toBeCloseTo(0.88, 9);
    expect(cohort!.seeds).toBeLessThan(2 * field.variety.seedsPerBoll);
  });
});
