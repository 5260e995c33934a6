import type { QuestionWords } from './question-words.ts';

export const whoGetsTheMoney: QuestionWords = {
  title: 'Who gets the money?',
  about: '{farm}, season 1: {bales}, settled at the gin.',
  answers: {
    seedPays: [
      'Of each bale {left} reach the farm, before what growing it cost.',
      'The lint is sold for {lint} and the seed for {seed}. The gin takes {ginning} and the classing office {classing}; the seed more than pays the gin.',
      'The lint of one boll, enough for a patch {patch} square, was sold for {centsPerBoll} cents.',
    ],
    seedFallsShort: [
      'Of each bale {left} reach the farm, before what growing it cost.',
      'The lint is sold for {lint} and the seed for {seed}. The gin takes {ginning} and the classing office {classing}; here the seed does not pay the gin.',
      'The lint of one boll, enough for a patch {patch} square, was sold for {centsPerBoll} cents.',
    ],
  },
  limits: [
    'Seed, fertilizer, water, fuel, machines, land and wages are not in the model.',
    'What mill, printer and shop earn on the cloth is not in the model either.',
    'Prices are mixed: lint of {lintYear}, seed of {seedYear}, ginning of {ginYear}.',
  ],
  sides: ['For one bale'],
  numbers: {},
  decides: { seedPrice: 'Price of a ton of seed', ginCharge: 'Charge for ginning a bale' },
};
