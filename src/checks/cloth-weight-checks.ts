import { meanLinearDensity } from '../model/cloth/weight.ts';
import { asNe, texFromNe } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, near } from './expected.ts';
import { crimps, plain, sett, settPerCm, weighing, yarns } from './fixtures/cloths.ts';
import { jersey, quilting } from './fixtures/yarn-lots.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'cloth', ...check });

const gate = 'Graduate Aptitude Test in Engineering (Indian Institutes of Technology)';
const maker = 'maker page of a quilting base, 68 x 68';
const chart = 'range chart, aaenterprises.in';
const ofTex = (tex: number) => ({ singleTex: tex, singles: 1 });

// 36 in of cloth from 38 in in the reed gave 5.6 % in the warp and 37.5 in of weft 4.2 %.
const piece = () =>
  plain({
    warp: ofTex(texFromNe(asNe(30)) * 1.25),
    ...{ weft: yarns(36, 36).weft },
    ...sett(64, 64),
    ...crimps(100 * (38 / 36 - 1), 100 * (37.5 / 36 - 1)),
  });
const quilts = { ...yarns(28, 28), ...sett(68, 68) };
const denim = () => plain({ ...yarns(7, 7), ...sett(68, 38), weave: 'twill', ...crimps(10, 3), dyedWarp: true });

/** Plain cloths whose weight a source gives, with how far it may be off. */
const weights = [
  ['cloth/39.28', '68 x 68 of 28s', quilts, 124, 12.4, maker],
  ['cloth/39.30', '68 x 68 of 30s', { ...yarns(30, 30), ...sett(68, 68) }, 124, 12.4, maker],
  [
    'cloth/muslin-128',
    'muslin sheet type 128, 68 x 60 of 22s, at 4.2 oz/yd2',
    { ...yarns(22, 22), ...sett(68, 60) },
    142.4,
    14.2,
    'weights of sheetings, trade (from memory)',
  ],
  [
    'cloth/muslin-140',
    'muslin sheet type 140, 74 x 66 of 22s, at 4.6 oz/yd2',
    { ...yarns(22, 22), ...sett(74, 66) },
    156,
    15.6,
    'weights of sheetings, trade (from memory)',
  ],
] as const;
/** Print cloths quoted in yards to the pound. */
const printCloths = [
  ['cloth/print-80', '80 x 80 of 30s and 40s, 39 in', { ...yarns(30, 40), ...sett(80, 80) }, 39, 4],
  ['cloth/print-64', '64 x 60 of 30s and 40s, 38.5 in', { ...yarns(30, 40), ...sett(64, 60) }, 38.5, 5.35],
] as const;
/** Seller's ranges. */
const ranges = [
  ['percale', { ...yarns(40, 40), ...sett(104, 88) }, 100, 150],
  ['poplin', { ...yarns(40, 40), ...sett(144, 76) }, 110, 160],
] as const;

/** What cloth weighs. */
export const clothWeightChecks: readonly Check[] = [
  row({
    id: 'cloth/26',
    kind: 'exact',
    what: '30 tex x 20 tex, 40 x 30 per cm, crimps 10 and 10 %: weight',
    source: `${gate} 2009 Q37`,
    unit: 'g/m2',
    expected: near(198, 1e-9),
    ours: () =>
      plain({ warp: ofTex(30), weft: ofTex(20), ...settPerCm(40, 30), ...crimps(10, 10) }).gramsPerSquareMetre,
  }),
  row({
    id: 'cloth/28.weight',
    kind: 'exact',
    what: 'square cloth of 36s, 28 per cm, crimp 10 %: weight',
    source: `${gate} 2007 Q84`,
    unit: 'g/m2',
    expected: near(101, 1),
    ours: () => plain({ ...yarns(36, 36), ...settPerCm(28, 28), ...crimps(10, 10) }).gramsPerSquareMetre,
  }),
  row({
    id: 'cloth/28.cover',
    kind: 'exact',
    what: 'square cloth of 36s, 28 per cm: area covered',
    source: `${gate} 2007 Q85, key 65 to 67`,
    unit: '%',
    expected: between(63, 69),
    ours: () => 100 * plain({ ...yarns(36, 36), ...settPerCm(28, 28), ...crimps(10, 10) }).coverFraction,
  }),
  row({
    id: 'cloth/shirting-weight',
    kind: 'exact',
    what: 'shirting of 29s x 45s, 25 x 25 per cm, crimps 10 and 5.5 %: weight',
    source: `${gate} 2010`,
    unit: 'g/m2',
    expected: near(91.15, 1),
    ours: () => plain({ ...yarns(29, 45), ...settPerCm(25, 25), ...crimps(10, 5.5) }).gramsPerSquareMetre,
  }),
  {
    id: 'cloth/30',
    link: 'cloth',
    kind: 'knownMiss',
    what: '36 in x 36 yd, 64 x 64, 30s and 36s, 25 % size on the warp, 38 in in the reed: weight of the piece, 7 lb 2.5 oz',
    source: 'Brooks, Cotton Manufacturing, weight of a piece',
    unit: 'oz',
    expected: near(114.5, 0.5),
    recorded: { value: 115.2, tolerance: 0.1 },
    reason: 'the book cuts its warp to 3 lb 7 oz, 0.7 oz below its own rule',
    ours: () => piece().ouncesPerSquareYard * 36,
  },
  row({
    id: 'cloth/39.yards',
    kind: 'notTuned',
    what: '68 x 68 of 28s in goods of 45 in: yards to the pound',
    source: maker,
    unit: 'yd/lb',
    expected: near(3.5, 0.175),
    ours: () => plain(quilts).yardsPerPound,
  }),
  ...(
    [
      ['grams', 'g/m2', 124, 1e-9, () => weighing(quilts, 124).gramsPerSquareMetre],
      ['ounces', 'oz/yd2', 3.657, 0.001, () => weighing(quilts, 124).ouncesPerSquareYard],
      ['yards', 'yd/lb', 3.5, 0.001, () => weighing(quilts, 124).yardsPerPound],
      ['yards-60', 'yd/lb', 2.625, 0.001, () => weighing(quilts, 124, 60).yardsPerPound],
    ] as const
  ).map(([name, unit, value, tolerance, ours]) =>
    row({
      id: `cloth/38.${name}`,
      kind: 'plainSum',
      what: `cloth made to weigh 124.0 g/m2, ${name === 'yards-60' ? '60' : '45'} in wide`,
      source: `${maker}, 3.5 yd to the pound; GNU units 2.22`,
      unit,
      expected: near(value, tolerance),
      ours,
    }),
  ),
  ...weights.map(([id, what, cloth, grams, tolerance, source]) =>
    row({
      id,
      kind: 'notTuned',
      what: `${what}: weight`,
      source,
      unit: 'g/m2',
      expected: near(grams, tolerance),
      ours: () => plain(cloth).gramsPerSquareMetre,
    }),
  ),
  ...printCloths.map(([id, what, cloth, widthInches, yards]) =>
    row({
      id,
      kind: 'notTuned',
      what: `print cloth, ${what}, without size: yards to the pound`,
      source: 'constructions and weights of print cloth, trade (from memory)',
      unit: 'yd/lb',
      expected: near(yards, 0.1 * yards),
      ours: () => plain({ ...cloth, widthInches }).yardsPerPound,
    }),
  ),
  row({
    id: 'cloth/39.printed',
    kind: 'notTuned',
    what: '68 x 68 of 30s woven, bleached and printed as the season does it: weight',
    source: maker,
    unit: 'g/m2',
    expected: near(124, 12.4),
    ours: () => quilting('printed').cloth!.gramsPerSquareMetre,
  }),
  row({
    id: 'cloth/denim-ounces',
    kind: 'notTuned',
    what: 'denim of 68 x 38, 7s, 3/1: weight',
    source: 'ireading.today, denim-jean.com',
    unit: 'oz/yd2',
    expected: between(7, 13),
    ours: () => denim().ouncesPerSquareYard,
  }),
  row({
    id: 'cloth/denim-grams',
    kind: 'notTuned',
    what: 'denim of 68 x 38, 7s, 3/1: weight',
    source: chart,
    unit: 'g/m2',
    expected: between(200, 400),
    ours: () => denim().gramsPerSquareMetre,
  }),
  ...ranges.map(([name, cloth, low, high]) =>
    row({
      id: `cloth/${name}`,
      kind: 'notTuned',
      what: `${name}, ${cloth.endsPerInch} x ${cloth.picksPerInch} of 40s: weight`,
      source: chart,
      unit: 'g/m2',
      expected: between(low, high),
      ours: () => plain(cloth).gramsPerSquareMetre,
    }),
  ),
  {
    id: 'cloth/voile',
    link: 'cloth',
    kind: 'knownMiss',
    what: 'voile, 60 x 56 of 60s: weight',
    source: chart,
    unit: 'g/m2',
    expected: between(80, 120),
    recorded: { value: 47, tolerance: 1 },
    reason: 'the construction is from memory and that of a sheer voile; sellers call heavier cloth by the name',
    ours: () => plain({ ...yarns(60, 60), ...sett(60, 56), ...crimps(4, 5) }).gramsPerSquareMetre,
  },
  row({
    id: 'mill/23',
    kind: 'exact',
    what: '1200 kg of 30 tex and 1200 kg of 20 tex: mean',
    source: `${gate} 2013 Q40`,
    unit: 'tex',
    expected: near(24, 1e-12),
    ours: () =>
      meanLinearDensity([
        { density: 30, mass: 1200 },
        { density: 20, mass: 1200 },
      ]),
  }),
  ...(
    [
      [34, 120],
      [32, 130],
      [30, 140],
      [28, 150],
    ] as const
  ).map(([ne, grams]) =>
    row({
      id: `cloth/jersey-${ne}`,
      kind: 'notTuned',
      what: `finished jersey of ${ne}s: weight`,
      source: 'trade rule, stampinglane',
      unit: 'g/m2',
      expected: near(grams, 0.1 * grams),
      ours: () => jersey(ne).cloth!.gramsPerSquareMetre,
    }),
  ),
  row({
    id: 'cloth/jersey-range',
    kind: 'notTuned',
    what: 'finished jersey of 28s: weight',
    source: chart,
    unit: 'g/m2',
    expected: between(140, 200),
    ours: () => jersey(28).cloth!.gramsPerSquareMetre,
  }),
];
