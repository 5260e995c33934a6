import type { QuestionWords } from './question-words.ts';

export const wetModule: QuestionWords = {
  title: 'What does a wet module cost?',
  about:
    '{farm}: picked at {dry} moisture or, in the dew, at {wet}; then {days} days under a sound cover, in {seasons} of weather.',
  answers: {
    always: [
      'About {bale} a bale, and the farm ends with {money} {moneyWay}.',
      'It cost money in every season. Damp cotton heats, and its yellow rises by {yellowing} in storage: in season 1 the color of most bales goes from {dryColor} to {wetColor}.',
      'The published limit for storing is {limit} moisture.',
    ],
    sometimes: [
      'It depends: it cost money in {costs} of {seasons}.',
      'On average a bale is worth {bale} {baleWay} and the farm ends with {money} {moneyWay}; the yellow rises by {yellowing} in storage.',
      'The published limit for storing is {limit} moisture.',
    ],
    never: [
      'Hardly anything here: in no season did it cost money.',
      'On average a bale is worth {bale} {baleWay} and the farm ends with {money} {moneyWay}; the yellow rises by {yellowing} in storage.',
      'The published limit for storing is {limit} moisture.',
    ],
  },
  limits: [
    'Damp lint also breaks less in the gin, which is why some of the loss comes back as weight and length.',
    'Fire and rot in the module, and the gin’s lost time, are not priced.',
  ],
  sides: ['Picked dry', 'Picked in the dew'],
  numbers: {},
  decides: {
    yellowsAbove: 'Moisture above which cotton yellows',
    yellowing: 'Yellowing for each point and day',
    spindleWater: 'Water from the wet spindles',
  },
};
