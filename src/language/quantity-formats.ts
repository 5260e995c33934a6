import {
  asNe,
  celsiusFromFahrenheit,
  KG_PER_POUND,
  MM_PER_INCH,
  millimetresFromInches,
  ouncesPerSquareYardFromGsm,
  poundsFromKilograms,
  SQUARE_METRES_PER_ACRE,
  texFromNe,
} from '../model/units.ts';
import type { Messages } from './messages/en.ts';
import type { NumberFormats } from './number-formats.ts';
import type { UnitSystem } from './unit-system.ts';

/** A value with its unit. */
export interface Quantity {
  /** The number alone, for a column whose head holds the unit. */
  readonly number: string;
  /** The unit's sign; empty for a pure number. */
  readonly unit: string;
  /** Number and sign, held together by a space that does not break. */
  readonly text: string;
  /** Number and unit in words, for speech. */
  readonly spoken: string;
}

/** Quantities in the reader's units. Each takes the model's unit, named in the parameter. */
export interface QuantityFormats {
  /** Pounds or kilograms; decimals default to what the size deserves. */
  mass(kg: number, decimals?: number): Quantity;
  /** A mass the trade states in pounds: whole pounds, or kilograms to a tenth. */
  pounds(pounds: number): Quantity;
  /** A boll, a patch, a spool: ounces or grams. */
  smallMass(grams: number, decimals?: number): Quantity;
  /** Pounds per acre or kilograms per hectare. */
  fieldYield(poundsPerAcre: number): Quantity;
  /** How tightly seed cotton or a bale is packed. */
  density(kgPerCubicMetre: number): Quantity;
  /** A fiber: hundredths of an inch, or tenths of a millimeter. */
  fibreLength(mm: number): Quantity;
  /** A plant, a row, a patch: inches or centimeters. */
  length(inches: number, decimals?: number): Quantity;
  /** Rain and irrigation: inches or millimeters. */
  rain(inches: number, decimals?: number): Quantity;
  /** A seam allowance: eighths of an inch, or whole millimeters. */
  seam(inches: number): Quantity;
  /** A length of cloth: yards or meters. */
  clothLength(yards: number, decimals?: number): Quantity;
  area(acres: number): Quantity;
  clothArea(squareMetres: number, decimals?: number): Quantity;
  temperature(fahrenheit: number): Quantity;
  /** Degree days over 60 °F, or the same sum in Celsius degrees. */
  heatUnits(dd60Fahrenheit: number): Quantity;
  clothWeight(gramsPerSquareMetre: number): Quantity;
  threads(perInch: number): Quantity;
  seeds(perFoot: number): Quantity;
  /** English count and tex, in the reader's order. */
  yarnCount(ne: number): Quantity;
  strength(gramsPerTex: number): Quantity;
  yarnStrength(centinewtonsPerTex: number): Quantity;
  /** No unit: the reading is a scale of its own. */
  micronaire(reading: number): Quantity;
  days(days: number): Quantity;
  /** A difference between two percentages. */
  points(points: number, decimals?: number): Quantity;
  centsPerPound(cents: number): Quantity;
  percentage(percent: number, decimals?: number): Quantity;
  plain(value: number, decimals?: number): Quantity;
}

type UnitName = keyof Messages['units'];
const squareMetresPerHectare = 10_000;
const gramsPerOunce = (KG_PER_POUND * 1000) / 16;
const centimetresPerInch = MM_PER_INCH / 10;
const inchesPerFoot = 12;
const feetPerMetre = 1000 / (MM_PER_INCH * inchesPerFoot);
const metresPerYard = (MM_PER_INCH * 36) / 1000;
const squareMetresPerSquareYard = metresPerYard ** 2;
// 1 gf = 0.980665 cN, from standard gravity.
const centinewtonsPerGram = 0.980665;
const kgPerCubicMetrePerPoundPerCubicFoot = KG_PER_POUND * feetPerMetre ** 3;
const eighths: Record<number, string> = { 1: '1/8', 2: '1/4', 3: '3/8', 4: '1/2', 5: '5/8', 6: '3/4', 7: '7/8' };

/** Decimals that give about four figures without a show of precision. */
const decimalsFor = (value: number): number => (Math.abs(value) >= 10_000 ? 0 : Math.abs(value) >= 1 ? 1 : 2);

/** Quantity formats from number formats and the words for units. */
export function makeQuantityFormats(
  numbers: NumberFormats,
  unitSystem: UnitSystem,
  units: Messages['units'],
): QuantityFormats {
  const quantity = (value: number, decimals: number, unit: UnitName): Quantity => {
    const number = numbers.number(value, decimals);
    const { signOfOne, name, ...many } = units[unit];
    const sign = numbers.plural(value, { one: signOfOne, other: many.sign }, decimals);
    const spoken = numbers.plural(value, name, decimals);
    return { number, unit: sign, text: `${number}\u00a0${sign}`, spoken };
  };
  const bare = (number: string): Quantity => ({ number, unit: '', text: number, spoken: number });
  /** US value and unit, or metric value and unit. */
  const either = (us: [number, number, UnitName], metric: [number, number, UnitName]): Quantity =>
    quantity(...(unitSystem === 'us' ? us : metric));

  return {
    mass: (kg, decimals) => {
      const value = unitSystem === 'us' ? poundsFromKilograms(kg) : kg;
      return quantity(value, decimals ?? decimalsFor(value), unitSystem === 'us' ? 'pounds' : 'kilograms');
    },
    pounds: (pounds) => either([pounds, 0, 'pounds'], [pounds * KG_PER_POUND, 1, 'kilograms']),
    smallMass: (grams, decimals = 1) =>
      either([grams / gramsPerOunce, decimals + 1, 'ounces'], [grams, decimals, 'grams']),
    fieldYield: (poundsPerAcre) =>
      either(
        [poundsPerAcre, 0, 'poundsPerAcre'],
        [(poundsPerAcre * KG_PER_POUND * squareMetresPerHectare) / SQUARE_METRES_PER_ACRE, 0, 'kilogramsPerHectare'],
      ),
    density: (kgPerCubicMetre) =>
      either(
        [kgPerCubicMetre / kgPerCubicMetrePerPoundPerCubicFoot, 1, 'poundsPerCubicFoot'],
        [kgPerCubicMetre, 0, 'kilogramsPerCubicMetre'],
      ),
    fibreLength: (mm) => either([mm / MM_PER_INCH, 2, 'inches'], [mm, 1, 'millimetres']),
    length: (inches, decimals = 0) =>
      either([inches, decimals, 'inches'], [inches * centimetresPerInch, decimals, 'centimetres']),
    rain: (inches, decimals = 1) =>
      either([inches, decimals, 'inches'], [millimetresFromInches(inches), 0, 'millimetres']),
    seam: (inches) => {
      if (unitSystem === 'metric') return quantity(Math.round(millimetresFromInches(inches)), 0, 'millimetres');
      const fraction = eighths[Math.round(inches * 8)];
      return fraction
        ? { ...quantity(inches, 3, 'inches'), number: fraction, text: `${fraction}\u00a0${units.inches.sign}` }
        : quantity(inches, 3, 'inches');
    },
    clothLength: (yards, decimals = 2) =>
      either([yards, decimals, 'yards'], [yards * metresPerYard, decimals, 'metres']),
    area: (acres) =>
      either([acres, 0, 'acres'], [(acres * SQUARE_METRES_PER_ACRE) / squareMetresPerHectare, 1, 'hectares']),
    clothArea: (squareMetres, decimals = 1) =>
      either(
        [squareMetres / squareMetresPerSquareYard, decimals, 'squareYards'],
        [squareMetres, decimals, 'squareMetres'],
      ),
    temperature: (fahrenheit) =>
      either([fahrenheit, 0, 'fahrenheit'], [celsiusFromFahrenheit(fahrenheit), 0, 'celsius']),
    heatUnits: (dd60) => either([dd60, 0, 'heatUnitsFahrenheit'], [dd60 / 1.8, 0, 'heatUnitsCelsius']),
    clothWeight: (gsm) =>
      either([ouncesPerSquareYardFromGsm(gsm), 1, 'ouncesPerSquareYard'], [gsm, 0, 'gramsPerSquareMetre']),
    threads: (perInch) =>
      either([perInch, 0, 'threadsPerInch'], [perInch / centimetresPerInch, 1, 'threadsPerCentimetre']),
    seeds: (perFoot) => either([perFoot, 2, 'seedsPerFoot'], [perFoot * feetPerMetre, 1, 'seedsPerMetre']),
    yarnCount: (ne) => {
      const count = numbers.number(ne, Number.isInteger(ne) ? 0 : 1);
      const tex = quantity(texFromNe(asNe(ne)), 1, 'tex');
      const text = unitSystem === 'us' ? `Ne\u00a0${count}` : tex.text;
      return { ...tex, number: unitSystem === 'us' ? count : tex.number, text, spoken: text };
    },
    strength: (gramsPerTex) =>
      either([gramsPerTex, 1, 'gramsPerTex'], [gramsPerTex * centinewtonsPerGram, 1, 'centinewtonsPerTex']),
    yarnStrength: (centinewtonsPerTex) => quantity(centinewtonsPerTex, 1, 'centinewtonsPerTex'),
    micronaire: (reading) => bare(numbers.number(reading, 1)),
    days: (days) => {
      const whole = quantity(days, 0, 'days');
      return { ...whole, text: whole.spoken.replace(' ', '\u00a0') };
    },
    points: (points, decimals = 1) => quantity(points, decimals, 'points'),
    centsPerPound: (cents) => quantity(cents, 2, 'centsPerPound'),
    percentage: (percent, decimals = 1) => bare(numbers.percent(percent, decimals)),
    plain: (value, decimals = 0) => bare(numbers.number(value, decimals)),
  };
}
