import { readFibre } from '../model/fibre.ts';
import { baleTag } from '../model/gin/bale-tag.ts';
import { ginEnergy, shareOfAverageGin } from '../model/gin/energy.ts';
import { distribute } from '../model/gin/overflow.ts';
import { tareKg } from '../model/gin/press.ts';
import { meganewtons, pressForceLb, universalDensity } from '../model/gin/press-force.ts';
import { crushSeed, seedRoomCubicFeet } from '../model/gin/seed.ts';
import { ginnedFibre } from '../model/gin/stand.ts';
import { standRun } from '../model/gin/wet-stand.ts';
import { totalKg } from '../model/lot.ts';
import { packingLbPerCubicFoot } from '../model/module/geometry.ts';
import { moduleVerdict, settledRiseF } from '../model/module/heating.ts';
import { storeModules } from '../model/module/store.ts';
import { kilogramsFromPounds, poundsFromKilograms } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, is, near, nearShare } from './expected.ts';
import { delivered, fibreOf, gathered, picked, standardRun } from './fixtures/hand-made-lot.ts';
import { ginAirChecks } from './gin-air-checks.ts';
import { ginWasteChecks } from './gin-waste-checks.ts';

const conventional = { kind: 'conventional', storageDays: 30 } as const;
type Cover = 'good' | 'poor' | 'none';
/** Dollars of a $400 bale spoilt under a cover in a wet autumn. */
const spoiltUsd = (cover: Cover) =>
  400 * storeModules(picked(), { ...conventional, cover }, { rainInchesInStorage: 4.5 }).lostFraction;
const storedLintKg = (cover: Cover) =>
  storeModules(picked(), { ...conventional, cover }, { rainInchesInStorage: 6 }).lot.dryKg.lint;
const farmPress = 'farm press reporting Simpson & Searcy, Byler, and Anthony';
const saved = { dryers: 1, dryerAirF: 180, moistureRestored: false } as const;

const moduleRules: readonly (readonly [riseF: number, coreF: number, verdict: string])[] = [
  [17, 92, 'ginSoon'],
  [46, 121, 'ginNow'],
  [12, 87, 'sound'],
];

const moduleChecks: readonly Check[] = [
  {
    id: 'G27',
    link: 'gin',
    kind: 'plainSum',
    what: 'volume of a round module 7.5 ft across and 8 ft wide, within 1 %',
    source: 'cottongrower.com, sizes of round modules',
    unit: 'ft3',
    expected: nearShare(353, 0.01),
    ours: () => 5625 / packingLbPerCubicFoot(5625, 'round'),
  },
  {
    id: 'G27b',
    link: 'gin',
    kind: 'plainSum',
    what: 'packing of eight round modules that weigh 45,000 lb, within 1 %',
    source: 'cottonfarming.com, precautions for handling round modules',
    unit: 'lb/ft3',
    expected: nearShare(15.9, 0.01),
    ours: () => packingLbPerCubicFoot(45_000 / 8, 'round'),
  },
  ...[5000, 5625].map(
    (pounds): Check => ({
      id: `G28/${pounds}`,
      link: 'gin',
      kind: 'notTuned',
      what: `bales of a round module of ${pounds} lb: one fourth of a 16-bale module`,
      source: 'abstract of The Effects of Three Module Types on Cotton Ginning and Fiber Quality',
      unit: 'bales',
      expected: near(4, 0.6),
      ours: () => pounds / standardRun().summary.seedCottonLbPer480LbBale,
    }),
  ),
  {
    id: 'G29',
    link: 'gin',
    kind: 'notTuned',
    what: 'bales of a conventional module of 21,000 lb: about 16',
    source: 'encyclopaedia article on ginning (textlnfo.wordpress.com, 2011)',
    unit: 'bales',
    expected: near(16, 1.5),
    ours: () => 21_000 / standardRun().summary.seedCottonLbPer480LbBale,
  },
  ...moduleRules.map(
    ([riseF, coreF, verdict]): Check => ({
      id: `G42/${verdict}`,
      link: 'gin',
      kind: 'definition',
      what: `a module core that has risen ${riseF} °F to ${coreF} °F`,
      source: 'Univ. of California Publication 3352, quoted by New Mexico State extension',
      unit: '',
      expected: is(verdict),
      ours: () => moduleVerdict(riseF, coreF),
    }),
  ),
  {
    id: 'gin/sound-module-rise',
    link: 'gin',
    kind: 'calibrated',
    what: 'settled rise of a module at the 12 % that is still storable: no more than 10-15 °F',
    source: 'Univ. of California Publication 3352; Hughs et al. 2004 for the 12 %',
    unit: '°F',
    expected: between(10, 15),
    ours: () => settledRiseF(12),
  },
  {
    id: 'gin/wet-yellowing',
    link: 'gin',
    kind: 'calibrated',
    what: 'yellowness gained in 45 days at 16 % moisture',
    source: 'Univ. of California Publication 3352',
    unit: '%',
    expected: between(61, 78),
    ours: () => {
      const lot = delivered({ method: 'spindle', foreignMatter: 0.08, lintShare: 0.425, moisturePercent: 16 });
      const stored = storeModules(
        lot,
        { kind: 'conventional', cover: 'good', storageDays: 45 },
        { rainInchesInStorage: 0 },
      );
      return 100 * (stored.lot.fibre.yellownessB / lot.fibre.yellownessB - 1);
    },
  },
  {
    id: 'gin/poor-cover',
    link: 'gin',
    kind: 'calibrated',
    what: 'what a poor cover costs a $400 bale over a good one, 4.5 inches of rain',
    source: `${farmPress}: $20 a bale`,
    unit: 'USD',
    expected: near(20, 3),
    ours: () => spoiltUsd('poor') - spoiltUsd('good'),
  },
  {
    id: 'gin/no-cover',
    link: 'gin',
    kind: 'calibrated',
    what: 'what a module without a cover costs a $400 bale over a good cover, 4.5 inches of rain',
    source: `${farmPress}: $48 a bale, shape and cover both poor`,
    unit: 'USD',
    expected: near(48, 5),
    ours: () => spoiltUsd('none') - spoiltUsd('good'),
  },
  {
    id: 'gin/wet-module-lint',
    link: 'gin',
    kind: 'notTuned',
    what: 'lint left without a cover over lint under a good one, 6 inches of rain: falls, by no more than 34 to 26 % turnout',
    source: 'Texas A&M study in deltafarmpress.com, Wet weather, big crops can stress module protection',
    unit: 'ratio',
    expected: between(26 / 34, 0.999),
    ours: () => storedLintKg('none') / storedLintKg('good'),
  },
  {
    id: 'gin/wet-module-pace',
    link: 'gin',
    kind: 'calibrated',
    what: 'pace of the stand with wet modules over its pace with dry ones, at the choking limit: 19 against 42 bales an hour',
    source: 'Texas A&M study in deltafarmpress.com, Wet weather, big crops can stress module protection',
    unit: 'ratio',
    expected: nearShare(19 / 42, 0.02),
    ours: () => standRun(12).paceShare,
  },
];

const baleChecks: readonly Check[] = [
  {
    id: 'G30',
    link: 'gin',
    kind: 'plainSum',
    what: 'packing of 500 lb in the 17 cubic feet of a Universal Density bale, within 1 %',
    source: 'National Cotton Council, bale description',
    unit: 'kg/m3',
    expected: nearShare(472, 0.01),
    ours: () => universalDensity(kilogramsFromPounds(500)).kgPerCubicMetre,
  },
  {
    id: 'G30b',
    link: 'gin',
    kind: 'plainSum',
    what: 'packing of 500 lb in the 17 cubic feet of a Universal Density bale, within 1 %',
    source: 'National Cotton Council, bale description',
    unit: 'lb/ft3',
    expected: nearShare(29.4, 0.01),
    ours: () => universalDensity(kilogramsFromPounds(500)).lbPerCubicFoot,
  },
  {
    id: 'G31',
    link: 'gin',
    kind: 'definition',
    what: 'force of the press at 40 lb/ft3 and 5 %, within 1 %',
    source: 'Anthony 1999, Beltwide 674',
    unit: 'MN',
    expected: nearShare(3.8, 0.01),
    ours: () => meganewtons(pressForceLb(40, 5)),
  },
  {
    id: 'G31b',
    link: 'gin',
    kind: 'plainSum',
    what: 'force saved by raised inserts, within 1 % of it',
    source: 'Anthony 1999, Beltwide 674',
    unit: '%',
    expected: nearShare(19.8, 0.01),
    ours: () => 100 * (1 - pressForceLb(40, 5, true) / pressForceLb(40, 5)),
  },
  {
    id: 'G32',
    link: 'gin',
    kind: 'definition',
    what: 'digits of a permanent bale tag: five of the gin, seven of the bale',
    source: 'Permanent Bale Identification, cotton.org',
    unit: 'digits',
    expected: near(12, 0),
    ours: () => baleTag(9_999_999).length,
  },
  {
    id: 'G34',
    link: 'gin',
    kind: 'definition',
    what: 'gross weight of 480 lb net in film with plastic straps',
    source: 'National Cotton Council specifications 2023-24, section 3.1',
    unit: 'lb',
    expected: near(483, 1e-9),
    ours: () => 480 + poundsFromKilograms(tareKg('film', 'pet')),
  },
  {
    id: 'G34b',
    link: 'gin',
    kind: 'definition',
    what: 'wrap and straps on the bales that a run presses',
    source: 'National Cotton Council specifications 2023-24, section 3.1',
    unit: 'lb',
    expected: near(3, 1e-9),
    ours: () => {
      const { netKg, grossKg } = standardRun().pressed.bales[0]!;
      return poundsFromKilograms(grossKg - netKg);
    },
  },
  {
    id: 'G35',
    link: 'gin',
    kind: 'definition',
    what: 'electricity of a saw gin for a bale',
    source: 'Funk & Hardin 2012, Appl. Eng. Agric. 28(4):503-510, audit of 20 gins',
    unit: 'kWh',
    expected: near(39.5, 0),
    ours: () => ginEnergy({ ...saved, stand: 'saw' }).electricityKwh,
  },
  {
    id: 'G35b',
    link: 'gin',
    kind: 'plainSum',
    what: 'electricity of a roller gin over a saw gin',
    source: 'Funk & Hardin 2012, Appl. Eng. Agric. 28(4):503-510',
    unit: 'ratio',
    expected: near(1.58, 0.006),
    ours: () =>
      ginEnergy({ ...saved, stand: 'roller' }).electricityKwh / ginEnergy({ ...saved, stand: 'saw' }).electricityKwh,
  },
  {
    id: 'gin/dryer-fuel',
    link: 'gin',
    kind: 'definition',
    what: 'propane of one dryer for a bale: 1.25 and 1.45 L at two gins',
    source: 'Hardin & Funk, Electricity and fuel use of two gins, season 2011',
    unit: 'L',
    expected: between(1.25, 1.45),
    ours: () => ginEnergy({ ...saved, stand: 'saw' }).propaneLitres,
  },
  {
    id: 'G36',
    link: 'gin',
    kind: 'definition',
    what: 'room of a short ton of gin-run seed',
    source: 'Cotton Incorporated, cottonseed characteristics, table 1',
    unit: 'ft3',
    expected: near(80, 1e-9),
    ours: () => seedRoomCubicFeet(kilogramsFromPounds(2000)),
  },
  {
    id: 'G36b',
    link: 'gin',
    kind: 'plainSum',
    what: 'room of the 700 lb of seed that come with a bale',
    source: 'Cotton Incorporated, cottonseed characteristics, table 1',
    unit: 'ft3',
    expected: near(28, 1e-9),
    ours: () => seedRoomCubicFeet(kilogramsFromPounds(700)),
  },
  {
    id: 'G37',
    link: 'gin',
    kind: 'plainSum',
    what: 'oil of 700 lb of seed at 320 lb a ton, within 10 %',
    source: 'oil-mill interview, farmprogress.com',
    unit: 'lb',
    expected: nearShare(112, 0.1),
    ours: () => poundsFromKilograms(crushSeed(kilogramsFromPounds(700)).oilKg),
  },
  {
    id: 'gin/oil-1911',
    link: 'gin',
    kind: 'notTuned',
    what: 'oil of 100 lb of seed in the old mills: 16 lb',
    source: "Grocers' Encyclopedia 1911: 36 cake, 16 oil, 46 linters, hulls and loss",
    unit: 'lb',
    expected: near(16, 1),
    ours: () => 100 * (crushSeed(1).oilKg / 1),
  },
  {
    id: 'G38',
    link: 'gin',
    kind: 'plainSum',
    what: 'bales of an average gin in 1994/95',
    source: 'EPA AP-42 section 9.7',
    unit: 'bales',
    expected: near(14_642, 0.5),
    ours: () => 1 / shareOfAverageGin(1),
  },
  {
    id: 'gin/bales-per-gin-ers',
    link: 'gin',
    kind: 'notTuned',
    what: 'bales of an average gin in 1994/95, counted by another office, within 1 %',
    source: 'USDA ERS Statistical Bulletin 929: 14,565',
    unit: 'bales',
    expected: nearShare(14_565, 0.01),
    ours: () => 1 / shareOfAverageGin(1),
  },
  {
    id: 'G40',
    link: 'gin',
    kind: 'definition',
    what: 'distributed over fed, a tenth overflowing and nothing removed',
    source: 'balance of a recycle loop: 1 / (1 - 0.1)',
    unit: 'ratio',
    expected: near(10 / 9, 1e-12),
    ours: () => totalKg(distribute(picked(), 0.1, {}).distributed) / totalKg(picked()),
  },
  {
    id: 'G40b',
    link: 'gin',
    kind: 'definition',
    what: 'what the feeders get of the feed, a tenth overflowing and nothing removed',
    source: 'balance of a recycle loop: all of it',
    unit: 'ratio',
    expected: near(1, 1e-12),
    ours: () => totalKg(distribute(picked(), 0.1, {}).toFeeders) / totalKg(picked()),
  },
];

const fibreChecks: readonly Check[] = [
  {
    id: 'G18',
    link: 'gin',
    kind: 'notTuned',
    what: 'uniformity of medium upland behind a saw stand and two cleaners less that behind a roller stand and none',
    source: 'Armijo et al. 2019, J. Cotton Sci. 23:66-77',
    unit: 'points',
    expected: between(-4.2, -1.6),
    ours: () => {
      const roller = readFibre(ginnedFibre(fibreOf('medium'), 'roller', 6)).uniformityPercent;
      return readFibre(standardRun().ginned.lot.fibre).uniformityPercent - roller;
    },
  },
  {
    id: 'gin/stripped-neps',
    link: 'gin',
    kind: 'definition',
    what: 'neps of stripped cotton over picked',
    source: 'ASAE, Alternate harvesting systems and cotton quality, 1981-83',
    unit: 'ratio',
    expected: near(1.37, 1e-9),
    ours: () => gathered('stripper').fibre.nepsRatio / gathered('spindle').fibre.nepsRatio,
  },
];

export const ginChecks: readonly Check[] = [
  ...ginWasteChecks,
  ...ginAirChecks,
  ...moduleChecks,
  ...baleChecks,
  ...fibreChecks,
];
