import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decisionPlaces, withDecision } from '../../../src/compare/changed-decisions.ts';
import { runSeason } from '../../../src/model/chain.ts';
import { farmOf, farms } from '../../../src/model/farms.ts';
import type { Scenario } from '../../../src/model/scenario.ts';
import { seasonOfPupil } from '../../../src/teach/class/class-seasons.ts';
import { kindIds, makeQuestion } from '../../../src/teach/sheets/make-question.ts';
import { levels } from '../../../src/teach/sheets/question.ts';
import { givesQuestions, sheetSeason } from '../../../src/teach/sheets/sheet-season.ts';
import { long, propertySeed } from '../../laws/runs.ts';
import { answersInPrint } from './recompute.ts';

const run = { scenario: farmOf('river-bottom')!, seed: 12 };

test('a pupil’s sheet comes from the season that the class link opens under the pupil’s number', () => {
  for (const pupil of [1, 17]) {
    const { scenario, seed } = seasonOfPupil(run, pupil);
    expect(sheetSeason(pupil, run)).toEqual(runSeason(scenario, seed, null));
  }
  expect(makeQuestion('turnout', 1, 3, 'us', run).given).not.toEqual(makeQuestion('turnout', 1, 3, 'us').given);
});

test('a farm whose cotton the staple chart does not read gives its place to the others, in turn', () => {
  for (const farm of farms.filter((each) => !givesQuestions(each)))
    expect(sheetSeason(5, { scenario: farm, seed: 3 })).toEqual(sheetSeason(5, null));
});

/** A farm with one decision taken to an end of its range, or otherwise. */
const changedFarm = fc
  .tuple(fc.constantFrom(...farms.filter(givesQuestions)), fc.nat(decisionPlaces.length - 1), fc.boolean())
  .map(([farm, at, high]): Scenario => {
    const place = decisionPlaces[at]!;
    const { decision } = place;
    if (decision.kind === 'choice') return withDecision(farm, place, decision.options.at(high ? -1 : 0)!);
    return withDecision(farm, place, decision.kind === 'switch' ? high : high ? decision.high : decision.low);
  });

test('law: whatever the plan’s farm decides, every kind has its question, and its printed answer is worked out again', () => {
  fc.assert(
    fc.property(changedFarm, fc.integer({ min: 1, max: 40 }), (scenario, pupil) => {
      for (const kind of kindIds)
        for (const level of levels) {
          const question = makeQuestion(kind, level, pupil, 'us', { scenario, seed: 7 });
          const { printed, recomputed } = answersInPrint(question, 'en');
          expect(printed, `${kind} ${level}`).toEqual(recomputed);
        }
    }),
    { seed: propertySeed, numRuns: long ? 200 : 8 },
  );
});
