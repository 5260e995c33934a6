import { fill } from '../../../language/fill.ts';
import { figureOf } from './figures/figure-of.ts';
import type { WrittenAsk, WrittenQuestion, WrittenTable } from './question-text.ts';
import { askLetter, type PaperSheetProps } from './sheet-set.tsx';
import { questionMm, sidesOf, tableColumns } from './sides.ts';

/** A table of a question, long ones in columns beside each other. */
function QuestionTable({ table, label }: { readonly table: WrittenTable; readonly label: string }) {
  const { heads } = table;
  const columns = tableColumns(table);
  return (
    <div class="sheet-tables">
      {columns.map((column, i) => (
        <table key={column[0]![0]} aria-label={columns.length > 1 ? `${label} ${i + 1}` : label}>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {column.map((row) => (
              <tr key={row[0]}>
                {row.map((cell, place) =>
                  place === 0 ? (
                    <th key={heads[place]} scope="row">
                      {cell}
                    </th>
                  ) : (
                    <td key={heads[place]}>{cell}</td>
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </div>
  );
}

/** One thing asked, with room to work it out and a place for the answer in its unit. */
function AskOnPaper({ ask, letter }: { readonly ask: WrittenAsk; readonly letter: string }) {
  const { text, rounding, unit } = ask;
  return (
    <li>
      <p class="sheet-ask">
        <b>{letter}</b> {text} {rounding ? <i>({rounding})</i> : null}
      </p>
      <p class="sheet-working">
        <span class="sheet-answer">
          {unit === '$' ? '$' : ''}
          <span class="sheet-blank" />
          {unit === '$' ? '' : unit}
        </span>
      </p>
    </li>
  );
}

function QuestionOnPaper({
  question,
  number,
  words,
}: {
  readonly question: WrittenQuestion;
  readonly number: string;
  readonly words: PaperSheetProps['words'];
}) {
  const { kind, level, title, text, table, asks, labels, sizes } = question;
  const Figure = figureOf(kind, level);
  return (
    <li class="sheet-question">
      <h3>
        <span class="sheet-number-mark">{number}</span> {title}
      </h3>
      <div class="sheet-told" data-beside={Figure || table ? '' : undefined}>
        <p class="sheet-text">{text}</p>
        {table ? <QuestionTable table={table} label={title} /> : null}
        {Figure ? <Figure labels={labels} sizes={sizes} words={words.questions.drawn} /> : null}
      </div>
      <ol class="sheet-asks">
        {asks.map((ask, i) => (
          <AskOnPaper key={ask.text} ask={ask} letter={askLetter(i)} />
        ))}
      </ol>
    </li>
  );
}

/** One pupil's sheet, side by side of the paper: lines for name and date, the rule of rounding, and the questions with room to work. No answers. */
export function Worksheet({ number, label, written, words, bothSides }: PaperSheetProps) {
  const { page } = words;
  const sides = sidesOf(
    written.map((question) => questionMm(question, figureOf(question.kind, question.level) !== null)),
  );
  const title = fill(page.sheet, { n: number });
  return (
    <>
      {sides.map((places, side) => (
        <div key={places[0]} class="paper-side">
          <header class="sheet-head">
            {side === 0 ? <h2>{title}</h2> : <p class="sheet-title">{title}</p>}
            <p class="sheet-name">
              {page.name} <span class="sheet-blank" />
            </p>
            <p class="sheet-name sheet-date">
              {page.date} <span class="sheet-blank" />
            </p>
          </header>
          {side === 0 ? <p class="sheet-rule">{page.rule}</p> : null}
          <ol class="sheet-questions">
            {places.map((place) => (
              <QuestionOnPaper
                key={written[place]!.title}
                question={written[place]!}
                number={String(place + 1)}
                words={words}
              />
            ))}
          </ol>
          <footer class="sheet-foot">
            <span>
              {label} {page.free}
            </span>
            <b class="no-wrap">{fill(page.side, { n: String(side + 1), all: String(sides.length) })}</b>
          </footer>
        </div>
      ))}
      {bothSides && sides.length % 2 === 1 ? <p class="paper-side paper-empty">{page.emptySide}</p> : null}
    </>
  );
}
