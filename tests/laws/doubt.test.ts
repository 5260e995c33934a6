import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubtSeason } from '../../src/doubt/doubt-season.ts';
import { type Move, withFactsMoved } from '../../src/doubt/move-facts.ts';
import { outcomeNames, outcomesOf } from '../../src/doubt/outcomes.ts';
import { drawValue, type SampleInput, sampleSeasons } from '../../src/doubt/sample-seasons.ts';
import { sortUnsureFacts } from '../../src/doubt/uncertain-facts.ts';
import { runSeason } from '../../src/model/chain.ts';
import type { Fact } from '../../src/model/fact.ts';
import { allFacts } from '../../src/model/fact-list.ts';
import { farms } from '../../src/model/farms.ts';
import { chainLedger, closingErrorRelative } from '../../src/model/ledger.ts';
import { openStream } from '../../src/model/random.ts';
import { long, patience, propertySeed, runs } from './runs.ts';

// Each case is a handful of seasons.
const settings = { seed: propertySeed, numRuns: long ? 200 : 8 };
const cases = fc.record({
  scenario: fc.constantFrom(...farms),
  masterSeed: fc.nat({ max: 999_999 }),
  count: fc.integer({ min: 1, max: 3 }),
});
const { moved } = sortUnsureFacts();
const facts = allFacts().map(({ fact }) => fact);
const valuesNow = () => facts.map(({ value }) => value);
/** Facts that are not at the value they had, by their place: compared by hand, since there are thousands. */
const movedSince = (before: readonly number[]) => facts.flatMap(({ value }, i) => (value === before[i] ? [] : [i]));
type Sample = (input: SampleInput) => Iterable<unknown>;

/** Every fact stands at its old value after a run, and also when a run is given up in the middle. */
const nothingLeaks = (sample: Sample) =>
  fc.assert(
    fc.property(cases, ({ scenario, masterSeed, count }) => {
      const before = valuesNow();
      for (const _ of sample({ scenario, record: null, masterSeed, count: count + 1 })) {
        expect(movedSince(before)).toEqual([]);
        if (--count === 0) break;
      }
      expect(movedSince(before)).toEqual([]);
    }),
    settings,
  );

/** The same master seed gives the same seasons to the last byte, another one others; more seasons begin with the same. */
const repeats = (sample: Sample) =>
  fc.assert(
    fc.property(cases, ({ scenario, masterSeed, count }) => {
      const text = (seed: number, n: number) =>
        JSON.stringify([...sample({ scenario, record: null, masterSeed: seed, count: n })]);
      const first = text(masterSeed, count);
      expect(text(masterSeed, count)).toBe(first);
      expect(text(masterSeed, count + 1).startsWith(first.slice(0, -1))).toBe(true);
      expect(text(masterSeed + 1, count)).not.toBe(first);
    }),
    settings,
  );

/** A value drawn lies in the range, whole where things are counted. */
const staysInRange = (draw: typeof drawValue) =>
  fc.assert(
    fc.property(fc.constantFrom(...moved), fc.nat(), (unsure, seed) => {
      const value = draw(unsure, openStream(seed, 'doubt'));
      expect(value).toBeGreaterThanOrEqual(unsure.fact.range[0]);
      expect(value).toBeLessThanOrEqual(unsure.fact.range[1]);
      if (unsure.whole) expect(Number.isInteger(value)).toBe(true);
    }),
    { seed: propertySeed, numRuns: runs(5000) },
  );

/** Wherever the unsure facts lie in their ranges, a season can be computed, its numbers are numbers and its ledger closes. */
const anyValuesWillDo = (draw: typeof drawValue) =>
  fc.assert(
    fc.property(fc.constantFrom(...farms), fc.nat({ max: 999_999 }), (scenario, seed) => {
      const random = openStream(seed, 'doubt');
      const moves = moved.map((unsure): Move => ({ fact: unsure.fact, to: draw(unsure, random) }));
      const season = withFactsMoved(moves, () => runSeason(scenario, seed, null));
      for (const value of Object.values(outcomesOf(season)))
        if (value !== null) expect(Number.isFinite(value)).toBe(true);
      if (season.ledgers.length > 0) expect(closingErrorRelative(chainLedger(season.ledgers))).toBeLessThan(1e-9);
    }),
    { seed: propertySeed, numRuns: long ? 1000 : 30 },
  );

describe('laws of doubt', () => {
  test('after a run, finished or not, every fact has its old value', () => nothingLeaks(sampleSeasons));
  test('the same master seed gives the same seasons to the byte', () => repeats(sampleSeasons));
  test('values drawn lie in their ranges', () => staysInRange(drawValue));
  test('wherever the facts lie in their ranges, the season computes and its ledger closes', () =>
    anyValuesWillDo(drawValue));
  test(
    'the whole of the doubt is the same again, byte for byte, and leaves nothing behind',
    () => {
      const before = valuesNow();
      // Every fact that a season reads is moved twice: some four hundred seasons, quick where few bales are pressed.
      const scenario = long ? farms[0]! : { ...farms[0]!, acres: 2 };
      const run = () => {
        const steps = doubtSeason({ scenario, seed: 11, record: null, count: 3 }, long ? 8 : 4);
        for (;;) {
          const step = steps.next();
          if (step.done) return JSON.stringify(step.value);
        }
      };
      expect(run()).toBe(run());
      expect(movedSince(before)).toEqual([]);
    },
    patience,
  );
});

describe('each law is seen to fail', () => {
  test('on a run that leaves a fact moved', () => {
    const { fact } = moved[0]!;
    const { value } = fact;
    const leaky: Sample = (input) => {
      (fact as { value: number }).value = value + 1;
      return sampleSeasons(input);
    };
    expect(() => nothingLeaks(leaky)).toThrow();
    (fact as { value: number }).value = value;
  });
  test('on seasons that remember the run before', () => {
    let calls = 0;
    expect(() => repeats((input) => sampleSeasons({ ...input, masterSeed: input.masterSeed + calls++ }))).toThrow();
  });
  test('on a draw beyond the range', () => {
    expect(() => staysInRange((unsure, random) => 2 * drawValue(unsure, random) + 1)).toThrow();
  });
  test('on a draw of halves where things are counted', () => {
    expect(() => staysInRange((unsure, random) => drawValue({ ...unsure, whole: false }, random))).toThrow();
  });
  test('on values far beyond their ranges', () => {
    expect(() => anyValuesWillDo((unsure, random) => 40 * drawValue(unsure, random))).toThrow();
  });
});

test('what a fact is moved to reaches the season: ten per cent more of what a field can bear is more cotton', () => {
  const fact: Fact = moved.find(({ names }) =>
    names.includes('field/climate-facts.climateLevers.coastalPlain.capacityLintLbPerAcre'),
  )!.fact;
  const yieldAt = (to: number) =>
    withFactsMoved([{ fact, to }], () => outcomesOf(runSeason(farms[0]!, 3, null))[outcomeNames[0]]);
  expect(yieldAt(fact.value * 1.1)).toBeGreaterThan(yieldAt(fact.value));
});
