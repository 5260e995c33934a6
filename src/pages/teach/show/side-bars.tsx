import type { Answer, ShownNumber } from '../../../compare/questions/question.ts';
import { useWords } from '../../../language/words.ts';
import { amountText } from '../../ask/answer-text.ts';
import type { AskWords } from '../../ask/use-ask-words.ts';

export interface SideBarsProps {
  readonly answer: Answer;
  readonly asked: AskWords;
  readonly question: string;
}

/** Numbers that are drawn; more would be too small to read from the back. */
const mostNumbers = 2;

/** The longest strip, share of the wall's width in per cent. */
const longestVw = 36;

/** A number of a side as long as a bar can be: 0 where it is none, or below nought. */
function lengthOf({ cells }: ShownNumber, side: number): number {
  const value = cells[side]?.value;
  return value && 'value' in value ? Math.max(0, value.value) : 0;
}

/** The first numbers of a question, the seasons one under the other as strips of cloth. */
export function SideBars({ answer: { shown, sides }, asked, question }: SideBarsProps) {
  const words = useWords();
  const said = asked.questions[question]!;
  const names: Readonly<Record<string, string>> = { ...asked.lines, ...said.numbers };
  return (
    <dl class="show-bars">
      {shown.slice(0, mostNumbers).map((number) => {
        const longest = Math.max(...sides.map((_, side) => lengthOf(number, side)));
        return (
          <div key={number.name}>
            <dt>{names[number.name]}</dt>
            {number.cells.map((cell, side) =>
              cell ? (
                <dd key={said.sides[side]} class="show-bar">
                  <span>{said.sides[side]}</span>
                  <span
                    class="show-strip"
                    data-side={side}
                    style={{ width: `${longest > 0 ? (longestVw * lengthOf(number, side)) / longest : 0}vw` }}
                  />
                  <b>{amountText(cell.value, words, asked)}</b>
                </dd>
              ) : null,
            )}
          </div>
        );
      })}
    </dl>
  );
}
