import { expect, test } from 'vitest';
import { type Practice, type PracticeId, practices } from '../../src/checks/practice.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';

// What practitioners say has no source; the check is that the model lies between what they say and what is printed.
const seeds = Array.from({ length: 12 }, (_, index) => index + 1);
const meanOurs = (practice: Practice, farm: string) => {
  const values = seeds.map((seed) => practice.ours(runSeason(farmOf(farm)!, seed, null)));
  const known = values.filter((value) => value !== null);
  return known.length > 0 ? known.reduce((sum, value) => sum + value, 0) / known.length : null;
};
const joint = ({ told, printed }: Practice): readonly [number, number] => {
  const ends = [...(told ?? []), ...(printed?.range ?? [])];
  return [Math.min(...ends), Math.max(...ends)];
};

test.each([
  ['plantingDate', 'river-bottom'],
  ['firstBloom', 'river-bottom'],
  ['lastPicking', 'river-bottom'],
  ['grossBale', 'coastal-plain'],
  ['grossBale', 'high-plains-dryland'],
  ['baleValue', 'coastal-plain'],
  ['baleValue', 'river-bottom'],
  ['premium', 'coastal-plain'],
  ['premium', 'river-bottom'],
  ['pickingRate', 'hand-picked-1930s'],
] as readonly (readonly [PracticeId, string])[])(
  '%s on %s lies between what is told and what is printed',
  (id, farm) => {
    const practice = practices.find((each) => each.id === id)!;
    const ours = meanOurs(practice, farm);
    const [low, high] = joint(practice);
    expect(ours).not.toBeNull();
    expect(ours!).toBeGreaterThanOrEqual(low);
    expect(ours!).toBeLessThanOrEqual(high);
  },
);

test('bales differ: single ones lie some pounds to either side, as practitioners say (489, 495, 503)', () => {
  const { pressing } = runSeason(farmOf('coastal-plain')!, 1, null);
  const gross = pressing!.bales.map(({ grossKg }) => grossKg / 0.45359237);
  expect(Math.max(...gross) - Math.min(...gross)).toBeGreaterThan(5);
  expect(Math.max(...gross) - Math.min(...gross)).toBeLessThan(30);
});
