import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseYarnNumber } from '../../src/model/mill/yarn-number.ts';
import {
  asNe,
  asNm,
  asTex,
  celsiusFromFahrenheit,
  fahrenheitFromCelsius,
  gsmFromOuncesPerSquareYard,
  inchesFromMillimetres,
  kilogramsFromPounds,
  millimetresFromInches,
  neFromTex,
  nmFromTex,
  ouncesPerSquareYardFromGsm,
  poundsFromKilograms,
  texFromNe,
  texFromNm,
} from '../../src/model/units.ts';
import { propertySeed, runs } from './runs.ts';

const settings = { seed: propertySeed, numRuns: runs(1000) };
/** From a millionth to a million, either sign where the quantity has one. */
const positive = fc
  .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: -6, max: 3 }))
  .map(([digits, power]) => (digits / 1000) * 10 ** power);
const temperature = fc.integer({ min: -100_000, max: 400_000 }).map((n) => n / 1000);

type Conversion = (value: number) => number;
/** There and back again is where one was, to the rounding of a number; degrees are rounded as numbers near a hundred are. */
const returns = (values: fc.Arbitrary<number>, there: Conversion, back: Conversion) =>
  fc.assert(
    fc.property(values, (value) => {
      const size = values === temperature ? Math.max(100, Math.abs(value)) : value;
      expect(Math.abs(back(there(value)) - value)).toBeLessThanOrEqual(1e-14 * size);
    }),
    settings,
  );

const pairs: readonly (readonly [string, fc.Arbitrary<number>, Conversion, Conversion])[] = [
  ['pounds and kilograms', positive, kilogramsFromPounds, poundsFromKilograms],
  ['inches and millimeters', positive, millimetresFromInches, inchesFromMillimetres],
  ['ounces a square yard and grams a square meter', positive, gsmFromOuncesPerSquareYard, ouncesPerSquareYardFromGsm],
  ['Fahrenheit and Celsius', temperature, celsiusFromFahrenheit, fahrenheitFromCelsius],
  ['English count and tex', positive, (ne) => texFromNe(asNe(ne)), (tex) => neFromTex(asTex(tex))],
  ['metric count and tex', positive, (nm) => texFromNm(asNm(nm)), (tex) => nmFromTex(asTex(tex))],
];

describe('units go there and back', () => {
  test.each(pairs)('%s', (_name, values, there, back) => {
    returns(values, there, back);
    returns(values, back, there);
  });
});

/** A yarn number that is written out in any system is read as what was written. */
const isReadAsWritten = (parse: typeof parseYarnNumber) =>
  fc.assert(
    fc.property(fc.integer({ min: 30, max: 2500 }), fc.integer({ min: 1, max: 12 }), (tenths, singles) => {
      const value = tenths / 10;
      const forms = [
        [`${value}/${singles}Ne`, texFromNe(asNe(value))],
        [`${value}/${singles}Nm`, texFromNm(asNm(value))],
        [`${value}x${singles}tex`, asTex(value)],
      ] as const;
      for (const [text, singleTex] of forms) {
        const read = parse(text);
        if (!read.ok) throw new Error(`${text} was refused`);
        expect(Math.abs(read.value.singleTex / singleTex - 1)).toBeLessThan(1e-12);
        expect(Math.abs(read.value.resultantTex / (singleTex * singles) - 1)).toBeLessThan(1e-12);
      }
    }),
    settings,
  );
test('a yarn number is read as it is written', () => isReadAsWritten(parseYarnNumber));

describe('each law is seen to fail', () => {
  test('on a pound of 0.4536 kg one way alone', () => {
    expect(() => returns(positive, (lb) => lb * 0.4536, poundsFromKilograms)).toThrow();
  });
  test('on degrees without their zero', () => {
    expect(() => returns(temperature, (f) => f / 1.8, fahrenheitFromCelsius)).toThrow();
  });
  test('on plies that divide in tex too', () => {
    const wrong: typeof parseYarnNumber = (text, field) => {
      const read = parseYarnNumber(text, field);
      if (!read.ok || !text.endsWith('tex')) return read;
      const { singleTex, singles } = read.value;
      return { ...read, value: { ...read.value, resultantTex: asTex(singleTex / singles) } };
    };
    expect(() => isReadAsWritten(wrong)).toThrow();
  });
});
