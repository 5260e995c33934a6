import type { Fact } from '../model/fact.ts';
import { allFacts } from '../model/fact-list.ts';
import { GRAMS_PER_OUNCE, GSM_PER_OUNCE_PER_SQUARE_YARD, MM_PER_INCH } from '../model/units.ts';
import type { NumberKind } from './computed/computed.ts';

/** How a fact of some unit is written: what its value is multiplied by, the kind, and the decimals where the kind has none of its own. */
interface Writing {
  readonly as: NumberKind;
  readonly times: number;
  readonly decimals?: number;
}

/** The usual way first; the others may be asked for by name. A unit not named here is written as a plain number. */
const writings: Readonly<Record<string, readonly Writing[]>> = {
  mm: [
    { as: 'fibreLength', times: 1 },
    { as: 'seam', times: 1 / MM_PER_INCH },
  ],
  in: [
    { as: 'length', times: 1, decimals: 1 },
    { as: 'fibreLength', times: MM_PER_INCH },
  ],
  fraction: [{ as: 'percentage', times: 100, decimals: 0 }],
  'share of bales': [{ as: 'percentage', times: 100, decimals: 1 }],
  '%': [{ as: 'percentage', times: 1, decimals: 0 }],
  '% wet basis': [{ as: 'percentage', times: 1, decimals: 1 }],
  '% area': [{ as: 'percentage', times: 1, decimals: 2 }],
  'g/tex': [{ as: 'strength', times: 1 }],
  g: [{ as: 'smallMass', times: 1 }],
  'g seed cotton': [{ as: 'smallMass', times: 1 }],
  'oz a bale': [{ as: 'smallMass', times: GRAMS_PER_OUNCE, decimals: 0 }],
  lb: [{ as: 'pounds', times: 1 }],
  'lb seed cotton/day': [{ as: 'pounds', times: 1 }],
  'lb of lint/day': [{ as: 'pounds', times: 1 }],
  'lb per 500-lb bale': [{ as: 'pounds', times: 1 }],
  'lb/acre': [{ as: 'fieldYield', times: 1 }],
  'oz/yd2': [{ as: 'clothWeight', times: GSM_PER_OUNCE_PER_SQUARE_YARD }],
  'g/m2': [{ as: 'clothWeight', times: 1 }],
  day: [{ as: 'days', times: 1 }],
  Ne: [{ as: 'yarnCount', times: 1 }],
  micronaire: [{ as: 'micronaire', times: 1 }],
  points: [{ as: 'points', times: 1 }],
};

const decimalsOf = (value: number): number => Math.min(3, (String(value).split('.')[1] ?? '').length);

/** A fact as a lesson prints it. */
export interface FactNumber {
  readonly name: string;
  readonly fact: Fact;
  readonly as: NumberKind;
  readonly value: number;
  readonly decimals?: number;
}

let byName: ReadonlyMap<string, Fact> | null = null;

/**
 * A fact by its name in the list of facts, ready to be written.
 * @param asked the way of writing; the unit's usual one where it is left out
 * @throws RangeError when there is no such fact, or its unit is not written that way
 */
export function factNumber(name: string, asked?: string): FactNumber {
  byName ??= new Map(allFacts().map((listed) => [listed.name, listed.fact]));
  const fact = byName.get(name);
  if (!fact) throw new RangeError(`no fact named ${name}`);
  const known = writings[fact.unit] ?? [];
  if (asked === 'plain' || (asked === undefined && known.length === 0))
    return { name, fact, as: 'plain', value: fact.value, decimals: decimalsOf(fact.value) };
  const writing = asked === undefined ? known[0] : known.find(({ as }) => as === asked);
  if (!writing) throw new RangeError(`${name}: ${fact.unit} is not written as ${asked}`);
  const { as, times, decimals } = writing;
  const value = fact.value * times;
  return decimals === undefined ? { name, fact, as, value } : { name, fact, as, value, decimals };
}
