import type { CountName } from '../model/ledger.ts';
import type { Season } from '../model/season.ts';
import type { StationId } from '../model/station.ts';
import { above, count, counted, decided, exact, formula, input, procedure, step } from './steps.ts';
import type { Working } from './working.ts';

/** A number of a count ledger as the table shows it. */
export interface CountPlace {
  readonly station: StationId;
  readonly whole: CountName;
  /** The share asked for, or the whole itself, or what is left over. */
  readonly of: CountName | 'unaccounted';
  /** The number in the table: shares are rounded so that they add. */
  readonly printed: number;
}

/** The working of a number of the counts. */
export function countWorking({ field, scenario }: Season, place: CountPlace): Working | null {
  const ledger = field.counts.find(({ station, whole }) => station === place.station && whole.name === place.whole);
  if (!ledger) return null;
  const plants = field.plantsPerAcre * scenario.acres;
  const at = counted(place.station);
  if (place.of === 'unaccounted') {
    return procedure(
      [
        step({ count: ledger.whole.name }, count(ledger.whole.count), at),
        ...ledger.shares.map((share) => step({ count: share.name }, count(share.count), at)),
      ],
      count(place.printed),
    );
  }
  if (place.of === 'seedsSown') {
    const { rowInches, seedsPerFoot } = scenario.decisions.planting;
    return formula(
      'seedsSown',
      [
        input('r', 'rowWidth', exact(rowInches, 'inches'), decided('planting')),
        input('s', 'seedsPerFoot', exact(seedsPerFoot, 'seedsPerFoot'), decided('planting')),
        input('A', 'acres', exact(scenario.acres, 'acres'), { at: 'farm' }),
      ],
      exact(ledger.whole.count, 'seeds'),
      count(ledger.whole.count),
    );
  }
  const exactCount =
    place.of === place.whole ? ledger.whole.count : ledger.shares.find(({ name }) => name === place.of)?.count;
  if (exactCount === undefined) return null;
  const perPlant =
    place.station === 'planting'
      ? [
          step('plantsPerAcre', exact(field.plantsPerAcre, 'plantsPerAcre'), at),
          step('acres', exact(scenario.acres, 'acres'), { at: 'farm' }),
        ]
      : [
          step('plantsInField', count(plants), counted('planting')),
          step('onMeanPlant', exact(plants > 0 ? exactCount / plants : 0), { at: 'field' }),
        ];
  return procedure(
    [
      ...perPlant,
      step('beforeRounding', exact(exactCount), above),
      ...(place.of === place.whole ? [] : [step('roundedToAdd', count(place.printed), { at: 'rounding' })]),
    ],
    count(place.of === place.whole ? ledger.whole.count : place.printed),
  );
}
