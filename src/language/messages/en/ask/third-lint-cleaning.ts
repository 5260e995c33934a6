import type { QuestionWords } from './question-words.ts';

export const thirdLintCleaning: QuestionWords = {
  title: 'Would a third lint cleaning pay?',
  about: '{farm}: the same crops cleaned twice and three times, in {seasons} of weather.',
  answers: {
    never: [
      'No, not in any of {seasons}.',
      'A bale is worth {bale} {baleWay}, for leaf {leaf} {leafWay}. But the bales hold {lint} {lintWay} lint, and the farm ends with {money} {moneyWay}.',
      'The fiber pays too: short fiber {shortWay} by {short}.',
    ],
    sometimes: [
      'It depends: it paid in {pays} of {seasons}.',
      'A bale is worth {bale} {baleWay}, for leaf {leaf} {leafWay}; the bales hold {lint} {lintWay} lint. On average the farm ends with {money} {moneyWay}.',
      'Short fiber {shortWay} by {short}.',
    ],
    always: [
      'Yes, in every one of {seasons}.',
      'A bale is worth {bale} {baleWay}, for leaf {leaf} {leafWay}, which outweighs {lint} {lintWay} lint: the farm ends with {money} {moneyWay}.',
      'The spinner sees the other side: short fiber {shortWay} by {short}.',
    ],
  },
  limits: [
    'Leafier cotton, or a market that pays more for leaf, can answer otherwise.',
    'What a third cleaner takes is extrapolated from the first two: nobody printed it.',
  ],
  sides: ['Two lint cleaners', 'Three lint cleaners'],
  numbers: {},
  decides: { lintLost: 'Lint the third lint cleaner loses', trashTaken: 'Trash the third lint cleaner takes' },
};
