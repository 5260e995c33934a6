import { Fragment } from 'preact';
import { compareSeasons } from '../../compare/compare-seasons.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { type OutcomeKey, outcomeKeys } from '../../model/season-outcomes.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace, WorkingRow } from '../../ui/working-place.tsx';
import type { WorkingSource } from '../../ui/working-source.ts';
import { workingSource } from '../season/working-source.ts';
import { compareWords } from './compare-words.ts';
import { changeInWords } from './difference-words.ts';
import { outcomeText, signedText } from './outcome-text.ts';
import { phraseSource, type Sides } from './phrase-source.ts';
import { useSideNames } from './side-names.ts';

export interface DifferencesToldProps {
  readonly before: Season;
  readonly after: Season;
}

/** What the other decisions changed, in words, and every number of both seasons below; each opens its working. */
export function DifferencesTold({ before, after }: DifferencesToldProps) {
  const words = useWords();
  const said = compareWords(words.language);
  const sideNames = useSideNames();
  const sides = { before, after, names: [sideNames.before, sideNames.after] } as const;
  const phrases = changeInWords(before, after, words).map((phrase) => ({
    text: phrase.text,
    source: phraseSource(phrase, sides, words, 'phrase/'),
  }));
  return (
    <section class="differences-told" aria-labelledby="changed">
      <h2 id="changed">{said.words.heading}</h2>
      {phrases.length > 0 ? (
        <ul class="difference-phrases">
          {phrases.map(({ text, source }) => (
            <li key={text}>
              <WorkingNumber text={text} source={source} />
              <WorkingPlace sources={[source]} />
            </li>
          ))}
        </ul>
      ) : (
        <p class="hardly">{said.words.hardly}</p>
      )}
      <details class="twin-table">
        <summary>{said.words.table}</summary>
        <OutcomesTable {...sides} />
      </details>
    </section>
  );
}

interface Cell {
  readonly text: string;
  readonly source: WorkingSource | undefined;
}

/** A number of either season, or the difference; a dash opens nothing. */
function cellsOf(key: OutcomeKey, sides: Sides, words: ReturnType<typeof useWords>): Cell[] {
  const { before, after, names } = sides;
  const { outcomes, words: said } = compareWords(words.language);
  const { before: from, after: to, difference } = compareSeasons(before, after);
  const source = (season: Season, asked: Parameters<typeof workingSource>[2], side: string, where: string) =>
    workingSource(season, words, asked, `${outcomes[key]}, ${side}`, `${where}/`);
  const own = { topic: 'outcome', key } as const;
  const less = { topic: 'difference', key, before, names } as const;
  return [
    {
      text: outcomeText(key, from[key], words),
      source: from[key] === null ? undefined : source(before, own, names[0], 'before'),
    },
    {
      text: outcomeText(key, to[key], words),
      source: to[key] === null ? undefined : source(after, own, names[1], 'after'),
    },
    {
      text: signedText(key, difference[key], words),
      source: difference[key] === null ? undefined : source(after, less, said.difference, 'less'),
    },
  ];
}

function OutcomesTable(sides: Sides) {
  const words = useWords();
  const said = compareWords(words.language);
  const { before, after, names } = sides;
  const { colour } = compareSeasons(before, after);
  const ofColour = (season: Season, at: 0 | 1): Cell => {
    const grade = at === 0 ? colour.before : colour.after;
    const asked = { topic: 'outcome', key: 'colour' } as const;
    const name = `${said.colour}, ${names[at]}`;
    return {
      text: grade ?? '–',
      source: grade === null ? undefined : workingSource(season, words, asked, name, at === 0 ? 'before/' : 'after/'),
    };
  };
  const rows = [
    ...outcomeKeys.map((key) => ({ name: said.outcomes[key], cells: cellsOf(key, sides, words) })),
    {
      name: said.colour,
      cells: [
        ofColour(before, 0),
        ofColour(after, 1),
        { text: colour.before === colour.after ? words.messages.common.same : '', source: undefined },
      ],
    },
  ];
  const columns = [...names, said.words.difference];
  return (
    <table class="outcomes-beside">
      <caption class="unseen">{said.words.table}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="unseen">{said.words.table}</span>
          </th>
          {columns.map((name) => (
            <th key={name} scope="col" class="number">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, cells }) => (
          <Fragment key={name}>
            <tr>
              <th scope="row">{name}</th>
              {cells.map((cell, at) => (
                <td key={columns[at]} class="number">
                  <WorkingNumber {...cell} />
                </td>
              ))}
            </tr>
            <WorkingRow sources={cells.map(({ source }) => source)} columns={1 + columns.length} />
          </Fragment>
        ))}
      </tbody>
    </table>
  );
}
