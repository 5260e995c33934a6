import type { QuestionWords } from './question-words.ts';

export const fortyOrEighty: QuestionWords = {
  title: 'Go at 40 percent open, or wait for 80?',
  about: '{farm}: the harvest aid at 40 or at 80 percent open bolls, each in {seasons} of weather.',
  answers: {
    always: [
      'Here it paid to wait for 80 percent.',
      'The farm ends with {money} more on average, from {least} to {most}.',
      'The wait means {lint} {lintWay} lint, and the micronaire {micronaireWay} by {micronaire}. It has a price: in {cheaper} a bale was worth less.',
    ],
    sometimes: [
      'It depends on the weather: waiting paid in {late} of {seasons}.',
      'Waiting for 80 percent left the farm between {least} and {most} against going at 40.',
      'The wait means {lint} {lintWay} lint, and the micronaire {micronaireWay} by {micronaire}; in {cheaper} a bale was worth less.',
    ],
    never: [
      'Here it paid to go at 40 percent.',
      'Waiting costs {money} on average; the difference runs from {least} to {most}.',
      'The wait means {lint} {lintWay} lint, and the micronaire {micronaireWay} by {micronaire}; in {cheaper} a bale was worth less.',
    ],
  },
  limits: [
    'Extension services advise harvest aid at about 60 percent open; 40 and 80 are the two sides of that.',
    'What the aid and a second trip cost is not counted, and a storm that flattens the crop is not modeled.',
  ],
  sides: ['At 40 percent', 'At 80 percent'],
  numbers: {},
  decides: { graying: 'Gray from an inch of rain' },
};
