import { detectLanguage, type Language, languages } from '../language/language.ts';
import { type UnitSystem, unitSystems } from '../language/unit-system.ts';

const themes = ['day', 'projector'] as const;
export type Theme = (typeof themes)[number];
const motions = ['moving', 'still'] as const;
export type Motion = (typeof motions)[number];

/** How a visitor likes the page. The only thing kept on the device beside the season itself. */
export interface Preferences {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly theme: Theme;
  readonly motion: Motion;
}

const key = 'seamfield.preferences.1';
const oneOf = <Value extends string>(values: readonly Value[], value: unknown, otherwise: Value): Value =>
  values.find((known) => known === value) ?? otherwise;

/**
 * The kept preferences, or good guesses. Storage that is shut, empty or full of junk is no error.
 * @param preferred the reader's languages, best first
 */
export function readPreferences(preferred: readonly string[], stillWished: boolean): Preferences {
  let kept: Record<string, unknown> = {};
  try {
    const read: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    if (typeof read === 'object' && read !== null) kept = read as Record<string, unknown>;
  } catch {
    // Shut storage or junk in it: start from the guesses.
  }
  return {
    language: oneOf(languages, kept.language, detectLanguage(preferred)),
    units: oneOf(unitSystems, kept.units, 'us'),
    theme: oneOf(themes, kept.theme, 'day'),
    motion: oneOf(motions, kept.motion, stillWished ? 'still' : 'moving'),
  };
}

/** Keeps the preferences where the browser allows it. */
export function keepPreferences(preferences: Preferences): void {
  try {
    localStorage.setItem(key, JSON.stringify(preferences));
  } catch {
    // Nothing is lost but a choice at the next visit.
  }
}
