import { millimetresFromInches } from '../model/units.ts';

/** A range of heights from the floor that a group of visitors reaches, inches, and where it is printed. */
export interface Reach {
  readonly who: 'adult' | 'deep' | 'nine' | 'five' | 'three';
  readonly lowInches: number;
  readonly highInches: number;
  /** Clause of the 2010 ADA Standards for Accessible Design. */
  readonly clause: string;
  readonly mark: 'published' | 'memory';
}

/** Heights of the US standard, and its advice for children. */
export const reaches: readonly Reach[] = [
  { who: 'adult', lowInches: 15, highInches: 48, clause: '308.2.1, 308.3.1', mark: 'published' },
  // The depth of 25 in is from memory.
  { who: 'deep', lowInches: 15, highInches: 44, clause: '308.2.2', mark: 'memory' },
  { who: 'nine', lowInches: 16, highInches: 44, clause: '308.1', mark: 'published' },
  { who: 'five', lowInches: 18, highInches: 40, clause: '308.1', mark: 'published' },
  { who: 'three', lowInches: 20, highInches: 36, clause: '308.1', mark: 'published' },
];

/** A height in millimetres as the standard rounds it: to 5 mm. */
export const reachMm = (inches: number): number => Math.round(millimetresFromInches(inches) / 5) * 5;
