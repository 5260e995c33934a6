import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { encodeComparison } from '../../statechart/saved-comparison.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { changeInWords } from '../compare/difference-words.ts';
import { hashOf } from '../route.ts';
import { choiceWords } from './choice-words.ts';

export interface DownstreamLineProps {
  readonly before: Season;
  readonly after: Season;
  readonly runOf: (season: Season) => SavedRun;
}

/** What the last choice did further down the chain, in one line, and the way to both seasons side by side. */
export function DownstreamLine({ before, after, runOf }: DownstreamLineProps) {
  const words = useWords();
  const said = choiceWords(words.language);
  const phrases = changeInWords(before, after, words);
  const query = encodeComparison({ before: runOf(before), after: runOf(after) });
  return (
    <p class="downstream-line">
      {phrases.length > 0 ? fill(said.downstream, { phrases: phrases.join(', ') }) : said.hardly}{' '}
      <a href={hashOf({ page: 'compare', query })}>{said.compareBoth}</a>
    </p>
  );
}
