import { climateOf } from '../model/field/climates.ts';
import { generateWeather } from '../model/field/generate-weather.ts';
import { seasonHeat } from '../model/field/season-heat.ts';
import { plantsStanding, rowFeetPerAcre } from '../model/field/stand.ts';
import { seedsPerBoll, varietyOf } from '../model/field/varieties.ts';
import { bollsPerFootForBale, lintFromBolls } from '../model/field/yield-estimate.ts';
import { harvest } from '../model/harvest/harvest.ts';
import { partMasses } from '../model/lot.ts';
import { openStream } from '../model/random.ts';
import { KG_PER_POUND, KILO, poundsFromKilograms, SQUARE_FEET_PER_ACRE } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, near, nearShare } from './expected.ts';
import { fibreOf } from './fixtures/hand-made-lot.ts';
import { seedCount } from './seed-count.ts';
import { mean } from './sweep.ts';

const medium = () => varietyOf('uplandMedium', 'present');
const counting = 'Mississippi State, Estimating Yield by Boll Counting, tables 1-2';
const lamesa = 'Texas A&M Lamesa AG-CARES 2000, table 31';
const sumner = 'Mississippi State variety trials 1994, table 13 (Sumner)';

/** Row width, boll, bolls on a foot of row that make a 480-lb bale at 35 % lint. */
const bollCounts: readonly (readonly [rowInches: number, bollGrams: number, bolls: number])[] = [
  [40, 5, 9.5],
  [40, 2, 23.8],
  [38, 4, 11.3],
  [36, 4, 10.7],
  [36, 2.5, 17.2],
  [20, 4.5, 5.3],
];
/** Row width and feet of row in an acre. */
const rowFeet: readonly (readonly [rowInches: number, feet: number])[] = [
  [40, 13068],
  [38, 13756],
  [30, 17424],
  [15, 34848],
];
/** Plots of a uniformity trial: field, mean seed cotton, length of a plot, yield an acre. */
const plots: readonly (readonly [field: string, grams: number, feet: number, lbPerAcre: number])[] = [
  ['A', 468.5, 30, 428],
  ['B', 527.9, 40, 362],
];
/** Boll, lint percent, lint index, seeds printed. */
const lamesaBolls: readonly (readonly [bollGrams: number, lintPercent: number, lintIndex: number, seeds: number])[] = [
  [2.8, 36.8, 5.3, 19.4],
  [2.9, 35, 4.8, 21.4],
  [3.2, 37, 4.9, 24.3],
  [2.4, 38, 6.4, 14.3],
  [2.4, 33.6, 4.2, 18.8],
];
/** Days fit for harvest and the acres a six-row machine covers in them. */
const harvestDays: readonly (readonly [state: string, days: number, acres: number])[] = [
  ['Arkansas', 34, 2163],
  ['Tennessee', 32, 2048],
  ['Mississippi', 29, 1850],
];
const crop = (seedCottonLb: number, acres: number) => {
  const kg = seedCottonLb * KG_PER_POUND;
  const dryKg = partMasses({ lint: 0.4 * kg, seed: 0.6 * kg });
  const grown = { dryKg, waterKg: { lint: 0, seed: 0, trash: 0 }, fibre: fibreOf('medium') };
  return { grown, weatheredFraction: 0, leafRemaining: 0.2, acres, lintLbPerAcre: 900 };
};
const gather = (method: 'spindle' | 'hand', seedCottonLb: number, acres: number) =>
  harvest(crop(seedCottonLb, acres), { method, daysToHarvest: 0, pickings: 1, moisturePercent: 8 });

/** Days that a boll needs in even weather of a mean temperature, °F. */
const bollDays = (meanF: number) => {
  const days = Array.from({ length: 365 }, (_, k) => ({
    dayOfYear: k + 1,
    maxF: meanF + 10,
    minF: meanF - 10,
    rainInches: 0,
  }));
  const { bollAge } = seasonHeat({ latitudeDegrees: 33, year: null, origin: 'generated', days }, 1, 365, 'dd60');
  return bollAge.findIndex((age) => age - bollAge[0]! >= 45 - 1e-9);
};

export const fieldCountChecks: readonly Check[] = [
  ...bollCounts.map(
    ([row, boll, bolls]): Check => ({
      id: `O7/${row}-${boll}`,
      link: 'field',
      kind: 'exact',
      what: `bolls on a foot of ${row}-inch row for a 480-lb bale, ${boll} g bolls of 35 % lint`,
      source: counting,
      unit: 'bolls/ft',
      expected: near(bolls, 0.1),
      ours: () => bollsPerFootForBale(row, boll, 0.35),
    }),
  ),
  ...rowFeet.map(
    ([row, feet]): Check => ({
      id: `field/row-feet-${row}`,
      link: 'field',
      kind: 'definition',
      what: `feet of ${row}-inch row in an acre`,
      source: counting,
      unit: 'ft',
      expected: near(feet, 0.5),
      ours: () => rowFeetPerAcre(row),
    }),
  ),
  ...plots.map(
    ([field, grams, feet, yieldLb]): Check => ({
      id: `O29/${field}`,
      link: 'field',
      kind: 'plainSum',
      what: `seed cotton of plots of ${grams} g on 3.5 by ${feet} ft, field ${field}, within 2 percent`,
      source: 'MacDonald, Barberton 1935-36, by way of agridat macdonald.cotton.uniformity; its author: about 400',
      unit: 'lb/acre',
      expected: nearShare(yieldLb, 0.02),
      ours: () => (poundsFromKilograms(grams / KILO) / (3.5 * feet)) * SQUARE_FEET_PER_ACRE,
    }),
  ),
  {
    id: 'O8',
    link: 'field',
    kind: 'exact',
    what: 'lint of 43,500 plants of 8.2 bolls, 320 bolls to the pound',
    source: 'Southwest Farm Press, Cotton crop made in August',
    unit: 'lb/acre',
    expected: near(1115, 1),
    ours: () => lintFromBolls(43_500, 8.2, (KG_PER_POUND * KILO) / 320),
  },
  {
    id: 'O11',
    link: 'field',
    kind: 'notTuned',
    what: 'bolls on a foot of 38-inch row for a 480-lb bale, an ordinary 4.5 g boll of 35 % lint',
    source: 'Kansas State, Estimating cotton lint yield from boll counts: ten bolls a foot',
    unit: 'bolls/ft',
    expected: near(10, 0.5),
    ours: () => bollsPerFootForBale(38, 4.5, 0.35),
  },
  {
    id: 'O12',
    link: 'field',
    kind: 'plainSum',
    what: 'plants of 14 lb of 4000 seeds, 70 % up',
    source: 'Silvertooth, Univ. Arizona az1203',
    unit: 'plants/acre',
    expected: near(39_200, 1e-6),
    ours: () => plantsStanding(14 * 4000, 0.7),
  },
  {
    id: 'O14',
    link: 'field',
    kind: 'plainSum',
    what: 'lint that 5 mg more on each of 7 million seeds makes: a little more than 75 lb',
    source: 'Delta Farm Press, Mid-South cotton varieties need more lint, fewer seeds',
    unit: 'lb/acre',
    expected: between(75, 79),
    ours: () => lintFromBolls(7_000_000, 1, 0.005),
  },
  ...lamesaBolls.map(
    ([boll, lint, index, seeds]): Check => ({
      id: `O16/${boll}-${lint}`,
      link: 'field',
      kind: 'definition',
      what: `seeds of a ${boll} g boll of ${lint} % lint and lint index ${index}, within 3 percent`,
      source: lamesa,
      unit: 'seeds',
      expected: near(seeds, 0.03 * seeds),
      ours: () => seedsPerBoll(boll, lint / 100, index),
    }),
  ),
  ...harvestDays.map(
    ([state, days, acres]): Check => ({
      id: `O26/${state}`,
      link: 'field',
      kind: 'plainSum',
      what: `eight-hour days of a six-row picker on ${acres} acres, within 1 percent: the days fit for harvest in ${state}`,
      source: 'Raper in cottongrower.com, quoting Griffin, Buschermohle & Barnes',
      unit: 'days',
      expected: near(days, 0.01 * days),
      ours: () => gather('spindle', 1000, acres).labour.machineHours! / 8,
    }),
  ),
  {
    id: 'field/picker-efficiency',
    link: 'field',
    kind: 'calibrated',
    what: 'cotton that a spindle picker gathers: 10 % lost is normal, 95-98 % gathered with good care',
    source: 'Clemson Extension, harvest management; Cotton Incorporated, spindle-type harvester',
    unit: '%',
    expected: between(90, 98),
    ours: () => 100 * gather('spindle', 1000, 1).efficiency,
  },
  {
    id: 'field/boll-mass',
    link: 'field',
    kind: 'calibrated',
    what: 'seed cotton of a full boll of the middling upland class',
    source: sumner,
    unit: 'g',
    expected: between(4.05, 5.59),
    ours: () => medium().bollGrams,
  },
  {
    id: 'field/seed-index',
    link: 'field',
    kind: 'calibrated',
    what: 'mass of 100 seeds of the middling upland class',
    source: sumner,
    unit: 'g',
    expected: between(7.8, 11.3),
    ours: () => medium().seedIndexGrams,
  },
  {
    id: 'field/seeds-per-boll',
    link: 'field',
    kind: 'calibrated',
    what: 'seeds of a full boll of the middling upland class',
    source: sumner,
    unit: 'seeds',
    expected: between(26, 32),
    ours: () => medium().seedsPerBoll,
  },
  {
    id: 'field/fibers-per-seed',
    link: 'field',
    kind: 'calibrated',
    what: 'fibers on a seed of the middling upland class, from mass, micronaire and length',
    source: sumner,
    unit: 'fibers',
    expected: between(12_800, 18_300),
    ours: () => medium().fibresPerSeed,
  },
  {
    id: 'field/seed-mass',
    link: 'field',
    kind: 'notTuned',
    what: 'mass of a ginned seed of the middling upland class',
    source: 'Davidonis et al. 1999, Beltwide 332',
    unit: 'mg',
    expected: between(56, 115),
    ours: () => medium().seedIndexGrams * 10,
  },
  {
    id: 'field/lint-per-seed',
    link: 'field',
    kind: 'calibrated',
    what: 'lint on a seed of the middling upland class: 51-76 mg by boll, lint percent and seed index',
    source: sumner,
    unit: 'mg',
    expected: between(51, 76),
    ours: () => medium().lintPerSeedMg,
  },
  {
    id: 'field/pima-seeds',
    link: 'field',
    kind: 'notTuned',
    what: 'seeds of a full Pima boll',
    source: 'Relationship of seed and boll in Pima, abstract: up to 31',
    unit: 'seeds',
    expected: between(14, 31),
    ours: () => varietyOf('pima', 'present').seedsPerBoll,
  },
  {
    id: 'field/boll-period-q10',
    link: 'field',
    kind: 'notTuned',
    what: 'days from flower to open boll at 20 °C over those at 30 °C: Q10 2.46-2.56, a tenth allowed',
    source: 'boll maturation period and temperature, abstract (scilit.com 63499590)',
    unit: 'ratio',
    expected: between(2.46 * 0.9, 2.56 * 1.1),
    ours: () => bollDays(68) / bollDays(86),
  },
  {
    id: 'field/desert-boll',
    link: 'field',
    kind: 'notTuned',
    what: 'day on which a desert flower of 9 September opens: about 3 November, 5 days allowed',
    source: 'Brown & Silvertooth, 2001 Boll Maturity and Boll Opening Dates, Univ. Arizona (Pinal County)',
    unit: 'day of year',
    expected: near(307, 5),
    ours: () => {
      const climate = climateOf('lowDesert');
      const opens = Array.from({ length: seedCount }, (_, index) => {
        const weather = generateWeather(climate, openStream(index + 1, 'weather'));
        const { bollAge } = seasonHeat(weather, 252, 110, climate.bollClock);
        return 252 + bollAge.findIndex((age) => age - bollAge[0]! >= 45 - 1e-9);
      });
      return mean(opens);
    },
  },
];
