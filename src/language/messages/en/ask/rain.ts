import type { QuestionWords } from './question-words.ts';

export const rain: QuestionWords = {
  title: 'What did the rain cost?',
  about: '{farm}: {seasons}, each beside itself without a drop after the first boll opened.',
  answers: {
    always: [
      'About {cost} a season, {share} of what the farm is paid.',
      'In every season the rain on open bolls cost money: from {least} to {most}.',
      'On average {rain} fell on them. It grays the lint and takes some of it: a bale is worth {bale} {baleWay}.',
    ],
    sometimes: [
      'It depends: on average {cost} a season, {share} of what the farm is paid.',
      'The cost runs from {least} to {most}; below nought the rain did more good than harm.',
      'On average {rain} fell on open bolls: a bale is worth {bale} {baleWay}.',
    ],
    never: [
      'Nothing: the rain did more good than harm.',
      'Against a dry autumn the farm is better off in every season; the cost runs from {least} to {most}.',
      'On average {rain} fell on open bolls: a bale is worth {bale} {baleWay}.',
    ],
  },
  limits: [
    'How color follows rain is our assumption, fitted to published averages.',
    'Boll rot, sprouting seed and days a picker cannot run are not priced here.',
  ],
  sides: ['Dry autumn', 'As it rained'],
  numbers: {},
  decides: { graying: 'Gray from an inch of rain', washedOut: 'Lint lost to an inch of rain' },
  compareNote:
    'No decision keeps the sky dry. The link shows what can be decided: waiting three weeks longer with the bolls open.',
};
