import { summariseGin } from '../model/gin/byproducts.ts';
import { totalDryKg } from '../model/lot.ts';
import type { Season } from '../model/season.ts';
import { OUNCES_PER_POUND, poundsFromKilograms } from '../model/units.ts';
import type { Check, CheckKind } from './check.ts';
import { between, near } from './expected.ts';
import { seasonCropChecks } from './season-crop-checks.ts';
import { seasonFieldChecks } from './season-field-checks.ts';
import { allFarms, type FarmName, mean, seasonMean } from './sweep.ts';

type Bale = NonNullable<Season['classing']>['classed'][number];

const lintLbPerAcre = ({ pressing, scenario }: Season) =>
  poundsFromKilograms(pressing!.bales.reduce((sum, { netKg }) => sum + netKg, 0)) / scenario.acres;
const ofBales = (figure: (bale: Bale) => number) => (season: Season) => mean(season.classing!.classed.map(figure));
const ginOf = ({ cleaning, ginning, pressing }: Season) =>
  summariseGin(cleaning!.ledger, ginning!.ledger, pressing!.ledger);
/** Mass of a bale's classing sample, water with it, oz. */
function sampleOunces({ classing }: Season): number {
  const { dryKg, waterKg } = classing!.ledger.out.find(({ account }) => account === 'classingSample')!;
  return (OUNCES_PER_POUND * poundsFromKilograms(totalDryKg(dryKg) + waterKg)) / classing!.classed.length;
}
const whiteAndBright = (color: string) =>
  color[1] === '1' ? Number(color) <= 41 : color[1] === '2' && Number(color) <= 32;

type Kind = Exclude<CheckKind, 'knownMiss'>;
/** One published figure of the season and our mean of it, farm by farm. */
function farmRows(
  id: string,
  kind: Kind,
  what: string,
  unit: string,
  figure: (season: Season) => number,
  rows: readonly (readonly [FarmName, Check['expected'], string])[],
): Check[] {
  return rows.map(([name, expected, source]) => ({
    id: `season/${id}-${name}`,
    link: 'season',
    kind,
    what: `${what}, ${name}, mean of whole seasons`,
    source,
    unit,
    expected,
    ours: () => seasonMean(name, figure),
  }));
}

const nass = 'USDA-NASS 2002-2011 by way of agridat nass.cotton';
const ams = 'USDA-AMS MP_CN103, MP_CN109';
const ashley = 'Ashley, Thomas, Holt & Valco 2018, J. Cotton Sci. 22(1):47-59: 696-700 lb, 3 % allowed';
const holt = 'Holt in deltafarmpress.com, gin waste';
const within = (value: number, share: number) => near(value, value * share);
const seedLb = between(696 * 0.97, 700 * 1.03);

const yieldChecks: readonly Check[] = [
  ...farmRows('yield', 'calibrated', 'lint pressed from an acre', 'lb/acre', lintLbPerAcre, [
    ['coastalPlain', within(728, 0.25), `${nass}: Georgia 783, Alabama 673`],
    ['midSouth', within(896, 0.25), `${nass}: Mississippi`],
    ['highPlains', within(357, 0.4), 'Lubbock County, Texas, dryland 1972-2018, from NASS yields'],
    ['lowDesert', within(1416, 0.25), `${nass}: Arizona`],
    ['centralValley', within(1516, 0.25), 'USDA-NASS January 2017: California extra-long staple, five years'],
    ['thirties', between(157, 270), 'USDA-NASS 1866-2011: 157 in 1930, 270 in 1937'],
  ]),
  {
    id: 'season/lowest-yield',
    link: 'season',
    kind: 'calibrated',
    what: 'lint of the dryland plains over the least of the other present farms: lowest',
    source: `${nass}: Texas the lowest of Arizona, California, Mississippi, Georgia and Texas`,
    unit: 'ratio',
    expected: between(0, 0.999),
    ours: () =>
      seasonMean('highPlains', lintLbPerAcre) /
      Math.min(
        ...(['coastalPlain', 'midSouth', 'lowDesert', 'centralValley'] as const).map((name) =>
          seasonMean(name, lintLbPerAcre),
        ),
      ),
  },
];

const classingChecks: readonly Check[] = [
  ...farmRows(
    'staple',
    'calibrated',
    'staple of the bales',
    '1/32 in',
    ofBales((bale) => bale.staple32nds),
    [
      ['coastalPlain', near(36, 0.7), 'USDA-AMS, Southeast 2012: 36'],
      ['midSouth', near(36, 0.7), 'USDA-AMS, all upland 2010 and 2012: 35.4 and 35.7; the mid-South taken as 36'],
      ['highPlains', near(35.6, 0.7), 'Texas Tech price estimates, West Texas sales 2006-07: 35.62'],
      ['centralValley', near(48.7, 1), 'USDA-AMS, American Pima 2010 and 2018-19: 48.2 and 49.2'],
    ],
  ),
  ...farmRows(
    'micronaire',
    'calibrated',
    'micronaire of the lot',
    'micronaire',
    ({ classing }) => classing!.lotReading.micronaire,
    [
      ['coastalPlain', near(4.5, 0.2), `${ams}: Georgia and Alabama 2012 and 2018, 4.4-4.6`],
      ['midSouth', near(4.7, 0.25), `${ams}: Arkansas 2018`],
      ['highPlains', near(4, 0.25), `${ams}: Lamesa 2018 4.0; West Texas sales 3.97`],
      ['lowDesert', near(4.58, 0.25), `${ams}: Arizona 2018`],
      ['centralValley', near(3.9, 0.2), `${ams}: American Pima 1999-2012, 3.8-4.0`],
    ],
  ),
  ...farmRows(
    'leaf',
    'calibrated',
    'leaf grade of the bales',
    'leaf',
    ofBales((bale) => bale.leaf),
    [
      ['coastalPlain', near(3.2, 0.5), 'USDA-AMS, Southeast 2006 and 2011: 3.2'],
      ['midSouth', near(3.8, 0.4), 'USDA-AMS, Mid-South 2011 3.5, Mississippi and Arkansas 2012 3.8 and 4.11'],
      ['highPlains', near(3.16, 0.6), 'Texas Tech price estimates, West Texas sales 2006-07: 3.16'],
      ['lowDesert', near(2.5, 0.5), 'USDA-AMS, desert Southwest 2006: 2.5'],
    ],
  ),
  {
    id: 'season/color',
    link: 'season',
    kind: 'calibrated',
    what: 'upland bales of three farms at color 41 or 32 or better',
    source: 'USDA-AMS, Quality of the Crop 1997-2011',
    unit: 'fraction',
    expected: between(0.74, 0.96),
    ours: () =>
      mean(
        (['coastalPlain', 'midSouth', 'highPlains'] as const).map((name) =>
          seasonMean(
            name,
            ofBales(({ color }) => (whiteAndBright(color) ? 1 : 0)),
          ),
        ),
      ),
  },
  ...farmRows(
    'patch',
    'plainSum',
    'side of the patch that one boll makes',
    'in',
    ({ sewing }) => sewing!.patchInchesPerBoll!,
    allFarms.map((name) => [name, between(3.25, 4.5), 'worked by hand: 1.2-1.8 g of lint in quilting cotton']),
  ),
  ...farmRows('sample', 'definition', 'classing sample of a bale, both sides together', 'oz', sampleOunces, [
    ['coastalPlain', near(8, 1e-6), 'USDA-AMS, The Classification of Cotton (AH-566): at least 4 oz from each side'],
  ]),
  ...farmRows(
    'uniformity',
    'calibrated',
    'uniformity of the lot',
    '%',
    ({ classing }) => classing!.lotReading.uniformityPercent,
    [
      ['coastalPlain', near(81.25, 0.6), 'USDA-AMS 1998-2002: 81.1-81.4'],
      ['midSouth', near(81.25, 0.6), 'USDA-AMS 1998-2002: 81.1-81.4'],
      ['centralValley', near(86.3, 0.4), 'USDA-AMS MP_CN104 2019'],
    ],
  ),
];

const ginChecks: readonly Check[] = [
  ...farmRows(
    'turnout',
    'calibrated',
    'lint pressed of the seed cotton delivered',
    '%',
    (s) => 100 * ginOf(s).turnout,
    [
      ['coastalPlain', near(38, 0.5), 'Mississippi State, Estimating Yield by Boll Counting: the upper of 35 and 38'],
      ['midSouth', between(33, 42), 'USDA ERS Stat. Bull. 929: 33.2 in 1994/95; variety trials, from memory: 36-42'],
      ['lowDesert', between(33, 42), 'USDA ERS Stat. Bull. 929: 33.2 in 1994/95; variety trials, from memory: 36-42'],
      ['highPlains', between(22, 34), 'USDA ERS Stat. Bull. 929: 22.3; Lubbock papers, from memory: 28-34'],
      ['thirties', between(33, 36), 'lint of a third and a little more, from memory'],
    ],
  ),
  ...farmRows('seed', 'calibrated', 'seed with a 500-lb bale', 'lb', (s) => ginOf(s).seedLbPer500LbBale, [
    ['coastalPlain', seedLb, ashley],
    ['midSouth', seedLb, ashley],
    ['highPlains', seedLb, ashley],
    ['lowDesert', seedLb, ashley],
  ]),
  {
    id: 'season/seed-centralValley',
    link: 'season',
    kind: 'knownMiss',
    what: 'seed with a 500-lb bale, Pima, mean of whole seasons',
    source: ashley,
    unit: 'lb',
    expected: seedLb,
    recorded: { value: 808, tolerance: 10 },
    reason: 'the published figure is a national mean of nearly all upland; none for Pima was read',
    ours: () => seasonMean('centralValley', (season) => ginOf(season).seedLbPer500LbBale),
  },
  ...farmRows('waste', 'calibrated', 'gin waste with a 480-lb bale', 'lb', (s) => ginOf(s).wasteLbPer480LbBale, [
    ['coastalPlain', between(75, 125), holt],
    ['midSouth', between(75, 125), holt],
    ['lowDesert', between(75, 125), holt],
    ['highPlains', between(300, 450), `${holt}, stripped with a field cleaner`],
  ]),
  {
    id: 'season/waste-centralValley',
    link: 'season',
    kind: 'knownMiss',
    what: 'gin waste with a 480-lb bale, Pima picked and roller ginned, mean of whole seasons',
    source: holt,
    unit: 'lb',
    expected: between(75, 125),
    recorded: { value: 65, tolerance: 4 },
    reason: 'two gentle lint cleaners waste little; the published figure is of saw-ginned cotton',
    ours: () => seasonMean('centralValley', (season) => ginOf(season).wasteLbPer480LbBale),
  },
  ...farmRows(
    'foreign-matter',
    'calibrated',
    'foreign matter in the seed cotton delivered',
    '%',
    ({ harvest }) => harvest!.foreignMatterPercent,
    [
      ['coastalPlain', between(5, 15), 'Whitelock & Anthony 2003, Appl. Eng. Agric. 19(1):31-37'],
      ['midSouth', between(5, 15), 'Whitelock & Anthony 2003, Appl. Eng. Agric. 19(1):31-37'],
      ['highPlains', between(15, 25), 'USDA-ARS Lubbock papers, from memory: 15-22; Garner 1976: about 25'],
      ['thirties', between(1, 5), 'USDA Agriculture Handbook 503, from memory: 1-3 % clean, up to 5'],
    ],
  ),
  ...farmRows(
    'stand-moisture',
    'calibrated',
    'lint moisture at the stand',
    '% wet basis',
    ({ ginning }) => ginning!.standMoisturePercent,
    [
      ['coastalPlain', between(5, 7), 'Anthony 2004: damage below 5; cottonguide.org and Valco: 6-7'],
      ['midSouth', between(5, 7), 'Anthony 2004: damage below 5; cottonguide.org and Valco: 6-7'],
    ],
  ),
  ...farmRows(
    'bale-moisture',
    'calibrated',
    'lint moisture of the bales',
    '% wet basis',
    ({ pressing }) => pressing!.moisturePercent,
    [
      ['coastalPlain', between(5.5, 7.5), 'USDA-ARS 161267: mid-South 2003, 5.5; National Cotton Council: at most 7.5'],
      ['midSouth', between(5.5, 7.5), 'USDA-ARS 161267: mid-South 2003, 5.5; National Cotton Council: at most 7.5'],
    ],
  ),
];

export const seasonChecks: readonly Check[] = [
  ...seasonFieldChecks,
  ...seasonCropChecks,
  ...yieldChecks,
  ...classingChecks,
  ...ginChecks,
];
