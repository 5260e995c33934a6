import type { QuestionWords } from './question-words.ts';

export const sawOrRoller: QuestionWords = {
  title: 'Saw or roller for long staple?',
  about:
    '{farm}, season 1: one crop of Pima through saws with saw lint cleaners, and through rollers with roller ones.',
  answers: {
    roller: [
      'The roller: longer fiber, and {money} {moneyWay} to the farm.',
      'Length is {rollerLength} behind rollers and {sawLength} behind saws; short fiber {rollerShort} against {sawShort}.',
      'The money comes from {lint} {lintWay} lint in the bales, not from its length: for Pima we have only the loan rate of {loanYear}, which is one price for all.',
    ],
    saw: [
      'Here the saw: the roller’s fiber is {lengthWay}, and the farm ends with {money} {moneyWay}.',
      'Length is {rollerLength} behind rollers and {sawLength} behind saws; short fiber {rollerShort} against {sawShort}.',
      'Rollers put {lint} {lintWay} lint in the bales. For Pima we have only the loan rate of {loanYear}, one price for all lengths.',
    ],
    mixed: [
      'It depends on who asks: with rollers the fiber is {lengthWay}, and the farm ends with {money} {moneyWay}.',
      'Length is {rollerLength} behind rollers and {sawLength} behind saws; short fiber {rollerShort} against {sawShort}.',
      'Rollers put {lint} {lintWay} lint in the bales. For Pima we have only the loan rate of {loanYear}, one price for all lengths.',
    ],
  },
  limits: [
    'A roller stand is slower and dearer to run. The charge for ginning is taken as the same here, so the gin’s side is not told.',
    'A spinner of fine yarn may pay for length; that market is not in the model.',
  ],
  sides: ['Saw', 'Roller'],
  numbers: {},
  decides: { sawBreaks: 'Fibers broken by the gin saws', rollerBreaks: 'Fibers broken by the roller gin' },
};
