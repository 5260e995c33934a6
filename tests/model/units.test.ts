import { expect, test } from 'vitest';
import {
  asNe,
  asNm,
  asTex,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  inchesFromMillimetres,
  KG_PER_POUND,
  kilogramsFromPounds,
  MM_PER_INCH,
  millimetresFromInches,
  neFromTex,
  nmFromTex,
  POUNDS_PER_STATISTICAL_BALE,
  poundsFromKilograms,
  SQUARE_METRES_PER_ACRE,
  TEX_TIMES_NE,
  texFromNe,
  texFromNm,
} from '../../src/model/units.ts';

test('the exact definitions: 1 lb, 1 in, 1 acre of 43,560 square feet, the bale of statistics', () => {
  expect(KG_PER_POUND).toBe(0.45359237);
  expect(MM_PER_INCH).toBe(25.4);
  expect(SQUARE_METRES_PER_ACRE).toBeCloseTo(43560 * 0.3048 ** 2, 9);
  expect(POUNDS_PER_STATISTICAL_BALE).toBe(480);
  expect(TEX_TIMES_NE).toBeCloseTo(590.54125, 5);
});

test.each([4, 30, 120])('%d Ne comes back over tex and over Nm', (count) => {
  expect(neFromTex(texFromNe(asNe(count)))).toBeCloseTo(count, 12);
  expect(nmFromTex(texFromNm(asNm(count)))).toBeCloseTo(count, 12);
  expect(texFromNe(neFromTex(asTex(count)))).toBeCloseTo(count, 12);
});

test('masses, lengths and temperatures come back', () => {
  expect(poundsFromKilograms(kilogramsFromPounds(480))).toBeCloseTo(480, 10);
  expect(inchesFromMillimetres(millimetresFromInches(1.12))).toBeCloseTo(1.12, 12);
  expect(fahrenheitFromCelsius(celsiusFromFahrenheit(60))).toBeCloseTo(60, 12);
  expect(celsiusFromFahrenheit(212)).toBeCloseTo(100, 12);
});

test('a count of one system is not one of another: the compiler says so', () => {
  // @ts-expect-error a plain number is no cotton count
  texFromNe(30);
  // @ts-expect-error tex is no cotton count
  texFromNe(asTex(30));
  expect(texFromNe(asNe(20))).toBeGreaterThan(texFromNe(asNe(30)));
});
