import { useEffect, useState } from 'preact/hooks';
import { useWords, type Words } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { encodeComparison } from '../../statechart/saved-comparison.ts';
import type { SavedRun } from '../../statechart/saved-run.ts';
import { takeTurn } from '../../ui/turns.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { changeInWords } from '../compare/difference-words.ts';
import { phraseSource } from '../compare/phrase-source.ts';
import { hashOf } from '../route.ts';
import { choiceWords } from './choice-words.ts';

/** What is said beside the controls: more would take the room of the controls themselves. */
const mostBeside = 2;

function phrasesOf(before: Season, after: Season, words: Words) {
  const { common } = words.messages;
  const sides = { before, after, names: [common.before, common.after] } as const;
  return changeInWords(before, after, words).map((phrase) => ({
    text: phrase.text,
    source: phraseSource(phrase, sides, words, 'downstream/'),
  }));
}

type Phrases = ReturnType<typeof phrasesOf>;

/**
 * What the last choice did, in phrases whose numbers open their workings, worked out in a task of its own after the choice is
 * drawn.
 * @param before the season as it was before the choice; null while there is none
 * @returns null while it is not known
 */
export function useDownstream(before: Season | null, after: Season): Phrases | null {
  const words = useWords();
  const [told, setTold] = useState<{ readonly of: readonly unknown[]; readonly phrases: Phrases } | null>(null);
  const of = [before, after, words];
  useEffect(() => (before ? takeTurn(() => setTold({ of, phrases: phrasesOf(before, after, words) })) : undefined), of);
  return told?.of.every((each, at) => each === of[at]) ? told.phrases : null;
}

const PhraseList = ({ phrases }: { readonly phrases: Phrases }) => (
  <ul>
    {phrases.map(({ text, source }) => (
      <li key={text}>
        <WorkingNumber text={text} source={source} />
      </li>
    ))}
  </ul>
);

export interface ChoiceResultProps {
  /** The season as it was before the last choice; null while there is none to tell of. */
  readonly before: Season | null;
  readonly after: Season;
  readonly station: StationId;
  /** What it did; null while it is not known. */
  readonly phrases: Phrases | null;
  readonly runOf: (season: Season) => SavedRun;
}

/** What can be done here and then what the last choice did, in a line that stays in sight of the controls, and the way to both seasons side by side. */
export function ChoiceResult({ before, after, station, phrases, runOf }: ChoiceResultProps) {
  const words = useWords();
  const said = choiceWords(words.language);
  const beside = (before && phrases?.slice(0, mostBeside)) || [];
  return (
    <>
      <div class="choice-result" aria-live="polite" aria-busy={before !== null && phrases === null}>
        {before && phrases ? (
          <>
            <p>{beside.length > 0 ? said.did : said.hardly}</p>
            {beside.length > 0 ? <PhraseList phrases={beside} /> : null}
            <a
              href={hashOf({
                page: 'compare',
                query: encodeComparison({ before: runOf(before), after: runOf(after) }),
              })}
            >
              {said.compareBoth}
            </a>
          </>
        ) : before ? null : (
          <>
            <p class="instruction">{words.messages.stations[station].instruction}</p>
            <p>{said.notYet}</p>
          </>
        )}
      </div>
      <WorkingPlace sources={beside.map(({ source }) => source)} />
    </>
  );
}

/** What else the last choice did further down the chain; nothing where the line beside the controls says it all. */
export function DownstreamLine({ phrases }: { readonly phrases: Phrases }) {
  const words = useWords();
  const further = phrases.slice(mostBeside);
  if (further.length === 0) return null;
  return (
    <>
      <div class="downstream-line">
        <p>{choiceWords(words.language).downstream}</p>
        <PhraseList phrases={further} />
      </div>
      <WorkingPlace sources={further.map(({ source }) => source)} />
    </>
  );
}
