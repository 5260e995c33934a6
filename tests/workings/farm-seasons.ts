import { runSeason } from '../../src/model/chain.ts';
import { farms } from '../../src/model/farms.ts';
import type { Scenario } from '../../src/model/scenario.ts';
import type { Season } from '../../src/model/season.ts';
import { stationIds } from '../../src/model/station.ts';
import type { BaleKey } from '../../src/workings/bale.ts';
import type { FibreKey } from '../../src/workings/fibre.ts';
import { type Asked, stationWorkings } from '../../src/workings/work-out.ts';

type Decisions = Scenario['decisions'];
/** A farm decided otherwise at one station. */
const decided = <Station extends keyof Decisions>(
  name: string,
  farm: Scenario,
  station: Station,
  choice: Partial<Decisions[Station]>,
): readonly [name: string, scenario: Scenario] => [
  name,
  { ...farm, decisions: { ...farm.decisions, [station]: { ...farm.decisions[station], ...choice } } },
];
const first = farms[0]!;

/** Every farm, and the choices that lead to another formula. */
const scenarios: readonly (readonly [name: string, scenario: Scenario])[] = [
  ...farms.map((farm) => [farm.id, farm] as const),
  decided('rotor yarn', first, 'spinning', { system: 'rotor', countNe: 16 }),
  decided('combed yarn', first, 'spinning', { system: 'ringCombed', noilPercent: 14 }),
  decided('a knit', first, 'weaving', { structure: 'jersey', finish: 'scoured' }),
  decided('gray cloth', first, 'weaving', { finish: 'grey' }),
  decided('picked by hand today', first, 'harvest', { method: 'hand' }),
  decided('stripped and cleaned in the field', first, 'harvest', { method: 'stripperFieldCleaner' }),
  decided('long in storage', first, 'module', { storageDays: 90 }),
  decided('washed before it is cut', first, 'sewing', { prewash: true }),
];

/** Their seasons. */
export const farmSeasons: readonly (readonly [name: string, season: Season])[] = scenarios.map(
  ([name, scenario]) => [name, runSeason(scenario, 1, null)] as const,
);

const fibreKeys: readonly FibreKey[] = [
  'upperHalfMeanMm',
  'uniformityPercent',
  'shortFibrePercentByWeight',
  'strengthGPerTex',
  'micronaire',
];
const baleKeys: readonly BaleKey[] = [
  'net',
  'gross',
  'color',
  'leaf',
  'staple',
  'micronaire',
  'strength',
  'premium',
  'value',
];
const seedKeys = ['oilKg', 'mealKg', 'hullsKg', 'lintersKg', 'lossKg', 'seedKg'] as const;

/** Numbers of a season that may be asked for, whether or not this season shows them. */
export function askedOf(season: Season): Asked[] {
  const readings = stationIds.flatMap((station) =>
    Object.keys(stationWorkings[station]).map((key): Asked => ({ topic: 'reading', station, key })),
  );
  const fibres = season.fibreTrail.flatMap((_, index) =>
    fibreKeys.map((key): Asked => ({ topic: 'fibre', index, key })),
  );
  const firstBales = (season.classing?.classed ?? []).slice(0, 3);
  const bales = firstBales.flatMap(({ number }) => baleKeys.map((key): Asked => ({ topic: 'bale', number, key })));
  const lines = [...(season.payments?.lines.map(({ item }) => item) ?? []), 'left' as const];
  const money = lines.flatMap((key) => [false, true].map((perBale): Asked => ({ topic: 'money', key, perBale })));
  const seed = seedKeys.map((key): Asked => ({ topic: 'seed', key }));
  return [...readings, ...fibres, ...bales, ...money, ...seed];
}
