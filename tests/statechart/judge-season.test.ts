import { expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import type { Decisions } from '../../src/model/decisions.ts';
import { farmOf, farms } from '../../src/model/farms.ts';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { judgeSeason } from '../../src/statechart/judge-season.ts';

const farm = farmOf('coastal-plain')!;
function judged<Station extends StationId>(
  at: StationId,
  changes: Partial<{ [Key in Station]: Partial<Decisions[Key]> }>,
  base = farm,
) {
  const decisions = { ...base.decisions } as Record<string, object>;
  for (const [station, some] of Object.entries(changes))
    decisions[station] = { ...decisions[station], ...(some as object) };
  return judgeSeason(runSeason({ ...base, decisions: decisions as unknown as Decisions }, 1, null), at);
}

test('nothing holds a default season back, at any station of any farm', () => {
  for (const each of farms) {
    const season = runSeason(each, 1, null);
    for (const station of stationIds) expect(judgeSeason(season, station), `${each.id} ${station}`).toBeNull();
  }
});

test('a crop that failed cannot be left, and says so where it failed', () => {
  const plains = farmOf('high-plains-dryland')!;
  const season = runSeason(
    {
      ...plains,
      decisions: { ...plains.decisions, planting: { ...plains.decisions.planting, plantingDayOfYear: 191 } },
    },
    3,
    null,
  );
  expect(judgeSeason(season, season.stopped!.station)).toMatchObject({ reason: 'cropFailed' });
});

test('too wet to store: picked in the dew and kept for weeks; two days are allowed', () => {
  expect(judged('harvest', { harvest: { moisturePercent: 17 } })).toMatchObject({ reason: 'tooWetToStore' });
  expect(judged('harvest', { harvest: { moisturePercent: 17 }, module: { storageDays: 2 } })).toBeNull();
});

test('a yarn out of reach names the nearest that can be spun', () => {
  const refusal = judged('spinning', { spinning: { countNe: 120 } });
  expect(refusal).toMatchObject({ reason: 'yarnOutOfReach', values: { count: 120 } });
  expect(judged('spinning', { spinning: { countNe: refusal!.values.limit! } })).toBeNull();
});

test('a sett too high is refused at the loom only', () => {
  const tight = { spinning: { countNe: 8 }, weaving: { endsPerInch: 220, picksPerInch: 200 } } as const;
  expect(judged('weaving', tight)).toMatchObject({ reason: 'settTooHigh' });
  expect(judged('spinning', tight)).toBeNull();
});

test('a machine is not sent in before half the bolls are open; hands may begin earlier', () => {
  const early = { boll: { harvestAid: false, openPercent: 25 }, harvest: { daysToHarvest: 0 } } as const;
  expect(judged('boll', early)).toMatchObject({ reason: 'notEnoughBollsOpen', values: { needed: 50 } });
  expect(judged('boll', { ...early, harvest: { daysToHarvest: 0, method: 'hand', pickings: 2 } })).toBeNull();
});
