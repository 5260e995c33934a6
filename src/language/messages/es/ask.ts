import type { ask as english } from '../en/ask.ts';
import { byHand } from './ask/by-hand.ts';
import { fortyOrEighty } from './ask/forty-or-eighty.ts';
import { goodAndBadYears } from './ask/good-and-bad-years.ts';
import { oneStaple } from './ask/one-staple.ts';
import { rain } from './ask/rain.ts';
import { sawOrRoller } from './ask/saw-or-roller.ts';
import { seedAndLint } from './ask/seed-and-lint.ts';
import { stripperOrPicker } from './ask/stripper-or-picker.ts';
import { thirdLintCleaning } from './ask/third-lint-cleaning.ts';
import { wetModule } from './ask/wet-module.ts';
import { whereTheSeedGoes } from './ask/where-the-seed-goes.ts';
import { whoGetsTheMoney } from './ask/who-gets-the-money.ts';

export const ask: typeof english = {
  title: 'Preguntas que la gente hace',
  lead: 'Cada respuesta se calcula aquí, con el modelo, en una granja inventada. Donde nadie publicó un número que la decide, la página lo dice.',
  all: 'Todas las preguntas',
  unknown: 'No hay una pregunta con ese nombre. Estas son las que hay:',
  working: '{done} de {of} temporadas corridas',
  answer: 'La respuesta',
  numbers: 'Los números',
  numbersNote: 'Se muestra: {seasons}. Cada número abre cómo se llegó a él.',
  oneSeason: 'temporada {seed}',
  every: {
    heading: 'Temporada por temporada',
    season: 'Temporada',
    difference: 'Diferencia',
    mean: 'Diferencia media',
  },
  decides: 'Qué la decide',
  decidesNote: 'Números del modelo de los que cuelga la respuesta, y qué tan seguro es cada uno.',
  range: 'de {low} a {high}',
  limits: 'Lo que esto deja fuera',
  invented: 'La granja y su clima son inventados; el número de temporada hace el clima.',
  compare: 'Poner las dos temporadas lado a lado',
  season: 'Abrir esta temporada en {station}',
  counts: {
    bale: { one: 'una paca', other: '{n} pacas' },
    season: { one: 'una temporada', other: '{n} temporadas' },
    leafGrade: { one: '{n} grado', other: '{n} grados' },
    personDay: { one: '{n} día', other: '{n} días' },
    market: { one: 'un mercado', other: '{n} mercados' },
    minute: { one: 'un minuto', other: '{n} minutos' },
  },
  ways: {
    amount: { up: 'más', down: 'menos', same: 'más' },
    grade: { up: 'mejor', down: 'peor', same: 'mejor' },
    move: { up: 'sube', down: 'baja', same: 'sube' },
    length: { up: 'más larga', down: 'más corta', same: 'igual de larga' },
  },
  lines: {
    left: 'Pagado a la granja, antes de los costos de cultivo',
    lintUsd: 'Valor de la fibra',
    lintPerBale: 'Fibra, por paca',
    seedPerBale: 'Semilla, por paca',
    ginningPerBale: 'Despepite, por paca',
    classingPerBale: 'Clasificación, por paca',
    pickingPerBale: 'Pizca, por paca',
    leftPerBale: 'Pagado a la granja, por paca',
    bales: 'Pacas',
    turnout: 'Rendimiento de fibra',
    colour: 'Color de la mayoría de las pacas',
    leaf: 'Grado de hoja de la mayoría de las pacas',
    staple: 'Longitud comercial de la mayoría de las pacas',
    foreignMatter: 'Hoja, cáscaras, palitos y tierra en el algodón en hueso',
    weathered: 'Perdido por el clima',
    leftInField: 'Quedó en el campo',
    personDays: 'Días de pizca, una persona',
    machineHours: 'Horas de la máquina',
    moisture: 'Humedad al llegar al despepite',
    yellowing: 'Amarillo ganado en el almacén',
    hottestCore: 'Lo más caliente del centro',
    patch: 'Retazo de una bellota',
    shortFibre: 'Fibra corta en la paca',
    length: 'Longitud de fibra en la paca',
    micronaire: 'Micronaire',
  },
  questions: {
    'good-and-bad-years': goodAndBadYears,
    'forty-or-eighty': fortyOrEighty,
    rain,
    'stripper-or-picker': stripperOrPicker,
    'by-hand': byHand,
    'wet-module': wetModule,
    'seed-and-lint': seedAndLint,
    'saw-or-roller': sawOrRoller,
    'third-lint-cleaning': thirdLintCleaning,
    'where-the-seed-goes': whereTheSeedGoes,
    'who-gets-the-money': whoGetsTheMoney,
    'one-staple': oneStaple,
  },
};
