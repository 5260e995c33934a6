import type { RefObject } from 'preact';
import { Fragment } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import type { StationId } from '../../model/station.ts';
import { predictions } from '../../predict/predictions.ts';
import { Pin } from '../../ui/pin.tsx';
import { WorkingNumber } from '../../ui/working-number.tsx';
import { WorkingPlace } from '../../ui/working-place.tsx';
import { answerText, guessQuantity, whyText } from './predict-text.ts';
import { predictWords } from './predict-words.ts';

export interface PredictResultProps {
  readonly season: Season;
  readonly station: StationId;
  readonly guess: number;
  readonly heading: RefObject<HTMLHeadingElement | null>;
}

/** The longest the tape may be where the range has no useful end: this much beyond the larger of the two. */
const beyond = 1.25;

/** A guess beside what the season gave: two marks on one tape, two lines, and why. No score. */
export function PredictResult({ season, station, guess, heading }: PredictResultProps) {
  const words = useWords();
  const said = predictWords(words.language);
  const id = useId();
  const answer = answerText(season, station, words);
  if (!answer) return null;
  const { quantity, low, high, choices, typed } = predictions[station];
  const end = choices || typed ? Math.max(guess, answer.value, 1) * beyond : high;
  const at = (value: number) => ({
    left: `${(100 * Math.min(1, Math.max(0, (value - low) / (end - low)))).toFixed(2)}%`,
  });
  const why = whyText(season, station, words);
  const sources = [answer.source, ...why.flat().flatMap((piece) => (typeof piece === 'string' ? [] : [piece.source]))];
  return (
    <section class="predict-panel" data-state="answered" aria-labelledby={id}>
      <h2 id={id} ref={heading} tabIndex={-1}>
        {said.asked[station].question}
      </h2>
      <div class="predict-tape" aria-hidden="true">
        <span class="tape-guess" style={at(guess)}>
          <Pin />
        </span>
        <span class="tape-answer" style={at(answer.value)} />
      </div>
      <dl>
        <div>
          <dt>
            <Pin />
            {said.yourGuess}
          </dt>
          <dd>{guessQuantity(quantity, guess, words).text}</dd>
        </div>
        <div class="answer">
          <dt>
            <span class="tape-answer" aria-hidden="true" />
            {said.thisSeason}
          </dt>
          <dd>
            <WorkingNumber text={answer.text} source={answer.source} />
          </dd>
        </div>
      </dl>
      <p>
        {why.map((sentence, i) => (
          <Fragment key={i}>
            {i > 0 ? ' ' : null}
            {sentence.map((piece, k) =>
              typeof piece === 'string' ? (
                <Fragment key={k}>{piece}</Fragment>
              ) : (
                <WorkingNumber key={k} text={piece.text} source={piece.source} />
              ),
            )}
          </Fragment>
        ))}
      </p>
      <WorkingPlace sources={sources} />
    </section>
  );
}
