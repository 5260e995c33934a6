import type { cautions as englishCautions, limits as englishLimits, marks as englishMarks } from '../en/marks.ts';

export const marks: typeof englishMarks = {
  label: '¿Qué tan seguro es esto?',
  names: {
    published: 'publicado',
    derived: 'calculado',
    memory: 'de memoria',
    'common practice': 'práctica común',
    assumption: 'supuesto',
  },
  meaning: {
    published: 'Leído en la fuente que se nombra.',
    derived: 'Calculado a partir de números publicados.',
    memory: 'Conocido en el oficio, sin releerlo para esto.',
    'common practice': 'Lo que suele hacer la gente del oficio.',
    assumption: 'Elección nuestra, donde no se halló un número.',
  },
  source: 'Fuente',
  value: 'Valor',
  between: 'entre {low} y {high}',
};

export const limits: typeof englishLimits = {
  heading: 'Límites honestos',
  drylandYield:
    'En los llanos de temporal, el rendimiento de campo calculado puede alejarse bastante del promedio estatal.',
  desertOpening:
    'En el desierto bajo, el modelo abre las bellotas en otras fechas que las que reportan los agricultores.',
  colorChart: 'La carta oficial de color no trae bordes impresos. La nuestra es una versión simplificada.',
  inventedFarm: 'Esta granja es inventada. Su clima y sus rendimientos de campo son los de su región.',
  mixedYears: 'Aquí se mezclan precios de distintos años.',
  oneYearPrices: 'Los precios son de {year}.',
  pimaPrice: 'Para Pima, el valor es la tasa de préstamo publicada, no un precio de mercado.',
  couplings:
    'Cómo el color y la hoja siguen a la lluvia y la basura es un supuesto nuestro, ajustado a promedios publicados.',
  micronaire: 'La lectura de micronaire sale de una fórmula conocida de memoria.',
  threadCount: 'El peso y la cobertura son de la tela con acabado; el acabado y el lavado juntan los hilos.',
};

export const cautions: typeof englishCautions = {
  heading: 'Con cuidado',
  rules: 'Se deben seguir las reglas locales y a las personas con licencia para este trabajo.',
  seed: 'La semilla tratada es venenosa. Nunca es alimento ni forraje.',
  permit:
    'Sembrar aunque sea una planta de algodón puede requerir permiso. Se pregunta en el departamento de agricultura del estado.',
  harvestAid: 'Los productos químicos de cosecha son solo para personal con licencia.',
  module: 'No subir a los módulos ni entrar al patio con las máquinas en marcha.',
  gin: 'Las máquinas de despepite atrapan las manos. En una visita, detrás de la línea.',
  rotaryCutter: 'Cerrar el cortador giratorio cada vez que se deja en la mesa.',
  iron: 'La plancha sigue caliente después de apagarla.',
  burnTest: 'Las pruebas de quemado son para una persona adulta, sobre metal y agua, o mejor en video.',
  sleepwear: 'El algodón común no cumple las reglas de flama para ropa de dormir infantil holgada.',
};
