import type { QuestionWords } from '../../en/ask/question-words.ts';

export const seedAndLint: QuestionWords = {
  title: '¿Por qué se aferra el algodón a la semilla?',
  about: '{farm}, temporada 1: una cosecha por una unidad de sierras y por una de rodillo.',
  answers: {
    sawBreaksMore: [
      'Porque ahí crece: unas {fibres} fibras en una semilla, cada una célula de su piel.',
      'Juntas pesan {milligrams} miligramos. El despepite no las despega, las arranca; {onSeed} de la fibra queda en la semilla.',
      'Arrancar rompe algunas: la fibra corta es {before} antes de la unidad, {behindSaw} tras las sierras y {behindRoller} tras el rodillo, con la fibra a {moisture} de humedad.',
    ],
    rollerBreaksMore: [
      'Porque ahí crece: unas {fibres} fibras en una semilla, cada una célula de su piel.',
      'Juntas pesan {milligrams} miligramos. El despepite no las despega, las arranca; {onSeed} de la fibra queda en la semilla.',
      'Arrancar rompe algunas: la fibra corta es {before} antes de la unidad, {behindSaw} tras las sierras y, aún más, {behindRoller} tras el rodillo, a {moisture} de humedad.',
    ],
  },
  limits: [
    'El modelo no tiene la fuerza de una sola fibra: tiene lo que sale, lo que queda y lo que se rompe.',
    'Que una fibra es una célula de la piel de la semilla es botánica sencilla, de memoria.',
    'El algodón upland rara vez va al rodillo; la comparación muestra dos maneras de agarrar.',
  ],
  sides: ['Sierras', 'Rodillo'],
  numbers: { standMoisture: 'Humedad de la fibra en la unidad' },
  decides: {
    fibresPerSeed: 'Fibras en una semilla',
    sawBreaks: 'Fibras rotas por las sierras',
    rollerBreaks: 'Fibras rotas por el despepite de rodillo',
  },
};
