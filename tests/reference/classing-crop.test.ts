import { max, mean, min, sampleCorrelation, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { classBales } from '../../src/model/classing/class-bales.ts';
import { leafGrade } from '../../src/model/classing/leaf.ts';
import type { InstrumentReading } from '../../src/model/classing/reading.ts';
import { trashAreaPercent } from '../../src/model/classing/trash-area.ts';
import type { PartMasses } from '../../src/model/lot.ts';
import { openStream } from '../../src/model/random.ts';
import { long } from '../laws/runs.ts';
import { type Cotton, fibreOf, lintLot, present, pressedBales, southeast, trashLb } from '../model/classing/lots.ts';

/** Trash area of picked and stripped lint by our coupling. */
describe('trash area from what the gin leaves', () => {
  const area = (trash: keyof typeof trashLb) => trashAreaPercent(lintLot(fibreOf(), 1, trashLb[trash]));
  test('picked, two saw lint cleaners: 0.36 to 0.45 %, leaf 3, as Georgia 2012 (.384) and Abilene 2018 (.430) — AMS MP_CN109 2013, MP_CN103 2019', () => {
    expect(area('picked2')).toBeGreaterThan(0.36);
    expect(area('picked2')).toBeLessThan(0.45);
    expect(leafGrade('upland', area('picked2'))).toBe(3);
  });
  test('each lint cleaner lowers the grade less: 4, 3, 3 — Mangialardi 1989, Beltwide 2232 (grade gain shrinks with each stage)', () => {
    const areas = (['picked1', 'picked2', 'picked3'] as const).map(area);
    expect(areas.map((each) => leafGrade('upland', each))).toEqual([4, 3, 3]);
    expect(areas[0]! - areas[1]!).toBeGreaterThan(areas[1]! - areas[2]!);
  });
  test('roller-ginned Pima after two roller-type cleaners is leaf 2, the commonest of 2018-19 — AMS MP_CN104 24 Jan 2019', () => {
    expect(leafGrade('pima', area('pimaRoller'))).toBe(2);
  });
});

/** Farms that differ as the between-farm spreads assume, a few modules of four bales each. */
function crop(
  farms: number,
  balesPerFarm: number,
  cottonOf: (normal: () => number) => Cotton,
  trash: Partial<PartMasses> = trashLb.picked2,
) {
  const random = openStream(2024, 'field');
  return Array.from({ length: farms }, (_, farm) => {
    const lot = lintLot(fibreOf(cottonOf(random.normal)), balesPerFarm, trash);
    return classBales(lot, pressedBales(balesPerFarm), southeast, present(farm + 1)).classed;
  }).flat();
}
const upland = (normal: () => number): Cotton => ({
  lengthIn: 1.11 + 0.02 * normal(),
  uniformityPercent: 81.4 + 0.8 * normal(),
  strengthGPerTex: 29.3 + normal(),
  micronaire: 4.4 + 0.28 * normal(),
  reflectanceRd: 74.5 + 2.2 * normal(),
  yellownessB: 8.6 + 0.3 * normal(),
});
const pima = (normal: () => number): Cotton => ({
  kind: 'pima',
  lengthIn: 1.42 + 0.02 * normal(),
  uniformityPercent: 86.3 + 0.5 * normal(),
  strengthGPerTex: 41 + normal(),
  micronaire: 3.9 + 0.2 * normal(),
  reflectanceRd: 72.2 + 0.5 * normal(),
  yellownessB: 11.6 + 0.2 * normal(),
});
const [farms, balesPerFarm] = long ? [100, 20] : [40, 5];

describe(`a crop of ${farms * balesPerFarm} upland bales; farms differ by assumption`, () => {
  const bales = crop(farms, balesPerFarm, upland);
  const channel = (key: keyof InstrumentReading) => bales.map(({ reading }) => reading[key]);
  test.each<[keyof InstrumentReading, number, number, string]>([
    ['micronaire', 0.26, 0.57, 'AMS MP_CN103, MP_CN109 season distributions 2009 to 2018'],
    ['uniformityPercent', 1.1, 1.5, 'AMS MP_CN103 4 Feb 2010: 1.2 to 1.4 fitted to partial distributions, +/- .1'],
  ])('SD of %s lies in %f to %f — %s', (key, low, high) => {
    const sd = standardDeviation(channel(key));
    expect(sd).toBeGreaterThan(low);
    expect(sd).toBeLessThan(high);
  });
  test('trash varies by 0.25 to 0.59 of its mean, whole states with all their gins .33 to .59 — AMS MP_CN109 2013', () => {
    const cv = standardDeviation(channel('trashAreaPercent')) / mean(channel('trashAreaPercent'));
    expect(cv).toBeGreaterThan(0.25);
    expect(cv).toBeLessThan(0.59);
  });
  test('mean leaf 3.2 +/- .3, Southeast 2011 — AMS data in farm press 2011', () => {
    expect(Math.abs(mean(bales.map(({ leaf }) => leaf)) - 3.2)).toBeLessThan(0.3);
  });
  test('mean staple 35.7 +/- .5 for 1.11 in, crop 2012 35.7 — AMS data in farm press 2012', () => {
    expect(Math.abs(mean(bales.map(({ staple32nds }) => staple32nds)) - 35.7)).toBeLessThan(0.5);
  });
  test('extraneous matter called on 1 to 8 % of picked bales, 3 to 6 % published — Beltwide 2003, farm press 2011', () => {
    const percent = (100 * bales.filter(({ extraneous }) => extraneous.length > 0).length) / bales.length;
    expect(percent).toBeGreaterThan(1);
    expect(percent).toBeLessThan(8);
  });
});

const good = new Set(['11', '21', '31', '41', '12', '22', '32']);
/** Percent of bales at 41/32 or better when rain took some Rd and added some +b on every farm. */
function goodPercent(rdLost: number, yellowed: number): number {
  const bales = crop(farms, balesPerFarm, (normal) => {
    const cotton = upland(normal);
    return {
      ...cotton,
      reflectanceRd: cotton.reflectanceRd! - rdLost,
      yellownessB: cotton.yellownessB! + yellowed,
    };
  });
  return (100 * bales.filter(({ color }) => good.has(color)).length) / bales.length;
}
describe('share of bales at colour 41/32 or better; the lint of a crop is Rd 74.5 with SD 2.2 between farms by assumption', () => {
  const dry = goodPercent(0, 0);
  const wet = goodPercent(1.5, 0.06);
  test('85.2 to 96 % +/- 3, crops 1997 to 2011 without 2002 — Quality of the crop, Beltwide; AMS data in farm press', () => {
    expect(dry).toBeGreaterThan(82.2);
    expect(dry).toBeLessThan(99);
  });
  test('C39 a wet harvest, taken as three quarters of an inch of rain on open bolls, costs 13 points (87 to 74) +/- 10 — Quality of the 2002 crop, Beltwide 2003', () => {
    expect(Math.abs(dry - wet - 13)).toBeLessThan(10);
  });
});

test('C16 Pima uniformity 86.3, SD .84 +/- .15 — AMS MP_CN104 24 Jan 2019', () => {
  const readings = crop(farms, balesPerFarm, pima, trashLb.pimaRoller).map(({ reading }) => reading.uniformityPercent);
  expect(Math.abs(mean(readings) - 86.3)).toBeLessThan(0.25);
  expect(Math.abs(standardDeviation(readings) - 0.84)).toBeLessThan(0.15);
});

describe('one field of 66 samples', () => {
  const lot = lintLot(fibreOf({ micronaire: 4.6 }), 66);
  const bales = classBales(lot, pressedBales(66), southeast, present(8, 1)).classed.filter(
    ({ extraneous }) => extraneous.length === 0,
  );
  test('C36 values differ by at most about 9.1 c/lb, and by more than a third of it — Ge et al. 2008, Precision Agriculture', () => {
    const prices = bales.map(({ priceCentsPerLb }) => priceCentsPerLb);
    const range = max(prices) - min(prices);
    expect(range).toBeLessThan(10);
    expect(range).toBeGreaterThan(3);
  });
  test('every property keeps a coefficient of variation under 10 % — Ge et al. 2008, Precision Agriculture', () => {
    for (const key of ['lengthIn', 'uniformityPercent', 'strengthGPerTex', 'micronaire'] as const) {
      const values = bales.map(({ reading }) => reading[key]);
      expect(standardDeviation(values) / mean(values)).toBeLessThan(0.1);
    }
  });
  test('brighter samples are less yellow, longer ones stronger — signs, Ge et al. 2008, Precision Agriculture', () => {
    const of = (key: keyof InstrumentReading) => bales.map(({ reading }) => reading[key]);
    expect(sampleCorrelation(of('reflectanceRd'), of('yellownessB'))).toBeLessThan(0);
    expect(sampleCorrelation(of('lengthIn'), of('strengthGPerTex'))).toBeGreaterThan(0);
  });
});
