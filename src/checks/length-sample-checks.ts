import type { LengthDistribution } from '../model/length/length-distribution.ts';
import { type By, lengthExceededMm, lengthVariationPercent, meanLengthMm } from '../model/length/statistics.ts';
import type { Check } from './check.ts';
import { near } from './expected.ts';
import { cottonAt } from './fixtures/cottons.ts';
import type { LengthSample } from './fixtures/length-samples.ts';

const cottons = {
  medium: {
    what: 'medium upland behind a saw stand and two lint cleaners, 4000 fibers laid side by side',
    lengths: () => cottonAt('medium', 'saw+2').lengths,
  },
  pima: {
    what: 'Pima behind a roller stand and two roller-type lint cleaners, 4000 fibers laid side by side',
    lengths: () => cottonAt('pima', 'roller+2').lengths,
  },
  drawn: {
    what: '4000 fibers of the medium upland drawn by chance',
    lengths: () => cottonAt('medium', 'saw+2').lengths,
  },
} as const satisfies Record<LengthSample, unknown>;

const deviation = (lengths: LengthDistribution, by: By) =>
  (lengthVariationPercent(lengths, by) / 100) * meanLengthMm(lengths, by);

const row = (
  sample: LengthSample,
  figure: string,
  call: string,
  [value, tolerance]: readonly [number, number],
  of: (lengths: LengthDistribution) => number,
): Check => ({
  id: `length/sample-${call.replace(/\W+/g, '-').replace(/-$/, '')}`,
  link: 'length',
  kind: 'exact',
  what: `${cottons[sample].what}: ${figure}, against the whole distribution`,
  source: 'simple-statistics 7.12.1',
  unit: 'mm',
  expected: near(value, tolerance),
  tool: { name: 'simple-statistics', call },
  ours: () => of(cottons[sample].lengths()),
});

/** A sample laid in order stands for the distribution closely; the weights of the tool are the lengths. */
const laid = (sample: 'medium' | 'pima', figures: readonly number[]): Check[] => {
  const [mean, sd, lower, median, upper, heavyMean, heavySd, heavyUpper] = figures as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return [
    row(sample, 'mean by number', `mean(${sample})`, [mean, 0.01], (l) => meanLengthMm(l, 'number')),
    row(sample, 'standard deviation by number', `standardDeviation(${sample})`, [sd, 0.01], (l) =>
      deviation(l, 'number'),
    ),
    row(sample, 'lower quartile by number', `quantile(${sample}, 0.25)`, [lower, 0.02], (l) =>
      lengthExceededMm(l, 0.75, 'number'),
    ),
    row(sample, 'median by number', `quantile(${sample}, 0.5)`, [median, 0.02], (l) =>
      lengthExceededMm(l, 0.5, 'number'),
    ),
    row(sample, 'upper quartile by number', `quantile(${sample}, 0.75)`, [upper, 0.02], (l) =>
      lengthExceededMm(l, 0.25, 'number'),
    ),
    row(sample, 'mean by weight', `weightedMean(${sample})`, [heavyMean, 0.01], (l) => meanLengthMm(l, 'weight')),
    row(sample, 'standard deviation by weight', `weightedStandardDeviation(${sample})`, [heavySd, 0.01], (l) =>
      deviation(l, 'weight'),
    ),
    row(sample, 'upper quartile by weight', `weightedQuantile(${sample}, 0.75)`, [heavyUpper, 0.02], (l) =>
      lengthExceededMm(l, 0.25, 'weight'),
    ),
  ];
};

/** Statistics of the distribution beside those a general tool finds in samples of it. */
export const lengthSampleChecks: readonly Check[] = [
  ...laid('medium', [20.541, 10.212, 12.01, 22.315, 28.782, 25.618, 8.0495, 31.333]),
  ...laid('pima', [30.771, 12.738, 22.285, 35.145, 40.163, 36.0445, 8.9114, 41.824]),
  // By chance: four standard errors either side.
  row('drawn', 'mean by number', 'mean(drawn)', [20.352, 0.7], (l) => meanLengthMm(l, 'number')),
  row('drawn', 'standard deviation by number', 'standardDeviation(drawn)', [10.209, 0.5], (l) =>
    deviation(l, 'number'),
  ),
];
