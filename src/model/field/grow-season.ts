import { inchesFromMillimetres } from '../units.ts';
import { nodeFacts, pickingFacts } from './facts.ts';
import { fieldCounts } from './field-counts.ts';
import { fieldCrop } from './field-crop.ts';
import { fieldDay } from './field-day.ts';
import type { FieldPlan } from './field-plan.ts';
import type { FieldDay, FieldSeason } from './field-season.ts';
import { fieldStop } from './field-stop.ts';
import { positionCount } from './fruit-calendar.ts';
import { type Growing, openPercentOf, plantedField } from './growing.ts';
import { type PickedCohort, pickedCohorts } from './picked-cotton.ts';
import { positionsAtStand } from './retention.ts';
import { stepStages } from './stages.ts';
import { emergenceFraction, plantsStanding, rowFeetPerAcre } from './stand.ts';
import { nodesAboveWhiteFlower, stepFruit, stepNodes } from './step-fruit.ts';
import { stepHarvest } from './step-harvest.ts';
import { stepOpening } from './step-opening.ts';
import { extraterrestrialRadiation, stepSoilWater } from './water.ts';
import type { WeatherYear } from './weather.ts';
import { bollsPerFootForBale } from './yield-estimate.ts';

/** One day's weather with its sunshine. */
const lit = (weather: WeatherYear, dayOfYear: number) => {
  const day = weather.days[dayOfYear - 1]!;
  return { ...day, radiation: extraterrestrialRadiation(weather.latitudeDegrees, dayOfYear) };
};

/** Lets the winter's rain and drying bring the soil to what it holds at planting. */
function winterSoil({ soil, weather, plan }: Growing): void {
  for (let day = 1; day < plan.plantingDayOfYear; day++) stepSoilWater(soil, lit(weather, day), false, false);
}

/** The stand is known when the seedlings are up. */
function countStand(growing: Growing): void {
  const { plan, stages, variety } = growing;
  const seeds = rowFeetPerAcre(plan.rowInches) * plan.seedsPerFoot;
  growing.plantsPerAcre = plantsStanding(seeds, emergenceFraction(stages.emerged));
  growing.positions = positionsAtStand(variety.positions, growing.plantsPerAcre);
}

/**
 * Grows one field from planting to picking, day by day. The mean plant stands for the field: nothing is drawn, so the same
 * plan and weather give the same season. A crop that fails is a result: see `stopped`.
 * @param plan inside the limits of the decision table
 * @param weather a whole year
 */
export function growSeason(plan: FieldPlan, weather: WeatherYear): FieldSeason {
  const growing = plantedField(plan, weather);
  const { stages, heat, soil } = growing;
  winterSoil(growing);
  const days: FieldDay[] = [];
  const wait = { waitFrom: -1 };
  for (let i = 0, over = false; !over && i <= growing.lastDay; i++) {
    const mayIrrigate = growing.closed < 0 && openPercentOf(growing) < pickingFacts.irrigationEndsOpenPercent.value;
    const water = stepSoilWater(soil, lit(weather, heat.firstDay + i), true, mayIrrigate);
    heat.stress[i] = (i > 0 ? heat.stress[i - 1]! : 0) + 1 - water.supply;
    heat.usedMm[i] = soil.usedMm;
    heat.irrigatedMm[i] = soil.irrigatedMm;
    stepStages(stages, heat, growing.variety, i);
    if (stages.emerged === i) countStand(growing);
    stepNodes(growing, i, water.supply);
    stepFruit(growing, i, water.supply);
    stepOpening(growing, i);
    const aboveWhite = nodesAboveWhiteFlower(growing, i);
    if (aboveWhite !== null && aboveWhite <= nodeFacts.cutOutNodesAboveWhiteFlower.value && stages.cutOut < 0) {
      stages.cutOut = i;
    }
    days.push(fieldDay(growing, i, water, aboveWhite));
    over = stepHarvest(growing, wait, i);
  }
  return seasonOf(growing, days);
}

/** The finished season. */
function seasonOf(growing: Growing, allDays: readonly FieldDay[]): FieldSeason {
  const { plan, stages, calendar, heat, pickDays, plantsPerAcre } = growing;
  const cohorts = pickedCohorts(growing);
  const picked = cohorts.length > 0;
  const last = picked ? pickDays.at(-1)! : allDays.length - 1;
  const days = allDays.slice(0, last + 1);
  calendar.dayCount = days.length;
  const date = (i: number) => (i < 0 || i > last ? null : heat.firstDay + i);
  const sum = (of: (cohort: PickedCohort) => number) => cohorts.reduce((total, cohort) => total + of(cohort), 0);
  const bolls = sum((cohort) => cohort.bolls);
  const lintG = sum((cohort) => cohort.lintG);
  const seedG = sum((cohort) => cohort.seedG);
  const shareOf = (position: number) => (picked ? sum((cohort) => cohort.lintByPositionG[position]!) / lintG : 0);
  const [first, second, third, vegetative] = Array.from({ length: positionCount }, (_, position) => shareOf(position));
  return {
    variety: growing.variety,
    plantedDay: plan.plantingDayOfYear,
    harvestDays: picked ? pickDays.map((day) => heat.firstDay + day) : [],
    events: {
      emerged: date(stages.emerged),
      firstSquare: date(stages.firstSquare),
      firstFlower: date(stages.firstFlower),
      cutOut: date(stages.cutOut),
      firstOpenBoll: date(stages.firstOpenBoll),
      harvestAid: date(growing.aidDay),
      killingFrost: date(growing.frostDay),
    },
    days,
    stopped: picked ? null : fieldStop(growing, last),
    counts: fieldCounts(growing, last),
    dd60PlantingToHarvest: heat.dd60[last]!,
    nodesAboveWhiteFlowerAtFirstFlower:
      stages.firstFlower >= 0 ? days[stages.firstFlower]!.nodesAboveWhiteFlower : null,
    yieldShares: { first: first!, second: second!, third: third!, vegetative: vegetative! },
    bollsPerPlant: bolls,
    plantsPerAcre,
    bollsPerRowFoot: {
      picked: (bolls * plantsPerAcre) / rowFeetPerAcre(plan.rowInches),
      forOneBale: picked ? bollsPerFootForBale(plan.rowInches, (lintG + seedG) / bolls, lintG / (lintG + seedG)) : null,
    },
    bollGrams: picked ? (lintG + seedG) / bolls : 0,
    lintGramsPerBoll: picked ? lintG / bolls : 0,
    seasonWaterInches: {
      rain: heat.rainInches[last]!,
      irrigation: inchesFromMillimetres(heat.irrigatedMm[last]!),
      used: inchesFromMillimetres(heat.usedMm[last]!),
    },
    crop: picked ? fieldCrop(growing, cohorts, days[pickDays[0]!]!.openPercent) : null,
    calendar,
  };
}
