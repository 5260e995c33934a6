import { mean } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import { summariseGin } from '../../src/model/gin/byproducts.ts';
import type { Season } from '../../src/model/season.ts';
import { poundsFromKilograms } from '../../src/model/units.ts';
import { long } from '../laws/runs.ts';

/** Two hundred seasons of each farm in the long run, forty otherwise. */
const seeds = Array.from({ length: long ? 200 : 40 }, (_, index) => index + 1);
const seasonsOf = (id: string): Season[] => seeds.map((seed) => runSeason(farmOf(id)!, seed, null));

const lintLbPerAcre = ({ pressing, scenario }: Season) =>
  poundsFromKilograms(pressing!.bales.reduce((sum, bale) => sum + bale.netKg, 0)) / scenario.acres;
const classedMean = (season: Season, pick: (bale: NonNullable<Season['classing']>['classed'][number]) => number) =>
  mean(season.classing!.classed.map(pick));
const whiteAndBright = (color: string) =>
  color[1] === '1' ? Number(color) <= 41 : color[1] === '2' && Number(color) <= 32;

const farms = {
  coastalPlain: seasonsOf('coastal-plain'),
  riverBottom: seasonsOf('river-bottom'),
  highPlains: seasonsOf('high-plains-dryland'),
  desert: seasonsOf('irrigated-desert'),
  valley: seasonsOf('long-staple-valley'),
  thirties: seasonsOf('hand-picked-1930s'),
};
type Farm = keyof typeof farms;

describe('mean lint yield, lb/acre, ginned', () => {
  test.each<[Farm, number, number, string]>([
    ['coastalPlain', 728, 0.25, 'USDA-NASS 2002-2011 by way of agridat nass.cotton: Georgia 783 and Alabama 673'],
    ['riverBottom', 896, 0.25, 'USDA-NASS 2002-2011, Mississippi'],
    ['highPlains', 357, 0.4, 'Lubbock County, Texas, dryland 1972-2018'],
    ['desert', 1416, 0.25, 'USDA-NASS 2002-2011, Arizona'],
    [
      'valley',
      1516,
      0.25,
      'USDA-NASS January 2017 by way of the National Cotton Council: California extra-long staple, five years',
    ],
  ])('%s: %d lb, within a share of %d — %s', (farm, expected, share) => {
    expect(mean(farms[farm].map(lintLbPerAcre)) / expected).toBeGreaterThan(1 - share);
    expect(mean(farms[farm].map(lintLbPerAcre)) / expected).toBeLessThan(1 + share);
  });
  test('dryland plains are the lowest of the present farms, as in the state series', () => {
    const present = (['coastalPlain', 'riverBottom', 'desert', 'valley'] as const).map((farm) =>
      mean(farms[farm].map(lintLbPerAcre)),
    );
    expect(mean(farms.highPlains.map(lintLbPerAcre))).toBeLessThan(Math.min(...present));
  });
  test('the 1930s: between 157 (1930) and 270 lb (1937) — USDA-NASS 1866-2011 by way of agridat', () => {
    const yields = mean(farms.thirties.map(lintLbPerAcre));
    expect(yields).toBeGreaterThan(157);
    expect(yields).toBeLessThan(270);
  });
});

describe('the season on river-bottom', () => {
  const { riverBottom } = farms;
  test('first flower 55 to 72 days after planting — National Cotton Council, after Oosterhuis 1990; NC State 1997', () => {
    const days = mean(riverBottom.map(({ field }) => field.events.firstFlower! - field.plantedDay));
    expect(days).toBeGreaterThan(55);
    expect(days).toBeLessThan(72);
  });
  test('yield shares by position: first 65-75 %, second 14-25 %, third under 5 %, vegetative 3-11 % — Jenkins 1990; Burch & Krieg 2002', () => {
    const share = (key: keyof Season['field']['yieldShares']) =>
      mean(riverBottom.map(({ field }) => field.yieldShares[key]));
    expect(share('first')).toBeGreaterThan(0.65);
    expect(share('first')).toBeLessThan(0.75);
    expect(share('second')).toBeGreaterThan(0.14);
    expect(share('second')).toBeLessThan(0.25);
    expect(share('third')).toBeLessThan(0.05);
    expect(share('vegetative')).toBeGreaterThan(0.03);
    expect(share('vegetative')).toBeLessThan(0.11);
  });
  test('nodes above white flower at first flower: 8 to 10 — Edmisten & Burmester 1997', () => {
    const nodes = mean(riverBottom.map(({ field }) => field.nodesAboveWhiteFlowerAtFirstFlower!));
    expect(nodes).toBeGreaterThan(8);
    expect(nodes).toBeLessThan(10);
  });
  test('heat from planting to harvest: 2200 to 2600 DD60 — National Cotton Council, after Oosterhuis 1990', () => {
    const heat = mean(riverBottom.map(({ field }) => field.dd60PlantingToHarvest));
    expect(heat).toBeGreaterThan(2200);
    expect(heat).toBeLessThan(2600);
  });
});

describe('the classed crop', () => {
  test.each<[Farm, number, number, string]>([
    ['coastalPlain', 36, 0.7, 'Southeast 2012: 36'],
    ['riverBottom', 36, 0.7, 'US upland 2010 and 2012: 35.4 and 35.7; the mid-South taken as 36'],
    ['highPlains', 35.6, 0.7, 'West Texas sales 2006-07: 35.62'],
    ['valley', 48.7, 1, 'American Pima 2010 and 2018-19: 48.2 and 49.2'],
  ])('staple, %s: %d within %d of a 32nd — USDA-AMS; Texas Tech price estimates (%s)', (farm, expected, tolerance) => {
    const staple = mean(farms[farm].map((season) => classedMean(season, (bale) => bale.staple32nds)));
    expect(Math.abs(staple - expected)).toBeLessThan(tolerance);
  });
  test.each<[Farm, number, number, string]>([
    ['coastalPlain', 4.5, 0.2, 'Georgia and Alabama 2012 and 2018: 4.4 to 4.6'],
    ['riverBottom', 4.7, 0.25, 'Arkansas 2018: 4.7'],
    ['highPlains', 4.0, 0.25, 'Lamesa 2018: 4.0; West Texas sales 3.97'],
    ['desert', 4.58, 0.25, 'Arizona 2018: 4.58'],
    ['valley', 3.9, 0.2, 'American Pima 1999 to 2012: 3.8 to 4.0'],
  ])('micronaire, %s: %d within %d — USDA-AMS MP_CN103, MP_CN109 (%s)', (farm, expected, tolerance) => {
    const micronaire = mean(farms[farm].map(({ classing }) => classing!.lotReading.micronaire));
    expect(Math.abs(micronaire - expected)).toBeLessThan(tolerance);
  });
  test.each<[Farm, number, number, string]>([
    ['coastalPlain', 3.2, 0.5, 'Southeast 2006 and 2011: 3.2'],
    ['riverBottom', 3.8, 0.4, 'Mid-South 2011: 3.5; Mississippi and Arkansas 2012: 3.8 and 4.11'],
    ['highPlains', 3.16, 0.6, 'West Texas sales 2006-07: 3.16'],
    ['desert', 2.5, 0.5, 'desert Southwest 2006: 2.5'],
  ])('leaf, %s: %d within %d — USDA-AMS; Texas Tech (%s)', (farm, expected, tolerance) => {
    const leaf = mean(farms[farm].map((season) => classedMean(season, (bale) => bale.leaf)));
    expect(Math.abs(leaf - expected)).toBeLessThan(tolerance);
  });
  test('colour: 74 to 96 % of upland bales at 41/32 or better, as the crops of 1997 to 2011 — USDA-AMS Quality of the Crop', () => {
    const shares = (['coastalPlain', 'riverBottom', 'highPlains'] as const).map((farm) =>
      mean(farms[farm].map((season) => classedMean(season, (bale) => (whiteAndBright(bale.color) ? 1 : 0)))),
    );
    expect(mean(shares)).toBeGreaterThan(0.74);
    expect(mean(shares)).toBeLessThan(0.96);
  });
  test('uniformity: about 81 in upland (81.1 to 81.4), 86.3 in Pima — USDA-AMS 1998 to 2002; MP_CN104 2019', () => {
    const uniformity = (farm: Farm) => mean(farms[farm].map(({ classing }) => classing!.lotReading.uniformityPercent));
    expect(Math.abs(uniformity('coastalPlain') - 81.25)).toBeLessThan(0.6);
    expect(Math.abs(uniformity('riverBottom') - 81.25)).toBeLessThan(0.6);
    expect(Math.abs(uniformity('valley') - 86.3)).toBeLessThan(0.4);
  });
});

describe('the gin', () => {
  const ginMean = (farm: Farm, pick: (summary: ReturnType<typeof summariseGin>) => number) =>
    mean(
      farms[farm].map(({ cleaning, ginning, pressing }) =>
        pick(summariseGin(cleaning!.ledger, ginning!.ledger, pressing!.ledger)),
      ),
    );
  const turnout = (farm: Farm) => ginMean(farm, (summary) => summary.turnout);
  const upland = ['coastalPlain', 'riverBottom', 'highPlains', 'desert'] as const;
  test.each(upland)(
    'seed with a 500-lb bale, %s as the season delivers it: 696 to 700 lb, 3 %% allowed — Ashley, Thomas, Holt & Valco 2018',
    (farm) => {
      const seed = ginMean(farm, (summary) => summary.seedLbPer500LbBale);
      expect(seed).toBeGreaterThan(696 * 0.97);
      expect(seed).toBeLessThan(700 * 1.03);
    },
  );
  test('known miss: Pima leaves 808 lb of seed; 696 to 700 is a national mean of nearly all upland, and no figure for Pima was read', () => {
    expect(Math.abs(ginMean('valley', (summary) => summary.seedLbPer500LbBale) - 808)).toBeLessThan(10);
  });
  test.each(['coastalPlain', 'riverBottom', 'desert'] as const)(
    'gin waste with a 480-lb bale, picked, %s: 75 to 125 lb — Holt, farm press',
    (farm) => {
      const waste = ginMean(farm, (summary) => summary.wasteLbPer480LbBale);
      expect(waste).toBeGreaterThan(75);
      expect(waste).toBeLessThan(125);
    },
  );
  test('known miss: Pima picked and roller ginned leaves 65 lb of waste, under the 75 to 125 lb of picked cotton: two gentle lint cleaners waste little — Holt, farm press', () => {
    expect(Math.abs(ginMean('valley', (summary) => summary.wasteLbPer480LbBale) - 65)).toBeLessThan(4);
  });
  test('gin waste with a 480-lb bale, stripped with a field cleaner, highPlains: 300 to 450 lb — Holt, farm press', () => {
    const waste = ginMean('highPlains', (summary) => summary.wasteLbPer480LbBale);
    expect(waste).toBeGreaterThan(300);
    expect(waste).toBeLessThan(450);
  });
  test('picked cotton of the default farm gins out near 38 %, the upper of 35 and 38 — Mississippi State, Estimating Yield by Boll Counting', () => {
    expect(Math.abs(turnout('coastalPlain') - 0.38)).toBeLessThan(0.005);
  });
  test('turnout of picked cotton 33 to 42 % — ERS Statistical Bulletin 929 (33.2 % in 1994/95); state variety trials (36-42 %, memory)', () => {
    expect(turnout('coastalPlain')).toBeGreaterThan(0.33);
    expect(turnout('coastalPlain')).toBeLessThan(0.42);
  });
  test('turnout of stripped cotton 22 to 34 % — ERS Statistical Bulletin 929 (22.3 %); Lubbock papers (28-34 % with field cleaner, memory)', () => {
    expect(turnout('highPlains')).toBeGreaterThan(0.22);
    expect(turnout('highPlains')).toBeLessThan(0.34);
  });
  test('turnout of hand-picked cotton of the 1930s 33 to 36 % — lint of a third and a little more, memory', () => {
    expect(turnout('thirties')).toBeGreaterThan(0.33);
    expect(turnout('thirties')).toBeLessThan(0.36);
  });
});

test('one boll makes a patch of about four inches: on every farm the mean is 3 1/4 to 4 1/2 in', () => {
  for (const farm of Object.keys(farms) as Farm[]) {
    const patch = mean(farms[farm].map(({ sewing }) => sewing!.patchInchesPerBoll!));
    expect(patch, farm).toBeGreaterThan(3.25);
    expect(patch, farm).toBeLessThan(4.5);
  }
});
