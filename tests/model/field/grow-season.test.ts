import { describe, expect, test } from 'vitest';
import { readFibre } from '../../../src/model/fibre.ts';
import type { FieldPlan } from '../../../src/model/field/field-plan.ts';
import type { FieldSeason } from '../../../src/model/field/field-season.ts';
import { growSeason } from '../../../src/model/field/grow-season.ts';
import { meanLengthMm } from '../../../src/model/length/statistics.ts';
import { groupDryKg, moistureFraction } from '../../../src/model/lot.ts';
import { poundsFromKilograms } from '../../../src/model/units.ts';
import { changedFrom, evenYear, handPicked, meanOver, ordinary, seasonOf, weatherOf } from './plans.ts';

const crop = (season: FieldSeason) => {
  if (!season.crop) throw new Error(`no crop: ${season.stopped?.reason}`);
  return season.crop;
};
const standing = (season: FieldSeason) => crop(season).lintLbPerAcre * (1 - crop(season).weatheredFraction);
const micronaire = (season: FieldSeason) => readFibre(crop(season).grown.fibre).micronaire;
const plan: FieldPlan = ordinary.midSouth;
const season = seasonOf(plan, 1);

describe('the days', () => {
  test('run from planting to picking without a gap', () => {
    expect(season.days[0]!.dayOfYear).toBe(121);
    expect(season.days.at(-1)!.dayOfYear).toBe(season.harvestDays[0]);
    expect(season.days.map((day) => day.dayOfYear)).toEqual(season.days.map((_, i) => 121 + i));
  });
  test('the stages come in order', () => {
    const { emerged, firstSquare, firstFlower, cutOut, firstOpenBoll, harvestAid } = season.events;
    const order = [
      season.plantedDay,
      emerged,
      firstSquare,
      firstFlower,
      cutOut,
      firstOpenBoll,
      harvestAid,
      season.harvestDays[0],
    ];
    for (let k = 1; k < order.length; k++) expect(order[k]!).toBeGreaterThan(order[k - 1]!);
  });
  test('events and days agree: nothing stands on the plant before its day', () => {
    const at = (day: number) => season.days[day - 121]!.perPlant;
    const { firstSquare, firstFlower, firstOpenBoll } = season.events;
    expect([at(firstSquare! - 1).squares, at(firstFlower! - 1).flowersToday, at(firstOpenBoll! - 1).openBolls]).toEqual(
      [0, 0, 0],
    );
    expect(at(firstSquare!).squares).toBeGreaterThan(0);
    expect(at(firstFlower!).flowersToday).toBeGreaterThan(0);
    expect(at(firstOpenBoll!).openBolls).toBeGreaterThan(0);
  });
  test('heat, nodes, height, open and shed fruit only ever grow', () => {
    for (let i = 1; i < season.days.length; i++) {
      const [before, now] = [season.days[i - 1]!, season.days[i]!];
      expect(now.dd60SincePlanting).toBeCloseTo(before.dd60SincePlanting + now.dd60, 9);
      expect(now.nodes).toBeGreaterThanOrEqual(before.nodes);
      expect(now.plantHeightInches).toBeGreaterThanOrEqual(before.plantHeightInches);
      expect(now.perPlant.openBolls).toBeGreaterThanOrEqual(before.perPlant.openBolls);
      expect(now.perPlant.shed).toBeGreaterThanOrEqual(before.perPlant.shed);
    }
  });
  test('what the last day shows is what the ledger counts', () => {
    const plants = season.plantsPerAcre * plan.acres;
    const share = (station: number, name: string) =>
      season.counts[station]!.shares.find((each) => each.name === name)!.count / plants;
    const last = season.days.at(-1)!.perPlant;
    expect(last.squares).toBeCloseTo(share(1, 'squaresUnopened'), 9);
    expect(last.greenBolls + last.openBolls).toBeCloseTo(share(2, 'bolls'), 9);
    expect(last.shed).toBeCloseTo(share(1, 'squaresShed') + share(2, 'bollsShed'), 9);
  });
  test('a whole season is a plain result: the same again from the same input', () => {
    expect(seasonOf(plan, 1)).toEqual(season);
  });
});

describe('the crop', () => {
  const { grown, lintLbPerAcre } = crop(season);
  test('holds lint, seed and motes, air-dry, in the variety’s lint share', () => {
    const { lint, seed, motes, ...others } = grown.dryKg;
    expect(lint / (lint + seed)).toBeCloseTo(season.variety.lintShare, 10);
    expect(motes / (lint + seed)).toBeCloseTo(0.009, 3);
    expect(Object.values(others).every((kg) => kg === 0)).toBe(true);
    expect(moistureFraction(grown, 'lint')).toBeCloseTo(0.0783, 10);
    expect(moistureFraction(grown, 'seed')).toBeCloseTo(0.097, 10);
  });
  test('the pounds an acre are the lot’s lint with its water', () => {
    const kg = groupDryKg(grown.dryKg, 'lint') + grown.waterKg.lint;
    expect(poundsFromKilograms(kg) / plan.acres).toBeCloseTo(lintLbPerAcre, 8);
  });
  test('bolls a plant, plants an acre and lint a boll make the yield', () => {
    const lb = poundsFromKilograms((season.bollsPerPlant * season.plantsPerAcre * season.lintGramsPerBoll) / 1000);
    expect(lb).toBeCloseTo(lintLbPerAcre, 8);
    const { picked, forOneBale } = season.bollsPerRowFoot;
    expect((480 * picked) / forOneBale!).toBeCloseTo(lintLbPerAcre, 6);
  });
  test('linear density is lint over fibre length: seeds x fibres x mean length', () => {
    const { fibre } = grown;
    const lintMg = season.lintGramsPerBoll * 1000;
    const km = (mtex: number) => lintMg / mtex;
    const fibres = (km(fibre.linearDensityMtex) * 1e6) / meanLengthMm(fibre.lengths, 'number');
    const seeds = fibres / season.variety.fibresPerSeed;
    expect(seeds).toBeGreaterThan(15);
    expect(seeds).toBeLessThan(season.variety.seedsPerBoll);
    expect(fibre.maturityRatio).toBeCloseTo(fibre.linearDensityMtex / season.variety.standardFinenessMtex, 12);
  });
  test('shares of the lint by position add up to one', () => {
    const { first, second, third, vegetative } = season.yieldShares;
    expect(first + second + third + vegetative).toBeCloseTo(1, 12);
  });
  test('twice the acres, twice the lot, the same plant', () => {
    const twice = seasonOf({ ...plan, acres: 80 }, 1);
    expect(crop(twice).grown.dryKg.lint).toBeCloseTo(2 * grown.dryKg.lint, 6);
    expect(twice.days).toEqual(season.days);
  });
});

describe('decisions', () => {
  const seeds = 12;
  const mean = (change: Partial<FieldPlan>, figure: (season: FieldSeason) => number) =>
    meanOver({ ...plan, ...change }, seeds, figure);

  test('earlier harvest aid costs yield and micronaire', () => {
    const yields = [20, 40, 60, 80].map((openPercent) => mean({ openPercent }, standing));
    const mics = [20, 40, 60, 80].map((openPercent) => mean({ openPercent }, micronaire));
    for (let k = 1; k < 4; k++) {
      expect(yields[k]!).toBeGreaterThan(yields[k - 1]!);
      expect(mics[k]!).toBeGreaterThan(mics[k - 1]!);
    }
  });
  test('waiting longer after the aid loses color and cotton to rain', () => {
    const rd = [14, 40].map((daysToHarvest) => mean({ daysToHarvest }, (s) => crop(s).grown.fibre.reflectanceRd));
    const lint = [14, 40].map((daysToHarvest) => mean({ daysToHarvest }, standing));
    expect(rd[0]! - rd[1]!).toBeGreaterThan(2);
    expect(lint[1]!).toBeLessThan(lint[0]!);
  });
  test('leaf falls after the aid; without it the plant is picked green', () => {
    const leaf = [3, 7, 14].map((daysToHarvest) => crop(seasonOf({ ...plan, daysToHarvest }, 1)).leafRemaining);
    expect(leaf[0]!).toBeGreaterThan(leaf[1]!);
    expect(leaf[1]!).toBeGreaterThan(leaf[2]!);
    expect(crop(seasonOf({ ...plan, harvestAid: false }, 1)).leafRemaining).toBe(1);
  });
  test('without harvest aid the wait begins when enough bolls are open', () => {
    const plain = seasonOf({ ...plan, harvestAid: false, openPercent: 80, daysToHarvest: 0 }, 1);
    expect(plain.events.harvestAid).toBeNull();
    expect(plain.days.at(-2)!.openPercent).toBeLessThan(90);
    expect(crop(plain).openPercentAtHarvest).toBeGreaterThanOrEqual(80);
  });
  test('picking waits for a dry day', () => {
    const wet = changedFrom(weatherOf('midSouth', 1), season.harvestDays[0]!, { rainInches: 0.3 });
    const dryAgain = changedFrom(wet, season.harvestDays[0]! + 9, { rainInches: 0 });
    expect(growSeason(plan, dryAgain).harvestDays).toEqual([season.harvestDays[0]! + 9]);
  });
  test('and ends on 20 December whatever the weather', () => {
    const wet = changedFrom(weatherOf('midSouth', 1), season.harvestDays[0]!, { rainInches: 0.3 });
    expect(growSeason(plan, wet).harvestDays).toEqual([354]);
  });
  test('rain on open bolls costs Rd and cotton, and turns the lint yellower', () => {
    const aid = season.events.harvestAid!;
    const rainy = growSeason(
      plan,
      changedFrom(changedFrom(weatherOf('midSouth', 1), aid + 14, { rainInches: 1 }), aid + 16, { rainInches: 0 }),
    );
    const dry = growSeason(plan, changedFrom(weatherOf('midSouth', 1), aid + 14, { rainInches: 0 }));
    expect(crop(rainy).grown.fibre.reflectanceRd).toBeLessThan(crop(dry).grown.fibre.reflectanceRd - 2);
    expect(crop(rainy).grown.fibre.yellownessB).toBeGreaterThan(crop(dry).grown.fibre.yellownessB);
    expect(crop(rainy).weatheredFraction).toBeGreaterThan(crop(dry).weatheredFraction + 0.01);
    expect(crop(rainy).grown.dryKg).toEqual(crop(dry).grown.dryKg);
  });
  test('water makes yield where it is short, up to what the crop needs', () => {
    const yields = [0, 8, 16].map((irrigationInches) =>
      meanOver({ ...ordinary.highPlains, irrigationInches }, seeds, standing),
    );
    expect(yields[1]!).toBeGreaterThan(1.5 * yields[0]!);
    expect(yields[2]!).toBeGreaterThan(yields[1]!);
    for (let seed = 1; seed <= 5; seed++) {
      expect(seasonOf({ ...ordinary.lowDesert, irrigationInches: 3 }, seed).seasonWaterInches.irrigation).toBeCloseTo(
        3,
        9,
      );
      expect(seasonOf({ ...ordinary.lowDesert, irrigationInches: 48 }, seed).seasonWaterInches.irrigation).toBeLessThan(
        48,
      );
    }
  });
  test('drought shortens fibre', () => {
    const length = (irrigationInches: number) =>
      meanOver(
        { ...ordinary.highPlains, irrigationInches },
        seeds,
        (s) => readFibre(crop(s).grown.fibre).upperHalfMeanMm,
      );
    expect(length(16) - length(0)).toBeGreaterThan(0.2);
  });
  test('a thick stand carries fewer bolls on each plant, more of them next to the stem', () => {
    const thin = seasonOf({ ...plan, seedsPerFoot: 1.5 }, 1);
    const thick = seasonOf({ ...plan, seedsPerFoot: 6 }, 1);
    expect(thin.bollsPerPlant).toBeGreaterThan(2 * thick.bollsPerPlant);
    expect(thick.yieldShares.first).toBeGreaterThan(thin.yieldShares.first);
    expect(thin.yieldShares.vegetative).toBeGreaterThan(thick.yieldShares.vegetative);
  });
  test('seed put into cold ground comes up late and thin', () => {
    const early = seasonOf({ ...ordinary.centralValley, plantingDayOfYear: 75 }, 1);
    const late = seasonOf(ordinary.centralValley, 1);
    expect(early.events.emerged! - early.plantedDay).toBeGreaterThan(late.events.emerged! - late.plantedDay + 5);
    expect(early.plantsPerAcre).toBeLessThan(late.plantsPerAcre);
  });
  test('longer-fibred classes have finer, longer lint in the same field', () => {
    const read = (variety: FieldPlan['variety']) => readFibre(crop(seasonOf({ ...plan, variety }, 1)).grown.fibre);
    const classes = (['uplandShort', 'uplandMedium', 'uplandLong', 'pima'] as const).map(read);
    for (let k = 1; k < 4; k++) {
      expect(classes[k]!.upperHalfMeanMm).toBeGreaterThan(classes[k - 1]!.upperHalfMeanMm + 1);
      expect(classes[k]!.micronaire).toBeLessThan(classes[k - 1]!.micronaire);
    }
  });
});

describe('hand picking', () => {
  test('goes over the field again some 25 days later, and the bolls of the second picking waited less', () => {
    const twice = seasonOf(handPicked, 1);
    expect(twice.harvestDays.length).toBeGreaterThan(1);
    expect(twice.harvestDays[1]! - twice.harvestDays[0]!).toBeGreaterThanOrEqual(25);
    const once = seasonOf({ ...handPicked, pickings: 1, openPercent: 95 }, 1);
    expect(crop(twice).daysOpenMean).toBeLessThan(crop(once).daysOpenMean);
  });
  test('one early picking leaves the late bolls in the field', () => {
    expect(seasonOf({ ...handPicked, pickings: 1 }, 1).bollsPerPlant).toBeLessThan(
      seasonOf(handPicked, 1).bollsPerPlant,
    );
  });
  test('no picking is sent into a field that has nothing left', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { harvestDays, days, plantedDay } = seasonOf(handPicked, seed);
      const open = harvestDays.map((day) => days[day - plantedDay]!.perPlant.openBolls);
      for (let k = 1; k < open.length; k++) expect(open[k]! - open[k - 1]!).toBeGreaterThan(0.02 * open[k]!);
    }
  });
  test('a machine goes once, whatever is asked', () => {
    expect(seasonOf({ ...plan, pickings: 3 }, 1).harvestDays).toHaveLength(1);
  });
  test('harvest aid is used on a hand-picked field only when asked for', () => {
    expect(seasonOf(handPicked, 1).events.harvestAid).toBeNull();
    expect(seasonOf({ ...handPicked, harvestAid: true }, 1).events.harvestAid).not.toBeNull();
  });
});

describe('a crop that fails says why', () => {
  const grow = (maxF: number, minF: number) => growSeason(plan, evenYear(maxF, minF, 0.1));
  test.each([
    [60, 45, 'planting', 'neverEmerged', 55],
    [63, 59, 'bloom', 'neverSquared', 505],
    [67, 59, 'bloom', 'neverFlowered', 830],
    [70, 60, 'boll', 'noBollOpened', 1730],
  ] as const)('every day %d/%d °F: %s, %s, of %d DD60', (maxF, minF, station, reason, dd60Needed) => {
    const failed = grow(maxF, minF);
    expect(failed.stopped).toMatchObject({ station, reason, dd60Needed });
    expect(failed.stopped!.dd60).toBeLessThan(dd60Needed);
    expect(failed).toMatchObject({ crop: null, harvestDays: [], bollsPerPlant: 0 });
    expect(failed.days.at(-1)!.dayOfYear).toBe(354);
  });
  test('a spring frost kills the seedlings', () => {
    const weather = weatherOf('highPlains', 1);
    const frost = { ...weather, days: weather.days.map((day) => (day.dayOfYear === 150 ? { ...day, minF: 25 } : day)) };
    const failed = growSeason(ordinary.highPlains, frost);
    expect(failed.stopped).toMatchObject({ station: 'planting', reason: 'killedByFrost', dd60Needed: null });
    expect(failed.days.at(-1)!.dayOfYear).toBe(150);
  });
  test('an autumn frost ends growth; bolls old enough still open', () => {
    const late = { ...ordinary.highPlains, plantingDayOfYear: 150, irrigationInches: 12 };
    const mild = growSeason(late, changedFrom(evenYear(88, 64, 0.05), 250, { rainInches: 0 }));
    const cold = growSeason(
      late,
      changedFrom(changedFrom(evenYear(88, 64, 0.05), 250, { rainInches: 0 }), mild.events.firstOpenBoll! + 1, {
        minF: 27,
      }),
    );
    expect(cold.events.killingFrost).toBe(mild.events.firstOpenBoll! + 1);
    expect(cold.crop).not.toBeNull();
    expect(crop(cold).lintLbPerAcre).toBeLessThan(crop(mild).lintLbPerAcre);
    expect(crop(cold).grown.fibre.yellownessB).toBeGreaterThan(crop(mild).grown.fibre.yellownessB);
  });
});
