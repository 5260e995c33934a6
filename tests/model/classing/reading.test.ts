import { mean, sampleCorrelation, standardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import {
  averageModule,
  depart,
  drawDeparture,
  type InstrumentReading,
  mixReadings,
  roundReading,
} from '../../../src/model/classing/reading.ts';
import { openStream } from '../../../src/model/random.ts';

const truth: InstrumentReading = {
  lengthIn: 1.114,
  uniformityPercent: 81.46,
  strengthGPerTex: 29.04,
  micronaire: 4.36,
  reflectanceRd: 76,
  yellownessB: 8.5,
  trashAreaPercent: 0.414,
};

test('departures have unit spread and the correlations asked for', () => {
  const random = openStream(3, 'classing');
  const draws = Array.from({ length: 20000 }, () => drawDeparture(random));
  const of = (key: keyof (typeof draws)[0]) => draws.map((draw) => draw[key]);
  for (const key of ['lengthIn', 'yellownessB', 'micronaire', 'trash'] as const) {
    expect(standardDeviation(of(key))).toBeCloseTo(1, 1);
  }
  expect(sampleCorrelation(of('lengthIn'), of('strengthGPerTex'))).toBeCloseTo(0.4, 1);
  expect(sampleCorrelation(of('reflectanceRd'), of('yellownessB'))).toBeCloseTo(-0.4, 1);
  expect(sampleCorrelation(of('micronaire'), of('yellownessB'))).toBeCloseTo(0.1, 1);
});

test('trash between modules keeps its mean and a coefficient of variation of a quarter, and never falls below nothing', () => {
  const random = openStream(8, 'classing');
  const areas = Array.from(
    { length: 20000 },
    () => depart(truth, drawDeparture(random), 'module', 'upland').trashAreaPercent,
  );
  expect(mean(areas) / truth.trashAreaPercent).toBeCloseTo(1, 2);
  expect(standardDeviation(areas) / mean(areas)).toBeCloseTo(0.25, 2);
  expect(Math.min(...areas)).toBeGreaterThanOrEqual(0);
});
test('uniformity of Pima spreads less than that of upland', () => {
  const by = { ...drawDeparture(openStream(1, 'classing')), uniformityPercent: 1 };
  const rise = (kind: 'upland' | 'pima') =>
    depart(truth, by, 'module', kind).uniformityPercent - truth.uniformityPercent;
  expect(rise('pima')).toBeLessThan(rise('upland'));
});
test('a record is rounded as it is printed, trash to hundredths', () => {
  expect(roundReading(truth)).toEqual({
    lengthIn: 1.11,
    uniformityPercent: 81.5,
    strengthGPerTex: 29,
    micronaire: 4.4,
    reflectanceRd: 76,
    yellownessB: 8.5,
    trashAreaPercent: 0.41,
  });
});
test('a bale of half this and half that reads the middle', () => {
  const other = { ...truth, strengthGPerTex: 31.04, trashAreaPercent: 0.614 };
  const mixed = mixReadings(truth, other, 0.5);
  expect(mixed.strengthGPerTex).toBeCloseTo(30.04, 9);
  expect(mixed.trashAreaPercent).toBeCloseTo(0.514, 9);
});
test('a module mean of two bales, colour left alone', () => {
  const other = { ...truth, micronaire: 4.56, reflectanceRd: 70 };
  const [first, second] = averageModule([truth, other]);
  expect(first!.micronaire).toBeCloseTo(4.46, 9);
  expect(second!.micronaire).toBe(first!.micronaire);
  expect([first!.reflectanceRd, second!.reflectanceRd]).toEqual([76, 70]);
});
