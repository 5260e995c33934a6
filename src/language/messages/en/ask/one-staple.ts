import type { QuestionWords } from './question-words.ts';

export const oneStaple: QuestionWords = {
  title: 'One staple longer, so what?',
  about:
    '{farm}, season 1: the mean bale of the crop, staple {staple}, and the same a thirty-second of an inch longer.',
  answers: {
    nothing: [
      'In money, nothing: no market pays for it at this length.',
      'The premium between {least} and {most} a bale is all that {markets} markets give.',
      'At the mill it counts: by an old rule the finest yarn without strain goes from {finestNow} to {finestThen}.',
    ],
    somewhere: [
      'It depends on the market: from {least} to {most} a bale.',
      'In {none} of the {markets} it brings less than a dollar: there this cotton is already as long as they ask for.',
      'At the mill it counts: by an old rule the finest yarn without strain goes from {finestNow} to {finestThen}.',
    ],
    everywhere: [
      'Money in each market: from {least} to {most} a bale.',
      'All {markets} markets pay for it at this length.',
      'At the mill it counts as well: by an old rule the finest yarn without strain goes from {finestNow} to {finestThen}.',
    ],
  },
  limits: [
    'Longer seed costs something elsewhere: the table below sets the long variety beside the medium one, with less lint in its bolls.',
    'The rule for the finest yarn is from the 1930s, for Indian cotton: a direction more than a promise.',
  ],
  sides: ['Medium seed', 'Long seed'],
  numbers: { limit: 'Finest this fiber can spin' },
  decides: { stapleSlope: 'Finer yarn for an inch more length' },
};
