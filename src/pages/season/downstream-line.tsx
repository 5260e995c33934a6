import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { encodeComparison } from '../../statechart/saved-comparison.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { changeInWords } from '../compare/difference-words.ts';
import { phraseSource } from '../compare/phrase-source.ts';
import { hashOf } from '../route.ts';
import { choiceWords } from './choice-words.ts';

export interface DownstreamLineProps {
  readonly before: Season;
  readonly after: Season;
  readonly runOf: (season: Season) => SavedRun;
}

/** What the last choice did further down the chain, in a few phrases, and the way to both seasons side by side. */
export function DownstreamLine({ before, after, runOf }: DownstreamLineProps) {
  const words = useWords();
  const said = choiceWords(words.language);
  const { common } = words.messages;
  const sides = { before, after, names: [common.before, common.after] } as const;
  const phrases = changeInWords(before, after, words).map((phrase) => ({
    text: phrase.text,
    source: phraseSource(phrase, sides, words, 'downstream/'),
  }));
  const query = encodeComparison({ before: runOf(before), after: runOf(after) });
  return (
    <>
      <div class="downstream-line">
        <p>{phrases.length > 0 ? said.downstream : said.hardly}</p>
        {phrases.length > 0 ? (
          <ul>
            {phrases.map(({ text, source }) => (
              <li key={text}>
                <WorkingNumber text={text} source={source} />
              </li>
            ))}
          </ul>
        ) : null}
        <a href={hashOf({ page: 'compare', query })}>{said.compareBoth}</a>
      </div>
      <WorkingPlace sources={phrases.map(({ source }) => source)} />
    </>
  );
}
