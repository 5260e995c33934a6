import type { PluralForms } from '../../fill.ts';
import { byHand } from './ask/by-hand.ts';
import { fortyOrEighty } from './ask/forty-or-eighty.ts';
import { goodAndBadYears } from './ask/good-and-bad-years.ts';
import { oneStaple } from './ask/one-staple.ts';
import type { QuestionWords } from './ask/question-words.ts';
import { rain } from './ask/rain.ts';
import { sawOrRoller } from './ask/saw-or-roller.ts';
import { seedAndLint } from './ask/seed-and-lint.ts';
import { stripperOrPicker } from './ask/stripper-or-picker.ts';
import { thirdLintCleaning } from './ask/third-lint-cleaning.ts';
import { wetModule } from './ask/wet-module.ts';
import { whereTheSeedGoes } from './ask/where-the-seed-goes.ts';
import { whoGetsTheMoney } from './ask/who-gets-the-money.ts';

/** The words of the prepared questions. They come with their page, so that the first view need not carry them. */
export const ask = {
  title: 'Questions people ask',
  lead: 'Each answer is worked out here, from the model, on an invented farm. Where nobody printed a number that decides it, the page says so.',
  all: 'All the questions',
  unknown: 'There is no question by that name. These are the ones there are:',
  working: '{done} of {of} seasons run',
  answer: 'The answer',
  numbers: 'The numbers',
  numbersNote: 'Shown: {seasons}. Each number opens how it was come by.',
  oneSeason: 'season {seed}',
  every: { heading: 'Season by season', season: 'Season', difference: 'Difference', mean: 'Mean difference' },
  decides: 'What decides it',
  decidesNote: 'Numbers of the model that the answer hangs on, and how sure each is.',
  range: 'from {low} to {high}',
  limits: 'What this leaves out',
  invented: 'The farm and its weather are invented; the season number makes the weather.',
  compare: 'Set the two seasons side by side',
  season: 'Open this season at {station}',
  counts: {
    bale: { one: 'one bale', other: '{n} bales' },
    season: { one: 'one season', other: '{n} seasons' },
    leafGrade: { one: '{n} grade', other: '{n} grades' },
    personDay: { one: '{n} day', other: '{n} days' },
    market: { one: 'one market', other: '{n} markets' },
    minute: { one: 'one minute', other: '{n} minutes' },
  } as Record<'bale' | 'season' | 'leafGrade' | 'personDay' | 'market' | 'minute', PluralForms>,
  ways: {
    amount: { up: 'more', down: 'less', same: 'more' },
    grade: { up: 'better', down: 'worse', same: 'better' },
    move: { up: 'rises', down: 'falls', same: 'rises' },
    length: { up: 'longer', down: 'shorter', same: 'no longer' },
  },
  /** Lines of the tables that several questions share. */
  lines: {
    left: 'Paid to the farm, before the costs of growing',
    lintUsd: 'Value of the lint',
    lintPerBale: 'Lint, a bale',
    seedPerBale: 'Seed, a bale',
    ginningPerBale: 'Ginning, a bale',
    classingPerBale: 'Classing, a bale',
    pickingPerBale: 'Picking, a bale',
    leftPerBale: 'Paid to the farm, a bale',
    bales: 'Bales',
    turnout: 'Turnout',
    colour: 'Color of most bales',
    leaf: 'Leaf grade of most bales',
    staple: 'Staple of most bales',
    foreignMatter: 'Leaf, burs, sticks and dirt in the seed cotton',
    weathered: 'Lost to weather',
    leftInField: 'Left in the field',
    personDays: 'Days of picking, one person',
    machineHours: 'Hours of the machine',
    moisture: 'Moisture when it reached the gin',
    yellowing: 'Yellowing in storage',
    hottestCore: 'Warmest at the core',
    patch: 'Patch from one boll',
    shortFibre: 'Short fiber in the bale',
    length: 'Fiber length in the bale',
    micronaire: 'Micronaire',
  } as Record<string, string>,
  questions: {
    'good-and-bad-years': goodAndBadYears,
    'forty-or-eighty': fortyOrEighty,
    rain,
    'stripper-or-picker': stripperOrPicker,
    'by-hand': byHand,
    'wet-module': wetModule,
    'seed-and-lint': seedAndLint,
    'saw-or-roller': sawOrRoller,
    'third-lint-cleaning': thirdLintCleaning,
    'where-the-seed-goes': whereTheSeedGoes,
    'who-gets-the-money': whoGetsTheMoney,
    'one-staple': oneStaple,
  } as Record<string, QuestionWords>,
};
