import { compareSeasons } from '../../compare/compare-seasons.ts';
import { outcomeKeys } from '../../compare/season-outcomes.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { compareWords } from './compare-words.ts';
import { changeInWords } from './difference-words.ts';
import { outcomeText, signedText } from './outcome-text.ts';

export interface DifferencesToldProps {
  readonly before: Season;
  readonly after: Season;
}

/** What the other decisions changed, in words, and every number of both seasons below. */
export function DifferencesTold({ before, after }: DifferencesToldProps) {
  const words = useWords();
  const { messages } = words;
  const said = compareWords(words.language);
  const comparison = compareSeasons(before, after);
  const phrases = changeInWords(before, after, words);
  const { colour } = comparison;
  return (
    <section class="differences-told" aria-labelledby="changed">
      <h2 id="changed">{said.words.heading}</h2>
      {phrases.length > 0 ? (
        <ul class="difference-phrases">
          {phrases.map((phrase) => (
            <li key={phrase}>{phrase}</li>
          ))}
        </ul>
      ) : (
        <p class="hardly">{said.words.hardly}</p>
      )}
      <details class="twin-table">
        <summary>{said.words.table}</summary>
        <table class="outcomes-beside">
          <caption class="unseen">{said.words.table}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">{said.words.table}</span>
              </th>
              <th scope="col" class="number">
                {said.sides.before}
              </th>
              <th scope="col" class="number">
                {said.sides.after}
              </th>
              <th scope="col" class="number">
                {said.words.difference}
              </th>
            </tr>
          </thead>
          <tbody>
            {outcomeKeys.map((key) => (
              <tr key={key}>
                <th scope="row">{said.outcomes[key]}</th>
                <td class="number">{outcomeText(key, comparison.before[key], words)}</td>
                <td class="number">{outcomeText(key, comparison.after[key], words)}</td>
                <td class="number">{signedText(key, comparison.difference[key], words)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{said.colour}</th>
              <td class="number">{colour.before ?? '–'}</td>
              <td class="number">{colour.after ?? '–'}</td>
              <td class="number">{colour.before === colour.after ? messages.common.same : ''}</td>
            </tr>
          </tbody>
        </table>
      </details>
    </section>
  );
}
