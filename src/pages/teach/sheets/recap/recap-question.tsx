import { useId, useState } from 'preact/hooks';
import { fill } from '../../../../language/fill.ts';
import type { recap } from '../../../../language/messages/en/recap.ts';
import { askLetter } from '../sheet-set.tsx';

export type RecapWords = typeof recap;
export type RecapId = keyof RecapWords['questions'];

export interface RecapQuestionProps {
  readonly number: string;
  readonly id: RecapId;
  readonly words: RecapWords;
}

/** A question with its options; what is chosen is explained at once. On paper the explanation stays away. */
export function RecapQuestion({ number, id, words }: RecapQuestionProps) {
  const { ask, options, right } = words.questions[id];
  const name = useId();
  const [chosen, setChosen] = useState<number | null>(null);
  return (
    <fieldset class="recap-question">
      <legend>
        {number}. {ask}
      </legend>
      {options.map(({ says }, i) => (
        <label key={says} class="recap-option" data-right={chosen !== null && i === right ? '' : undefined}>
          <input type="radio" name={name} checked={chosen === i} onChange={() => setChosen(i)} />
          <span>
            <b>{askLetter(i)}</b> {says}
          </span>
        </label>
      ))}
      <p role="status" class="recap-why no-print">
        {chosen === null ? null : (
          <>
            <b>{chosen === right ? words.right : words.wrong}</b> {options[chosen]!.why}
          </>
        )}
      </p>
    </fieldset>
  );
}

/** The same question for the teacher's paper: every option with its reason. */
export function RecapAnswer({ number, id, words }: RecapQuestionProps) {
  const { ask, options, right } = words.questions[id];
  return (
    <section class="recap-question">
      <h3>
        {number}. {ask}
      </h3>
      <p>
        <b>{fill(words.answer, { letter: askLetter(right) })}</b>
      </p>
      <ul class="recap-reasons">
        {options.map(({ says, why }, i) => (
          <li key={says}>
            <b>{askLetter(i)}</b> {says}: <i>{why}</i>
          </li>
        ))}
      </ul>
    </section>
  );
}
