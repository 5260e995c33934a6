import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import { summariseGin } from '../../src/model/gin/byproducts.ts';
import { chainLedger, closingErrorRelative } from '../../src/model/ledger.ts';
import { totalDryKg } from '../../src/model/lot.ts';
import type { Scenario } from '../../src/model/scenario.ts';

describe.each(farms)('$id', (farm) => {
  const season = runSeason(farm, 1, null);

  test('runs from planter to sewing table', () => {
    expect(season.stopped).toBeNull();
    expect(season.ledgers.map(({ station }) => station)).toEqual([
      'harvest',
      'module',
      'cleaning',
      'ginning',
      'pressing',
      'classing',
      'spinning',
      'weaving',
      'sewing',
    ]);
  });

  test('every station and the whole chain close to 1e-9', () => {
    for (const ledger of season.ledgers) expect(closingErrorRelative(ledger)).toBeLessThan(1e-9);
    expect(closingErrorRelative(chainLedger(season.ledgers))).toBeLessThan(1e-9);
  });

  test('each station receives exactly the lot that the one before it sent on', () => {
    for (const [index, ledger] of season.ledgers.entries()) {
      const next = season.ledgers[index + 1];
      if (!next) continue;
      const sent = ledger.out.find(({ account }) => account === 'lot')!;
      const received = next.in.find(({ account }) => account === 'lot')!;
      expect(received.dryKg).toEqual(sent.dryKg);
      expect(received.waterKg).toBe(sent.waterKg);
    }
  });

  test('the same seed gives byte-equal numbers, another seed another season', () => {
    const text = JSON.stringify(season);
    expect(JSON.stringify(runSeason(farm, 1, null))).toBe(text);
    expect(JSON.stringify(runSeason(farm, 2, null))).not.toBe(text);
  });

  test('bales weigh what was pressed', () => {
    const pressed = season.ledgers.find(({ station }) => station === 'pressing')!;
    const out = pressed.out.find(({ account }) => account === 'lot')!;
    const net = season.pressing!.bales.reduce((sum, bale) => sum + bale.netKg, 0);
    expect(net / (totalDryKg(out.dryKg) + out.waterKg)).toBeCloseTo(1, 9);
  });
});

test('changing the gin changes neither the weather nor the field', () => {
  const farm = farms[0]!;
  const other: Scenario = {
    ...farm,
    decisions: { ...farm.decisions, ginning: { ...farm.decisions.ginning, lintCleaners: 0 } },
  };
  const [a, b] = [runSeason(farm, 5, null), runSeason(other, 5, null)];
  expect(b.weather).toEqual(a.weather);
  expect(b.field).toEqual(a.field);
  expect(b.harvest).toEqual(a.harvest);
  expect(b.ginning).not.toEqual(a.ginning);
});

test('a yarn out of reach stops at the mill with the bales as they were, and the ledger still closes', () => {
  const farm = farms[0]!;
  const season = runSeason(
    { ...farm, decisions: { ...farm.decisions, spinning: { ...farm.decisions.spinning, countNe: 120 } } },
    1,
    null,
  );
  expect(season.stopped).toMatchObject({ station: 'spinning', reason: 'fibresInSection' });
  expect(season.weaving).toBeNull();
  const whole = chainLedger(season.ledgers);
  expect(whole.out.some(({ account }) => account === 'bale')).toBe(true);
  expect(closingErrorRelative(whole)).toBeLessThan(1e-9);
});

test('a sett that does not fit stops at the loom with the yarn as it was', () => {
  const farm = farms[0]!;
  const weaving = { ...farm.decisions.weaving, endsPerInch: 220, picksPerInch: 200 };
  const season = runSeason(
    { ...farm, decisions: { ...farm.decisions, spinning: { ...farm.decisions.spinning, countNe: 8 }, weaving } },
    1,
    null,
  );
  expect(season.stopped).toMatchObject({ station: 'weaving', reason: 'settTooHigh' });
  const whole = chainLedger(season.ledgers);
  expect(whole.out.some(({ account }) => account === 'yarn')).toBe(true);
  expect(closingErrorRelative(whole)).toBeLessThan(1e-9);
});

test('planted in July on the plains, a crop may fail: a result with nothing after it', () => {
  const plains = farms.find(({ id }) => id === 'high-plains-dryland')!;
  const planting = { ...plains.decisions.planting, plantingDayOfYear: 191 };
  const season = runSeason({ ...plains, decisions: { ...plains.decisions, planting } }, 3, null);
  expect(season.stopped?.dd60).toBeGreaterThan(0);
  expect(season.harvest).toBeNull();
  expect(season.ledgers).toEqual([]);
});

test('turnout of the default picked farm is 33 to 42 %, of the stripped one 22 to 34 %', () => {
  const turnout = (id: string) => {
    const season = runSeason(farms.find((farm) => farm.id === id)!, 1, null);
    return summariseGin(season.cleaning!.ledger, season.ginning!.ledger, season.pressing!.ledger).turnout;
  };
  expect(turnout('coastal-plain')).toBeGreaterThan(0.33);
  expect(turnout('coastal-plain')).toBeLessThan(0.42);
  expect(turnout('high-plains-dryland')).toBeGreaterThan(0.22);
  expect(turnout('high-plains-dryland')).toBeLessThan(0.34);
});
