import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { type Formats, makeFormats } from './formats.ts';
import type { Language } from './language.ts';
import { en, type Messages } from './messages/en.ts';
import type { UnitSystem } from './unit-system.ts';

/** Everything a part needs to speak: the words, and how numbers are written. */
export interface Words {
  readonly language: Language;
  readonly unitSystem: UnitSystem;
  readonly messages: Messages;
  readonly formats: Formats;
}

/** Words for a language and a unit system. */
export const makeWords = (language: Language, unitSystem: UnitSystem, messages: Messages): Words => ({
  language,
  unitSystem,
  messages,
  formats: makeFormats(language, unitSystem, messages),
});

/** Hands the words down to every part below. */
export const WordsContext = createContext<Words>(makeWords('en', 'us', en));

/** The words in force here. */
export const useWords = (): Words => useContext(WordsContext);
