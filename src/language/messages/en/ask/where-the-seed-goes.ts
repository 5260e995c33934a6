import type { QuestionWords } from './question-words.ts';

export const whereTheSeedGoes: QuestionWords = {
  title: 'Where does all the seed go?',
  about: '{farm}, season 1: the seed that came with a bale of {bale} of lint, at an ordinary oil mill.',
  answers: {
    paysGin: [
      'Most of what is picked is seed: {seed} with each bale, {times} times the lint.',
      'Crushed, it gives {oil} of oil, {meal} of meal, {hulls} of hulls and {linters} of linters, the fuzz that the gin left.',
      'It pays for the ginning: {credit} for the seed of a bale against a charge of {charge}.',
    ],
    fallsShort: [
      'Most of what is picked is seed: {seed} with each bale, {times} times the lint.',
      'Crushed, it gives {oil} of oil, {meal} of meal, {hulls} of hulls and {linters} of linters, the fuzz that the gin left.',
      'It does not quite pay for the ginning: {credit} for the seed of a bale against a charge of {charge}.',
    ],
  },
  limits: [
    'From memory: much seed is fed whole to dairy cows instead, and a little is kept for planting. The model sends all of it to the mill.',
    'Shares of the oil mill are from memory of the trade, but for the oil. The prices of seed and ginning are of different years.',
  ],
  sides: ['With one bale'],
  numbers: {
    seedKg: 'Seed',
    oilKg: 'Oil',
    mealKg: 'Meal',
    hullsKg: 'Hulls',
    lintersKg: 'Linters',
    lossKg: 'Lost in crushing',
  },
  decides: {
    oilShare: 'Oil in the seed',
    mealShare: 'Meal in the seed',
    linterShare: 'Linters on the seed',
    seedPrice: 'Price of a ton of seed',
  },
};
