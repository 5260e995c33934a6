import { byHand } from './by-hand.ts';
import { fortyOrEighty } from './forty-or-eighty.ts';
import { goodAndBadYears } from './good-and-bad-years.ts';
import { oneStaple } from './one-staple.ts';
import type { Question } from './question.ts';
import { rain } from './rain.ts';
import { sawOrRoller } from './saw-or-roller.ts';
import { seedAndLint } from './seed-and-lint.ts';
import { stripperOrPicker } from './stripper-or-picker.ts';
import { thirdLintCleaning } from './third-lint-cleaning.ts';
import { wetModule } from './wet-module.ts';
import { whereTheSeedGoes } from './where-the-seed-goes.ts';
import { whoGetsTheMoney } from './who-gets-the-money.ts';

/** Every prepared question, in the order in which a season meets the matter. */
export const allQuestions: readonly Question[] = [
  goodAndBadYears,
  fortyOrEighty,
  rain,
  stripperOrPicker,
  byHand,
  wetModule,
  seedAndLint,
  sawOrRoller,
  thirdLintCleaning,
  whereTheSeedGoes,
  whoGetsTheMoney,
  oneStaple,
];

export const questionOf = (id: string): Question | undefined => allQuestions.find((question) => question.id === id);
