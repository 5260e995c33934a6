import { expect, test } from 'vitest';
import { type Practice, type PracticeId, practices } from '../../src/checks/practice.ts';
import { runSeason } from '../../src/model/chain.ts';
import { farmOf } from '../../src/model/farms.ts';
import type { Season } from '../../src/model/season.ts';

// What practitioners say has no source; the check is that the model lies between what they say and what is printed.
const seeds = Array.from({ length: 12 }, (_, index) => index + 1);
const run = new Map<string, readonly Season[]>();
/** The seasons of a farm, run once for all that is asked of them. */
function seasonsOf(farm: string): readonly Season[] {
  const known = run.get(farm) ?? seeds.map((seed) => runSeason(farmOf(farm)!, seed, null));
  run.set(farm, known);
  return known;
}
const meanOurs = (practice: Practice, farm: string) => {
  const values = seasonsOf(farm).map(practice.ours);
  const known = values.filter((value) => value !== null);
  return known.length > 0 ? known.reduce((sum, value) => sum + value, 0) / known.length : null;
};
const practiceOf = (id: PracticeId): Practice => practices.find((each) => each.id === id)!;
const joint = ({ told, printed }: Practice): readonly [number, number] => {
  const ends = [...(told ?? []), ...(printed?.range ?? [])];
  return [Math.min(...ends), Math.max(...ends)];
};

/** Days of the year of 2025, which is no leap year. */
const day = (month: number, date: number) =>
  Math.round((Date.UTC(2025, month - 1, date) - Date.UTC(2025, 0, 0)) / 86_400_000);
const within = ([low, high]: readonly [number, number], [least, most]: readonly [number, number]) =>
  low >= least && high <= most;

test('all that practitioners were asked is told, and nothing else', () => {
  expect(practices.map(({ id }) => id).sort()).toEqual(
    [
      'balesPerTruck',
      'baleValue',
      'firstBloom',
      'grossBale',
      'lastPicking',
      'pickingPay',
      'pickingRate',
      'plantingDate',
      'premium',
      'sack',
      'sampledSides',
      'seedBought',
      'seedTruck',
    ].sort(),
  );
  expect(practiceOf('seedBought')).toMatchObject({ told: null, printed: null });
});

// The words of practitioners as they were given: told, and what lies beside it in print.
test.each([
  ['grossBale', [489, 503], [480, 507]],
  ['sack', [100, 100], [100, 100]],
  ['pickingRate', [200, 300], [200, 500]],
  ['pickingPay', [3, 3], [3, 3.2]],
  ['seedTruck', [10, 12], [20, 25]],
  ['balesPerTruck', [100, 100], [83, 96]],
  ['plantingDate', [day(4, 20), day(5, 31)], [day(4, 15), day(5, 20)]],
  ['firstBloom', [day(6, 15), day(7, 10)], [day(6, 15), day(7, 10)]],
  ['lastPicking', [day(9, 1), day(11, 10)], [day(9, 1), day(11, 15)]],
  ['baleValue', [300, 500], [298, 438]],
  ['premium', [3, 4], [2.75, 3.25]],
  ['sampledSides', [2, 2], [2, 2]],
] as readonly (readonly [PracticeId, readonly [number, number], readonly [number, number]])[])(
  '%s: %j is told, %j is in print, with its source',
  (id, told, printed) => {
    const practice = practiceOf(id);
    expect(practice.told).toEqual(told);
    expect(practice.printed!.range).toEqual(printed);
    expect(practice.printed!.source.length).toBeGreaterThan(20);
  },
);

test('what is printed is worked from its source by hand', () => {
  const { range: value } = practiceOf('baleValue').printed!;
  expect(value![0]).toBe(Math.round(0.621 * 480));
  expect(value![1]).toBe(Math.round(0.9123 * 480));
  const { range: pay } = practiceOf('pickingPay').printed!;
  expect(pay![0]).toBeCloseTo(4500 / 1500, 1);
  expect(pay![1]).toBeCloseTo(4500 / 1400, 1);
  const { range: truck } = practiceOf('balesPerTruck').printed!;
  expect(within([44_000 / 504, 44_000 / 504], truck as [number, number])).toBe(true);
});

test.each([
  'grossBale',
  'sack',
  'pickingRate',
  'pickingPay',
  'plantingDate',
  'firstBloom',
  'lastPicking',
  'baleValue',
  'premium',
  'sampledSides',
] as const)('%s: what is told and what is printed meet', (id) => {
  const { told, printed } = practiceOf(id);
  expect(Math.max(told![0], printed!.range![0])).toBeLessThanOrEqual(Math.min(told![1], printed!.range![1]));
});

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
    const practice = practiceOf(id);
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
