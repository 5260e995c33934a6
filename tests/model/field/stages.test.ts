import { expect, test } from 'vitest';
import { seasonHeat } from '../../../src/model/field/season-heat.ts';
import { heatNeeds, outwardNeed, type Stages, stepStages } from '../../../src/model/field/stages.ts';
import { varietyOf } from '../../../src/model/field/varieties.ts';
import { evenYear } from './plans.ts';

const upland = varietyOf('uplandMedium', 'present');
const run = (maxF: number, minF: number, variety = upland) => {
  const stages: Stages = { emerged: -1, firstSquare: -1, firstFlower: -1, cutOut: -1, firstOpenBoll: -1 };
  const heat = seasonHeat(evenYear(maxF, minF, 0), 120, 150, 'dd60');
  for (let i = 0; i < 150; i++) stepStages(stages, heat, variety, i);
  return stages;
};
test('heat rules in cool weather: 55 DD60 to emerge, 450 more to square', () => {
  // 10 DD60 a day: the sixth day brings 60, the forty-fifth after it 450.
  expect(run(80, 60)).toMatchObject({ emerged: 5, firstSquare: 50 });
});
test('days rule in hot weather: never less than 27 from emergence to the first square', () => {
  const { emerged, firstSquare } = run(110, 90);
  expect(firstSquare - emerged).toBe(27);
});
test('without heat nothing comes', () => {
  expect(run(60, 50)).toMatchObject({ emerged: -1, firstSquare: -1 });
});
test('Pima squares a little later and needs more heat to open', () => {
  const pima = varietyOf('pima', 'present');
  expect(run(80, 60, pima).firstSquare).toBeGreaterThan(run(80, 60).firstSquare);
  expect(heatNeeds(pima).open).toBeGreaterThan(heatNeeds(upland).open);
});
test('each step outward takes six days', () => {
  expect([0, 1, 2].map((steps) => outwardNeed(steps).days)).toEqual([0, 6, 12]);
});
