import { usualCrimpPercent, weftCrimpFromWarp } from '../model/cloth/crimp.ts';
import type { ClothDescription } from '../model/cloth/describe-cloth.ts';
import { describeJersey } from '../model/cloth/describe-jersey.ts';
import { ashenhurstSideBySide, threadsSideBySide } from '../model/cloth/diameter.ts';
import { maximumSettPerInch } from '../model/cloth/sett.ts';
import type { WeaveId } from '../model/cloth/weaves.ts';
import { asNe, texFromNe } from '../model/units.ts';
import type { Check } from './check.ts';
import { between, is, near } from './expected.ts';
import { crimps, plain, sett, settPerCm, weighing, yarns } from './fixtures/cloths.ts';

type Row = Omit<Exclude<Check, { kind: 'knownMiss' }>, 'link'>;
const row = (check: Row): Check => ({ link: 'cloth', ...check });

const gate = 'Graduate Aptitude Test in Engineering (Indian Institutes of Technology)';
const ashenhurst = 'Ashenhurst at faena.medievaltextiles.org';
const taylor = 'Taylor, Cotton Weaving and Designing';
const schedule = 'Harmonized Tariff Schedule of the US, chapter 52';
const texcoms = 'Texcoms Textile Technical Handbook 2023';
const manian = '"Important fabric parameters and formulae" (Manian), optitex.com';

const ofCount = (ne: number) => texFromNe(asNe(ne));
/** 8/2 cotton: two plies of 8s. */
const eightTwo = ofCount(4);
const shirting = () => plain({ ...yarns(29, 45), ...settPerCm(25, 25), ...crimps(10, 5.5) });
/** Peirce's factor in threads per inch and counts over the one in threads per cm and tex. */
const toMetricCover = (cover: number) => cover / 1.045;
const weaves = ['plain', 'twill', 'twill21', 'twill22', 'sateen'] as const satisfies readonly WeaveId[];
/** Share of side-by-side threads that a weave leaves room for. */
const room = [
  ['plain', 0.5],
  ['twill21', 0.6],
  ['twill22', 0.667],
  ['twill', 0.667],
  ['sateen', 0.714],
] as const;

const printcloth = () => weighing({ ...yarns(30, 40), ...sett(80, 80) }, 116);
const lawn = () => weighing({ ...yarns(60, 60), ...sett(90, 88) }, 72);
const plied = { singleTex: ofCount(10), singles: 2 };
const sheeting = { singleTex: ofCount(80), singles: 2 };
const classes: readonly (readonly [id: string, what: string, cloth: () => ClothDescription, word: string])[] = [
  ['cloth/35.class', '80 x 80, 30s and 40s, 116 g/m2', printcloth, 'printcloth'],
  ['cloth/36.class', '90 x 88, 60s, 72 g/m2', lawn, 'lawnVoileBatiste'],
  ['cloth/cheesecloth', 'gauze of 32 x 28, 40s', () => plain({ ...yarns(40, 40), ...sett(32, 28) }), 'cheesecloth'],
  ['cloth/broadcloth', '144 x 76, 40s', () => plain({ ...yarns(40, 40), ...sett(144, 76) }), 'poplinBroadcloth'],
  [
    'cloth/duck',
    'heavy plain cloth of 10/2, 40 x 30',
    () => plain({ warp: plied, weft: plied, ...sett(40, 30) }),
    'duck',
  ],
  [
    'cloth/denim-class',
    '68 x 38, 7s, 3/1 twill, dyed warp',
    () => plain({ ...yarns(7, 7), ...sett(68, 38), weave: 'twill', ...crimps(10, 3), dyedWarp: true }),
    'denim',
  ],
  [
    'cloth/sateen-class',
    '96 x 64, 40s and 30s, sateen',
    () => plain({ ...yarns(40, 30), ...sett(96, 64), weave: 'sateen' }),
    'sateen',
  ],
  [
    'cloth/oxford-class',
    '88 x 44, 40s two ends as one, 12s',
    () => plain({ ...yarns(40, 12), ...sett(88, 44), tapedWarp: true }),
    'oxford',
  ],
];
/** The note's four ways to the average yarn number, crimp left out: from weight, from area, from length and width. */
const numberWays = (cloth: ClothDescription) => {
  const threads = cloth.singlesPerSquareCm;
  const centimetres = cloth.widthInches * 2.54;
  return [
    (100 * threads) / cloth.gramsPerSquareMetre,
    (threads * cloth.squareMetresPerKilogram) / 10,
    (centimetres * threads) / cloth.gramsPerMetre,
    (centimetres * cloth.metresPerKilogram * threads) / 1000,
  ];
};

/** Setts, cover, crimp, customs names and knits. */
export const clothGeometryChecks: readonly Check[] = [
  row({
    id: 'cloth/32.plain',
    kind: 'exact',
    what: '8/2 cotton in plain cloth: most threads',
    source: ashenhurst,
    unit: 'per inch',
    expected: near(26, 1),
    ours: () => maximumSettPerInch(eightTwo, eightTwo, 'plain'),
  }),
  row({
    id: 'cloth/32.twill',
    kind: 'exact',
    what: '8/2 cotton in 2/2 twill: most threads',
    source: ashenhurst,
    unit: 'per inch',
    expected: between(33.5, 35.5),
    ours: () => maximumSettPerInch(eightTwo, eightTwo, 'twill22'),
  }),
  row({
    id: 'cloth/32.side-by-side',
    kind: 'exact',
    what: '8/2 cotton: threads side by side',
    source: ashenhurst,
    unit: 'per inch',
    expected: near(52, 1),
    ours: () => ashenhurstSideBySide(eightTwo),
  }),
  row({
    id: 'cloth/33.ashenhurst',
    kind: 'notTuned',
    what: '32s: threads side by side by the handweaver’s rule',
    source: `${taylor} p. 436; Peirce: 147 to 158`,
    unit: 'per inch',
    expected: between(147, 158.5),
    ours: () => ashenhurstSideBySide(ofCount(32)),
  }),
  row({
    id: 'cloth/33.peirce',
    kind: 'notTuned',
    what: '32s: threads side by side by Peirce’s diameter',
    source: `${taylor} p. 436; Ashenhurst: 147 to 158`,
    unit: 'per inch',
    expected: between(147, 158.5),
    ours: () => threadsSideBySide(ofCount(32)),
  }),
  row({
    id: 'cloth/taylor-twill',
    kind: 'notTuned',
    what: '32s in 2/2 twill: most threads, within 5 %',
    source: `${taylor} p. 436`,
    unit: 'per inch',
    expected: near(102, 5.1),
    ours: () => maximumSettPerInch(ofCount(32), ofCount(32), 'twill22'),
  }),
  ...room.map(([weave, share]) =>
    row({
      id: `cloth/room-${weave}`,
      kind: 'definition',
      what: `most threads in ${weave} over threads side by side: repeat over repeat and intersections`,
      source: `${ashenhurst}, by hand`,
      unit: 'ratio',
      expected: near(share, 0.001),
      ours: () => maximumSettPerInch(eightTwo, eightTwo, weave) / ashenhurstSideBySide(eightTwo),
    }),
  ),
  ...(
    [
      ['warp', 11.3, () => shirting().warpCover],
      ['weft', 9.1, () => shirting().weftCover],
    ] as const
  ).map(([way, cover, ours]) =>
    row({
      id: `cloth/shirting-cover-${way}`,
      kind: 'exact',
      what: `shirting of 29s x 45s, 25 x 25 per cm: ${way} cover in threads per cm and tex`,
      source: `${gate} 2010`,
      unit: 'cover factor',
      expected: near(cover, 0.1),
      ours: () => toMetricCover(ours()),
    }),
  ),
  row({
    id: 'cloth/shirting-diameter',
    kind: 'notTuned',
    what: 'warp of 29s: diameter, within 5 %; the examination takes another density',
    source: `${gate} 2010`,
    unit: 'mm',
    expected: near(0.1627, 0.0081),
    ours: () => shirting().warpDiameterMm,
  }),
  row({
    id: 'cloth/normal-cover',
    kind: 'notTuned',
    what: 'quilting base of 30s, 68 ends an inch: cover of the warp',
    source: `${manian}: normal cloth about 12 a direction`,
    unit: 'cover factor',
    expected: near(12, 1),
    ours: () => plain({ ...yarns(30, 30), ...sett(68, 68) }).warpCover,
  }),
  row({
    id: 'cloth/29',
    kind: 'exact',
    what: '25 x 28 per cm, 30 and 15 tex, warp crimp 12 %: weft crimp',
    source: `${gate} 2008 Q72`,
    unit: '%',
    expected: near(10.26, 0.3),
    ours: () => {
      // The examination takes diameters of 0.00444 sqrt(tex / 1.52) cm.
      const diameterCm = (tex: number) => 0.00444 * Math.sqrt(tex / 1.52);
      return weftCrimpFromWarp(1 / 25, 1 / 28, diameterCm(30) + diameterCm(15), 12);
    },
  }),
  ...weaves.flatMap((weave) =>
    (['warp', 'weft'] as const).map((way) =>
      row({
        id: `cloth/crimp-${weave}-${way}`,
        kind: 'calibrated',
        what: `usual crimp of the ${way} in ${weave}`,
        source: 'mytextilenotes: 1 to 14 %',
        unit: '%',
        expected: between(1, 14),
        ours: () => usualCrimpPercent(weave)[way],
      }),
    ),
  ),
  row({
    id: 'cloth/take-up',
    kind: 'notTuned',
    what: 'usual warp crimp of plain cloth against 3 x 68 picks an inch / 30s weft of medium cloth',
    source: `${taylor} pp. 428-429, take-up`,
    unit: '%',
    expected: near(6.8, 1),
    ours: () => usualCrimpPercent('plain').warp,
  }),
  row({
    id: 'cloth/reed-width',
    kind: 'notTuned',
    what: 'usual weft crimp of plain cloth against 38 in of reed for 36 in of cloth',
    source: 'Brooks, Cotton Manufacturing, weight of a piece',
    unit: '%',
    expected: near(5.6, 2),
    ours: () => usualCrimpPercent('plain').weft,
  }),
  row({
    id: 'cloth/34',
    kind: 'definition',
    what: 'average yarn number of 80 x 80 by weight, by area, by length: largest over smallest of the four ways',
    source: `${schedule}, Additional US Note 3`,
    unit: 'ratio',
    expected: near(1, 1e-9),
    ours: () => {
      const ways = numberWays(printcloth());
      return Math.max(...ways) / Math.min(...ways);
    },
  }),
  row({
    id: 'cloth/35.threads',
    kind: 'plainSum',
    what: '80 x 80: threads',
    source: `${schedule}, by hand`,
    unit: 'per cm2',
    expected: near(63, 0.05),
    ours: () => printcloth().singlesPerSquareCm,
  }),
  row({
    id: 'cloth/35.number',
    kind: 'plainSum',
    what: '80 x 80, 30s and 40s, 116 g/m2: average yarn number',
    source: `${schedule}, by hand`,
    unit: 'average yarn number',
    expected: near(54, 0),
    ours: () => printcloth().averageYarnNumber,
  }),
  row({
    id: 'cloth/36.number',
    kind: 'plainSum',
    what: '90 x 88, 60s, 72 g/m2: average yarn number',
    source: `${schedule}, by hand`,
    unit: 'average yarn number',
    expected: near(97, 0),
    ours: () => lawn().averageYarnNumber,
  }),
  ...classes.map(([id, what, cloth, word]) =>
    row({
      id,
      kind: 'definition',
      what: `${what}: name at customs`,
      source: `${schedule}, Statistical Note 1`,
      unit: '',
      expected: is(word),
      ours: () => cloth().tariffClass,
    }),
  ),
  row({
    id: 'cloth/thread-count',
    kind: 'definition',
    what: '160 x 140 of two-ply yarn: thread count, each yarn once',
    source: 'FTC staff letter 2005; ASTM D3775',
    unit: 'per sq in',
    expected: near(300, 0),
    ours: () => plain({ warp: sheeting, weft: sheeting, ...sett(160, 140) }).threadCount,
  }),
  row({
    id: 'cloth/42',
    kind: 'exact',
    what: 'jersey with a loop of 0.5 cm, fully relaxed',
    source: `${gate} 2015 Q54, key 92`,
    unit: 'loops/cm2',
    expected: near(92.4, 0.5),
    ours: () => describeJersey(20, 5, 'full').loopsPerSquareCm,
  }),
  row({
    id: 'cloth/44',
    kind: 'exact',
    what: 'jersey of 30s, loop 2.74 mm: weight over courses x wales x loop, by 1/Ne',
    source: texcoms,
    unit: 'g/m2 x Ne / mm in2',
    expected: near(0.9155, 0.0009),
    ours: () => {
      const { gramsPerSquareMetre, coursesPerInch, walesPerInch } = describeJersey(ofCount(30), 2.74, 'wet');
      return (gramsPerSquareMetre * 30) / (coursesPerInch * walesPerInch * 2.74);
    },
  }),
  row({
    id: 'cloth/tightness',
    kind: 'exact',
    what: 'jersey of 30s, loop 2.74 mm: tightness',
    source: texcoms,
    unit: 'sqrt(tex)/cm',
    expected: near(16.2, 0.05),
    ours: () => describeJersey(ofCount(30), 2.74, 'wet').tightness,
  }),
];
