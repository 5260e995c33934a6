import type { Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { WorkingSource } from '../../ui/working-source.ts';
import { workingSource } from '../season/working-source.ts';
import { compareWords } from './compare-words.ts';
import type { DifferencePhrase } from './difference-words.ts';

/** Two seasons, and what the page calls each. */
export interface Sides {
  readonly before: Season;
  readonly after: Season;
  readonly names: readonly [before: string, after: string];
}

/**
 * How a phrase was come by: both seasons' numbers, each with its own lines, and the one less the other.
 * @param where tells it from the same difference elsewhere on the page
 */
export function phraseSource(
  { of, text }: DifferencePhrase,
  { before, after, names }: Sides,
  words: Words,
  where: string,
): WorkingSource | undefined {
  if (of === null) return undefined;
  const { colour, outcomes } = compareWords(words.language);
  const asked = { topic: 'difference', key: of, before, names, said: text } as const;
  return workingSource(after, words, asked, of === 'colour' ? colour : outcomes[of], where);
}
