import type { Season } from '../../model/season.ts';
import type { FibreKey } from '../../workings/fibre.ts';
import { type Asked, workOut } from '../../workings/work-out.ts';
import type { Amount, CountedThing, ShownNumber, WayPair } from './question.ts';

export const money = (value: number, decimals = 0): Amount => ({ as: 'money', value, decimals });
export const mass = (kg: number): Amount => ({ as: 'mass', value: kg, decimals: 0 });
export const percent = (value: number, decimals = 1): Amount => ({ as: 'percent', value, decimals });
export const points = (value: number): Amount => ({ as: 'points', value });
export const rain = (inches: number): Amount => ({ as: 'rain', value: inches, decimals: 1 });
export const number = (value: number, decimals = 0): Amount => ({ as: 'number', value, decimals });
export const counted = (value: number, of: CountedThing, decimals = 0): Amount => ({
  as: 'counted',
  value,
  of,
  decimals,
});

/** The word for the way a difference goes; the amount beside it carries no sign. */
export const way = (value: number, pair: WayPair): Amount => ({ as: 'way', value, pair });

/** A line whose numbers are what their workings end in, so that what is shown and what is opened cannot differ. */
export function workedLine(
  name: string,
  sides: readonly Season[],
  askedOf: (season: Season) => Asked | null,
): ShownNumber {
  const cells = sides.map((season) => {
    const asked = askedOf(season);
    const value = asked && workOut(season, asked)?.result;
    return asked && value && value.as !== 'exact' ? { value, asked } : null;
  });
  return { name, cells };
}

const reading = (
  name: string,
  station: 'harvest' | 'module' | 'ginning' | 'pressing' | 'classing' | 'sewing',
  key: string,
) => {
  return (sides: readonly Season[]) => workedLine(name, sides, () => ({ topic: 'reading', station, key }));
};
const settled = (
  name: string,
  key: 'left' | 'lint' | 'seed' | 'ginning' | 'classing' | 'picking',
  perBale: boolean,
) => {
  return (sides: readonly Season[]) => workedLine(name, sides, () => ({ topic: 'money', key, perBale }));
};
/** Behind the last machine of the gin. */
const inBale = (name: string, key: FibreKey) => {
  return (sides: readonly Season[]) =>
    workedLine(name, sides, ({ fibreTrail }) => {
      const index = fibreTrail.filter(({ after }) => after !== 'card' && after !== 'comber').length - 1;
      return index < 0 ? null : { topic: 'fibre', index, key };
    });
};

/** Lines that many tables share: name of the words, and the numbers with their workings. */
export const lines = {
  left: settled('left', 'left', false),
  lintUsd: settled('lintUsd', 'lint', false),
  lintPerBale: settled('lintPerBale', 'lint', true),
  seedPerBale: settled('seedPerBale', 'seed', true),
  ginningPerBale: settled('ginningPerBale', 'ginning', true),
  classingPerBale: settled('classingPerBale', 'classing', true),
  pickingPerBale: settled('pickingPerBale', 'picking', true),
  leftPerBale: settled('leftPerBale', 'left', true),
  bales: reading('bales', 'pressing', 'balesPressed'),
  turnout: reading('turnout', 'ginning', 'turnout'),
  colour: reading('colour', 'classing', 'colorGrade'),
  leaf: reading('leaf', 'classing', 'leafGrade'),
  staple: reading('staple', 'classing', 'staple'),
  foreignMatter: reading('foreignMatter', 'harvest', 'foreignMatter'),
  weathered: reading('weathered', 'harvest', 'weathered'),
  leftInField: reading('leftInField', 'harvest', 'leftInField'),
  personDays: reading('personDays', 'harvest', 'personDays'),
  machineHours: reading('machineHours', 'harvest', 'machineHours'),
  moisture: reading('moisture', 'module', 'moisture'),
  yellowing: reading('yellowing', 'module', 'yellowing'),
  hottestCore: reading('hottestCore', 'module', 'hottestCore'),
  patch: reading('patch', 'sewing', 'patch'),
  shortFibre: inBale('shortFibre', 'shortFibrePercentByWeight'),
  length: inBale('length', 'upperHalfMeanMm'),
  micronaire: inBale('micronaire', 'micronaire'),
} as const;
