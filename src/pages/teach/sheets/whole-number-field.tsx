import { useId, useState } from 'preact/hooks';
import { fill } from '../../../language/fill.ts';
import { useWords } from '../../../language/words.ts';
import { wholeWithin } from './sheet-choice.ts';

export interface WholeNumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly limits: { readonly low: number; readonly high: number };
  /** What is allowed, with {low} and {high}. */
  readonly rule: string;
  readonly help?: string;
  readonly onChange: (value: number) => void;
}

/** A whole number to type. What does not fit is said beside it, and the number before stays in force. */
export function WholeNumberField({ label, value, limits, rule, help, onChange }: WholeNumberFieldProps) {
  const { formats } = useWords();
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const text = typed ?? String(value);
  const isWrong = wholeWithin(text, limits) === null;
  return (
    <div class="sheet-number">
      <label class="control-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        type="text"
        inputMode="numeric"
        value={text}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : undefined}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          const now = wholeWithin(event.currentTarget.value, limits);
          if (now !== null) onChange(now);
        }}
        onBlur={() => setTyped(null)}
      />
      {isWrong ? (
        <p id={`${id}-wrong`} class="refusal">
          {fill(rule, { low: formats.count(limits.low), high: formats.count(limits.high) })}
        </p>
      ) : null}
      {help ? <p class="caption">{help}</p> : null}
    </div>
  );
}
