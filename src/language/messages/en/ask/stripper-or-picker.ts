import type { QuestionWords } from './question-words.ts';

export const stripperOrPicker: QuestionWords = {
  title: 'Stripper or picker on a poor crop?',
  about: '{farm}: a dryland crop of {lintPerAcre} of lint, taken by spindles or by a stripper with a field cleaner.',
  answers: {
    always: [
      'The stripper, in every one of {seasons}.',
      'It leaves the farm {money} {moneyWay} on average, because it also takes the hard bolls: {lint} {lintWay} lint.',
      'A bale is worth {bale} {baleWay}: stripped cotton comes with {strippedDirt} of trash, picked cotton with {pickedDirt}.',
    ],
    sometimes: [
      'It depends: the stripper paid in {stripper} of {seasons}.',
      'On average it leaves the farm {money} {moneyWay}, with {lint} {lintWay} lint.',
      'A bale is worth {bale} {baleWay}: stripped cotton comes with {strippedDirt} of trash, picked cotton with {pickedDirt}.',
    ],
    never: [
      'The picker, in every one of {seasons}.',
      'The stripper leaves the farm {money} {moneyWay} on average, with {lint} {lintWay} lint.',
      'A bale is worth {bale} {baleWay}: stripped cotton comes with {strippedDirt} of trash, picked cotton with {pickedDirt}.',
    ],
  },
  limits: [
    'The machines’ own cost is not counted. By common practice a stripper is the cheaper one to buy and run, so counting it would speak for the stripper.',
    'Gins may charge by the seed cotton; here they charge by the bale.',
  ],
  sides: ['Picked', 'Stripped'],
  numbers: {},
  decides: {
    hardLocks: 'Cotton that is not in hard locks',
    strippersTake: 'Cotton a stripper takes',
    strippedTrash: 'Trash in stripped cotton',
  },
};
