import type { QuestionWords } from '../../en/ask/question-words.ts';

export const stripperOrPicker: QuestionWords = {
  title: '¿Arranque o husillos en un cultivo pobre?',
  about:
    '{farm}: un cultivo de secano de {lintPerAcre} de fibra, cosechado con husillos o de arranque, con limpiador de campo.',
  answers: {
    always: [
      'La de arranque, en cada una de {seasons}.',
      'Deja a la granja {money} {moneyWay} en promedio, porque también toma las bellotas duras: {lint} {lintWay} de fibra.',
      'Una paca vale {bale} {baleWay}: el algodón de arranque trae {strippedDirt} de basura, el de husillos {pickedDirt}.',
    ],
    sometimes: [
      'Depende: la de arranque convino en {stripper} de {seasons}.',
      'En promedio deja a la granja {money} {moneyWay}, con {lint} {lintWay} de fibra.',
      'Una paca vale {bale} {baleWay}: el algodón de arranque trae {strippedDirt} de basura, el de husillos {pickedDirt}.',
    ],
    never: [
      'La de husillos, en cada una de {seasons}.',
      'La de arranque deja a la granja {money} {moneyWay} en promedio, con {lint} {lintWay} de fibra.',
      'Una paca vale {bale} {baleWay}: el algodón de arranque trae {strippedDirt} de basura, el de husillos {pickedDirt}.',
    ],
  },
  limits: [
    'No se cuenta el costo de las máquinas. Por práctica común la de arranque es más barata de comprar y usar, así que contarlo hablaría por ella.',
    'Hay despepites que cobran por el algodón en hueso; aquí cobran por paca.',
  ],
  sides: ['Con husillos', 'De arranque'],
  numbers: {},
  decides: {
    hardLocks: 'Algodón que no queda en lóculos duros',
    strippersTake: 'Algodón que toma la de arranque',
    strippedTrash: 'Basura en el algodón arrancado',
  },
};
