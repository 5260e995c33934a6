import type { Mark } from '../../model/fact.ts';

/** Ways a number of a lesson is written; each is a format of the pages. */
export type NumberKind =
  | 'plain'
  | 'percentage'
  | 'fibreLength'
  | 'length'
  | 'seam'
  | 'smallMass'
  | 'mass'
  | 'pounds'
  | 'clothLength'
  | 'distance'
  | 'clothWeight'
  | 'clothArea'
  | 'threads'
  | 'yarnCount'
  | 'strength'
  | 'yarnStrength'
  | 'micronaire'
  | 'fieldYield'
  | 'points'
  | 'days';

/** A number that the model works out for a lesson. What it is and how it was come by stands in the words of the lesson pages. */
export interface Computed {
  readonly as: NumberKind;
  /** In the unit that the way of writing takes. */
  readonly value: () => number;
  readonly decimals?: number;
  /** The weakest fact that it rests on, where that is no published one: its mark is shown beside the number. */
  readonly restsOn?: { readonly mark: Mark; readonly source: string; readonly note?: string };
}
