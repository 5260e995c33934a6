import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { compareWords } from './compare-words.ts';

/** What the page calls its two seasons. */
export interface SideNames {
  readonly before: string;
  readonly after: string;
}

/** Set where one farm stands beside itself under the same weather: then one is before the choice, and the other with it. */
export const SideNamesContext = createContext<SideNames | null>(null);

/** The names of the two seasons, in the reader's language. */
export function useSideNames(): SideNames {
  const { language } = useWords();
  return useContext(SideNamesContext) ?? compareWords(language).sides;
}
