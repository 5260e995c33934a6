import { mean, sampleCorrelation, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { readBales } from '../../../src/model/classing/bale-readings.ts';
import { oneTestSd, spread } from '../../../src/model/classing/facts.ts';
import type { InstrumentReading } from '../../../src/model/classing/reading.ts';
import { lintRd } from '../../../src/model/classing/trash-area.ts';

const truth: InstrumentReading = {
  lengthIn: 1.11,
  uniformityPercent: 81.5,
  strengthGPerTex: 29,
  micronaire: 4.4,
  reflectanceRd: 76,
  yellownessB: 8.5,
  trashAreaPercent: 0.4,
};
const numbers = Array.from({ length: 4000 }, (_, i) => i + 1);
const plan = { seed: 11, kind: 'upland', balesPerModule: 4, moduleAveraging: false } as const;
const readings = readBales(truth, numbers, plan);

describe('four thousand bales of one lot', () => {
  test.each([
    ['lengthIn', 0.002],
    ['uniformityPercent', 0.1],
    ['strengthGPerTex', 0.1],
    ['micronaire', 0.02],
    ['reflectanceRd', 0.15],
    ['yellownessB', 0.05],
    ['trashAreaPercent', 0.01],
  ] as const)('%s is read without bias', (channel, within) => {
    expect(Math.abs(mean(readings.map(({ own }) => own[channel])) - truth[channel])).toBeLessThan(within);
  });
  test('own test and truth differ by the noise of one test', () => {
    const noise = readings.map(({ own, truth: true_ }) => own.strengthGPerTex - true_.strengthGPerTex);
    expect(standardDeviation(noise) / oneTestSd.strengthGPerTex.value).toBeCloseTo(1, 1);
  });
  test('inner bales of a module differ by the spread between bales', () => {
    const pairs = numbers.filter((number) => number % 4 === 2);
    const differences = pairs.map(
      (number) => readings[number - 1]!.truth.micronaire - readings[number]!.truth.micronaire,
    );
    expect(standardDeviation(differences) / Math.SQRT2 / spread.baleMicronaire.value).toBeCloseTo(1, 1);
  });
  test('the ends of a module lean on the neighbour, inner bales do not', () => {
    const strengthAt = (number: number) => readings[number - 1]!.truth.strengthGPerTex;
    const modules = Array.from({ length: 998 }, (_, i) => (i + 1) * 4);
    const inner = sampleCorrelation(
      modules.map((last) => strengthAt(last - 1)),
      modules.map((last) => strengthAt(last + 2)),
    );
    const ends = sampleCorrelation(
      modules.map((last) => strengthAt(last)),
      modules.map((last) => strengthAt(last + 1)),
    );
    expect(Math.abs(inner)).toBeLessThan(0.1);
    expect(ends).toBeGreaterThan(0.6);
  });
});

describe('trash on the lint of the same four thousand bales', () => {
  test('leafier bales read darker — sign: each lint cleaner that takes leaf out brightens the reading (Mangialardi 1989)', () => {
    const recorded = (channel: 'trashAreaPercent' | 'reflectanceRd') => readings.map((bale) => bale.recorded[channel]);
    expect(sampleCorrelation(recorded('trashAreaPercent'), recorded('reflectanceRd'))).toBeLessThan(-0.1);
  });
  test('under its trash the lint of a leafy bale is no brighter than any other: the eye judges it alike', () => {
    const lint = readings.map(({ truth: t }) => lintRd(t.reflectanceRd, t.trashAreaPercent));
    expect(
      Math.abs(
        sampleCorrelation(
          readings.map(({ truth: t }) => t.trashAreaPercent),
          lint,
        ),
      ),
    ).toBeLessThan(0.05);
  });
});

test('a fraction of a bale per module counts as one', () => {
  expect(readBales(truth, [1, 2, 3], { ...plan, balesPerModule: 0.3 }).map(({ module }) => module)).toEqual([1, 2, 3]);
});
