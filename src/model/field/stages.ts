import { stageFacts } from './facts.ts';
import type { SeasonHeat } from './season-heat.ts';
import type { Variety } from './varieties.ts';

/** Days since planting on which the mean plant passed a stage; -1 not yet. */
export interface Stages {
  emerged: number;
  firstSquare: number;
  firstFlower: number;
  cutOut: number;
  firstOpenBoll: number;
}

/** DD60 since planting that each stage needs. */
export function heatNeeds(variety: Variety): { emerge: number; square: number; flower: number; open: number } {
  const emerge = stageFacts.emergenceDd60.value;
  const square = emerge + stageFacts.squareDd60.value + variety.squareHeatShiftDd60;
  const flower = square + stageFacts.flowerDd60.value;
  return { emerge, square, flower, open: flower + stageFacts.openDd60.value + variety.openHeatShiftDd60 };
}

/** Notes emergence and the first square when both their heat and their days are there. */
export function stepStages(stages: Stages, heat: SeasonHeat, variety: Variety, i: number): void {
  const needs = heatNeeds(variety);
  if (stages.emerged < 0) {
    if (heat.dd60[i]! >= needs.emerge) stages.emerged = i;
    return;
  }
  if (stages.firstSquare >= 0) return;
  const warmEnough = heat.dd60[i]! - heat.dd60[stages.emerged]! >= needs.square - needs.emerge;
  if (warmEnough && i - stages.emerged >= stageFacts.squareDays.value) stages.firstSquare = i;
}

/** Heat and days from the first square of a branch to the square of a position `steps` further out. */
export const outwardNeed = (steps: number): { dd60: number; days: number } => ({
  dd60: steps * stageFacts.outwardDd60.value,
  days: steps * stageFacts.outwardDays.value,
});
