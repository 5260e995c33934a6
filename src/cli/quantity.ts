import { parseYarnNumber, type YarnNumber } from '../model/mill/yarn-number.ts';
import { GSM_PER_OUNCE_PER_SQUARE_YARD, KG_PER_POUND, MM_PER_INCH } from '../model/units.ts';
import { badInput, problemsError } from './input-error.ts';

/** A unit an option takes: its spellings, and how many of the option's own unit one of it is. */
export type UnitTable = Readonly<Record<string, number>>;

export const inchUnits: UnitTable = { in: 1, '"': 1, mm: 1 / MM_PER_INCH, cm: 10 / MM_PER_INCH, yd: 36 };
export const poundUnits: UnitTable = { lb: 1, kg: 1 / KG_PER_POUND, oz: 1 / 16 };
export const perInchUnits: UnitTable = { '/in': 1, '/cm': MM_PER_INCH / 10 };
export const yardUnits: UnitTable = { yd: 1, m: 1 / 0.9144 };
export const clothWeightUnits: UnitTable = {
  'oz/yd2': 1,
  gsm: 1 / GSM_PER_OUNCE_PER_SQUARE_YARD,
  'g/m2': 1 / GSM_PER_OUNCE_PER_SQUARE_YARD,
};
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

/**
 * Reads a yarn number such as 30Ne, 40/2Ne, 19.7tex or 50Nm; bare numbers are Ne.
 * @throws InputError naming the option, the value and what is allowed
 */
export function readYarn(option: string, text: string): YarnNumber {
  const parsed = parseYarnNumber(text, `--${option}`);
  if (!parsed.ok) throw problemsError(parsed.problems);
  return parsed.value;
}
