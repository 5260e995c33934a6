import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Decision, type Decisions, decisionTable } from '../../src/model/decisions.ts';
import { farms } from '../../src/model/farms.ts';
import { farmLimits } from '../../src/model/input-facts.ts';
import { checkScenario, climateIds, eras } from '../../src/model/scenario.ts';
import { stationIds } from '../../src/model/station.ts';
import { decodeRun, encodeRun, nearestFarm } from '../../src/statechart/saved-run.ts';
import { propertySeed, runs } from '../laws/runs.ts';

const anyValue = (decision: Decision): fc.Arbitrary<number | string | boolean> =>
  decision.kind === 'choice'
    ? fc.constantFrom(...decision.options)
    : decision.kind === 'switch'
      ? fc.boolean()
      : fc
          .integer({ min: 0, max: Math.floor((decision.high - decision.low) / decision.step + 1e-9) })
          .map((step) => decision.low + step * decision.step);

const anyDecisions = fc.record(
  Object.fromEntries(
    stationIds.map((station) => [
      station,
      fc.record(Object.fromEntries(Object.entries(decisionTable[station]).map(([key, d]) => [key, anyValue(d)]))),
    ]),
  ),
) as unknown as fc.Arbitrary<Decisions>;

test('law: a link brings back farm, seed and every decision, under 300 characters', () => {
  fc.assert(
    fc.property(
      anyDecisions,
      fc.constantFrom(...farms),
      fc.integer({ min: 0, max: 999_999 }),
      (decisions, farm, seed) => {
        const scenario = { ...farm, decisions };
        const query = encodeRun({ scenario, seed });
        expect(`https://a-school-host.example/seamfield/#/season/ginning?${query}`.length).toBeLessThan(300);
        const { run, ignored } = decodeRun(query);
        expect(ignored).toEqual([]);
        expect(run).toEqual({ scenario, seed });
      },
    ),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

const anyNumber = (low: number, high: number, scale: number) =>
  fc.integer({ min: low * scale, max: high * scale }).map((value) => value / scale);

test('law: a link brings back a farm of one’s own but for its name, under 300 characters', () => {
  const { acres, soilWaterMm } = farmLimits;
  const anyFarm = fc.record({
    farm: fc.constantFrom(...farms),
    decisions: anyDecisions,
    climate: fc.constantFrom(...climateIds),
    era: fc.constantFrom(...eras),
    acres: anyNumber(acres.low, acres.high, 10),
    soilWaterMm: anyNumber(soilWaterMm.low, soilWaterMm.high, 10),
  });
  const anyRun = fc.record({
    own: anyFarm,
    seed: fc.integer({ min: 0, max: 999_999 }),
    weather: fc.boolean(),
    predict: fc.boolean(),
  });
  fc.assert(
    fc.property(anyRun, ({ own: { farm, ...rest }, seed, weather, predict }) => {
      const scenario = { ...farm, ...rest, id: 'own-abcdefgh' };
      const saved = {
        scenario,
        seed,
        ...(weather ? { weather: '1z141z3' } : {}),
        ...(predict ? { predict: true as const } : {}),
      };
      const query = encodeRun(saved);
      expect(`https://a-school-host.example/seamfield/#/season/ginning?${query}`.length).toBeLessThan(300);
      const { run, ignored } = decodeRun(query);
      expect(ignored).toEqual([]);
      const { name, story } = nearestFarm(scenario);
      expect(run).toEqual({ ...saved, scenario: { ...scenario, name, story } });
      expect(checkScenario(run.scenario).ok).toBe(true);
    }),
    { seed: propertySeed, numRuns: runs(500) },
  );
});

test('links of the six farms are as they always were', () => {
  const changed = { ...farms[1]!, decisions: { ...farms[1]!.decisions, boll: { harvestAid: false, openPercent: 20 } } };
  expect(encodeRun({ scenario: farms[0]!, seed: 7 })).toBe('v=1&farm=coastal-plain&seed=7');
  expect(encodeRun({ scenario: changed, seed: 12 })).toBe('v=1&farm=river-bottom&seed=12&set=05000600');
});

test('a link that asks first is the same link with one more piece; any other value of it is left out and named', () => {
  const saved = { scenario: farms[2]!, seed: 5 };
  expect(encodeRun({ ...saved, predict: true })).toBe(`${encodeRun(saved)}&predict=1`);
  expect(decodeRun(`${encodeRun(saved)}&predict=1`)).toEqual({ run: { ...saved, predict: true }, ignored: [] });
  expect(decodeRun(`${encodeRun(saved)}&predict=yes`)).toEqual({ run: saved, ignored: ['predict=yes'] });
});

test('land, ids and weather that cannot be are left out and named', () => {
  const junk = 'v=1&farm=coastal-plain&land=9---&own=Not%20One&weather=%3Cb%3E';
  expect(decodeRun(junk)).toEqual({
    run: { scenario: farms[0], seed: 1 },
    ignored: ['land=9---', 'own=Not One', 'weather=<b>'],
  });
  expect(decodeRun('v=1&land=--0-&own=river-bottom').ignored).toEqual(['land=--0-', 'own=river-bottom']);
});

test('law: junk never throws, never gives an illegal scenario, and is named', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 80 }), fc.string({ maxLength: 80 }), (farm, set) => {
      const { run } = decodeRun(
        `v=1&farm=${encodeURIComponent(farm)}&seed=${encodeURIComponent(set)}&set=${encodeURIComponent(set)}`,
      );
      expect(checkScenario(run.scenario).ok).toBe(true);
    }),
    { seed: propertySeed, numRuns: runs(1000) },
  );
  expect(decodeRun('v=9&farm=nowhere&seed=-4&set=zz00').ignored).toEqual([
    'v=9',
    'farm=nowhere',
    'seed=-4',
    'set=zz00',
  ]);
  expect(decodeRun('').run).toEqual({ scenario: farms[0], seed: 1 });
});

test('a planted bug is seen: a link that drops a decision does not come back the same', () => {
  const farm = farms[0]!;
  const scenario = {
    ...farm,
    decisions: { ...farm.decisions, ginning: { ...farm.decisions.ginning, lintCleaners: 0 } },
  };
  const dropped = encodeRun({ scenario, seed: 3 }).replace(/&set=.*/, '');
  expect(decodeRun(dropped).run).not.toEqual({ scenario, seed: 3 });
});

test('an unknown name in the link is left out and named', () => {
  expect(decodeRun('v=1&farm=coastal-plain&seed=2&colour=blue').ignored).toEqual(['colour=blue']);
});
