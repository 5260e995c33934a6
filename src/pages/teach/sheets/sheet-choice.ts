import { type UnitSystem, unitSystems } from '../../../language/unit-system.ts';
import { type KindId, kindIds, pupilLimits } from '../../../teach/sheets/make-question.ts';
import { type Level, levels } from '../../../teach/sheets/question.ts';

export const paperSides = ['one', 'both'] as const;
export type PaperSides = (typeof paperSides)[number];

/** What a set of sheets is made of. */
export interface SheetChoice {
  /** In the order of the chain. */
  readonly kinds: readonly KindId[];
  readonly level: Level;
  readonly pupils: number;
  /** Number of the first sheet; the others follow. */
  readonly first: number;
  readonly units: UnitSystem;
  /** Printed on one side of the paper or on both. */
  readonly paper: PaperSides;
}

/** How many sheets are made at once, and the numbers they may carry. */
export const choiceLimits = {
  pupils: { low: 1, high: 40 },
  first: { low: pupilLimits.low, high: pupilLimits.high - 40 },
} as const;

const firstChoice: SheetChoice = {
  kinds: ['ginBalance', 'turnout', 'yarn', 'clothWeight', 'layout'],
  level: 1,
  pupils: 30,
  first: 1,
  units: 'us',
  paper: 'one',
};
const key = 'seamfield.sheets.1';

const oneOf = <Value>(values: readonly Value[], value: unknown, otherwise: Value): Value =>
  values.find((known) => known === value) ?? otherwise;

/** A whole number within limits, or null. */
export function wholeWithin(value: unknown, { low, high }: { readonly low: number; readonly high: number }) {
  const number = typeof value === 'string' && /^\s*\d+\s*$/.test(value) ? Number(value) : value;
  return typeof number === 'number' && Number.isInteger(number) && number >= low && number <= high ? number : null;
}

/** A choice from what was kept; whatever in it cannot be read falls back to the first choice. */
export function readChoice(text: string | null, units: UnitSystem): SheetChoice {
  const otherwise = { ...firstChoice, units };
  let kept: Record<string, unknown> = {};
  try {
    const read: unknown = JSON.parse(text ?? '{}');
    if (typeof read === 'object' && read !== null) kept = read as Record<string, unknown>;
  } catch {
    // Junk: start from the first choice.
  }
  const wanted: readonly unknown[] = Array.isArray(kept.kinds) ? kept.kinds : otherwise.kinds;
  const kinds = kindIds.filter((kind) => wanted.includes(kind));
  return {
    kinds: kinds.length > 0 ? kinds : otherwise.kinds,
    level: oneOf(levels, kept.level, otherwise.level),
    pupils: wholeWithin(kept.pupils, choiceLimits.pupils) ?? otherwise.pupils,
    first: wholeWithin(kept.first, choiceLimits.first) ?? otherwise.first,
    units: oneOf(unitSystems, kept.units, otherwise.units),
    paper: oneOf(paperSides, kept.paper, otherwise.paper),
  };
}

/** The choice kept on this device. Keys open with what the sheets were made of. */
export function keptChoice(units: UnitSystem): SheetChoice {
  try {
    return readChoice(localStorage.getItem(key), units);
  } catch {
    return readChoice(null, units);
  }
}

/** Keeps the choice where the browser allows it. */
export function keepChoice(choice: SheetChoice): void {
  try {
    localStorage.setItem(key, JSON.stringify(choice));
  } catch {
    // Nothing is lost but a choice at the next visit.
  }
}
