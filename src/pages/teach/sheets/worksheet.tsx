import { fill } from '../../../language/fill.ts';
import type { WrittenQuestion, WrittenTable } from './question-text.ts';
import { askLetter, type PaperSheetProps } from './sheet-set.tsx';

/** Rows of a long table stand in so many columns, so that a chart takes a strip of the page and not a page. */
const rowsInColumn = 6;

/** A table of a question, long ones in columns beside each other. */
function QuestionTable({ table: { heads, rows }, label }: { readonly table: WrittenTable; readonly label: string }) {
  const columns: (typeof rows)[] = [];
  const size = rows.length > 2 * rowsInColumn ? rowsInColumn : rows.length;
  for (let at = 0; at < rows.length; at += size) columns.push(rows.slice(at, at + size));
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

function QuestionOnPaper({ question, number }: { readonly question: WrittenQuestion; readonly number: number }) {
  return (
    <li class="sheet-question">
      <h3>
        {number}. {question.title}
      </h3>
      <p class="sheet-text">{question.text}</p>
      {question.table ? <QuestionTable table={question.table} label={question.title} /> : null}
      <ol class="sheet-asks">
        {question.asks.map(({ text, rounding, unit }, i) => (
          <li key={text}>
            <p class="sheet-ask">
              <b>{askLetter(i)}</b> {text} {rounding ? <i>({rounding})</i> : null}
            </p>
            <p class="sheet-answer">
              {unit === '$' ? '$' : ''}
              <span class="sheet-blank" />
              {unit === '$' ? '' : unit}
            </p>
          </li>
        ))}
      </ol>
    </li>
  );
}

/** One pupil's sheet: a line for the name, the rule of rounding, and the questions with room to work. No answers. */
export function Worksheet({ number, label, written, words: { page } }: PaperSheetProps) {
  return (
    <>
      <header class="sheet-head">
        <h2>{fill(page.sheet, { n: number })}</h2>
        <p class="sheet-name">
          {page.name} <span class="sheet-blank" />
        </p>
        <p class="sheet-name sheet-date">
          {page.date} <span class="sheet-blank" />
        </p>
      </header>
      <p class="sheet-rule">{page.rule}</p>
      <ol class="sheet-questions">
        {written.map((question, i) => (
          <QuestionOnPaper key={question.title} question={question} number={i + 1} />
        ))}
      </ol>
      <footer class="sheet-foot">
        {label} {page.free}
      </footer>
    </>
  );
}
