import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { summariseGin } from '../../../src/model/gin/byproducts.ts';
import { seasonAverages, seasonClothOunces, seasonMasses } from '../../../src/model/trace/season-chain.ts';

const seasons = farms.map((farm) => [farm.id, runSeason(farm, 1, null)] as const);

test.each(seasons)('%s: turnout, seed and waste are those of the gin’s own summary', (_, season) => {
  const ledger = (station: string) => season.ledgers.find((each) => each.station === station)!;
  const gin = summariseGin(ledger('cleaning'), ledger('ginning'), ledger('pressing'));
  const own = seasonAverages(season);
  expect(own.ginTurnout).toBeCloseTo(gin.turnout, 12);
  expect(own.seedPerLint! * 480).toBeCloseTo(gin.seedLbPer480LbBale, 8);
  expect(own.ginWastePerLint! * 480).toBeCloseTo(gin.wasteLbPer480LbBale, 8);
});
test.each(seasons)('%s: a boll with its motes is a little heavier than its lint and seed', (_, season) => {
  const { bollGrams } = seasonAverages(season);
  expect(bollGrams).toBeGreaterThan(season.field.bollGrams);
  expect(bollGrams).toBeLessThan(1.05 * season.field.bollGrams);
});
test.each(seasons)('%s: the yields of the mill lead from the bales to the cloth on the scale', (_, season) => {
  const { lintKg, clothKg } = seasonMasses(season)!;
  const own = seasonAverages(season);
  expect((lintKg * own.yarnRealisation! * own.weavingYield! * own.finishingYield!) / clothKg!).toBeCloseTo(1, 12);
});
test('the weight of a season’s cloth is that of its station, within what the wash and the scale may move it', () => {
  const [, season] = seasons[0]!;
  const stated = season.weaving!.cloth!.gramsPerSquareMetre / 33.905747;
  expect(Math.abs(seasonClothOunces(season)! / stated - 1)).toBeLessThan(0.02);
});
test('a crop that fails has no averages of its own', () => {
  const farm = farms.find(({ id }) => id === 'high-plains-dryland')!;
  const { planting } = farm.decisions;
  const failed = runSeason(
    { ...farm, decisions: { ...farm.decisions, planting: { ...planting, plantingDayOfYear: 191 } } },
    1,
    null,
  );
  expect(failed.field.crop).toBeNull();
  expect(seasonMasses(failed)).toBeNull();
  expect(seasonAverages(failed)).toEqual({});
  expect(seasonClothOunces(failed)).toBeNull();
});
test('yarn that could not be spun leaves the mill to the stated averages', () => {
  const farm = farms[0]!;
  const { spinning } = farm.decisions;
  const season = runSeason(
    { ...farm, decisions: { ...farm.decisions, spinning: { ...spinning, system: 'ringCarded', countNe: 100 } } },
    1,
    null,
  );
  expect(season.spinning!.yarn).toBeNull();
  const own = seasonAverages(season);
  expect(own.ginTurnout).toBeGreaterThan(0.3);
  expect(own.yarnRealisation).toBeUndefined();
  expect(own.finishingYield).toBeUndefined();
});
