import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decisionPlaces, withDecision } from '../../src/compare/changed-decisions.ts';
import { compareSeasons } from '../../src/compare/compare-seasons.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { farmLimits } from '../../src/model/input-facts.ts';
import { climateIds, type Scenario } from '../../src/model/scenario.ts';
import { decodeComparison, encodeComparison } from '../../src/statechart/saved-comparison.ts';
import { decodeRun, encodeRun, type SavedRun } from '../../src/statechart/saved-run.ts';
import { long, propertySeed, runs } from '../laws/runs.ts';

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
    { seed: propertySeed, numRuns: long ? 30 : 5 },
  );
});

test('law: a link of one’s own land reopens the same numbers to the last byte, and a planted bug is seen', () => {
  const { acres, soilWaterMm } = farmLimits;
  const ownLand = fc.record({
    scenario: aScenario,
    climate: fc.constantFrom(...climateIds),
    // Thousands of acres press thousands of bales, which all go into the text that is compared.
    acres: fc.integer({ min: 10 * acres.low, max: 10 * (long ? acres.high : 80) }).map((tenths) => tenths / 10),
    soilWaterMm: fc.integer({ min: soilWaterMm.low, max: soilWaterMm.high }),
  });
  const numbersOf = ({ scenario, seed }: SavedRun) => {
    // The name stays on the device; the numbers go along.
    const { scenario: _, ...numbers } = runSeason(scenario, seed, null);
    return JSON.stringify(numbers);
  };
  let seen = 0;
  fc.assert(
    fc.property(ownLand, fc.integer({ min: 1, max: 50 }), ({ scenario, ...land }, seed) => {
      const saved = { scenario: { ...scenario, ...land, id: 'own-abcdefgh' }, seed };
      const query = encodeRun(saved);
      const numbers = numbersOf(saved);
      expect(numbersOf(decodeRun(query).run)).toBe(numbers);
      if (numbersOf(decodeRun(query.replace(/seed=\d+/, `seed=${seed + 1}`)).run) !== numbers) seen++;
    }),
    { seed: propertySeed, numRuns: long ? 30 : 5 },
  );
  expect(seen).toBeGreaterThan(0);
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
