import { describe, expect, test } from 'vitest';
import { micronaireOf, readFibre } from '../../src/model/fibre.ts';
import { readBeard } from '../../src/model/length/beard.ts';
import { shortFibrePercent } from '../../src/model/length/statistics.ts';
import { mediumFibre } from './lots.ts';

describe('micronaire, by the relation of Lord 1956 (from memory): MR x H = 3.86 X^2 + 18.16 X + 13', () => {
  test.each([2.5, 3.5, 4.2, 4.9, 5.5])('a reading of %d comes back from its own product', (reading) => {
    const product = 3.86 * reading ** 2 + 18.16 * reading + 13;
    expect(micronaireOf(product / 0.9, 0.9)).toBeCloseTo(reading, 12);
  });
  test('at average maturity the reading is near the nominal 39.37 mtex a unit', () => {
    expect(Math.abs(micronaireOf(4.2 * 39.37, 0.95) - 4.2)).toBeLessThan(0.3);
  });
  test('finer or less mature fibre reads lower', () => {
    expect(micronaireOf(160, 0.92)).toBeLessThan(micronaireOf(175, 0.92));
    expect(micronaireOf(175, 0.8)).toBeLessThan(micronaireOf(175, 0.92));
  });
  test('fibre too fine for the relation does not read as not a number', () => {
    expect(Number.isFinite(micronaireOf(1, 0.1))).toBe(true);
  });
});

test('a reading is the beard, the short fibre and the strength of that fibre', () => {
  const reading = readFibre(mediumFibre);
  expect(reading).toEqual({
    upperHalfMeanMm: readBeard(mediumFibre.lengths).upperHalfMeanMm,
    uniformityPercent: readBeard(mediumFibre.lengths).uniformityPercent,
    shortFibrePercentByWeight: shortFibrePercent(mediumFibre.lengths, 'weight'),
    strengthGPerTex: 30,
    micronaire: micronaireOf(175, 0.92),
  });
  expect(reading.micronaire).toBeGreaterThan(3.5);
  expect(reading.micronaire).toBeLessThan(4.9);
});
