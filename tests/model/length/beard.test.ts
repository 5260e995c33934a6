import { expect, test } from 'vitest';
import { classingBeard, plainBeard, readBeard } from '../../../src/model/length/beard.ts';
import { breakAtRandom } from '../../../src/model/length/breakage.ts';
import { blend, gaussianByMass, uniformLength } from '../../../src/model/length/length-distribution.ts';

test('the classing reading of one length is that length on the instrument scale, uniformity 100', () => {
  const reading = readBeard(uniformLength(30));
  expect(reading.upperHalfMeanMm).toBeCloseTo(30 * classingBeard.lengthScale, 9);
  expect(reading.uniformityPercent).toBeCloseTo(100, 9);
});

test('the plain upper half mean of two lengths is the number mean of the longer half by weight', () => {
  const mix = blend([
    { lengths: uniformLength(10), share: 0.3 },
    { lengths: uniformLength(30), share: 0.7 },
  ]);
  expect(readBeard(mix, plainBeard(0)).upperHalfMeanMm).toBeCloseTo(30, 9);
});

test('breaking fibres never lengthens a reading, and lowers uniformity', () => {
  const readings = [0, 0.005, 0.01, 0.02, 0.04].map((theta) =>
    readBeard(breakAtRandom(gaussianByMass(30.7, 0.16), theta)),
  );
  for (const [i, reading] of readings.slice(1).entries()) {
    expect(reading.upperHalfMeanMm).toBeLessThan(readings[i]!.upperHalfMeanMm);
    expect(reading.uniformityPercent).toBeLessThan(readings[i]!.uniformityPercent);
  }
});

test('the reading moves smoothly: a thousandth of a break more changes it by less than a thousandth of a millimetre', () => {
  const at = (theta: number) => readBeard(breakAtRandom(gaussianByMass(30.7, 0.16), theta)).upperHalfMeanMm;
  for (let theta = 0.005; theta < 0.03; theta += 0.0005)
    expect(Math.abs(at(theta + 1e-6) - at(theta))).toBeLessThan(1e-3);
});

test('the mean is the uniformity share of the upper half mean', () => {
  const { meanMm, upperHalfMeanMm, uniformityPercent } = readBeard(gaussianByMass(28, 0.2));
  expect((100 * meanMm) / upperHalfMeanMm).toBeCloseTo(uniformityPercent, 12);
});
