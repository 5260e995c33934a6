import { describe, expect, test } from 'vitest';
import { oneAtATime, plainSeason, rankChanges, type Swing } from '../../src/doubt/one-at-a-time.ts';
import { type Outcomes, outcomesOf } from '../../src/doubt/outcomes.ts';
import { sortUnsureFacts } from '../../src/doubt/uncertain-facts.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';

const input = { scenario: farmOf('coastal-plain')!, seed: 3, record: null };
const capacity = 'field/climate-facts.climateLevers.coastalPlain.capacityLintLbPerAcre';
const desert = 'field/climate-facts.climateLevers.lowDesert.capacityLintLbPerAcre';

describe('one at a time', () => {
  const { base, read } = plainSeason(input);
  test('the season itself is the season of the page', () => {
    expect(base).toEqual(outcomesOf(runSeason(input.scenario, input.seed, null)));
  });
  test('a fact of this farm is read, one of another climate is not, and moving that one changes nothing', () => {
    const names = read.flatMap((unsure) => unsure.names);
    expect(names).toContain(capacity);
    expect(names).not.toContain(desert);
    const other = sortUnsureFacts().moved.filter((unsure) => unsure.names.includes(desert));
    const [swing] = [...oneAtATime(input, other)];
    expect([swing!.atLow, swing!.atHigh]).toEqual([base, base]);
  });
  test('the ends of a range are run with the others at their values', () => {
    const own = read.filter((unsure) => unsure.names.includes(capacity));
    const [swing] = [...oneAtATime(input, own)];
    expect(swing!.atLow.lintLbPerAcre).toBeLessThan(base.lintLbPerAcre);
    expect(swing!.atHigh.lintLbPerAcre).toBeGreaterThan(base.lintLbPerAcre);
    expect(swing!.fact.range).toEqual(own[0]!.fact.range);
  });
});

describe('the ranking', () => {
  const base: Outcomes = { lintLbPerAcre: 800, turnoutPercent: 38, staple32nds: 36, usdPerBale: 400, usdPerAcre: 660 };
  const swing = (name: string, low: Partial<Outcomes>, high: Partial<Outcomes>): Swing => ({
    names: [name],
    fact: { value: 2, unit: 'mm', source: 'made up for this test', mark: 'assumption', range: [1, 3], note: null },
    atLow: { ...base, ...low },
    atHigh: { ...base, ...high },
  });
  const small = swing('small', { lintLbPerAcre: 790 }, { lintLbPerAcre: 805 });
  const great = swing('great', { lintLbPerAcre: 810 }, { lintLbPerAcre: 650 });
  const none = swing('none', { staple32nds: 35 }, {});
  test('puts the greatest change first, up or down, and leaves out what changes nothing', () => {
    const ranked = rankChanges(base, [small, none, great], 'lintLbPerAcre');
    expect(ranked.map((change) => change.swing.names[0])).toEqual(['great', 'small']);
    expect(ranked[0]).toMatchObject({ low: 10, high: -150, size: 150 });
    expect(rankChanges(base, [small, none, great], 'staple32nds').map((change) => change.size)).toEqual([1]);
  });
  test('a crop lost altogether counts as all of it', () => {
    const lost = swing('lost', { lintLbPerAcre: 0, usdPerBale: null }, {});
    expect(rankChanges(base, [lost], 'usdPerBale')[0]).toMatchObject({ low: null, high: 0, size: 400 });
  });
  test('a season without a bale has no value to rank by', () => {
    expect(rankChanges({ ...base, usdPerBale: null }, [great], 'usdPerBale')).toEqual([]);
  });
});
