import { expect, test } from 'vitest';
import { withDecision } from '../../src/compare/changed-decisions.ts';
import { compareSeasons } from '../../src/compare/compare-seasons.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import { outcomeKeys } from '../../src/model/season-outcomes.ts';

const farm = farmOf('coastal-plain')!;
const third = withDecision(farm, { station: 'ginning', key: 'lintCleaners' }, 3);

test('the same runs give the same comparison, and a season beside itself no difference', () => {
  const [a, b] = [runSeason(farm, 3, null), runSeason(third, 3, null)];
  expect(compareSeasons(a, b)).toEqual(compareSeasons(runSeason(farm, 3, null), runSeason(third, 3, null)));
  expect(Object.values(compareSeasons(a, a).difference).filter((difference) => difference !== 0)).toEqual([]);
});

test('swapping the two turns every sign', () => {
  const [a, b] = [runSeason(farm, 3, null), runSeason(third, 3, null)];
  const [there, back] = [compareSeasons(a, b), compareSeasons(b, a)];
  for (const key of outcomeKeys) expect(there.difference[key]! + back.difference[key]!).toBe(0);
  expect(back.colour).toEqual({ before: there.colour.after, after: there.colour.before });
  expect(there.difference.motesKg).toBeGreaterThan(0);
});

test('decisions leave the weather as it was; another season number does not', () => {
  const early = withDecision(farm, { station: 'planting', key: 'plantingDayOfYear' }, 110);
  const weather = (a: ReturnType<typeof runSeason>, b: ReturnType<typeof runSeason>) =>
    compareSeasons(a, b).sameWeather;
  expect(weather(runSeason(farm, 3, null), runSeason(early, 3, null))).toBe(true);
  expect(weather(runSeason(farm, 3, null), runSeason(farm, 4, null))).toBe(false);
});

test('beside a crop that fails there is weight to compare and no staple', () => {
  const late = withDecision(farm, { station: 'planting', key: 'plantingDayOfYear' }, 300);
  const failed = runSeason(late, 3, null);
  expect(failed.stopped).not.toBeNull();
  const { difference, after } = compareSeasons(runSeason(farm, 3, null), failed);
  expect(after.bales).toBe(0);
  expect(difference.lintKg).toBeLessThan(0);
  expect(difference.staple32nds).toBeNull();
});
