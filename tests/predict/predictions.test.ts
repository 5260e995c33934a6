import { describe, expect, test } from 'vitest';
import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import type { MassEntry } from '../../src/model/ledger.ts';
import type { Season } from '../../src/model/season.ts';
import { type StationId, stationIds } from '../../src/model/station.ts';
import { predictions } from '../../src/predict/predictions.ts';

const seasons = farms.flatMap((farm) => [1, 2].map((seed) => [farm.id, seed, runSeason(farm, seed, null)] as const));

/** Everything in a ledger's line with its water, added up here part by part, kg. */
const weight = ({ dryKg, waterKg }: MassEntry): number => Object.values(dryKg).reduce((sum, kg) => sum + kg, waterKg);
const line = (season: Season, station: StationId, side: 'in' | 'out', account: string): MassEntry => {
  const found = season.ledgers.find((ledger) => ledger.station === station)?.[side].find((e) => e.account === account);
  if (!found) throw new Error(`${station} has no ${account}`);
  return found;
};

/** Each answer by another way than the one it comes by: from ledgers, days and pieces of the season. */
const otherWay: Readonly<Record<StationId, (season: Season) => number>> = {
  // An acre is 43,560 square feet (NIST Handbook 44); a row of r inches makes 43,560 * 12 / r feet of row.
  planting: ({ field, scenario }) => {
    const { rowInches, seedsPerFoot } = scenario.decisions.planting;
    return (100 * field.plantsPerAcre) / (((43_560 * 12) / rowInches) * seedsPerFoot);
  },
  bloom: ({ field }) => {
    const boll = field.counts.find(({ station }) => station === 'boll')!;
    const rest = boll.shares.filter(({ name }) => name !== 'bollsShed').reduce((sum, { count }) => sum + count, 0);
    return 100 * (1 - rest / boll.whole.count);
  },
  boll: ({ field }) => {
    const flowering = field.days.findIndex(({ dayOfYear }) => dayOfYear === field.events.firstFlower);
    return field.days.findIndex(({ dayOfYear }) => dayOfYear === field.events.firstOpenBoll) - flowering;
  },
  // Lint and seed of a boll are gathered or left together, so the lint alone tells as much.
  harvest: (season) =>
    (100 * line(season, 'harvest', 'out', 'leftInField').dryKg.lint) /
    line(season, 'harvest', 'in', 'grown').dryKg.lint,
  module: ({ module }) => module!.coreTemperatureF.map(({ f }) => f).sort((a, b) => b - a)[0]!,
  cleaning: (season) => {
    const trash = ({ dryKg }: MassEntry) => dryKg.burs + dryKg.sticks + dryKg.leaf + dryKg.motes + dryKg.dirt;
    const [came, went] = [line(season, 'cleaning', 'in', 'lot'), line(season, 'cleaning', 'out', 'lot')];
    return 100 * (1 - trash(went) / trash(came));
  },
  ginning: (season) =>
    (100 * weight(line(season, 'ginning', 'out', 'seedHouse'))) / weight(line(season, 'cleaning', 'in', 'lot')),
  pressing: ({ classing }) => classing!.classed.length,
  classing: ({ classing }) => {
    const staples = classing!.classed.map(({ staple32nds }) => staple32nds);
    const times = (staple: number) => staples.filter((each) => each === staple).length;
    return staples.reduce((best, staple) => (times(staple) > times(best) ? staple : best));
  },
  // A yarn of count Ne weighs 590.5 / Ne mg a metre; so many fibres of the lot's linear density make that.
  spinning: ({ scenario, spinning }) =>
    590.5 / scenario.decisions.spinning.countNe / (spinning!.lot.fibre.linearDensityMtex / 1000),
  weaving: ({ weaving }) => weaving!.cloth!.finishShrinkPercent.length,
  sewing: ({ field, scenario, weaving }) => {
    const squareInches = weaving!.cloth!.squareMetres / 0.0254 ** 2;
    return Math.sqrt(squareInches / (field.bollsPerPlant * field.plantsPerAcre * scenario.acres));
  },
};

describe.each(stationIds)('the question of %s', (station) => {
  const { answer, low, high, step, choices } = predictions[station];
  test.each(seasons)(
    'has its answer in the season of %s, season %i, and within what can be guessed',
    (_, __, season) => {
      const value = answer(season)!;
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
      const expected = otherWay[station](season);
      expect(Math.abs(value - expected)).toBeLessThan(1e-3 * Math.max(1, expected));
    },
  );
  test('can be answered on a scale of whole steps, or by a few rising choices on it', () => {
    expect(((high - low) / step) % 1).toBe(0);
    for (const choice of choices ?? []) expect((choice - low) / step).toBe(Math.round((choice - low) / step));
    expect([...(choices ?? [])].sort((a, b) => a - b)).toEqual(choices ?? []);
  });
});

test('a crop that failed has no answer from the harvest on', () => {
  const plains = farms.find(({ id }) => id === 'high-plains-dryland')!;
  const planting = { ...plains.decisions.planting, plantingDayOfYear: 191 };
  const season = runSeason({ ...plains, decisions: { ...plains.decisions, planting } }, 3, null);
  expect(season.harvest).toBeNull();
  const answered = stationIds.filter((station) => predictions[station].answer(season) !== null);
  expect(answered).not.toHaveLength(0);
  expect(answered.filter((station) => stationIds.indexOf(station) >= stationIds.indexOf('harvest'))).toEqual([]);
});

test('the other way would see an answer that is off by one in a hundred', () => {
  const season = seasons[0]![2];
  for (const station of stationIds) {
    const off = 1.01 * predictions[station].answer(season)!;
    const expected = otherWay[station](season);
    expect(Math.abs(off - expected)).toBeGreaterThan(1e-3 * Math.max(1, expected));
  }
});
