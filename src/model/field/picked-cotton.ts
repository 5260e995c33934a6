import { KILO } from '../units.ts';
import { fillOf, massFraction, seedsUnderStress } from './boll-filling.ts';
import { bollFacts, fibreFacts, positionFacts } from './facts.ts';
import { positionCount } from './fruit-calendar.ts';
import type { Growing } from './growing.ts';
import { meanBetween, type SeasonHeat, sumBetween } from './season-heat.ts';
import { positionMass } from './step-fruit.ts';

/** The bolls that flowered on one day and were picked, for one plant. Masses air-dry. */
export interface PickedCohort {
  readonly flowerDay: number;
  readonly openDay: number;
  readonly pickDay: number;
  readonly rainInches: number;
  /** Mass over final mass when the bolls opened. */
  readonly filled: number;
  /** Mean water stress in the first three weeks, and from then to opening. */
  readonly earlyStress: number;
  readonly fillStress: number;
  readonly coldNights: number;
  readonly bolls: number;
  readonly seeds: number;
  readonly lintG: number;
  readonly seedG: number;
  /** Lint by position, g. */
  readonly lintByPositionG: readonly number[];
}

/** What the weather did to a cohort between its flower and its opening. */
function weatherOf(heat: SeasonHeat, flowerDay: number, openDay: number) {
  const upTo = (days: number) => Math.min(openDay, flowerDay + days);
  const fillFrom = upTo(bollFacts.fillWindowFromDays.value);
  return {
    earlyStress: meanBetween(heat.stress, flowerDay - 1, upTo(fibreFacts.elongationDays.value)),
    fillStress: meanBetween(heat.stress, fillFrom, openDay),
    fillGain: meanBetween(heat.fillGain, fillFrom, openDay),
    coldNights: sumBetween(heat.coldNights, flowerDay - 1, upTo(fibreFacts.coldNightDays.value)),
  };
}

/** Every cohort picked, with its masses. */
export function pickedCohorts({ calendar, heat, variety, pickDays, nextOpen }: Growing): PickedCohort[] {
  const cohorts: PickedCohort[] = [];
  const fillShare = positionFacts.fillShare.value;
  for (let flowerDay = 0; flowerDay < nextOpen; flowerDay++) {
    const openDay = calendar.openDay[flowerDay]!;
    const pickDay = pickDays.find((day) => day >= openDay);
    if (pickDay === undefined) continue;
    const weather = weatherOf(heat, flowerDay, openDay);
    const age = calendar.openAge[flowerDay]!;
    const fill = fillOf(age, weather.fillStress, weather.fillGain);
    const seedsPerBoll = variety.seedsPerBoll * seedsUnderStress(weather.earlyStress);
    let bolls = 0;
    let seeds = 0;
    let fullSeeds = 0;
    const lintByPositionG: number[] = [];
    for (let p = 0; p < positionCount; p++) {
      const here = calendar.flowers[p]![flowerDay]! * calendar.keptShare[p]![flowerDay]!;
      const seedsHere = here * seedsPerBoll * positionMass[p]! ** (1 - fillShare);
      const fullHere = seedsHere * fill * positionMass[p]! ** fillShare;
      bolls += here;
      seeds += seedsHere;
      fullSeeds += fullHere;
      lintByPositionG.push((fullHere * variety.lintPerSeedMg) / KILO);
    }
    if (bolls === 0) continue;
    cohorts.push({
      flowerDay,
      openDay,
      pickDay,
      rainInches: sumBetween(heat.rainInches, openDay, pickDay),
      filled: massFraction(age),
      earlyStress: weather.earlyStress,
      fillStress: weather.fillStress,
      coldNights: weather.coldNights,
      bolls,
      seeds,
      lintG: (fullSeeds * variety.lintPerSeedMg) / KILO,
      seedG: (fullSeeds * variety.seedIndexGrams) / 100,
      lintByPositionG,
    });
  }
  return cohorts;
}
