import type { QuestionWords } from '../../en/ask/question-words.ts';

export const sawOrRoller: QuestionWords = {
  title: '¿Sierras o rodillo para fibra larga?',
  about: '{farm}, temporada 1: una cosecha de Pima por sierras con limpiadores de sierra, y por rodillo con los suyos.',
  answers: {
    roller: [
      'El rodillo: fibra más larga, y {money} {moneyWay} para la granja.',
      'El largo es {rollerLength} tras el rodillo y {sawLength} tras las sierras; la fibra corta, {rollerShort} frente a {sawShort}.',
      'El dinero viene de {lint} {lintWay} de fibra en las pacas, no de su largo: para Pima solo tenemos la tasa de préstamo de {loanYear}, un precio único.',
    ],
    saw: [
      'Aquí las sierras: con rodillo la fibra es {lengthWay}, y la granja termina con {money} {moneyWay}.',
      'El largo es {rollerLength} tras el rodillo y {sawLength} tras las sierras; la fibra corta, {rollerShort} frente a {sawShort}.',
      'El rodillo pone {lint} {lintWay} de fibra en las pacas. Para Pima solo tenemos la tasa de préstamo de {loanYear}, un precio único.',
    ],
    mixed: [
      'Depende de quién pregunte: con rodillo la fibra es {lengthWay}, y la granja termina con {money} {moneyWay}.',
      'El largo es {rollerLength} tras el rodillo y {sawLength} tras las sierras; la fibra corta, {rollerShort} frente a {sawShort}.',
      'El rodillo pone {lint} {lintWay} de fibra en las pacas. Para Pima solo tenemos la tasa de préstamo de {loanYear}, un precio único.',
    ],
  },
  limits: [
    'Una unidad de rodillo es más lenta y más cara de operar. Aquí el cobro del despepite es igual, así que el lado del despepite no se cuenta.',
    'Quien hila fino puede pagar por el largo; ese mercado no está en el modelo.',
  ],
  sides: ['Sierras', 'Rodillo'],
  numbers: {},
  decides: { sawBreaks: 'Fibras rotas por las sierras', rollerBreaks: 'Fibras rotas por el despepite de rodillo' },
};
