import type { PluralForms } from '../../fill.ts';

/** A unit: its sign in tables and drawings, and its name for running text and for speech. */
interface UnitWords {
  readonly sign: string;
  /** The sign after exactly one, where it is a word. */
  readonly signOfOne: string;
  readonly name: PluralForms;
}
const unit = (sign: string, one: string, other: string, signOfOne = sign): UnitWords => ({
  sign,
  signOfOne,
  name: { one: `{n} ${one}`, other: `{n} ${other}` },
});

export const units = {
  pounds: unit('lb', 'pound', 'pounds'),
  kilograms: unit('kg', 'kilogram', 'kilograms'),
  ounces: unit('oz', 'ounce', 'ounces'),
  grams: unit('g', 'gram', 'grams'),
  poundsPerAcre: unit('lb/acre', 'pound per acre', 'pounds per acre'),
  kilogramsPerHectare: unit('kg/ha', 'kilogram per hectare', 'kilograms per hectare'),
  poundsPerCubicFoot: unit('lb/ft³', 'pound per cubic foot', 'pounds per cubic foot'),
  kilogramsPerCubicMetre: unit('kg/m³', 'kilogram per cubic meter', 'kilograms per cubic meter'),
  inches: unit('in', 'inch', 'inches'),
  millimetres: unit('mm', 'millimeter', 'millimeters'),
  centimetres: unit('cm', 'centimeter', 'centimeters'),
  yards: unit('yd', 'yard', 'yards'),
  metres: unit('m', 'meter', 'meters'),
  acres: unit('acres', 'acre', 'acres', 'acre'),
  hectares: unit('ha', 'hectare', 'hectares'),
  squareYards: unit('yd²', 'square yard', 'square yards'),
  squareMetres: unit('m²', 'square meter', 'square meters'),
  fahrenheit: unit('°F', 'degree Fahrenheit', 'degrees Fahrenheit'),
  celsius: unit('°C', 'degree Celsius', 'degrees Celsius'),
  heatUnitsFahrenheit: unit('heat units', 'heat unit, base 60 °F', 'heat units, base 60 °F', 'heat unit'),
  heatUnitsCelsius: unit('heat units', 'heat unit, base 15.6 °C', 'heat units, base 15.6 °C', 'heat unit'),
  ouncesPerSquareYard: unit('oz/yd²', 'ounce per square yard', 'ounces per square yard'),
  gramsPerSquareMetre: unit('g/m²', 'gram per square meter', 'grams per square meter'),
  threadsPerInch: unit('per in', 'thread per inch', 'threads per inch'),
  threadsPerCentimetre: unit('per cm', 'thread per centimeter', 'threads per centimeter'),
  seedsPerFoot: unit('per ft', 'seed per foot of row', 'seeds per foot of row'),
  seedsPerMetre: unit('per m', 'seed per meter of row', 'seeds per meter of row'),
  gramsPerTex: unit('g/tex', 'gram per tex', 'grams per tex'),
  centinewtonsPerTex: unit('cN/tex', 'centinewton per tex', 'centinewtons per tex'),
  tex: unit('tex', 'tex', 'tex'),
  days: unit('days', 'day', 'days', 'day'),
  centsPerPound: unit('¢/lb', 'cent per pound', 'cents per pound'),
  points: unit('points', 'percentage point', 'percentage points', 'point'),
};
