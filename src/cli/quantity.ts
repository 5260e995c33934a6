import { asNe, asNm, asTex, MM_PER_INCH, type Tex, texFromNe, texFromNm } from '../model/units.ts';
import { badInput } from './input-error.ts';

/** A unit an option takes: its spellings, and how many of the option's own unit one of it is. */
export type UnitTable = Readonly<Record<string, number>>;

export const inchUnits: UnitTable = { in: 1, '"': 1, mm: 1 / MM_PER_INCH, cm: 10 / MM_PER_INCH, yd: 36 };
export const poundUnits: UnitTable = { lb: 1, kg: 1 / 0.45359237, oz: 1 / 16 };
export const perInchUnits: UnitTable = { '/in': 1, '/cm': MM_PER_INCH / 10 };
export const yardUnits: UnitTable = { yd: 1, m: 1 / 0.9144 };
export const clothWeightUnits: UnitTable = { 'oz/yd2': 1, gsm: 1 / 33.905747, 'g/m2': 1 / 33.905747 };
export const noUnits: UnitTable = {};
export const percentUnits: UnitTable = { '%': 1 };
export const strengthUnits: UnitTable = { 'g/tex': 1, 'cN/tex': 1 / 0.980665 };

/** The limits of an option, in its own unit. */
export interface Limits {
  readonly low: number;
  readonly high: number;
  /** The unit a bare number takes, for the message. */
  readonly unit: string;
}

/**
 * Reads a number with an optional unit, such as 1.12in, 28.4mm or 480.
 * @throws InputError naming the option, the value and what is allowed
 */
export function readQuantity(option: string, text: string, units: UnitTable, limits: Limits): number {
  const allowed = `${limits.low} to ${limits.high}${limits.unit ? ` ${limits.unit}` : ''}`;
  const match = /^\s*(-?\d+(?:\.\d+)?)\s*(\S*)\s*$/.exec(text);
  const factor = match && (match[2] === '' ? 1 : units[match[2]!]);
  if (!match || factor === undefined || factor === null) {
    const known = Object.keys(units).join(', ');
    throw badInput(`--${option}`, text, `${allowed}${known ? ` (units: ${known})` : ''}`);
  }
  const value = Number(match[1]) * factor;
  if (!(value >= limits.low && value <= limits.high)) throw badInput(`--${option}`, text, allowed);
  return value;
}

/** A whole number within limits. */
export function readInteger(option: string, text: string, low: number, high: number): number {
  const value = Number(text);
  if (!/^-?\d+$/.test(text.trim()) || value < low || value > high) {
    throw badInput(`--${option}`, text, `a whole number, ${low} to ${high}`);
  }
  return value;
}

/** A yarn as given: its resultant tex, and how many singles are plied in it. */
export interface GivenYarn {
  readonly tex: Tex;
  readonly plies: number;
}

/**
 * Reads a yarn number: 30Ne (or bare 30), 40/2Ne, 19.7tex, 20x2tex, 50Nm, 50/2Nm. Indirect counts are divided by their
 * plies, direct ones multiplied.
 */
export function readYarn(option: string, text: string): GivenYarn {
  const match = /^\s*(\d+(?:\.\d+)?)(?:([/x])(\d))?\s*(Ne|Nm|tex)?\s*$/i.exec(text);
  const unit = match?.[4]?.toLowerCase() ?? 'ne';
  const number = match ? Number(match[1]) : Number.NaN;
  const plies = match?.[3] ? Number(match[3]) : 1;
  const single = unit === 'ne' ? texFromNe(asNe(number)) : unit === 'nm' ? texFromNm(asNm(number)) : asTex(number);
  if (!match || plies < 1 || !(single >= 2 && single <= 1000)) {
    throw badInput(`--${option}`, text, 'a yarn of 2 to 1000 tex a single: 30Ne, 40/2Ne, 19.7tex, 20x2tex or 50Nm');
  }
  return { tex: asTex(single * plies), plies };
}
