import type { units as english } from '../en/units.ts';

// Whole millions take 'de': un millón de libras.
const unit = (sign: string, one: string, other: string, signOfOne = sign) => ({
  sign,
  signOfOne,
  name: { one: `{n} ${one}`, many: `{n} de ${other}`, other: `{n} ${other}` },
});

export const units: typeof english = {
  pounds: unit('lb', 'libra', 'libras'),
  kilograms: unit('kg', 'kilogramo', 'kilogramos'),
  ounces: unit('oz', 'onza', 'onzas'),
  grams: unit('g', 'gramo', 'gramos'),
  poundsPerAcre: unit('lb/acre', 'libra por acre', 'libras por acre'),
  kilogramsPerHectare: unit('kg/ha', 'kilogramo por hectárea', 'kilogramos por hectárea'),
  poundsPerCubicFoot: unit('lb/ft³', 'libra por pie cúbico', 'libras por pie cúbico'),
  kilogramsPerCubicMetre: unit('kg/m³', 'kilogramo por metro cúbico', 'kilogramos por metro cúbico'),
  inches: unit('in', 'pulgada', 'pulgadas'),
  millimetres: unit('mm', 'milímetro', 'milímetros'),
  centimetres: unit('cm', 'centímetro', 'centímetros'),
  yards: unit('yd', 'yarda', 'yardas'),
  metres: unit('m', 'metro', 'metros'),
  acres: unit('acres', 'acre', 'acres', 'acre'),
  hectares: unit('ha', 'hectárea', 'hectáreas'),
  squareYards: unit('yd²', 'yarda cuadrada', 'yardas cuadradas'),
  squareMetres: unit('m²', 'metro cuadrado', 'metros cuadrados'),
  fahrenheit: unit('°F', 'grado Fahrenheit', 'grados Fahrenheit'),
  celsius: unit('°C', 'grado Celsius', 'grados Celsius'),
  heatUnitsFahrenheit: unit('unidades calor', 'unidad calor, base 60 °F', 'unidades calor, base 60 °F', 'unidad calor'),
  heatUnitsCelsius: unit(
    'unidades calor',
    'unidad calor, base 15.6 °C',
    'unidades calor, base 15.6 °C',
    'unidad calor',
  ),
  ouncesPerSquareYard: unit('oz/yd²', 'onza por yarda cuadrada', 'onzas por yarda cuadrada'),
  gramsPerSquareMetre: unit('g/m²', 'gramo por metro cuadrado', 'gramos por metro cuadrado'),
  threadsPerInch: unit('por in', 'hilo por pulgada', 'hilos por pulgada'),
  threadsPerCentimetre: unit('por cm', 'hilo por centímetro', 'hilos por centímetro'),
  seedsPerFoot: unit('por ft', 'semilla por pie de surco', 'semillas por pie de surco'),
  seedsPerMetre: unit('por m', 'semilla por metro de surco', 'semillas por metro de surco'),
  gramsPerTex: unit('g/tex', 'gramo por tex', 'gramos por tex'),
  centinewtonsPerTex: unit('cN/tex', 'centinewton por tex', 'centinewtons por tex'),
  tex: unit('tex', 'tex', 'tex'),
  days: unit('días', 'día', 'días', 'día'),
  centsPerPound: unit('¢/lb', 'centavo de dólar por libra', 'centavos de dólar por libra'),
  points: unit('puntos', 'punto porcentual', 'puntos porcentuales', 'punto'),
};
