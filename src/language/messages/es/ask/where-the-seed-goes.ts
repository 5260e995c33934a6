import type { QuestionWords } from '../../en/ask/question-words.ts';

export const whereTheSeedGoes: QuestionWords = {
  title: '¿A dónde va toda la semilla?',
  about: '{farm}, temporada 1: la semilla que vino con una paca de {bale} de fibra, en un molino de aceite común.',
  answers: {
    paysGin: [
      'La mayor parte de lo cosechado es semilla: {seed} con cada paca, {times} veces la fibra.',
      'Molida da {oil} de aceite, {meal} de harina, {hulls} de cáscara y {linters} de línters, la pelusa que dejó el despepite.',
      'Paga el despepite: {credit} por la semilla de una paca frente a un cobro de {charge}.',
    ],
    fallsShort: [
      'La mayor parte de lo cosechado es semilla: {seed} con cada paca, {times} veces la fibra.',
      'Molida da {oil} de aceite, {meal} de harina, {hulls} de cáscara y {linters} de línters, la pelusa que dejó el despepite.',
      'No alcanza a pagar el despepite: {credit} por la semilla de una paca frente a un cobro de {charge}.',
    ],
  },
  limits: [
    'De memoria: mucha semilla se da entera a vacas lecheras, y un poco se guarda para sembrar. El modelo la manda toda al molino.',
    'Las partes del molino son de memoria del oficio, menos la del aceite. Los precios de la semilla y del despepite son de años distintos.',
  ],
  sides: ['Con una paca'],
  numbers: {
    seedKg: 'Semilla',
    oilKg: 'Aceite',
    mealKg: 'Harina',
    hullsKg: 'Cáscara',
    lintersKg: 'Línters',
    lossKg: 'Perdido al moler',
  },
  decides: {
    oilShare: 'Aceite en la semilla',
    mealShare: 'Harina en la semilla',
    linterShare: 'Línters en la semilla',
    seedPrice: 'Precio de una tonelada de semilla',
  },
};
