import { useEffect, useId, useState } from 'preact/hooks';
import { problemText } from '../../language/problem-text.ts';
import { useWords } from '../../language/words.ts';

export interface TypedNumberProps {
  readonly label: string;
  readonly value: number;
  /** In the unit that is typed. */
  readonly limits: { readonly low: number; readonly high: number; readonly unit: string };
  readonly whole?: boolean;
  readonly onValue: (value: number) => void;
}

const shown = (value: number) => String(Number(value.toFixed(3)));

/** A number to type. What is not allowed is named, and the last allowed one stays in force. */
export function TypedNumber({ label, value, limits, whole = false, onValue }: TypedNumberProps) {
  const { messages, formats } = useWords();
  const id = useId();
  const [typed, setTyped] = useState(shown(value));
  const [refused, setRefused] = useState<string | null>(null);
  useEffect(() => {
    setTyped(shown(value));
    setRefused(null);
  }, [value]);
  const read = (text: string) => {
    setTyped(text);
    const number = Number(text);
    const { low, high, unit } = limits;
    if (text.trim() !== '' && number >= low && number <= high && (!whole || Number.isInteger(number))) {
      setRefused(null);
      if (number !== value) onValue(number);
      return;
    }
    const rule = { kind: 'range', low, high, step: whole ? 1 : null, unit } as const;
    setRefused(problemText({ field: label, value: text.trim() || 'nothing', rule }, messages, formats));
  };
  return (
    <div class="typed-field">
      <label class="control-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="typed"
        inputMode={whole ? 'numeric' : 'decimal'}
        autoComplete="off"
        value={typed}
        aria-invalid={refused !== null}
        aria-describedby={refused === null ? undefined : `${id}-refused`}
        onInput={(event) => read(event.currentTarget.value)}
      />
      {refused === null ? null : (
        <p id={`${id}-refused`} class="caption refusal" role="alert">
          {refused}
        </p>
      )}
    </div>
  );
}
