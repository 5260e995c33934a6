import { describe, expect, test } from 'vitest';
import type { FieldPlan } from '../../../src/model/field/field-plan.ts';
import { type FruitSite, type PlantSample, samplePlant } from '../../../src/model/field/sample-plant.ts';
import { openStream } from '../../../src/model/random.ts';
import { long } from '../../laws/runs.ts';
import { handPicked, ordinary, seasonOf } from './plans.ts';

const plants = long ? 500 : 250;
const draw = (plan: FieldPlan) => {
  const season = seasonOf(plan, 3);
  return { season, sample: Array.from({ length: plants }, (_, k) => samplePlant(season, openStream(3, 'plant', k))) };
};
const sitesOf = (plant: PlantSample) => plant.nodes.flatMap((node) => node.sites);
/** Mean of a number over the plants, and the error of that mean. */
function meanOf(counts: readonly number[]) {
  const mean = counts.reduce((a, b) => a + b, 0) / counts.length;
  const variance = counts.reduce((sum, n) => sum + (n - mean) ** 2, 0) / (counts.length - 1);
  return { mean, error: Math.sqrt(variance / counts.length) };
}
const by = (day: number | null, when: number) => day !== null && day <= when;
/** What one plant shows on a day: nodes, squares, green bolls, open bolls, shed fruit. */
function shows(plant: PlantSample, sites: readonly FruitSite[], day: number): number[] {
  let [squares, green, open, shed] = [0, 0, 0, 0];
  for (const site of sites) {
    if (by(site.shedDay, day)) shed++;
    else if (by(site.openDay, day)) open++;
    else if (by(site.flowerDay, day - 1)) green++;
    else if (site.squareDay <= day && !by(site.flowerDay, day)) squares++;
  }
  return [plant.nodes.filter((node) => node.appearsDay <= day).length, squares, green, open, shed];
}

describe.each([
  ['an upland field', ordinary.midSouth],
  ['a Pima field', ordinary.centralValley],
  ['a thin field of the 1930s', handPicked],
  ['a dry field', ordinary.highPlains],
  ['a very thin stand', { ...ordinary.midSouth, seedsPerFoot: 1 }],
] as const)('%s', (_, plan) => {
  const { season, sample } = draw(plan);
  test(`the mean of ${plants} plants is the field, by day: nodes, squares, flowers, shed and open bolls`, () => {
    const sites = sample.map(sitesOf);
    for (let i = 30; i < season.days.length; i += 8) {
      const { dayOfYear: day, perPlant, nodes } = season.days[i]!;
      const expected = [nodes, perPlant.squares, perPlant.greenBolls, perPlant.openBolls, perPlant.shed];
      const drawn = sample.map((plant, k) => shows(plant, sites[k]!, day));
      ['nodes', 'squares', 'green bolls', 'open bolls', 'shed'].forEach((name, what) => {
        const { mean, error } = meanOf(drawn.map((counts) => counts[what]!));
        const message = `${name} on day ${day}: ${mean} against ${expected[what]}`;
        // Four errors of the mean; rare things are as uncertain as a count of them (Poisson).
        const rare = Math.sqrt(expected[what]! / plants);
        expect(Math.abs(mean - expected[what]!), message).toBeLessThan(4 * Math.max(error, rare) + 1 / plants);
      });
    }
  });
  test('flowers of the whole season too', () => {
    const flowers = season.days.reduce((sum, day) => sum + day.perPlant.flowersToday, 0);
    const { mean, error } = meanOf(
      sample.map((plant) => sitesOf(plant).filter((site) => site.flowerDay !== null).length),
    );
    expect(Math.abs(mean - flowers)).toBeLessThan(4 * error);
  });
  test('each plant is a possible plant', () => {
    for (const plant of sample.slice(0, 40)) {
      plant.nodes.forEach((node, index) => {
        expect(node.number).toBe(index + 1);
        if (node.branch === 'none') expect(node.sites).toEqual([]);
        for (const site of node.sites) {
          expect(site.squareDay).toBeGreaterThanOrEqual(node.appearsDay);
          if (site.flowerDay !== null) expect(site.flowerDay).toBeGreaterThan(site.squareDay);
          if (site.shedDay !== null) expect(site.openDay).toBeNull();
          if (site.openDay !== null) expect(site.openDay).toBeGreaterThan(site.flowerDay!);
          expect(site.seeds).toBeGreaterThan(0);
        }
      });
      const first = plant.nodes.findIndex((node) => node.branch === 'fruiting');
      expect(plant.nodes.slice(0, first).every((node) => node.branch !== 'fruiting')).toBe(true);
    }
  });
});
test('the same stream draws the same plant, another another', () => {
  const season = seasonOf(ordinary.midSouth, 3);
  const plant = (k: number) => samplePlant(season, openStream(9, 'plant', k));
  expect(plant(1)).toEqual(plant(1));
  expect(plant(1)).not.toEqual(plant(2));
});
test('seeds of the sampled bolls are the variety’s on average', () => {
  const { season, sample } = draw(ordinary.midSouth);
  const bolls = sample.flatMap(sitesOf).filter((site) => site.openDay !== null);
  const mean = bolls.reduce((sum, site) => sum + site.seeds, 0) / bolls.length;
  expect(Math.abs(mean / season.variety.seedsPerBoll - 1)).toBeLessThan(0.02);
});
test('a failed crop still has its plants', () => {
  const season = seasonOf({ ...ordinary.highPlains, plantingDayOfYear: 191 }, 3);
  expect(season.crop).toBeNull();
  expect(samplePlant(season, openStream(1, 'plant')).nodes.length).toBeGreaterThan(5);
});
