import { fill } from '../../../language/fill.ts';
import type { WrittenAsk } from './question-text.ts';
import { askLetter, type PaperSheetProps } from './sheet-set.tsx';
import './keys.css';

function AskRow({ ask, place }: { readonly ask: WrittenAsk; readonly place: string }) {
  return (
    <tr>
      <th scope="row">{place}</th>
      <td>
        {ask.working.map(({ name, sum, result }) => (
          <p key={`${name}${sum}`} class="key-step">
            {name ? <i>{name} </i> : null}
            {sum} <b class="no-wrap">{result}</b>
          </p>
        ))}
      </td>
      <td class="number">
        <b>{ask.answer}</b>
        {ask.rounding ? <i class="key-rounding">{ask.rounding}</i> : null}
      </td>
    </tr>
  );
}

/** The key to one pupil's sheet, its title in the table so that no column of paper ends with it: every line of the working, and the answer as it is to be rounded. */
export function KeySheet({ number, written, words: { page } }: PaperSheetProps) {
  return (
    <table class="key-table">
      <caption class="unseen">{page.workings}</caption>
      <colgroup>
        <col class="key-place" />
        <col />
        <col class="key-answer" />
      </colgroup>
      <thead class="key-heads">
        <tr>
          <th scope="col">{page.question}</th>
          <th scope="col">{page.working}</th>
          <th scope="col" class="number">
            {page.answer}
          </th>
        </tr>
      </thead>
      {written.map((question, i) => (
        <tbody key={question.title}>
          {i === 0 ? (
            <tr>
              <th scope="colgroup" colSpan={3} class="key-head">
                <h2>{fill(page.key, { n: number })}</h2> <span>{page.forTeacher}</span>
              </th>
            </tr>
          ) : null}
          <tr>
            <th scope="rowgroup" colSpan={3} class="key-title">
              {i + 1}. {question.title}
            </th>
          </tr>
          {question.asks.map((ask, place) => (
            <AskRow key={ask.text} ask={ask} place={`${i + 1}${askLetter(place)}`} />
          ))}
        </tbody>
      ))}
    </table>
  );
}
