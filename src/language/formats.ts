import { type DateFormats, makeDateFormats } from './date-formats.ts';
import type { Language } from './language.ts';
import type { Messages } from './messages/en.ts';
import { makeNumberFormats, type NumberFormats } from './number-formats.ts';
import { makeQuantityFormats, type QuantityFormats } from './quantity-formats.ts';
import type { UnitSystem } from './unit-system.ts';

/** Every way a number is written on screen. */
export interface Formats extends NumberFormats, DateFormats, QuantityFormats {}

/** Formats of a language and a unit system. */
export function makeFormats(language: Language, unitSystem: UnitSystem, messages: Pick<Messages, 'units'>): Formats {
  const numbers = makeNumberFormats(language);
  return {
    ...numbers,
    ...makeDateFormats(language),
    ...makeQuantityFormats(numbers, unitSystem, messages.units),
  };
}
