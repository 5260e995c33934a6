import type { QuestionWords } from '../../en/ask/question-words.ts';

export const thirdLintCleaning: QuestionWords = {
  title: '¿Convendría un tercer limpiador de fibra?',
  about: '{farm}: las mismas cosechas limpiadas dos y tres veces, en {seasons} de clima.',
  answers: {
    never: [
      'No, en ninguna de {seasons}.',
      'Una paca vale {bale} {baleWay}, por una hoja {leaf} {leafWay}. Pero las pacas llevan {lint} {lintWay} de fibra, y la granja termina con {money} {moneyWay}.',
      'La fibra también paga: la fibra corta {shortWay} {short}.',
    ],
    sometimes: [
      'Depende: convino en {pays} de {seasons}.',
      'Una paca vale {bale} {baleWay}, por una hoja {leaf} {leafWay}; las pacas llevan {lint} {lintWay} de fibra. En promedio la granja termina con {money} {moneyWay}.',
      'La fibra corta {shortWay} {short}.',
    ],
    always: [
      'Sí, en cada una de {seasons}.',
      'Una paca vale {bale} {baleWay}, por una hoja {leaf} {leafWay}, y eso pesa más que {lint} {lintWay} de fibra: la granja termina con {money} {moneyWay}.',
      'Quien hila ve el otro lado: la fibra corta {shortWay} {short}.',
    ],
  },
  limits: [
    'Un algodón con más hoja, o un mercado que pague más por la hoja, puede responder otra cosa.',
    'Lo que saca un tercer limpiador se extrapola de los dos primeros: nadie lo publicó.',
  ],
  sides: ['Dos limpiadores', 'Tres limpiadores'],
  numbers: {},
  decides: {
    lintLost: 'Fibra que pierde el tercer limpiador',
    trashTaken: 'Basura que saca el tercer limpiador',
  },
};
