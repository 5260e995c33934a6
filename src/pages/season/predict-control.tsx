import { useId } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import type { StationId } from '../../model/station.ts';
import { predictions } from '../../predict/predictions.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { RulerSlider } from '../../ui/ruler-slider.tsx';
import { guessQuantity } from './predict-text.ts';
import { predictWords } from './predict-words.ts';

export interface PredictControlProps {
  readonly station: StationId;
  readonly value: number | null;
  readonly invalid: boolean;
  /** Null for what is no number in the range. */
  readonly onValue: (value: number | null) => void;
  /** The guess is made by the key that ends a line. */
  readonly onGive: () => void;
}

/** How a guess is given: on a ruler, from a few pieces, or typed. */
export function PredictControl({ station, value, invalid, onValue, onGive }: PredictControlProps) {
  const words = useWords();
  const said = predictWords(words.language);
  const id = useId();
  const { quantity, low, high, step, choices, typed } = predictions[station];
  if (choices) {
    return (
      <ChoiceRow
        label={said.yourGuess}
        labelUnseen
        options={choices.map((choice) => ({ value: choice, label: guessQuantity(quantity, choice, words).text }))}
        value={value}
        onChoose={onValue}
        basted
      />
    );
  }
  if (typed) {
    const read = (text: string) => {
      const number = Number(text);
      onValue(/^\d+$/.test(text.trim()) && number >= low && number <= high ? number : null);
    };
    return (
      <div class="predict-typed">
        <label class="control-label" for={id}>
          {said.yourGuess}
        </label>
        <input
          id={id}
          inputMode="numeric"
          autoComplete="off"
          aria-invalid={invalid ? true : undefined}
          onInput={(event) => read(event.currentTarget.value)}
          onKeyDown={(event) => event.key === 'Enter' && onGive()}
        />
      </div>
    );
  }
  return (
    <RulerSlider
      label={said.yourGuess}
      value={value ?? low}
      low={low}
      high={high}
      step={step}
      quantityOf={(guess) => guessQuantity(quantity, guess, words)}
      onChange={onValue}
    />
  );
}
