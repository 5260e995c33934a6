import type { QuestionWords } from './question-words.ts';

export const goodAndBadYears: QuestionWords = {
  title: 'How far apart are a good year and a bad one?',
  about: '{farm}: nothing decided otherwise, {years} seasons of weather.',
  answers: {
    wide: [
      'The best year paid {times} times what the worst did.',
      'With the same decisions the farm was paid from {worst} to {best}; the middle of the {years} seasons is {middle}.',
      'Season {worstSeed}, the worst, had {worstRain} of rain up to the harvest; season {bestSeed}, the best, had {bestRain}.',
    ],
    narrow: [
      'Not very far: the best year paid {times} times what the worst did.',
      'With the same decisions the farm was paid from {worst} to {best}; the middle of the {years} seasons is {middle}.',
      'Season {worstSeed} had {worstRain} of rain up to the harvest; season {bestSeed} had {bestRain}.',
    ],
    failed: [
      'A bad year can leave nothing.',
      'With the same decisions the farm was paid from {worst} to {best}; the middle of the {years} seasons is {middle}.',
      'Season {worstSeed} had {worstRain} of rain up to the harvest; season {bestSeed} had {bestRain}.',
    ],
  },
  limits: [
    'The price is the same in every season here. In life a short crop can lift it.',
    'On the dry plains the modeled yield can miss the state average by a good part. Hail and sand are not modeled.',
  ],
  sides: ['The worst year', 'The best year'],
  numbers: { yield: 'Lint yield' },
  decides: { thirst: 'Yield lost to thirst' },
};
