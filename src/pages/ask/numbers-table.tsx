import { Fragment } from 'preact';
import type { Answer } from '../../compare/questions/question.ts';
import { fill } from '../../language/fill.ts';
import type { QuestionWords } from '../../language/messages/en/ask/question-words.ts';
import { useWords } from '../../language/words.ts';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingRow } from '../../ui/working-place.tsx';
import { workingSource } from '../season/working-source.ts';
import { amountText } from './answer-text.ts';
import type { AskWords } from './use-ask-words.ts';

export interface NumbersTableProps {
  readonly answer: Answer;
  readonly question: QuestionWords;
  readonly asked: AskWords;
}

/** The numbers of the seasons shown, side by side; each opens its working. */
export function NumbersTable({ answer, question, asked }: NumbersTableProps) {
  const words = useWords();
  const { formats } = words;
  const names: Readonly<Record<string, string>> = { ...asked.lines, ...question.numbers };
  const seasons = [...new Set(answer.sides.map(({ seed }) => fill(asked.oneSeason, { seed: formats.count(seed) })))];
  return (
    <section class="ask-numbers" aria-labelledby="ask-numbers">
      <h2 id="ask-numbers">{asked.numbers}</h2>
      <p class="caption">{fill(asked.numbersNote, { seasons: formats.list(seasons) })}</p>
      <table aria-labelledby="ask-numbers">
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{asked.numbers}</span>
            </th>
            {question.sides.map((name) => (
              <th key={name} scope="col" class="number">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {answer.shown.map(({ name, cells }) => {
            const sources = cells.map((cell, side) =>
              cell
                ? workingSource(
                    answer.sides[side]!,
                    words,
                    cell.asked,
                    `${names[name]}, ${question.sides[side]}`,
                    `${side}/${name}/`,
                  )
                : undefined,
            );
            return (
              <Fragment key={name}>
                <tr>
                  <th scope="row">{names[name]}</th>
                  {cells.map((cell, side) => (
                    <td key={question.sides[side]} class="number">
                      {cell ? (
                        <WorkingNumber text={amountText(cell.value, words, asked)} source={sources[side]} />
                      ) : (
                        '–'
                      )}
                    </td>
                  ))}
                </tr>
                <WorkingRow sources={sources} columns={1 + cells.length} />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
