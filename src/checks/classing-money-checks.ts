import { baleValueUsd, type ClassCard, classOne } from '../model/classing/class-card.ts';
import { bandPoints, extraneousPoints, gradePoints } from '../model/classing/differences.ts';
import type { MarketId } from '../model/classing/market.ts';
import { markets } from '../model/classing/markets.ts';
import { pointsOfUsd, settleSeed, storageUsd } from '../model/classing/payments.ts';
import { priceOfCrop, realUsd } from '../model/classing/prices.ts';
import type { Check } from './check.ts';
import { between, is, near } from './expected.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'classing', ...check });

const card = (some: Partial<ClassCard>): ClassCard => ({
  kind: 'upland',
  lengthIn: 1.06,
  uniformityPercent: 81,
  strengthGPerTex: 28,
  micronaire: 4.4,
  reflectanceRd: 72,
  yellownessB: 8.5,
  leaf: 4,
  market: 'southeast',
  netLb: 480,
  ...some,
});
/** Rd that our chart puts in each white grade, at +b 8. */
const white = { '11': 82, '31': 76, '51': 67 } as const;
const whiteLint = (grade: keyof typeof white) => ({ reflectanceRd: white[grade], yellownessB: 8 });
const lowMiddling = { ...whiteLint('51'), leaf: 5, lengthIn: 1.03, micronaire: 5.1, strengthGPerTex: 26.5 };

const southeastQuotes = 'USDA AMS spot quotations, Southeast, 26 May 2023';
const valueRows: readonly (readonly [id: string, what: string, input: Partial<ClassCard>, usd: number])[] = [
  [
    'C22',
    '31-3-36, micronaire 4.4, 30.5 g/tex',
    { ...whiteLint('31'), leaf: 3, lengthIn: 1.12, strengthGPerTex: 30.5 },
    409.68,
  ],
  ['C23', '51-5-33, micronaire 5.1, 26.5 g/tex', lowMiddling, 340.08],
  ['classing/value-base', 'base 41-4-34', {}, 395.28],
  [
    'classing/value-best',
    '11-1-37, micronaire 4.0, 31.5 g/tex',
    { ...whiteLint('11'), leaf: 1, lengthIn: 1.15, micronaire: 4, strengthGPerTex: 31.5 },
    415.68,
  ],
  ['classing/value-immature', '41-4-34, micronaire 2.8', { micronaire: 2.8 }, 362.88],
  [
    'classing/value-bark',
    '51-5-33, micronaire 5.1, 26.5 g/tex, bark level 1',
    { ...lowMiddling, extraneous: [{ kind: 'bark', level: 1 }] },
    313.68,
  ],
];
const gradeRows: readonly (readonly [MarketId, string, number, number, number, string])[] = [
  ['sanJoaquin', '21', 2, 37, 1540, 'San Joaquin Valley, 28 March 2024'],
  ['sanJoaquin', '42', 3, 34, -450, 'San Joaquin Valley, 28 March 2024'],
  ['eastTexas', '31', 3, 36, 725, 'East and South Texas, 13 March 2025'],
  ['eastTexas', '41', 5, 28, -900, 'East and South Texas, 13 March 2025'],
  ['southeast', '61', 2, 33, -700, 'Southeast, 26 May 2023'],
  ['southeast', '32', 4, 38, -50, 'Southeast, 26 May 2023'],
];

/** What a hundredth of an inch across the edge of staples 34 and 35 is worth a bale, USD. */
function edgeUsd(market: MarketId): number {
  const [short, longer] = [1.07, 1.08].map((lengthIn) => classOne(card({ market, lengthIn })).valueUsd);
  return Math.round((longer! - short!) * 100) / 100;
}
const allEdges = () => Object.values(markets).map(({ id }) => edgeUsd(id));
const edge = 'farm press 2004: about $7 a bale around crop 2003';
const edges = [
  ['southeast', 4.8],
  ['sanJoaquin', 9.6],
  ['eastTexas', 5.28],
  ['westTexas', 3.36],
] as const;

const crops = [
  [1876, 46.56, 1390, 'NASS all cotton 1866-2015; Shiller'],
  [1914, 35.28, 1105, 'Walsh 1944; BLS CPI-U'],
  [1919, 169.63, 3076, 'Walsh 1944; BLS CPI-U'],
  [1931, 27.17, 561, 'Walsh 1944; BLS CPI-U'],
  [1942, 91.39, 1759, 'Walsh 1944; BLS CPI-U'],
] as const;
const cropValue = (year: number) => baleValueUsd(480, priceOfCrop(year)!.lintCentsPerLb, 0);
/** Averages of other kinds, regions or months that were printed for the same crops. */
const crossMarks = [
  [2001, 26.8, 'spot sales of Texas and Oklahoma 2001-02, agricultural economics paper'],
  [2006, 47.83, 'Texas Tech daily price estimates, West Texas spot sales 2006-07'],
  [2009, 62.1, 'weighted average of the crop through June 2010, farm press'],
  [2010, 81.37, 'weighted average of the crop through February 2011, farm press'],
  [2011, 91.23, 'weighted average of the crop through February 2012, farm press'],
] as const;

/** Bale values, differences, prices of crops, seed and storage. */
export const classingMoneyChecks: readonly Check[] = [
  ...valueRows.map(([id, what, input, usd]) =>
    row({
      id,
      kind: 'plainSum',
      what: `480 lb of ${what}, Southeast: value`,
      source: `${southeastQuotes}; added by hand`,
      unit: 'USD',
      expected: near(usd, 0.005),
      ours: () => classOne(card(input)).valueUsd,
    }),
  ),
  row({
    id: 'C22.grade',
    kind: 'plainSum',
    what: 'the same first bale: color, leaf, staple and points',
    source: southeastQuotes,
    unit: '',
    expected: is('31-3-36 300'),
    ours: () => {
      const { color, leaf, staple32nds, premiumPoints } = classOne(card(valueRows[0]![2]));
      return `${color}-${leaf}-${staple32nds} ${premiumPoints}`;
    },
  }),
  row({
    id: 'C23.grade',
    kind: 'plainSum',
    what: 'the same second bale: color, leaf and staple',
    source: southeastQuotes,
    unit: '',
    expected: is('51-5-33'),
    ours: () => {
      const { color, leaf, staple32nds } = classOne(card(valueRows[1]![2]));
      return `${color}-${leaf}-${staple32nds}`;
    },
  }),
  row({
    id: 'C26',
    kind: 'plainSum',
    what: 'color 21, staple 36 in West Texas, 2006-07',
    source: 'Texas Tech daily price estimates, West Texas 2006-07',
    unit: 'c/lb',
    expected: near(48.36, 1e-9),
    ours: () => markets.westTexas.baseCentsPerLb.value + gradePoints(markets.westTexas, '21', 4, 36).points / 100,
  }),
  row({
    id: 'C27.least',
    kind: 'notTuned',
    what: 'a hundredth of an inch across 1.07 to 1.08 in: the least that a bale gains in our four markets lies under the published step',
    source: edge,
    unit: 'USD',
    expected: between(0, 7),
    ours: () => Math.min(...allEdges()),
  }),
  row({
    id: 'C27.most',
    kind: 'notTuned',
    what: 'a hundredth of an inch across 1.07 to 1.08 in: the most that a bale gains in our four markets lies over the published step',
    source: edge,
    unit: 'USD',
    expected: between(7, 14),
    ours: () => Math.max(...allEdges()),
  }),
  ...edges.map(
    ([market, value]): Check => ({
      id: `C27.${market}`,
      link: 'classing',
      kind: 'knownMiss',
      what: `a hundredth of an inch across 1.07 to 1.08 in, by the differences of ${market}`,
      source: edge,
      unit: 'USD',
      expected: near(7, 1),
      recorded: { value, tolerance: 0.005 },
      reason: 'the quotations are of other years than crop 2003',
      ours: () => edgeUsd(market),
    }),
  ),
  row({
    id: 'C28.points',
    kind: 'definition',
    what: '41-4 from staple 34 to 35, Southeast',
    source: southeastQuotes,
    unit: 'points',
    expected: near(100, 0),
    ours: () => gradePoints(markets.southeast, '41', 4, 35).points - gradePoints(markets.southeast, '41', 4, 34).points,
  }),
  row({
    id: 'C28.value',
    kind: 'plainSum',
    what: 'a bale of 480 lb at 100 points over 82.35 c: value',
    source: southeastQuotes,
    unit: 'USD',
    expected: near(400.08, 1e-9),
    ours: () => baleValueUsd(480, 82.35, 100),
  }),
  row({
    id: 'C29',
    kind: 'plainSum',
    what: 'gross of 1,129 lb at a premium of 1.52 c on a loan base of 50.0 c, which the same table gives',
    source: 'Mississippi variety trials 1994, table 15',
    unit: 'USD',
    expected: near(581.8, 1.1),
    ours: () => baleValueUsd(1129, 50, 152),
  }),
  ...gradeRows.map(([market, colour, leaf, staple, points, source]) =>
    row({
      id: `classing/grade-${market}-${colour}-${leaf}-${staple}`,
      kind: 'definition',
      what: `${colour}-${leaf}-${staple}: difference, none of it lent from another market`,
      source: `USDA AMS spot quotations, ${source}`,
      unit: 'points',
      expected: near(points, 0),
      ours: () => {
        const { points: found, filled } = gradePoints(markets[market], colour, leaf, staple);
        return filled.length === 0 ? found : Number.NaN;
      },
    }),
  ),
  row({
    id: 'classing/plastic',
    kind: 'definition',
    what: 'plastic, level 1, San Joaquin Valley',
    source: 'USDA AMS spot quotations, San Joaquin Valley, 28 March 2024',
    unit: 'points',
    expected: near(-4000, 0),
    ours: () => extraneousPoints(markets.sanJoaquin, [{ kind: 'plastic', level: 1 }]).points,
  }),
  row({
    id: 'classing/uniformity-84',
    kind: 'definition',
    what: 'uniformity of 84.4 %, San Joaquin Valley, quoted there',
    source: 'USDA AMS spot quotations, San Joaquin Valley, 28 March 2024',
    unit: 'points',
    expected: near(90, 0),
    ours: () => {
      const { points, filled } = bandPoints(markets.sanJoaquin.uniformity, 84.4);
      return filled.length === 0 ? points : Number.NaN;
    },
  }),
  row({
    id: 'classing/plastic-lent',
    kind: 'plainSum',
    what: 'plastic lent to West Texas takes the share of the price that it takes in the San Joaquin Valley, 40 c of 82.38',
    source: 'USDA AMS spot quotations, San Joaquin Valley, 28 March 2024',
    unit: '% of the base price',
    expected: near(48.56, 0.1),
    ours: () => {
      const { points, filled } = extraneousPoints(markets.westTexas, [{ kind: 'plastic', level: 2 }]);
      return filled.join() === 'otherMarket' ? -points / markets.westTexas.baseCentsPerLb.value : Number.NaN;
    },
  }),
  row({
    id: 'classing/pima-loan',
    kind: 'definition',
    what: '500 lb of Pima, 1.42 in: value at the loan rate of extra-long staple',
    source: 'USDA Farm Service Agency 2017: 79.77 c/lb',
    unit: 'USD',
    expected: near(398.85, 0.005),
    ours: () => {
      const bale = classOne(card({ kind: 'pima', lengthIn: 1.42, leaf: 2, netLb: 500 }));
      return bale.basis === 'loanRate' && bale.staple32nds === 48 ? bale.valueUsd : Number.NaN;
    },
  }),
  ...crops.flatMap(([year, usd, real, source]) => [
    row({
      id: year === 1931 ? 'C30' : year === 1919 ? 'C31' : `classing/crop-${year}`,
      kind: 'plainSum',
      what: `480 lb of the crop of ${year}: value`,
      source,
      unit: 'USD',
      expected: near(usd, 0.005),
      ours: () => cropValue(year),
    }),
    row({
      id: `${year === 1931 ? 'C30' : year === 1919 ? 'C31' : `classing/crop-${year}`}.real`,
      kind: 'plainSum',
      what: `480 lb of the crop of ${year}: value in dollars of 2024`,
      source,
      unit: 'USD',
      expected: near(real, 0.01 * real),
      ours: () => realUsd(cropValue(year), year, 2024)!,
    }),
  ]),
  row({
    id: 'C31.seed',
    kind: 'definition',
    what: 'seed of the crop of 1919',
    source: 'Walsh 1944',
    unit: 'USD/ton',
    expected: near(65.59, 1e-9),
    ours: () => priceOfCrop(1919)!.seedUsdPerTon!,
  }),
  ...crossMarks.map(([year, cents, source]) =>
    row({
      id: `classing/price-${year}`,
      kind: 'notTuned',
      what: `season price of upland of the crop of ${year}, from memory, against another average of it`,
      source,
      unit: 'c/lb',
      expected: near(cents, 4),
      ours: () => priceOfCrop(year)!.lintCentsPerLb,
    }),
  ),
  {
    id: 'classing/price-2008',
    link: 'classing',
    kind: 'knownMiss',
    what: 'season price of upland of the crop of 2008, from memory, against another average of it',
    source: 'weighted average of the crop through December 2008, farm press',
    unit: 'c/lb',
    expected: near(54.53, 4),
    recorded: { value: 47.8, tolerance: 0.005 },
    reason: 'the printed average ends in December, and prices fell that winter',
    ours: () => priceOfCrop(2008)!.lintCentsPerLb,
  },
  row({
    id: 'C33.seed',
    kind: 'exact',
    what: '1,331 lb of seed at $350 a ton: credit',
    source: 'lint and seed value sheet 2011',
    unit: 'USD',
    expected: near(232.93, 0.5),
    ours: () => settleSeed(1331, 350, 60).seedCreditUsd,
  }),
  row({
    id: 'C33.net',
    kind: 'exact',
    what: '1,331 lb of seed at $350 a ton, less about $60 of ginning',
    source: 'lint and seed value sheet 2011',
    unit: 'USD',
    expected: near(172.93, 0.5),
    ours: () => {
      const { balanceUsd, seedPaysGin } = settleSeed(1331, 350, 60);
      return seedPaysGin ? balanceUsd : Number.NaN;
    },
  }),
  row({
    id: 'classing/seed-break-even',
    kind: 'plainSum',
    what: 'seed price at which 600 lb pay a gin bill of $42.50',
    source: 'USDA ERS Statistical Bulletin 877, worked by hand',
    unit: 'USD/ton',
    expected: near(141.67, 0.005),
    ours: () => settleSeed(600, 100, 42.5).breakEvenUsdPerTon!,
  }),
  row({
    id: 'C37.usd',
    kind: 'plainSum',
    what: 'six months of storage at $2.61 a bale',
    source: 'Commodity Credit Corporation storage proposal 2006',
    unit: 'USD',
    expected: near(15.66, 1e-9),
    ours: () => storageUsd(1, 6, 2.61),
  }),
  row({
    id: 'C37.points',
    kind: 'plainSum',
    what: 'six months of storage at $2.61 on a bale of 480 lb',
    source: 'Commodity Credit Corporation storage proposal 2006',
    unit: 'points',
    expected: near(326, 0.5),
    ours: () => pointsOfUsd(storageUsd(1, 6, 2.61), 480),
  }),
];
