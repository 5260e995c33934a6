import { expect, test } from 'vitest';
import { kindIds, makeQuestion } from '../../../src/teach/sheets/make-question.ts';
import { exactly, printedNumber } from './printed-numbers.ts';
import { printedQuestion } from './printed-sheet.tsx';
import { sumsOf } from './sums.ts';

/** Sums of the worksheets with the numbers of a worked example in print. */
const examples = [
  {
    source: 'cottonseed value sheet 2011: 2,631 lb of seed cotton at 38 % give 1,000 lb of lint',
    sum: sumsOf('turnout', 1, 'us').turnout!,
    numbers: { lint: '1000', load: '2631' },
    printed: 38,
    within: 0.05,
  },
  {
    source: 'the same: 2,631 lb are behind 1,000 lb of lint',
    sum: sumsOf('trace', 1, 'us').seedCotton!,
    numbers: { lint: '1000', turnout: '38' },
    printed: 2631,
    within: 0.6,
  },
  {
    source: 'the same: 300 lb of trash are left beside 1,331 lb of seed',
    sum: sumsOf('ginBalance', 1, 'us').rest!,
    numbers: { load: '2631', lint: '1000', seed: '1331' },
    printed: 300,
    within: 0,
  },
  {
    source: 'the same: the seed at $350 a ton is $232.93',
    sum: sumsOf('bales', 3, 'us').credit!,
    numbers: { seed: '1331', seedPrice: '350', lint: '1000', bale: '480', ginPrice: '0' },
    printed: 232.93,
    within: 0.006,
  },
  {
    source: 'Texas A&M AgriLife, Upper Coast IPM, 6 April 2018: days of 8.5, 15.5, 15, 4, 4 and 8.5 bring 55.5',
    sum: sumsOf('heat', 2, 'us').total!,
    numbers: Object.fromEntries(
      ['68.5', '75.5', '75', '64', '64', '68.5', '52'].flatMap((middle, i) => [
        [`high${i + 1}`, middle],
        [`low${i + 1}`, middle],
        ['base', '60'],
      ]),
    ),
    printed: 55.5,
    within: 0,
  },
  {
    source: 'Coats, Bulletin 05: tex is 590.54 over Ne, so that Ne 60 is 9.84 tex',
    sum: sumsOf('yarn', 2, 'us').tex!,
    numbers: { texTimesNe: '590.54', count: '60' },
    printed: 9.84,
    within: 0.005,
  },
  {
    source: 'ASTM D123: Ne is the number of 840 yd hanks in a pound, so that 16,800 yd are Ne 20',
    sum: sumsOf('yarn', 1, 'us').count!,
    numbers: { length: '16800' },
    printed: 20,
    within: 0,
  },
  {
    source: 'GATE 2007, textile engineering, questions 84 and 85: 36 Ne, 28 threads to the cm, 10 % crimp, 101 g/m²',
    sum: sumsOf('clothWeight', 3, 'metric').weight!,
    numbers: { ends: '28', picks: '28', warpCrimp: '10', weftCrimp: '10', count: '16.404' },
    printed: 101,
    within: 0.5,
  },
  {
    source: 'NIST Special Publication 811, appendix B: an ounce a square yard is 33.905 75 g/m²',
    sum: sumsOf('conversions', 2, 'us').otherWeight!,
    numbers: { weight: '1', gsmPerOunce: '33.906', length: '1', metresPerYard: '0.9144' },
    printed: 33.90575,
    within: 0.0005,
  },
  {
    source: 'quilters’ arithmetic (common practice): two strips of 74 in make a backing, bought as 4 1/4 yd',
    sum: `ceil(4 * (${sumsOf('layout', 3, 'us').buy!})) / 4`,
    numbers: { width: '66', length: '70', over: '8', usable: '42' },
    printed: 4.25,
    within: 0,
  },
];

test.each(examples)('$source', ({ sum, numbers, printed, within }) => {
  expect(Math.abs(exactly(sum, numbers).valueOf() - printed)).toBeLessThanOrEqual(within);
});

/** Rows of the chart for American upland in The Classification of Cotton, Agricultural Handbook 566 (USDA AMS). */
const amsChart = { '0.99': '32', '1.02': '33', '1.05': '34', '1.08': '35', '1.11': '36', '1.14': '37', '1.18': '38' };

test('the printed staple chart is that of the classing office (USDA AMS, Agricultural Handbook 566)', () => {
  const { rows } = printedQuestion(makeQuestion('staple', 2, 1, 'us'), 'en');
  const printed = Object.fromEntries(rows.map(([from, code]) => [printedNumber(from!), code]));
  expect(printed).toMatchObject(amsChart);
});

test('every kind but the chart has a sum for each thing it asks', () => {
  for (const kind of kindIds)
    for (const level of [1, 2, 3] as const)
      for (const units of ['us', 'metric'] as const)
        if (kind !== 'staple')
          expect(Object.keys(sumsOf(kind, level, units)).sort()).toEqual(
            makeQuestion(kind, level, 1, units)
              .asks.map(({ name }) => name)
              .sort(),
          );
});
