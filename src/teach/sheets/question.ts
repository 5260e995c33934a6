import type { UnitSystem } from '../../language/unit-system.ts';
import type { Random } from '../../model/random.ts';
import type { Season } from '../../model/season.ts';

/** How hard a question is: one step, two or three, or a chain of them. */
export const levels = [1, 2, 3] as const;
export type Level = (typeof levels)[number];

/** A unit as it is printed; the same sign in both languages. 'none' is a bare number or a count. */
export type SheetUnit =
  | 'none'
  | 'percent'
  | 'dollars'
  | 'lb'
  | 'kg'
  | 'oz'
  | 'g'
  | 'yd'
  | 'm'
  | 'in'
  | 'cm'
  | 'mm'
  | 'yd²'
  | 'm²'
  | 'oz/yd²'
  | 'g/m²'
  | 'tex'
  | 'mtex'
  | '¢/lb'
  | '¢/kg'
  | '°F'
  | '°C';

/** A number with the decimals and the unit it is printed with. */
export interface Amount {
  readonly value: number;
  readonly decimals: number;
  readonly unit: SheetUnit;
}

/** How an answer is rounded: not at all, to the nearest of so many decimals, or down or up to a whole number of steps. */
export interface Rounding {
  readonly way: 'exact' | 'nearest' | 'down' | 'up';
  readonly step: number;
  readonly decimals: number;
}

/** One line of the working: a sum with the names of its numbers in braces, and what it comes to, not rounded. */
export interface Step {
  readonly name: string;
  readonly sum: string;
  readonly result: Amount;
  /** A sum below zero counts as nothing. */
  readonly neverBelowZero?: true;
}

/** One thing asked: the working, of which the last line is rounded to the answer. */
export interface Ask {
  readonly name: string;
  readonly steps: readonly Step[];
  readonly rounding: Rounding;
  readonly answer: Amount;
  /** What the model's own function gives from the same numbers, not rounded; absent where the sum is all there is. */
  readonly model?: number;
}

/** A table printed with a question; rows of amounts that the asks name as given. */
export interface QuestionTable {
  readonly name: 'week' | 'staple';
  /** Names of the given numbers, row by row. */
  readonly rows: readonly (readonly string[])[];
}

/** What a question is made of besides its words. */
export interface QuestionBody {
  readonly given: Readonly<Record<string, Amount>>;
  /** Names that the words fill in by themselves, such as a project's. */
  readonly named?: Readonly<Record<string, string>>;
  readonly table?: QuestionTable;
  readonly asks: readonly Ask[];
}

/** What a question is drawn from: the pupil's own season and stream of chance, and the units of the sheet. */
export interface Draw {
  readonly random: Random;
  /** A whole number from low to high that goes on from pupil to pupil, so that no two of a class have the same. */
  readonly inTurn: (low: number, high: number) => number;
  readonly season: Season;
  readonly units: UnitSystem;
}

/** Makes a question of one kind. */
export type MakeBody = (draw: Draw) => QuestionBody;
/** A kind of question in its three levels. */
export type QuestionKind = Readonly<Record<Level, MakeBody>>;
