import { useId, useState } from 'preact/hooks';
import { useWords } from '../../../language/words.ts';
import { PatchButton } from '../../../ui/patch-button.tsx';
import { RulerSlider } from '../../../ui/ruler-slider.tsx';
import { useLesson } from '../lesson-frame.ts';
import { numberText } from '../number-text.ts';
import { computedNumber, Num } from './num.tsx';
import { Said } from './said.tsx';

/** A guess before the answer: a ruler to set, then the model's number beside the guess. Without scripts the answer lies in a fold. */
export function Prediction() {
  const words = useWords();
  const { matter, words: lessons, still } = useLesson();
  const { ask, of, low, high, step, told } = matter.prediction;
  const said = lessons.sentence;
  const id = useId();
  const [guess, setGuess] = useState((low + high) / 2);
  const [seen, setSeen] = useState(false);
  const answer = computedNumber(of);
  const quantityOf = (value: number) => numberText({ ...answer, value }, words, lessons);
  const answered = (
    <p class="prediction-told">
      <b>
        {said.model}: <Num of={of} />.
      </b>{' '}
      <Said text={told} />
    </p>
  );
  return (
    <section class="prediction" aria-labelledby={id}>
      <h2 id={id}>{said.guess}</h2>
      <p>
        <Said text={ask} />
      </p>
      {still ? (
        <details>
          <summary>{said.answer}</summary>
          {answered}
        </details>
      ) : (
        <>
          <RulerSlider
            label={said.yourGuess}
            value={guess}
            low={low}
            high={high}
            step={step}
            quantityOf={quantityOf}
            disabled={seen}
            onChange={setGuess}
          />
          <p class="prediction-press">
            <PatchButton ink={seen ? 'paper' : 'weld'} onPress={() => setSeen(!seen)}>
              {seen ? said.again : said.see}
            </PatchButton>
          </p>
          <div role="status">
            {seen ? (
              <>
                <p>
                  {said.yourGuess}: {quantityOf(guess).text}.
                </p>
                {answered}
              </>
            ) : null}
          </div>
        </>
      )}
    </section>
  );
}
