import { expect, test } from 'vitest';
import { withDecision } from '../../src/compare/changed-decisions.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import type { Season } from '../../src/model/season.ts';
import { outcomeKeys, seasonOutcomes, usualColour } from '../../src/model/season-outcomes.ts';
import { workOut } from '../../src/workings/work-out.ts';
import type { Working } from '../../src/workings/working.ts';
import { farmSeasons } from './farm-seasons.ts';

const failed = runSeason(
  withDecision(farmOf('coastal-plain')!, { station: 'planting', key: 'plantingDayOfYear' }, 300),
  1,
  null,
);
const figureOf = (working: Working | null) =>
  working && 'value' in working.result ? working.result.value : Number.NaN;
const linesOf = (working: Working | null) =>
  working?.kind === 'formula' ? working.inputs.length : (working?.steps.length ?? 0);

function expectOutcomes(season: Season) {
  const outcomes = seasonOutcomes(season);
  for (const key of outcomeKeys) {
    const working = workOut(season, { topic: 'outcome', key });
    const value = outcomes[key];
    if (value === null) expect([key, working]).toEqual([key, null]);
    else {
      expect(Math.abs(Number(figureOf(working)) - value), key).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
      expect(linesOf(working), key).toBeGreaterThan(0);
    }
  }
}

test.each([...farmSeasons, ['a crop that failed', failed] as const])(
  '%s: the working of each outcome comes to the outcome, and there is none where there is no such thing',
  (_, season) => {
    expectOutcomes(season);
    const colour = workOut(season, { topic: 'outcome', key: 'colour' });
    expect(colour ? (colour.result as { text: string }).text : null).toBe(usualColour(season));
  },
);

test('a difference lists both seasons’ lines, each named by its side, and comes to the one less the other', () => {
  const [before, after] = [farmSeasons[0]![1], farmSeasons.find(([name]) => name === 'long in storage')![1]];
  const working = workOut(after, { topic: 'difference', key: 'moduleLossKg', before, names: ['Here', 'There'] });
  if (working?.kind !== 'procedure') throw new TypeError('a difference is a procedure');
  const [from, to] = [seasonOutcomes(before).moduleLossKg!, seasonOutcomes(after).moduleLossKg!];
  expect(figureOf(working)).toBeCloseTo(to - from, 9);
  expect(to).toBeGreaterThan(from);
  const sides = working.steps.flatMap(({ name, value }) =>
    'label' in name && 'value' in value ? [[name.label, value.value]] : [],
  );
  expect(sides).toEqual([
    ['Here', from],
    ['There', to],
  ]);
  for (const side of ['Here', 'There']) expect(working.steps.filter(({ of }) => of === side).length).toBeGreaterThan(1);
  const said = workOut(after, {
    topic: 'difference',
    key: 'bales',
    before,
    names: ['a', 'b'],
    said: 'four bales fewer',
  });
  expect(said?.result).toEqual({ as: 'text', text: 'four bales fewer' });
});

test('against a crop that failed there is no difference in what it does not have', () => {
  const names = ['a', 'b'] as const;
  const before = farmSeasons[0]![1];
  expect(workOut(failed, { topic: 'difference', key: 'staple32nds', before, names })).toBeNull();
  expect(figureOf(workOut(failed, { topic: 'difference', key: 'bales', before, names }))).toBe(
    -seasonOutcomes(before).bales!,
  );
});

test('a planted bug is seen: a working that leaves out a ledger does not come to the outcome', () => {
  const season = farmSeasons[0]![1];
  const short = { ...season, ledgers: season.ledgers.filter(({ station }) => station !== 'cleaning') };
  const working = workOut(short, { topic: 'outcome', key: 'ginTrashKg' });
  expect(Math.abs(Number(figureOf(working)) - seasonOutcomes(season).ginTrashKg!)).toBeGreaterThan(1);
});
