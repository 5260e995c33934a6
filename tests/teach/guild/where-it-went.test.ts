import { expect, test } from 'vitest';
import { runSeason } from '../../../src/model/chain.ts';
import { farms } from '../../../src/model/farms.ts';
import { whereItWent } from '../../../src/teach/guild/where-it-went.ts';

test('what came to the gin and what was added ended somewhere, all of it', () => {
  let checked = 0;
  for (const farm of farms) {
    const season = runSeason(farm, 3, null);
    if (!season.sewing) continue;
    checked++;
    const ended = whereItWent(season);
    expect(Math.abs(ended.reduce((sum, { share }) => sum + share, 0) - 1)).toBeLessThan(1e-9);
    expect(ended.map(({ share }) => share)).toEqual(ended.map(({ share }) => share).sort((a, b) => b - a));
  }
  expect(checked).toBeGreaterThan(2);
});

test('a pound left out of one ledger is seen', () => {
  const { ledgers } = runSeason(farms[0]!, 3, null);
  const broken = ledgers.map((ledger) =>
    ledger.station === 'ginning'
      ? { ...ledger, out: ledger.out.filter(({ account }) => account !== 'ginTrash') }
      : ledger,
  );
  const sum = whereItWent({ ledgers: broken }).reduce((all, { share }) => all + share, 0);
  expect(Math.abs(sum - 1)).toBeGreaterThan(1e-6);
});
