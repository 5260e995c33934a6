import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { mostLintCleaners } from '../../../src/model/gin/lint-cleaner-limit.ts';

test('three of saws, two of rollers, one by air', () => {
  expect((['saw', 'roller', 'air'] as const).map(mostLintCleaners)).toEqual([3, 2, 1]);
});

test.each(['saw', 'roller', 'air'] as const)(
  'a gin asked for more %s cleaners than its kind allows runs the most it may, and says so',
  (lintCleaner) => {
    const ginning = { ...farms[0]!.decisions.ginning, lintCleaner, lintCleaners: 3 };
    const season = runSeason({ ...farms[0]!, decisions: { ...farms[0]!.decisions, ginning } }, 1, null);
    const stages = season.ginning!.fibreAfter.filter(({ after }) => after.startsWith('lintCleaner'));
    expect(stages).toHaveLength(mostLintCleaners(lintCleaner));
    expect(season.ginning!.lintCleaners).toEqual({ wanted: 3, inLine: mostLintCleaners(lintCleaner) });
  },
);
