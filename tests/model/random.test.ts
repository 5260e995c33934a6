import { mean, sampleCorrelation, sampleKurtosis, sampleSkewness, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { openStream, type Random, streamNames } from '../../src/model/random.ts';

const draw = (count: number, next: () => number): number[] => Array.from({ length: count }, next);
const uniforms = (random: Random, count: number) => draw(count, () => random.uniform());

describe('the sequence of a seed and a stream is fixed for good: an old link must give the old season', () => {
  test('recorded uniform numbers', () => {
    expect(uniforms(openStream(1, 'gin'), 3)).toEqual([0.7539966138332165, 0.024349833762664974, 0.8545353870506133]);
    expect(uniforms(openStream(1, 'classing', 7), 3)).toEqual([
      0.8503283298163422, 0.9771201867470515, 0.26718185173069353,
    ]);
    const integers = openStream(20250711, 'plant');
    expect(draw(8, () => integers.integer(1, 6))).toEqual([6, 2, 2, 4, 1, 4, 2, 3]);
  });
  test('the streams keep their places', () => {
    expect(streamNames.slice(0, 11)).toEqual([
      'weather',
      'plant',
      'field',
      'harvest',
      'module',
      'gin',
      'press',
      'classing',
      'mill',
      'cloth',
      'scene',
    ]);
  });
});

describe('streams do not touch one another', () => {
  test('drawing from one leaves the next numbers of another as they were', () => {
    const alone = uniforms(openStream(5, 'weather'), 20);
    const weather = openStream(5, 'weather');
    const gin = openStream(5, 'gin');
    const mixed = draw(20, () => {
      gin.normal();
      return weather.uniform();
    });
    expect(mixed).toEqual(alone);
  });
  test('any two streams of a seed, and any two substreams of a stream, are uncorrelated and share no number', () => {
    const sequences = [
      ...streamNames.map((name) => uniforms(openStream(11, name), 2000)),
      ...[1, 2, 3, 500].map((bale) => uniforms(openStream(11, 'classing', bale), 2000)),
      uniforms(openStream(12, 'weather'), 2000),
    ];
    for (const [i, a] of sequences.entries()) {
      for (const b of sequences.slice(i + 1)) {
        // Five standard errors of a correlation of 2000 independent pairs.
        expect(Math.abs(sampleCorrelation(a, b))).toBeLessThan(5 / Math.sqrt(2000));
        expect(a.some((value, k) => value === b[k])).toBe(false);
      }
    }
  });
});

describe('the first numbers of seeds 1 to 200, side by side, are as spread as any', () => {
  const firstMean = (name: (typeof streamNames)[number]) =>
    mean(Array.from({ length: 200 }, (_, seed) => openStream(seed + 1, name).uniform()));
  // Five standard errors of the mean of 200 uniform numbers.
  const spread = 5 / Math.sqrt(12 * 200);
  test.each(streamNames)('%s', (name) => {
    expect(Math.abs(firstMean(name) - 0.5)).toBeLessThan(spread);
  });
});

describe('shapes, against the package simple-statistics', () => {
  const count = 20_000;
  test('uniform: mean 1/2, standard deviation 1/sqrt(12), inside 0 and 1', () => {
    const sample = uniforms(openStream(3, 'field'), count);
    expect(Math.abs(mean(sample) - 0.5)).toBeLessThan(5 / Math.sqrt(12 * count));
    expect(standardDeviation(sample)).toBeCloseTo(1 / Math.sqrt(12), 2);
    expect(Math.min(...sample)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...sample)).toBeLessThan(1);
  });
  test('normal: mean 0, standard deviation 1, no skewness, no excess of the fourth moment, 4.55 % beyond two', () => {
    const random = openStream(3, 'classing');
    const sample = draw(count, () => random.normal());
    expect(Math.abs(mean(sample))).toBeLessThan(5 / Math.sqrt(count));
    expect(Math.abs(standardDeviation(sample) - 1)).toBeLessThan(5 / Math.sqrt(2 * count));
    expect(Math.abs(sampleSkewness(sample))).toBeLessThan(5 * Math.sqrt(6 / count));
    expect(Math.abs(sampleKurtosis(sample))).toBeLessThan(5 * Math.sqrt(24 / count));
    const beyond = sample.filter((value) => Math.abs(value) > 2).length / count;
    expect(Math.abs(beyond - 0.0455)).toBeLessThan(5 * Math.sqrt((0.0455 * 0.9545) / count));
  });
  test('integers: both ends come, and every value about as often', () => {
    const random = openStream(3, 'press');
    const sample = draw(6000, () => random.integer(3, 8));
    for (let value = 3; value <= 8; value++) {
      const seen = sample.filter((drawn) => drawn === value).length;
      expect(Math.abs(seen - 1000)).toBeLessThan(5 * Math.sqrt(1000));
    }
    expect(sample.every((drawn) => drawn >= 3 && drawn <= 8)).toBe(true);
  });
});
