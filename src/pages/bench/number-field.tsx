import { useEffect, useId, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { numberWithin } from '../../model/bench/check-set-up.ts';

export interface NumberFieldProps {
  readonly label: string;
  readonly value: number;
  readonly limits: { readonly low: number; readonly high: number; readonly unit: string };
  readonly step: number;
  readonly decimals: number;
  /** What one of the model's units is in the unit shown; 1 where they are the same. */
  readonly factor?: number;
  readonly isWhole?: boolean;
  readonly onChange: (value: number) => void;
}

/** A number to type or to slide. What does not fit is said beside it, and the value before stays in force. */
export function NumberField(props: NumberFieldProps) {
  const { label, value, limits, step, decimals, factor = 1, isWhole = false, onChange } = props;
  const { messages, formats } = useWords();
  const shown = (value * factor).toFixed(decimals);
  // While it is typed in, it keeps what was typed, though half a number may already be in force.
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? shown;
  // Changed from elsewhere, by the slider or another cotton, it lets go of what was typed.
  useEffect(() => {
    const own = typed === null ? null : numberWithin(label, typed, { ...limits, low: -Infinity, high: Infinity });
    if (own && !('value' in own && Math.abs(own.value - value * factor) < 10 ** -decimals)) setTyped(null);
  }, [value]);
  const id = useId();
  const low = limits.low * factor;
  const high = limits.high * factor;
  const read = numberWithin(label, text, { low, high, unit: limits.unit }, isWhole);
  const wrong = 'problem' in read;
  return (
    <div class="bench-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        class="bench-number"
        type="text"
        inputMode="decimal"
        value={text}
        aria-invalid={wrong}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onInput={(event) => {
          const entry = event.currentTarget.value;
          setTyped(entry);
          const now = numberWithin(label, entry, { low, high, unit: limits.unit }, isWhole);
          if ('value' in now) onChange(now.value / factor);
        }}
        onBlur={() => setTyped(null)}
      />
      <input
        type="range"
        aria-label={label}
        min={low}
        max={high}
        step={step}
        value={value * factor}
        onInput={(event) => onChange(Number(event.currentTarget.value) / factor)}
      />
      {wrong ? (
        <p id={`${id}-wrong`} class="caption refusal" role="alert">
          {fill(messages.problems.range, {
            low: formats.number(low, decimals),
            high: formats.number(high, decimals),
          })}
        </p>
      ) : null}
    </div>
  );
}
