import { useWords } from '../../../language/words.ts';
import { computedOf } from '../../../lessons/computed/all-computed.ts';
import { factNumber } from '../../../lessons/fact-number.ts';
import { TrustMark } from '../../../ui/trust-mark.tsx';
import { type LessonFrame, useLesson } from '../lesson-frame.ts';
import { bothTexts, numberText, type Writable } from '../number-text.ts';

export interface NumProps {
  /** A constant by its name in the list of facts. */
  readonly fact?: string;
  /** A computed number by its id. */
  readonly of?: string;
  /** How the number is written, where its unit can be written in several ways. */
  readonly as?: string;
}

/** Place of a fact or a computed number in the page's list of sources, from one. */
const placeOf = ({ facts, computed }: LessonFrame, name: string): number => [...facts, ...computed].indexOf(name) + 1;

/** A computed number ready to be written. @throws RangeError for an unknown id */
export function computedNumber(id: string): Writable {
  const known = computedOf(id);
  if (!known) throw new RangeError(`no computed number named ${id}`);
  const { as, decimals } = known;
  return decimals === undefined ? { as, value: known.value() } : { as, value: known.value(), decimals };
}

/** A number with its unit and what it rests on: the way every number of a lesson is written. */
export function Num({ fact, of, as }: NumProps) {
  const words = useWords();
  const frame = useLesson();
  const known = fact === undefined ? null : factNumber(fact, as);
  const name = fact ?? of ?? '';
  const number = known ?? computedNumber(name);
  if (frame.still) {
    const place = String(placeOf(frame, name));
    return (
      <span class="num">
        {bothTexts(number, words, frame.words)}
        <a class="num-source" href={`#source-${place}`} aria-label={frame.words.sentence.source.replace('{n}', place)}>
          {place}
        </a>
      </span>
    );
  }
  const { text } = numberText(number, words, frame.words);
  const trust = known?.fact ?? computedOf(name)?.restsOn;
  return (
    <span class="num">
      {text}
      {trust ? <TrustMark trust={trust} label={text} /> : null}
    </span>
  );
}
