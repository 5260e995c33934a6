import type { QuestionWords } from './question-words.ts';

export const seedAndLint: QuestionWords = {
  title: 'Why does cotton stick to the seed?',
  about: '{farm}, season 1: one crop through a saw stand and through a roller stand.',
  answers: {
    sawBreaksMore: [
      'Because it grows there: some {fibres} fibers on one seed, each a cell of its skin.',
      'Together they weigh {milligrams} milligrams. A gin does not unglue them, it tears them off; {onSeed} of the lint stays on the seed.',
      'Tearing breaks some: short fiber is {before} before the stand, {behindSaw} behind saws and {behindRoller} behind a roller, with the lint at {moisture} moisture.',
    ],
    rollerBreaksMore: [
      'Because it grows there: some {fibres} fibers on one seed, each a cell of its skin.',
      'Together they weigh {milligrams} milligrams. A gin does not unglue them, it tears them off; {onSeed} of the lint stays on the seed.',
      'Tearing breaks some: short fiber is {before} before the stand, {behindSaw} behind saws and, more, {behindRoller} behind a roller, at {moisture} moisture.',
    ],
  },
  limits: [
    'The model holds no force for one fiber: it has what comes off, what stays on and what breaks.',
    'That a fiber is one cell of the seed’s skin is plain botany, from memory.',
    'Upland is seldom roller ginned; the comparison shows the two ways of taking hold.',
  ],
  sides: ['Saw', 'Roller'],
  numbers: { standMoisture: 'Moisture of the lint in the stand' },
  decides: {
    fibresPerSeed: 'Fibers on one seed',
    sawBreaks: 'Fibers broken by the gin saws',
    rollerBreaks: 'Fibers broken by the roller gin',
  },
};
