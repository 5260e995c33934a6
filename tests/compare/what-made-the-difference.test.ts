import fc from 'fast-check';
import { expect, test } from 'vitest';
import { changedDecisions, decisionPlaces, withDecision } from '../../src/compare/changed-decisions.ts';
import { outcomeDifferences } from '../../src/compare/compare-seasons.ts';
import {
  changesBetween,
  type Run,
  type TakenApart,
  whatMadeTheDifference,
} from '../../src/compare/what-made-the-difference.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf, farms } from '../../src/model/farms.ts';
import type { Scenario } from '../../src/model/scenario.ts';
import { outcomeKeys, seasonOutcomes } from '../../src/model/season-outcomes.ts';
import { long, propertySeed } from '../laws/runs.ts';

const farm = farmOf('coastal-plain')!;

function takeApart(before: Run, after: Run): { apart: TakenApart; seasons: number } {
  const work = whatMadeTheDifference(before, after);
  let seasons = 0;
  for (;;) {
    const step = work.next();
    if (step.done) return { apart: step.value, seasons };
    expect(step.value.done).toBe(++seasons);
    expect(step.value.of).toBeGreaterThanOrEqual(seasons);
  }
}

const outcomesAt = ({ scenario, seed }: Run) => seasonOutcomes(runSeason(scenario, seed, null));

/** The parts and the whole, to within what adding numbers of that size loses. */
function expectToAddUp({ parts, whole }: TakenApart, size: (key: (typeof outcomeKeys)[number]) => number) {
  for (const key of outcomeKeys) {
    const told = parts.map(({ inTurn }) => inTurn[key]);
    if (told.includes(null) || whole[key] === null) continue;
    const sum = told.reduce<number>((all, part) => all + part!, 0);
    expect(Math.abs(sum - whole[key])).toBeLessThanOrEqual(1e-9 * Math.max(1, size(key)));
  }
}

/** A few decisions of the gin and the field taken otherwise. */
const someChanges = fc.record({
  'boll/openPercent': fc.option(fc.constantFrom(40, 80), { nil: null }),
  'harvest/method': fc.option(fc.constantFrom('stripper', 'spindle'), { nil: null }),
  'cleaning/dryers': fc.option(fc.constantFrom(0, 1), { nil: null }),
  'ginning/lintCleaners': fc.option(fc.constantFrom(0, 1, 3), { nil: null }),
  'classing/market': fc.option(fc.constantFrom('westTexas', 'sanJoaquin'), { nil: null }),
});
const changed = (base: Scenario, changes: Record<string, string | number | null>): Scenario =>
  Object.entries(changes).reduce((scenario, [path, value]) => {
    const place = decisionPlaces.find(({ station, key }) => `${station}/${key}` === path)!;
    return value === null ? scenario : withDecision(scenario, place, value);
  }, base);

test('law: the parts in their turn add up to the whole difference, with the same and with other weather', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...farms.filter(({ era }) => era === 'present')),
      someChanges,
      fc.integer({ min: 1, max: 40 }),
      fc.boolean(),
      (each, changes, seed, otherWeather) => {
        const before = { scenario: each, seed };
        const after = { scenario: changed(each, changes), seed: otherWeather ? seed + 1 : seed };
        const { apart, seasons } = takeApart(before, after);
        const [from, to] = [outcomesAt(before), outcomesAt(after)];
        expect(apart.whole).toEqual(outcomeDifferences(from, to));
        expectToAddUp(apart, (key) => Math.max(Math.abs(from[key] ?? 0), Math.abs(to[key] ?? 0)));
        const decided = changedDecisions(each.decisions, after.scenario.decisions).length;
        expect(apart.parts).toHaveLength(decided + (otherWeather ? 1 : 0));
        expect(seasons).toBe(Math.max(1, 2 * apart.parts.length));
      },
    ),
    // Some ten seasons each.
    { seed: propertySeed, numRuns: long ? 30 : 3 },
  );
});

test('each decision alone is that one decision run, and what is left over is told as it is', () => {
  const dry = withDecision(farm, { station: 'cleaning', key: 'dryerAirF' }, 260);
  const both = withDecision(dry, { station: 'ginning', key: 'lintCleaners' }, 3);
  const { apart } = takeApart({ scenario: farm, seed: 5 }, { scenario: both, seed: 5 });
  const base = outcomesAt({ scenario: farm, seed: 5 });
  const cleaners = withDecision(farm, { station: 'ginning', key: 'lintCleaners' }, 3);
  expect(apart.parts.map(({ change }) => ('key' in change ? change.key : ''))).toEqual(['dryerAirF', 'lintCleaners']);
  expect(apart.parts[0]!.alone).toEqual(outcomeDifferences(base, outcomesAt({ scenario: dry, seed: 5 })));
  expect(apart.parts[1]!.alone).toEqual(outcomeDifferences(base, outcomesAt({ scenario: cleaners, seed: 5 })));
  const { shortFibrePercent } = apart.together;
  const alone = apart.parts.reduce((sum, part) => sum + part.alone.shortFibrePercent!, 0);
  expect(shortFibrePercent).toBeCloseTo(apart.whole.shortFibrePercent! - alone, 12);
  // A third cleaner breaks more of cotton that is drier: together they do more than each alone.
  expect(shortFibrePercent).toBeGreaterThan(0);
});

test('one decision has nothing left over, and no decision has no parts', () => {
  const one = withDecision(farm, { station: 'ginning', key: 'lintCleaners' }, 3);
  const { apart } = takeApart({ scenario: farm, seed: 5 }, { scenario: one, seed: 5 });
  for (const key of outcomeKeys) expect(apart.together[key] ?? 0).toBe(0);
  expect(takeApart({ scenario: farm, seed: 5 }, { scenario: farm, seed: 5 }).apart.parts).toEqual([]);
});

const pairsOfFarms = farms.flatMap((one) =>
  farms.filter((other) => other !== one).map((other) => [one, other] as const),
);

test('law: two farms are taken apart too, their land and their weather with what was decided, and the parts add up', () => {
  fc.assert(
    fc.property(fc.constantFrom(...pairsOfFarms), fc.integer({ min: 1, max: 40 }), ([one, other], seed) => {
      const [before, after] = [
        { scenario: one, seed },
        { scenario: other, seed: seed + 1 },
      ];
      const { apart } = takeApart(before, after);
      const [from, to] = [outcomesAt(before), outcomesAt(after)];
      expect(apart.whole).toEqual(outcomeDifferences(from, to));
      expectToAddUp(apart, (key) => Math.max(Math.abs(from[key] ?? 0), Math.abs(to[key] ?? 0)));
      const land = (['era', 'climate', 'acres', 'soilWaterMm'] as const).filter((key) => one[key] !== other[key]);
      const told = apart.parts.flatMap(({ change }) => ('land' in change ? [change.land] : []));
      expect(told).toEqual(land);
      expect(apart.parts).toHaveLength(changesBetween(before, after).length);
    }),
    { seed: propertySeed, numRuns: long ? 10 : 1 },
  );
});

test('a field twice as wide, and nothing else, makes the whole difference and twice the lint', () => {
  const wide = { ...farm, acres: 2 * farm.acres };
  const { apart } = takeApart({ scenario: farm, seed: 5 }, { scenario: wide, seed: 5 });
  expect(apart.parts).toMatchObject([
    { change: { land: 'acres', from: farm.acres, to: 2 * farm.acres }, alone: apart.whole, inTurn: apart.whole },
  ]);
  const once = outcomesAt({ scenario: farm, seed: 5 }).seedCottonKg!;
  expect(apart.whole.seedCottonKg! / once).toBeCloseTo(1, 9);
});

test('land comes before weather and weather before decisions', () => {
  const other = { ...changed(farm, { 'boll/openPercent': 40 }), climate: 'midSouth' as const, soilWaterMm: 90 };
  const changes = changesBetween({ scenario: farm, seed: 1 }, { scenario: other, seed: 2 });
  expect(
    changes.map((change) => ('land' in change ? change.land : 'weather' in change ? 'weather' : change.key)),
  ).toEqual(['climate', 'soilWaterMm', 'weather', 'openPercent']);
});

test('a planted bug is seen: a part left out does not add up', () => {
  const both = changed(farm, { 'boll/openPercent': 40, 'ginning/lintCleaners': 3 });
  const { apart } = takeApart({ scenario: farm, seed: 5 }, { scenario: both, seed: 5 });
  const broken = { ...apart, parts: apart.parts.slice(1) };
  expect(() => expectToAddUp(broken, () => 1)).toThrow();
});
