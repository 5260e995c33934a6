import { named, uplandColour } from '../model/classing/colour.ts';
import { colourGrades } from '../model/classing/colour-grade-facts.ts';
import { micronaireClass, strengthWord, uniformityWord } from '../model/classing/descriptors.ts';
import { trashAreaOfReading, trashReading } from '../model/classing/leaf.ts';
import { stapleCode32nds } from '../model/classing/staple.ts';
import { stapleByEye } from '../model/classing/staple-by-eye.ts';
import { inchesFromMillimetres } from '../model/units.ts';
import type { Check } from './check.ts';
import { is, near } from './expected.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'classing', ...check });

const amsUpland = 'Classification of Upland Cotton, USDA-AMS';
const maker = 'instrument maker, measurement principles';

/** Printed in inches, hundredths, which our chart holds. */
const inches = [
  ['C03', 1.17, 37],
  ['C03', 1.18, 38],
  ['C04', 0.79, 24],
  ['C04', 0.85, 26],
  ['C04', 0.86, 28],
  ['classing/staple', 1.36, 44],
] as const;
/** Printed in millimetres by the maker of the instrument, apart from our chart. */
const millimetres = [
  ['C05', 28.2, 28.7, 36],
  ['classing/staple', 24.4, 24.9, 31],
  ['classing/staple', 26.7, 27.2, 34],
  ['classing/staple', 29.0, 29.7, 37],
  ['classing/staple', 31.5, 32.0, 40],
  ['classing/staple', 33.8, 34.3, 43],
] as const;
const byHand = [
  ['13/16', 0.827, 0.847],
  ['7/8', 0.909, 0.929],
  ['29/32', 0.95, 0.97],
  ['15/16', 0.99, 1.01],
  ['31/32', 1.031, 1.051],
  ['1', 1.072, 1.092],
  ['1-1/32', 1.113, 1.133],
  ['1-1/16', 1.154, 1.174],
  ['1-3/32', 1.195, 1.215],
  ['1-1/8', 1.236, 1.256],
  ['1-5/32', 1.277, 1.297],
  ['1-3/16', 1.318, 1.338],
  ['1-7/32', 1.359, 1.379],
  ['1-1/4', 1.4, 1.42],
] as const;
const colours = [
  ['42', 'Strict Low Middling Light Spotted'],
  ['31', 'Middling'],
  ['71', 'Good Ordinary'],
  ['63', 'Strict Good Ordinary Spotted'],
  ['54', 'Low Middling Tinged'],
  ['35', 'Middling Yellow Stained'],
] as const;

/** One reading inside each published bin of micronaire: <=2.4, 2.5-2.6, ... >=5.3. */
const bins = [2.3, 2.5, 2.8, 3.1, 3.4, 3.6, 4.0, 4.6, 5.1, 5.4];
const shareOf = (shares: readonly number[], word: string) =>
  shares.reduce((sum, share, i) => sum + (micronaireClass(bins[i]!) === word ? share : 0), 0);
const micronaireShares = [
  {
    id: 'C13',
    what: 'Arkansas crop of 2012: bales discounted for high micronaire',
    shares: [0, 0, 0, 0, 0, 0.1, 2.2, 42.7, 38.2, 16.7],
    word: 'discountHigh',
    percent: 54.9,
    source: 'USDA AMS MP_CN109, 7 February 2013; farm press 2012: over half',
  },
  {
    id: 'C15',
    what: 'Lamesa, 2018: bales discounted for low micronaire',
    shares: [0.2, 1.6, 3.6, 5.8, 5.8, 8.3, 38.8, 34.2, 1.8, 0],
    word: 'discountLow',
    percent: 17,
    source: 'USDA AMS MP_CN103, 2019',
  },
  {
    id: 'classing/premium-California',
    what: 'California crop of 2012: bales in the premium range of micronaire',
    shares: [0, 0, 0.2, 0.5, 0.7, 2.0, 38.5, 56.9, 1.3, 0],
    word: 'premium',
    percent: 38.5,
    source: 'USDA AMS MP_CN109, 7 February 2013',
  },
] as const;

/** Staple, words and colour. */
export const classingGradeChecks: readonly Check[] = [
  ...(
    [
      ['C01', 1.07, 34],
      ['C02', 1.08, 35],
    ] as const
  ).map(([id, lengthIn, staple]) =>
    row({
      id,
      kind: 'exact',
      what: `upland of ${lengthIn} in: staple, whose edge the trade felt in crop 2003, when 1.5 million bales sat at 1.07 in`,
      source: `farm press 2004; ${amsUpland}`,
      unit: '1/32 in',
      expected: near(staple, 0),
      ours: () => stapleCode32nds('upland', lengthIn),
    }),
  ),
  ...inches.map(([id, lengthIn, staple]) =>
    row({
      id: `${id}.${lengthIn}`,
      kind: 'definition',
      what: `upland of ${lengthIn} in: staple`,
      source: amsUpland,
      unit: '1/32 in',
      expected: near(staple, 0),
      ours: () => stapleCode32nds('upland', lengthIn),
    }),
  ),
  ...millimetres.flatMap(([id, low, high, staple]) =>
    [low, high].map((mm) =>
      row({
        id: `${id}.${mm}mm`,
        kind: 'exact',
        what: `upland of ${mm} mm: staple`,
        source: maker,
        unit: '1/32 in',
        expected: near(staple, 0),
        ours: () => stapleCode32nds('upland', inchesFromMillimetres(mm)),
      }),
    ),
  ),
  row({
    id: 'C06',
    kind: 'definition',
    what: 'Pima of 1.40 in: staple',
    source: 'Pima staple chart as printed in the trade',
    unit: '1/32 in',
    expected: near(48, 0),
    ours: () => stapleCode32nds('pima', 1.4),
  }),
  // The line through the middles of the regulation's ranges must name every range by its own staple, at both ends.
  ...byHand.flatMap(([name, low, high]) =>
    [low, ...(name === '1-1/8' ? [1.246] : []), high].map((upperQuartileIn) =>
      row({
        id: `C07.${upperQuartileIn}`,
        kind: 'definition',
        what: `upper quartile length of ${upperQuartileIn} in by hand: staple`,
        source: '7 CFR 28.303',
        unit: '',
        expected: is(name),
        ours: () => stapleByEye(upperQuartileIn).name,
      }),
    ),
  ),
  ...(
    [
      [81, 'average'],
      [84, 'high'],
      [76, 'veryLow'],
    ] as const
  ).map(([percent, word]) =>
    row({
      id: `C09.${percent}`,
      kind: 'definition',
      what: `uniformity of ${percent} %: word`,
      source: maker,
      unit: '',
      expected: is(word),
      ours: () => uniformityWord(percent),
    }),
  ),
  ...(
    [
      [3.4, 'discountLow'],
      [3.5, 'base'],
      [3.7, 'premium'],
      [4.3, 'base'],
      [5, 'discountHigh'],
    ] as const
  ).map(([micronaire, word]) =>
    row({
      id: `C10.${micronaire}`,
      kind: 'definition',
      what: `micronaire of ${micronaire}: market class`,
      source: 'USDA 1995 in the Texas A&M Lubbock glossary of 2000',
      unit: '',
      expected: is(word),
      ours: () => micronaireClass(micronaire),
    }),
  ),
  ...(
    [
      [23, 'weak'],
      [25, 'intermediate'],
      [28, 'average'],
      [30, 'strong'],
      [31, 'veryStrong'],
    ] as const
  ).map(([strength, word]) =>
    row({
      id: `classing/strength-${strength}`,
      kind: 'definition',
      what: `strength of ${strength} g/tex: word`,
      source: 'trade page, as USDA-AMS Agricultural Handbook 566 (from memory)',
      unit: '',
      expected: is(word),
      ours: () => strengthWord(strength),
    }),
  ),
  row({
    id: 'C11',
    kind: 'definition',
    what: 'trash reading of 12: area',
    source: 'USDA AMS Market News cotton help page',
    unit: '% of the surface',
    expected: near(1.2, 1e-9),
    ours: () => trashAreaOfReading(12),
  }),
  row({
    id: 'C11.back',
    kind: 'definition',
    what: 'trash area of 1.2 %: reading',
    source: 'USDA AMS Market News cotton help page',
    unit: 'trash reading',
    expected: near(12, 0),
    ours: () => trashReading(1.2),
  }),
  ...micronaireShares.map(({ id, what, shares, word, percent, source }) =>
    row({
      id,
      kind: 'plainSum',
      what,
      source,
      unit: '%',
      expected: near(percent, 1e-6),
      ours: () => shareOf(shares, word),
    }),
  ),
  row({
    id: 'C17.official',
    kind: 'definition',
    what: 'official color grades of upland',
    source: '7 CFR 28.525',
    unit: 'grades',
    expected: near(25, 0),
    ours: () => new Set(colourGrades.rows.filter(({ name }) => name !== 'Below Grade').map(({ code }) => code)).size,
  }),
  row({
    id: 'C17.below',
    kind: 'definition',
    what: 'color grades below the official ones',
    source: '7 CFR 28.525',
    unit: 'grades',
    expected: near(5, 0),
    ours: () => new Set(colourGrades.rows.filter(({ name }) => name === 'Below Grade').map(({ code }) => code)).size,
  }),
  ...colours.map(([code, name]) =>
    row({
      id: `C18.${code}`,
      kind: 'definition',
      what: `color code ${code}: name`,
      source: '7 CFR 28.525',
      unit: '',
      expected: is(name),
      ours: () => named(code).colorName,
    }),
  ),
  row({
    id: 'C19',
    kind: 'calibrated',
    what: 'Rd 71.7, +b 9.6: color code by our own chart',
    source: 'color grade example in the trade press (second-hand): Strict Low Middling Light Spotted',
    unit: '',
    expected: is('42'),
    ours: () => uplandColour(71.7, 9.6),
  }),
  row({
    id: 'classing/color-example',
    kind: 'calibrated',
    what: 'Rd 72, +b 9.0: color code by our own chart',
    source: 'example in USDA-AMS Agricultural Handbook 566 (from memory)',
    unit: '',
    expected: is('41'),
    ours: () => uplandColour(72, 9),
  }),
];
