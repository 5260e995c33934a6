import type { Fact, FactTable } from '../fact.ts';
import { type Band, lent, lentRows, type Market } from './market.ts';
import { sanJoaquin } from './market-san-joaquin-facts.ts';
import { southeast } from './market-southeast-facts.ts';

const source =
  'Year-to-date average cotton price estimates, West Texas, 16 Nov 2006 to 10 June 2007, Texas Tech University (fit to 297,396 bales sold)';
const base: Fact = { value: 45.43, unit: 'cents/lb', source, mark: 'published' };

/**
 * A market whose date, place and base price are not printed. It stands in where the fit gives nothing, and its points cannot
 * be put in proportion.
 */
const older = 'AMS spot differences of one market in the older half-unit format; date and market not printed';
const unscaled = { unit: 'points', source: older, mark: 'published' } as const;
const olderStrength: FactTable<Band> = {
  ...unscaled,
  rows: [
    // Under 25.5: held at the last band read.
    { from: 0, points: -50, filled: 'step' },
    { from: 25.5, points: -50 },
    { from: 26.5, points: 0 },
    { from: 29.5, points: 25 },
    { from: 30.5, points: 50 },
  ],
};
const olderUniformity: FactTable<Band> = {
  ...unscaled,
  rows: [
    { from: 0, points: -125 },
    { from: 77.5, points: -110 },
    { from: 78.5, points: -100 },
    { from: 79.5, points: -25 },
    { from: 80.5, points: 0 },
    { from: 82.5, points: 20 },
    { from: 83.5, points: 30 },
    { from: 84.5, points: 40 },
    { from: 85.5, points: 50 },
  ],
};
const plastic = sanJoaquin.extraneous.rows.filter(({ kind }) => kind === 'plastic');

/**
 * West Texas, season 2006-07: a complete surface of colour and staple. It has no leaf axis, so leaf does not move the price
 * here; sales of spring 2007 put leaf 2 over leaf 4 by 35 points on one day and 266 on another.
 */
export const westTexas: Market = {
  id: 'westTexas',
  quoted: '16 November 2006 to 10 June 2007',
  year: 2007,
  baseCentsPerLb: base,
  staples: [28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38],
  leafAxis: false,
  grades: {
    unit: 'points',
    source,
    mark: 'published',
    rows: [
      { colours: ['11'], leaf: [1, 7], points: [-675, -506, -346, -195, -56, 71, 184, 281, 363, 427, 474] },
      { colours: ['21'], leaf: [1, 7], points: [-730, -564, -406, -257, -120, 5, 117, 213, 293, 357, 403] },
      { colours: ['31'], leaf: [1, 7], points: [-772, -607, -451, -304, -168, -44, 66, 161, 240, 303, 349] },
      { colours: ['41'], leaf: [1, 7], points: [-845, -684, -530, -386, -253, -132, 0, 70, 147, 209, 254] },
      { colours: ['51'], leaf: [1, 7], points: [-972, -817, -669, -529, -401, -284, -180, -89, -14, 45, 89] },
      { colours: ['61'], leaf: [1, 7], points: [-1231, -1087, -949, -821, -701, -593, -496, -412, -342, -287, -247] },
      {
        colours: ['71'],
        leaf: [1, 7],
        points: [-1543, -1413, -1288, -1171, -1063, -965, -877, -802, -738, -688, -652],
      },
      { colours: ['12'], leaf: [1, 7], points: [-822, -660, -506, -361, -227, -105, 4, 98, 176, 238, 283] },
      { colours: ['22'], leaf: [1, 7], points: [-824, -662, -508, -363, -229, -107, 1, 95, 174, 236, 281] },
      { colours: ['32'], leaf: [1, 7], points: [-864, -703, -551, -407, -275, -154, -47, 46, 124, 185, 230] },
      { colours: ['42'], leaf: [1, 7], points: [-911, -753, -602, -460, -330, -210, -105, -13, 64, 124, 168] },
      { colours: ['52'], leaf: [1, 7], points: [-1069, -917, -773, -638, -512, -399, -297, -209, -136, -78, -36] },
      { colours: ['62'], leaf: [1, 7], points: [-1292, -1151, -1016, -889, -772, -665, -571, -488, -420, -366, -326] },
      { colours: ['23'], leaf: [1, 7], points: [-1010, -856, -709, -572, -444, -329, -226, -136, -62, -3, 40] },
      { colours: ['33'], leaf: [1, 7], points: [-1010, -856, -709, -572, -444, -329, -226, -136, -62, -3, 40] },
      { colours: ['43'], leaf: [1, 7], points: [-1077, -926, -783, -648, -523, -409, -308, -221, -147, -90, -48] },
      { colours: ['53'], leaf: [1, 7], points: [-1130, -981, -840, -707, -584, -472, -372, -286, -214, -157, -116] },
      {
        colours: ['63'],
        leaf: [1, 7],
        points: [-1501, -1369, -1243, -1124, -1015, -915, -826, -749, -685, -635, -598],
      },
      { colours: ['34'], leaf: [1, 7], points: [-1268, -1125, -989, -862, -744, -636, -541, -458, -389, -334, -295] },
      {
        colours: ['44'],
        leaf: [1, 7],
        points: [-1520, -1388, -1263, -1145, -1036, -937, -849, -772, -709, -658, -622],
      },
      {
        colours: ['54'],
        leaf: [1, 7],
        points: [-1596, -1467, -1345, -1230, -1124, null, null, null, null, null, null],
      },
    ],
  },
  micronaire: {
    unit: 'points',
    source:
      'Texas Tech daily price estimates, West Texas, 31 May 2007; from 3.5 the Southeast of 26 May 2023 stands in, in the proportion of the base prices',
    mark: 'published',
    rows: [
      { from: 0, points: -853 },
      { from: 2.5, points: -732 },
      { from: 2.7, points: -546 },
      { from: 3, points: -351 },
      // The band below, in the proportion of the Southeast (400 to 525).
      { from: 3.3, points: -267, filled: 'step' },
      ...lentRows(
        base,
        southeast.baseCentsPerLb,
        southeast.micronaire.rows.filter(({ from }) => from >= 3.5),
      ),
    ],
  },
  strength: lent(base, base, olderStrength),
  uniformity: lent(base, base, olderUniformity),
  extraneous: {
    unit: 'points',
    source: `${older}; plastic from the San Joaquin Valley, in the proportion of the base prices`,
    mark: 'assumption',
    rows: [
      ...lentRows(base, base, [
        { kind: 'prep', level: 1, points: -100 },
        { kind: 'prep', level: 2, points: -800 },
        { kind: 'other', level: 1, points: -375 },
        { kind: 'other', level: 2, points: -800 },
      ]),
      ...lentRows(base, sanJoaquin.baseCentsPerLb, plastic),
    ],
  },
};
