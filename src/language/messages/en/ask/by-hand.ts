import type { QuestionWords } from './question-words.ts';

export const byHand: QuestionWords = {
  title: 'By hand, in the 1930s?',
  about: '{farm}, {area}, prices of {year}; beside it a machine of today on the coastal plain.',
  answers: {
    muchOfIt: [
      'A bale was {days} of picking, for {balePay}.',
      'Picking was paid by weight, {rate} for a hundred pounds. At {pounds} a day that is {dayPay} for a day in the row.',
      'It took {share} of what the lint was sold for. Today a machine takes about {minutes} for a bale.',
    ],
    littleOfIt: [
      'A bale was {days} of picking, for {balePay}.',
      'Picking was paid by weight, {rate} for a hundred pounds. At {pounds} a day that is {dayPay} for a day in the row: {share} of what the lint was sold for.',
      'Today a machine takes about {minutes} for a bale.',
    ],
  },
  limits: [
    'Much of this work was sharecropped: families, children too, picked for a share and often ended the year in debt. Slavery had built the same fields before. A wage for a hundred pounds does not tell that.',
    'How much a person picked in a day is a usual figure; people differed, and so did the fields.',
    'The two farms are not one farm then and now: land, seed and prices differ.',
  ],
  sides: ['By hand, then', 'By machine, now'],
  numbers: {},
  decides: {
    handPounds: 'Seed cotton a hand picks in a day',
    pickingRate: 'Pay for a hundred pounds picked',
    pickerAcres: 'Acres a picker covers in an hour',
  },
};
