import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decisionPlaces, withDecision } from '../../src/compare/changed-decisions.ts';
import { compareSeasons } from '../../src/compare/compare-seasons.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import type { Scenario } from '../../src/model/scenario.ts';
import { decodeComparison, encodeComparison } from '../../src/statechart/saved-comparison.ts';
import { propertySeed, runs } from '../laws/runs.ts';

/** A farm with at most eight decisions taken otherwise. */
const aScenario = fc
  .tuple(
    fc.constantFrom(...farms),
    fc.array(fc.tuple(fc.nat(decisionPlaces.length - 1), fc.nat(1000)), { maxLength: 8 }),
  )
  .map(([farm, changes]) =>
    changes.reduce<Scenario>((scenario, [at, number]) => {
      const place = decisionPlaces[at]!;
      const { decision } = place;
      const value =
        decision.kind === 'choice'
          ? decision.options[number % decision.options.length]!
          : decision.kind === 'switch'
            ? number % 2 === 0
            : decision.low +
              (number % (Math.floor((decision.high - decision.low) / decision.step + 1e-9) + 1)) * decision.step;
      return withDecision(scenario, place, value);
    }, farm),
  );
const aRun = fc.record({ scenario: aScenario, seed: fc.integer({ min: 0, max: 999_999 }) });

test('law: a link brings back both seasons, and stays under 300 characters for a few decisions on either side', () => {
  fc.assert(
    fc.property(aRun, aRun, (before, after) => {
      const query = encodeComparison({ before, after });
      expect(`https://a-school-host.example/seamfield/#/compare?${query}`.length).toBeLessThan(300);
      expect(decodeComparison(query)).toEqual({ before, after, ignored: [] });
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('law: a link reopens the same numbers to the last byte', () => {
  fc.assert(
    fc.property(aScenario, fc.integer({ min: 1, max: 50 }), (scenario, seed) => {
      const farm = farms.find(({ id }) => id === scenario.id)!;
      const compared = ({ before, after }: Pick<ReturnType<typeof decodeComparison>, 'before' | 'after'>) =>
        JSON.stringify(
          compareSeasons(runSeason(before.scenario, before.seed, null), runSeason(after.scenario, after.seed, null)),
        );
      const sides = { before: { scenario: farm, seed }, after: { scenario, seed } };
      expect(compared(decodeComparison(encodeComparison(sides)))).toBe(compared(sides));
    }),
    { seed: propertySeed, numRuns: runs(3) },
  );
});

test('law: junk never throws and never opens an unknown farm', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 120 }), (junk) => {
      const { before, after } = decodeComparison(junk);
      for (const { scenario } of [before, after]) expect(farms.map(({ id }) => id)).toContain(scenario.id);
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('junk is named; a missing second season is the farm’s own', () => {
  expect(decodeComparison('v=1&farm=nowhere&seed=2/v=1&farm=river-bottom&seed=2&set=zz00/more').ignored).toEqual([
    'farm=nowhere',
    'set=zz00',
    'more',
  ]);
  const { before, after } = decodeComparison('v=1&farm=river-bottom&seed=9&set=0k03');
  expect(before.scenario.decisions.ginning.lintCleaners).toBe(3);
  expect(after).toEqual({ scenario: farms.find(({ id }) => id === 'river-bottom'), seed: 9 });
});
