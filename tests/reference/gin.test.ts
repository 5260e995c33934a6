import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import type { DecisionsOf } from '../../src/model/decisions.ts';
import { type Fibre, readFibre } from '../../src/model/fibre.ts';
import { heatedHumidity, lintRegain, saturationKPa, wetBasisFromRegain } from '../../src/model/gin/air.ts';
import { baleTag } from '../../src/model/gin/bale-tag.ts';
import { dryingMoisture } from '../../src/model/gin/dryer.ts';
import { ginEnergy, shareOfAverageGin } from '../../src/model/gin/energy.ts';
import { lintCleanedFibre, removeWasteFibre, wasteByGridBarsLb } from '../../src/model/gin/lint-cleaner.ts';
import { trashRemovedFraction } from '../../src/model/gin/machine-step.ts';
import { waterToAdd } from '../../src/model/gin/moisten.ts';
import { distribute } from '../../src/model/gin/overflow.ts';
import { tareKg } from '../../src/model/gin/press.ts';
import { meganewtons, pressForceLb, universalDensity } from '../../src/model/gin/press-force.ts';
import { crushSeed, seedRoomCubicFeet } from '../../src/model/gin/seed.ts';
import { ginnedFibre } from '../../src/model/gin/stand.ts';
import { fieldCleaner } from '../../src/model/harvest/facts.ts';
import { harvest } from '../../src/model/harvest/harvest.ts';
import { breakByLength } from '../../src/model/length/breakage.ts';
import { machineBreakagePerMm } from '../../src/model/length/facts.ts';
import { meanLengthMm, shareBelow } from '../../src/model/length/statistics.ts';
import { groupDryKg, partMasses, splitLot, totalKg, totalWaterKg } from '../../src/model/lot.ts';
import { packingLbPerCubicFoot } from '../../src/model/module/geometry.ts';
import { moduleVerdict } from '../../src/model/module/heating.ts';
import { storeModules } from '../../src/model/module/store.ts';
import { celsiusFromFahrenheit, kilogramsFromPounds, poundsFromKilograms } from '../../src/model/units.ts';
import {
  type Cotton,
  delivered,
  evenlyMoist,
  fibreOf,
  ginAll,
  sawAndTwo,
  undried,
} from '../model/gin/hand-made-lot.ts';

/** Within a tolerance of a value. */
const near = (actual: number, expected: number, tolerance: number) =>
  expect(Math.abs(actual - expected), `${actual}, not ${expected} within ${tolerance}`).toBeLessThanOrEqual(tolerance);
const between = (actual: number, low: number, high: number) => {
  expect(actual).toBeGreaterThanOrEqual(low);
  expect(actual).toBeLessThanOrEqual(high);
};

/** The part of PsychroLib that is compared with; the package has no types of its own. */
interface Psychrolib {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetSatVapPres(celsius: number): number;
  GetVapPresFromRelHum(celsius: number, humidity: number): number;
  GetRelHumFromVapPres(celsius: number, pascal: number): number;
}
const require = createRequire(import.meta.url);
const psychrolib = require('psychrolib') as Psychrolib;

const picked = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425 });
const stripped = delivered({ method: 'stripper', foreignMatter: 0.38, lintShare: 0.425 });
const fieldCleaned = { ...splitLot(stripped, fieldCleaner.removedFraction).kept, fibre: stripped.fibre };
const twoSticks = { ...undried, stickMachines: 2 };
const standard = ginAll(picked, 'spindle');
const withCleaners = (lintCleaners: number, more: Partial<DecisionsOf<'ginning'>> = {}) =>
  ginAll(picked, 'spindle', undried, { ...sawAndTwo, lintCleaners, ...more });

describe('seed cotton and seed for a bale', () => {
  test('G2 picked, lint share .387, foreign matter .10: 1,444 lb per 480 +-4 % — USDA ERS Stat. Bull. 929', () => {
    const lot = delivered({ method: 'spindle', foreignMatter: 0.1, lintShare: 0.387 });
    near(ginAll(lot, 'spindle').summary.seedCottonLbPer480LbBale, 1444, 0.04 * 1444);
  });
  test('G3 stripped, lint share .36, foreign matter .38: 2,153-2,234 lb +-5 % — USDA ERS Stat. Bull. 929, 877', () => {
    const lot = delivered({ method: 'stripper', foreignMatter: 0.38, lintShare: 0.36 });
    between(ginAll(lot, 'stripper', twoSticks).summary.seedCottonLbPer480LbBale, 2153 * 0.95, 2234 * 1.05);
  });
  test('G5 lint share .425: 696-700 lb seed per 500 lb +-3 % — Ashley, Thomas, Holt & Valco 2018', () => {
    between(standard.summary.seedLbPer500LbBale, 696 * 0.97, 700 * 1.03);
  });
  test('G6 lint share .387: 823 lb seed per 500 lb +-3 % — Ashley, Thomas, Holt & Valco 2018', () => {
    const lot = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.387 });
    near(ginAll(lot, 'spindle').summary.seedLbPer500LbBale, 823, 0.03 * 823);
  });
  test('turnout of picked cotton 33-42 %, stripped 22-34 % — USDA ERS Stat. Bull. 929; state variety trials (memory)', () => {
    between(standard.summary.turnout, 0.33, 0.42);
    between(ginAll(stripped, 'stripper', twoSticks).summary.turnout, 0.22, 0.34);
    between(ginAll(fieldCleaned, 'stripperFieldCleaner', twoSticks).summary.turnout, 0.22, 0.34);
  });
});

describe('waste and cleaning', () => {
  test('G7 picked: 75-125 lb of gin waste a bale — Holt, farm press', () => {
    between(standard.summary.wasteLbPer480LbBale, 75, 125);
  });
  test('G8 stripped with field cleaner: 300-450 lb — Holt, farm press', () => {
    between(ginAll(fieldCleaned, 'stripperFieldCleaner', twoSticks).summary.wasteLbPer480LbBale, 300, 450);
  });
  test('G9 stripped: about 700 lb +-10 % — Holt, farm press', () => {
    near(ginAll(stripped, 'stripper', twoSticks).summary.wasteLbPer480LbBale, 700, 70);
  });
  test('G10 a field cleaner leaves less than half of the foreign matter — Smith, Jones & Miller, Texas Agr. Exp. Sta.', () => {
    const dryKg = partMasses({ lint: 40, seed: 55, motes: 1 });
    const grown = { dryKg, waterKg: evenlyMoist(dryKg, 8), fibre: fibreOf('medium') };
    const crop = { grown, weatheredFraction: 0, leafRemaining: 0.3, acres: 1, lintLbPerAcre: 100 };
    const trash = (method: 'stripper' | 'stripperFieldCleaner') =>
      groupDryKg(harvest(crop, { method, daysToHarvest: 0, pickings: 1, moisturePercent: 9 }).lot.dryKg, 'trash');
    expect(trash('stripperFieldCleaner') / trash('stripper')).toBeLessThan(0.5);
  });
  const beforeFeeder = (lot: typeof picked, run: typeof standard) =>
    trashRemovedFraction(lot, run.cleaned.machines.find(({ machine }) => machine === 'distributor')!.out);
  test('G11 cleaning ahead of the feeder, picked: 20-40 % of the trash, 18-43 allowed — van der Sluijs 2020', () => {
    between(beforeFeeder(picked, standard), 0.18, 0.43);
  });
  test('G12 the same, stripped: about 50 %, 40-75 allowed with two stick machines — Garner 1976, ARS-S-97', () => {
    between(beforeFeeder(stripped, ginAll(stripped, 'stripper', twoSticks)), 0.4, 0.75);
  });
  const [first, second] = standard.ginned.machines.filter(({ machine }) => machine.startsWith('lintCleaner'));
  test('G13 first lint cleaner: about 20 lb of a 500-lb bale, 15-25; at least half fibre, .45-.65 — Anthony 2000', () => {
    const { masses } = first!.removed[0]!;
    between((totalKg(masses) / totalKg(standard.pressed.lot)) * 500, 15, 25);
    between(masses.dryKg.lint / (totalKg(masses) - totalWaterKg(masses.waterKg)), 0.45, 0.65);
  });
  test('G14 two lint cleaners: 28.8 lb, 13.4-38.6 — Anthony 1997 (ARS 78083); Trans. ASAE 43(2)', () => {
    between(standard.summary.lintCleanerWasteLbPer500LbBale, 13.4, 38.6);
  });
  test('G15 mean trash efficiency of two lint cleaners about 35 %, 30-40, first above second — Lint-cleaning efficiency at gins', () => {
    const [one, two] = [first!, second!].map((step) => trashRemovedFraction(step.in, step.out));
    between((one! + two!) / 2, 0.3, 0.4);
    expect(one!).toBeGreaterThan(two!);
  });
  test('G16 an air unit cleans a quarter as well as a saw unit +-.05 — Mangialardi & Anthony 1997 (ARS 82631)', () => {
    const step = withCleaners(1, { lintCleaner: 'air' }).ginned.machines.at(-1)!;
    near(trashRemovedFraction(step.in, step.out) / trashRemovedFraction(first!.in, first!.out), 0.25, 0.05);
  });
  test('G17 neps, three lint cleaners over none: 32/11 +-15 % — Mangialardi 1989, Beltwide 2232', () => {
    const neps = (count: number) => withCleaners(count).ginned.lot.fibre.nepsRatio;
    near(neps(3) / neps(0), 32 / 11, (0.15 * 32) / 11);
  });
  test('G41 waste by grid bars 1-5: 11.7 20.3 21.4 27.1 27.6 lb per 500 +-2.5 — Anthony 1999, Beltwide 652', () => {
    [11.7, 20.3, 21.4, 27.1, 27.6].forEach((lb, index) => {
      near(wasteByGridBarsLb(index + 1), lb, 2.5);
    });
  });
  test('G40 overflow share .10, nothing removed: distributed 1.111 of the feed, feeders get all of it — identity', () => {
    const { distributed, toFeeders } = distribute(picked, 0.1, {});
    expect(totalKg(distributed) / totalKg(picked)).toBeCloseTo(10 / 9, 12);
    expect(totalKg(toFeeders) / totalKg(picked)).toBeCloseTo(1, 12);
  });
});

describe('moisture', () => {
  test('G22 restoring 4.3 to 5.5 % on 500 lb takes about 6 lb of water +-1 — ARS 161267', () => {
    near(waterToAdd(500, 4.3, 5.5), 6, 1);
  });
  test('G22b restoring 5.1 to 6.2 % on 500 lb takes about 5 lb of water +-1 — ARS 146242', () => {
    near(waterToAdd(500, 5.1, 6.2), 5, 1);
  });
  test('G24 regain 8.5 % is 7.83 % wet basis — ASTM D1909', () => {
    near(100 * wetBasisFromRegain(0.085), 7.83, 0.005);
  });
  test('G25 regain at 65 % humidity 7-8 % — Morton & Hearle', () => {
    between(100 * lintRegain(0.65), 7, 8);
  });
  test('G26 dispersed lint of 20 % for 15 s at 0.10/s to 2 %: 6 % +-0.5 — Hughs et al. 1985', () => {
    near(dryingMoisture(20, 2, 0.1, 15), 6, 0.5);
  });
  test('the vapour pressure and the humidity of heated air agree with ASHRAE within 3 % — ASHRAE Handbook 2017 through PsychroLib', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (const celsius of [5, 20, 40, 60, 80, 100])
      near(saturationKPa(celsius) / (psychrolib.GetSatVapPres(celsius) / 1000), 1, 0.03);
    const vapour = psychrolib.GetVapPresFromRelHum(celsiusFromFahrenheit(70), 0.6);
    const expected = psychrolib.GetRelHumFromVapPres(celsiusFromFahrenheit(125), vapour);
    near(heatedHumidity(70, 0.6, 125) / expected, 1, 0.03);
  });
});

describe('modules', () => {
  test('G27 round, 7.5 ft x 8 ft: 353 ft3; eight in 45,000 lb are 15.9 lb/ft3, 1 % — cottongrower.com; cottonfarming.com', () => {
    const each = 45_000 / 8;
    near(each / packingLbPerCubicFoot(each, 'round'), 353, 3.53);
    near(packingLbPerCubicFoot(each, 'round'), 15.9, 0.159);
  });
  test.each([5000, 5625])(
    'G28 a round module of %i lb makes about 4 bales +-0.6 — The Effects of Three Module Types on Cotton Ginning',
    (pounds) => {
      near(pounds / standard.summary.seedCottonLbPer480LbBale, 4, 0.6);
    },
  );
  test('G29 a conventional module of 21,000 lb makes about 16 bales +-1.5 — encyclopaedia article on ginning', () => {
    near(21_000 / standard.summary.seedCottonLbPer480LbBale, 16, 1.5);
  });
  test.each([
    [17, 92, 'ginSoon'],
    [46, 121, 'ginNow'],
    [12, 87, 'sound'],
  ] as const)('G42 rise %i F, core %i F: %s — Univ. of California Publ. 3352', (riseF, coreF, verdict) => {
    expect(moduleVerdict(riseF, coreF)).toBe(verdict);
  });
  test('45 days at 16 % moisture: yellowness +61 to +78 % — Univ. of California Publ. 3352', () => {
    const lot = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent: 16 });
    const decisions = { kind: 'conventional', cover: 'good', storageDays: 45 } as const;
    const stored = storeModules(lot, decisions, { rainInchesInStorage: 0 });
    between(stored.lot.fibre.yellownessB / lot.fibre.yellownessB - 1, 0.61, 0.78);
  });
  test('rain through a poor cover costs about $20 of a $400 bale, worse $48 — Simpson & Searcy, Byler, Anthony in the farm press', () => {
    const lost = (cover: 'good' | 'poor' | 'none') => {
      const decisions = { kind: 'conventional', cover, storageDays: 30 } as const;
      return 400 * storeModules(picked, decisions, { rainInchesInStorage: 4.5 }).lostFraction;
    };
    near(lost('poor') - lost('good'), 20, 3);
    near(lost('none') - lost('good'), 48, 5);
  });
  test('lint of each harvested pound, good cover to none: falls, by no more than 34 to 26 % — Texas A&M in the farm press', () => {
    const lint = (cover: 'good' | 'poor' | 'none') =>
      storeModules(picked, { kind: 'conventional', cover, storageDays: 30 }, { rainInchesInStorage: 6 }).lot.dryKg.lint;
    expect(lint('poor')).toBeLessThan(lint('good'));
    expect(lint('none')).toBeLessThan(lint('poor'));
    expect(lint('none') / lint('good')).toBeGreaterThan(26 / 34);
  });
});

describe('bale, seed, energy', () => {
  test('G30 500 lb in 17 ft3: 29.4 lb/ft3, 472 kg/m3, 1 % — National Cotton Council', () => {
    const { lbPerCubicFoot, kgPerCubicMetre } = universalDensity(kilogramsFromPounds(500));
    near(lbPerCubicFoot, 29.4, 0.294);
    near(kgPerCubicMetre, 472, 4.72);
  });
  test('G31 40 lb/ft3 at 5 %: 3.80 MN; raised inserts 19.8 % less, 1 % — Anthony 1999, Beltwide 674', () => {
    near(meganewtons(pressForceLb(40, 5)), 3.8, 0.038);
    near(1 - pressForceLb(40, 5, true) / pressForceLb(40, 5), 0.198, 0.00198);
  });
  test('G32 a tag has 5 + 7 digits and 10,000,000 numbers — Permanent Bale Identification, cotton.org', () => {
    expect(baleTag(20_001)).toBe('000000020001');
    expect(baleTag(9_999_999)).toHaveLength(12);
    expect(() => baleTag(10_000_000)).toThrow(RangeError);
  });
  test('G34 480 lb net in film with plastic straps: 483 lb gross — National Cotton Council specifications 3.1', () => {
    near(480 + poundsFromKilograms(tareKg('film', 'pet')), 483, 1e-9);
    for (const { netKg, grossKg } of standard.pressed.bales) near(poundsFromKilograms(grossKg - netKg), 3, 1e-9);
  });
  test('G35 roller over saw electricity 1.58; saw 39.5 kWh — Funk & Hardin 2012', () => {
    const use = { dryers: 1, dryerAirF: 180, moistureRestored: false } as const;
    near(ginEnergy({ ...use, stand: 'saw' }).electricityKwh, 39.5, 0);
    near(ginEnergy({ ...use, stand: 'roller' }).electricityKwh / 39.5, 1.58, 0.006);
  });
  test('G36 gin-run seed: a ton fills 80 ft3, 700 lb 28 — Cotton Inc., cottonseed characteristics', () => {
    near(seedRoomCubicFeet(kilogramsFromPounds(2000)), 80, 1e-9);
    near(seedRoomCubicFeet(kilogramsFromPounds(700)), 28, 1e-9);
  });
  test('G37 oil of 700 lb of seed: 112 lb +-10 % — oil-mill interview, farmprogress.com', () => {
    near(poundsFromKilograms(crushSeed(kilogramsFromPounds(700)).oilKg), (700 * 320) / 2000, 11.2);
  });
  test('G38 an average gin of 1994/95 pressed 14,642 bales — EPA AP-42 section 9.7', () => {
    near(1 / shareOfAverageGin(1), 14_642, 0.5);
  });
});

/** Fibre behind a saw stand and one, two and three saw cleaners. */
const stagesOf = (fibre: Fibre, moisture: number): Fibre[] => {
  const saw = ginnedFibre(fibre, 'saw', moisture);
  const one = lintCleanedFibre(saw, 'saw', 1, moisture);
  const two = lintCleanedFibre(one, 'saw', 2, moisture);
  return [saw, one, two, lintCleanedFibre(two, 'saw', 3, moisture)];
};
const stageFibres = (cotton: Cotton, moisture = 6): Fibre[] => stagesOf(fibreOf(cotton), moisture);
const baled = (fibre: Fibre): Fibre => stagesOf(fibre, 6)[2]!;
const rollerFibre = (cotton: Cotton) => ginnedFibre(fibreOf(cotton), 'roller', 6);
const uplands = ['short', 'medium', 'long'] as const;
/** Short fibre index from length (in) and uniformity: instrument maker's formula, from memory. */
const shortFibreIndex = (upperHalfMeanMm: number, uniformity: number) =>
  122.56 - 12.87 * (upperHalfMeanMm / 25.4) - 1.22 * uniformity;

describe('fibre through the gin', () => {
  test('G18 uniformity, saw and two cleaners against roller and none: -1.6 to -4.2 — Armijo et al. 2019', () => {
    const drop =
      readFibre(stageFibres('medium')[2]!).uniformityPercent - readFibre(rollerFibre('medium')).uniformityPercent;
    between(drop, -4.2, -1.6);
  });
  test('L22 medium, saw + 2: length 28.2 +-.2, uniformity 81.3 +-.4, short fibre 9.0 +-.6 — USDA crop means; short fibre index', () => {
    const reading = readFibre(ginAll(picked, 'spindle').ginned.lot.fibre);
    near(reading.upperHalfMeanMm, 28.2, 0.2);
    near(reading.uniformityPercent, 81.3, 0.4);
    near(reading.shortFibrePercentByWeight, 9, 0.6);
  });
  test.each(uplands)(
    'L23 %s: each saw cleaner takes .4-1.1 of uniformity and adds .5-1.5 of short fibre — Armijo et al. 2019',
    (cotton) => {
      const readings = stageFibres(cotton).map(readFibre);
      readings.slice(1).forEach((after, index) => {
        between(readings[index]!.uniformityPercent - after.uniformityPercent, 0.4, 1.1);
        between(after.shortFibrePercentByWeight - readings[index]!.shortFibrePercentByWeight, 0.5, 1.5);
      });
    },
  );
  test('L24 medium: each saw cleaner takes .2-.6 mm — Baker, Beltwide 1267; Armijo et al. 2019', () => {
    const lengths = stageFibres('medium').map((fibre) => readFibre(fibre).upperHalfMeanMm);
    lengths.slice(1).forEach((mm, index) => {
      between(lengths[index]! - mm, 0.2, 0.6);
    });
  });
  test.each(uplands)('L25 %s: saw below roller by .8-2.0 of uniformity, .05 allowed — Armijo et al. 2019', (cotton) => {
    const saw = readFibre(stageFibres(cotton)[0]!).uniformityPercent;
    between(readFibre(rollerFibre(cotton)).uniformityPercent - saw, 0.75, 2.05);
  });
  test('L26 known miss: saw against roller length is -.32 mm, published -.8 +-.25 (one staple); no break law meets it with the uniformity — Gillum & Armijo 2007', () => {
    const drop =
      readFibre(stageFibres('medium')[0]!).upperHalfMeanMm - readFibre(rollerFibre('medium')).upperHalfMeanMm;
    near(drop, -0.32, 0.02);
    expect(drop).toBeGreaterThan(-0.8 + 0.25);
  });
  test.each(uplands)(
    'L27 %s: short fibre within 1.0 of the short fibre index from stand to third cleaner — instrument maker (memory)',
    (cotton) => {
      for (const fibre of stageFibres(cotton)) {
        const { upperHalfMeanMm, uniformityPercent, shortFibrePercentByWeight } = readFibre(fibre);
        near(shortFibrePercentByWeight, shortFibreIndex(upperHalfMeanMm, uniformityPercent), 1);
      }
    },
  );
  test('L28 short fibre for each point of moisture, 3.7 to 6.9 %: -.5 +-.12 — 78-bale atomizing-nozzle study', () => {
    const short = (moisture: number) => readFibre(stageFibres('medium', moisture)[2]!).shortFibrePercentByWeight;
    near((short(6.9) - short(3.7)) / 3.2, -0.5, 0.12);
  });
  test('L29, G21 known miss: length by weight, 4.8 to 5.6 % moisture, is +.25 mm, published +.4 +-.1; the slope that meets short fibre gives less length — Byler 2005', () => {
    const mean = (moisture: number) => meanLengthMm(stageFibres('medium', moisture)[2]!.lengths, 'weight');
    const gain = mean(5.6) - mean(4.8);
    near(gain, 0.25, 0.02);
    expect(gain).toBeLessThan(0.4 - 0.1);
  });
  test('L30 medium: more than 33 % of the lost fibre is at or below 12.7 mm at every stage — Hughs, Armijo & Foulk 2013', () => {
    const before = stageFibres('medium');
    [0.02, 0.012, 0.009].forEach((lost, index) => {
      const broken = breakByLength(before[index]!.lengths, machineBreakagePerMm.sawLintCleaner.value);
      expect(shareBelow(removeWasteFibre(broken, lost).removed, 12.7, 'weight')).toBeGreaterThan(0.33);
    });
  });
  test('L31 the share of 22.1-25.4 mm (23.4-26.9 by array) stays while longer fibre falls by over .10 — Hughs, Armijo & Foulk 2013', () => {
    const stages = [rollerFibre('medium'), ...stageFibres('medium')];
    const below = (mm: number) => stages.map(({ lengths }) => shareBelow(lengths, mm, 'weight'));
    const [low, high] = [below(23.4), below(26.9)];
    const band = high.map((share, index) => share - low[index]!);
    expect(Math.max(...band) - Math.min(...band)).toBeLessThanOrEqual(0.012);
    expect(high[4]! - high[0]!).toBeGreaterThan(0.1);
  });
  test('L32 stripping, read in the bale: short fibre +.9 +-.15 and mean length -.4 +-.1 — ASAE, Alternate harvesting systems and cotton quality', () => {
    const dryKg = partMasses({ lint: 40, seed: 55, motes: 1 });
    const crop = {
      grown: { dryKg, waterKg: evenlyMoist(dryKg, 8), fibre: fibreOf('medium') },
      weatheredFraction: 0,
      leafRemaining: 0.2,
      acres: 1,
      lintLbPerAcre: 88,
    };
    const by = (method: 'spindle' | 'stripper') =>
      baled(harvest(crop, { method, daysToHarvest: 0, pickings: 1, moisturePercent: 6 }).lot.fibre);
    const [pickedFibre, strippedFibre] = [by('spindle'), by('stripper')];
    near(
      readFibre(strippedFibre).shortFibrePercentByWeight - readFibre(pickedFibre).shortFibrePercentByWeight,
      0.9,
      0.15,
    );
    near(meanLengthMm(strippedFibre.lengths, 'weight') - meanLengthMm(pickedFibre.lengths, 'weight'), -0.4, 0.1);
    near(strippedFibre.nepsRatio / pickedFibre.nepsRatio, 1.37, 1e-9);
  });
  test('L33 lint brought from 5 to 7 % between stand and two cleaners: uniformity +.5 +-.15 — Armijo et al. 2019', () => {
    const saw = ginnedFibre(fibreOf('medium'), 'saw', 5);
    const behindTwo = (moisture: number) =>
      readFibre(lintCleanedFibre(lintCleanedFibre(saw, 'saw', 1, moisture), 'saw', 2, moisture)).uniformityPercent;
    near(behindTwo(7) - behindTwo(5), 0.5, 0.15);
  });
  test('L34 known miss: a cleaner gentler by 1.16 of short fibre gains .24 mm and .76 of uniformity, published .53 and 1.34 — CSIRO/CRDC modified lint cleaner', () => {
    const [saw, standardCleaner] = stageFibres('medium');
    const gentle = (share: number): Fibre => lintCleanedFibre({ ...saw!, breakTendency: share }, 'saw', 1, 6);
    const [target, from] = [readFibre(standardCleaner!).shortFibrePercentByWeight - 1.16, readFibre(standardCleaner!)];
    let [low, high] = [0, 1];
    for (let step = 0; step < 40; step++) {
      const middle = (low + high) / 2;
      if (readFibre(gentle(middle)).shortFibrePercentByWeight > target) high = middle;
      else low = middle;
    }
    const gain = readFibre(gentle(low));
    near(gain.shortFibrePercentByWeight, target, 0.001);
    near(gain.upperHalfMeanMm - from.upperHalfMeanMm, 0.24, 0.03);
    near(gain.uniformityPercent - from.uniformityPercent, 0.76, 0.06);
    expect(gain.upperHalfMeanMm - from.upperHalfMeanMm).toBeLessThan(0.53);
    expect(gain.uniformityPercent - from.uniformityPercent).toBeLessThan(1.34);
  });
  test('L37 Pima behind a roller stand and two roller-type cleaners: length 36.3 +-.1, uniformity 86.3 +-.2 — USDA crop means', () => {
    const lot = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.36, cotton: 'pima' });
    const gentle = { ...sawAndTwo, stand: 'roller', lintCleaner: 'roller' } as const;
    const reading = readFibre(ginAll(lot, 'spindle', undried, gentle).ginned.lot.fibre);
    near(reading.upperHalfMeanMm, 36.3, 0.1);
    near(reading.uniformityPercent, 86.3, 0.2);
  });
});
