import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { type Decision, type Decisions, decisionTable } from '../../src/model/decisions.ts';
import { farms } from '../../src/model/farms.ts';
import { chainLedger, closingErrorRelative, countErrorRelative, type MassLedger } from '../../src/model/ledger.ts';
import { climateIds, eras, type Scenario } from '../../src/model/scenario.ts';
import { stationIds } from '../../src/model/station.ts';
import { long, patience, propertySeed } from './runs.ts';

/** Any legal value of a decision, in whole steps: never a random real number. */
const anyValue = (decision: Decision): fc.Arbitrary<number | string | boolean> =>
  decision.kind === 'choice'
    ? fc.constantFrom(...decision.options)
    : decision.kind === 'switch'
      ? fc.boolean()
      : fc
          .integer({ min: 0, max: Math.round((decision.high - decision.low) / decision.step) })
          .map((step) => decision.low + step * decision.step);

const anyDecisions = fc.record(
  Object.fromEntries(
    stationIds.map((station) => [
      station,
      fc.record(Object.fromEntries(Object.entries(decisionTable[station]).map(([key, d]) => [key, anyValue(d)]))),
    ]),
  ),
) as unknown as fc.Arbitrary<Decisions>;

const anyScenario: fc.Arbitrary<Scenario> = fc.record({
  version: fc.constant(1 as const),
  id: fc.constant('any-farm'),
  name: fc.constant({ en: 'Any', es: 'Cualquiera' }),
  story: fc.constant({ en: '', es: '' }),
  climate: fc.constantFrom(...climateIds),
  era: fc.constantFrom(...eras),
  // The largest farms press thousands of bales each and cost as much time as fifty common ones: a tenth of the draws.
  acres: fc.oneof(
    { weight: 9, arbitrary: fc.integer({ min: 1, max: 300 }) },
    { weight: 1, arbitrary: fc.integer({ min: 301, max: long ? 5000 : 1000 }) },
  ),
  soilWaterMm: fc.integer({ min: 50, max: 250 }),
  decisions: anyDecisions,
});
const anySeed = fc.integer({ min: 0, max: 999_999 });
const options = (numRuns: number) => ({ seed: propertySeed, numRuns, endOnFailure: true });

/** The law itself, given a way to run a season: ledgers close, counts close, nothing negative or endless. */
function conserves(scenario: Scenario, seed: number, run: typeof runSeason = runSeason): void {
  const season = run(scenario, seed, null);
  for (const counts of season.field.counts) expect(countErrorRelative(counts)).toBeLessThan(1e-9);
  for (const ledger of season.ledgers) {
    expect(closingErrorRelative(ledger)).toBeLessThan(1e-9);
    const masses = [...ledger.in, ...ledger.out].flatMap(({ dryKg, waterKg }) => [...Object.values(dryKg), waterKg]);
    expect(masses.filter((kg) => !Number.isFinite(kg) || kg < 0)).toEqual([]);
  }
  expect(closingErrorRelative(chainLedger(season.ledgers))).toBeLessThan(1e-9);
}

test(
  'law: for any legal farm, decisions and seed, every station and the chain close to 1e-9, with no negative stream',
  () => {
    fc.assert(
      fc.property(anyScenario, anySeed, (scenario, seed) => conserves(scenario, seed)),
      options(long ? 1500 : 40),
    );
  },
  patience,
);

test(
  'law: the same scenario and seed give byte-equal seasons',
  () => {
    fc.assert(
      fc.property(anyScenario, anySeed, (scenario, seed) => {
        expect(JSON.stringify(runSeason(scenario, seed, null))).toBe(JSON.stringify(runSeason(scenario, seed, null)));
      }),
      options(long ? 200 : 8),
    );
  },
  patience,
);

test(
  'law: a decision never changes what came before its station',
  () => {
    const later = stationIds.slice(4);
    fc.assert(
      fc.property(anyScenario, anyDecisions, anySeed, (scenario, other, seed) => {
        const decisions = { ...scenario.decisions } as Record<string, unknown>;
        for (const station of later) decisions[station] = other[station];
        const a = runSeason(scenario, seed, null);
        const b = runSeason({ ...scenario, decisions: decisions as unknown as Decisions }, seed, null);
        // As text: hundreds of days with tens of numbers each are quick to write and slow to compare one by one.
        expect(JSON.stringify([b.field, b.harvest])).toBe(JSON.stringify([a.field, a.harvest]));
      }),
      options(long ? 200 : 8),
    );
  },
  patience,
);

/** A season with one ledger tampered with. */
const tampered =
  (tamper: (ledger: MassLedger) => MassLedger): typeof runSeason =>
  (scenario, seed, record) => {
    const season = runSeason(scenario, seed, record);
    return { ...season, ledgers: season.ledgers.map(tamper) };
  };

test('planted bugs are seen: a lost millionth of lint, a part that comes from nowhere, a lot handed on twice', () => {
  const scenario = farms[0]!;
  conserves(scenario, 1);
  const scaleLint = (factor: number) =>
    tampered((ledger) => ({
      ...ledger,
      out: ledger.out.map((entry) => ({ ...entry, dryKg: { ...entry.dryKg, lint: entry.dryKg.lint * factor } })),
    }));
  expect(() => conserves(scenario, 1, scaleLint(1 - 1e-6))).toThrow();
  const dirtFromNowhere = tampered((ledger) => ({
    ...ledger,
    out: ledger.out.map((entry) => ({ ...entry, dryKg: { ...entry.dryKg, size: entry.dryKg.size + 1 } })),
  }));
  expect(() => conserves(scenario, 1, dirtFromNowhere)).toThrow();
  const twice = tampered((ledger) =>
    ledger.station === 'ginning' ? { ...ledger, in: ledger.in.map(doubled), out: ledger.out.map(doubled) } : ledger,
  );
  expect(() => conserves(scenario, 1, twice)).toThrow();
});

/** Every mass of an entry twice: the ledger of its own station still closes, the chain does not. */
function doubled<Entry extends MassLedger['in'][number] | MassLedger['out'][number]>(entry: Entry): Entry {
  const dryKg = Object.fromEntries(Object.entries(entry.dryKg).map(([part, kg]) => [part, kg * 2]));
  return { ...entry, dryKg: dryKg as typeof entry.dryKg, waterKg: entry.waterKg * 2 };
}
