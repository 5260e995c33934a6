import { useId } from 'preact/hooks';
import { fill } from '../language/fill.ts';
import type { Quantity } from '../language/quantity-formats.ts';
import { useWords } from '../language/words.ts';
import { rulerTicks } from './ruler-ticks.ts';

export interface RulerSliderProps {
  readonly label: string;
  readonly help?: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** A value in words and units; used for the value shown, the value spoken and the numbers on the ruler. */
  readonly quantityOf: (value: number) => Quantity;
  readonly onChange: (value: number) => void;
  /** A range that a source gives, shown as a double notch. */
  readonly published?: { readonly low: number; readonly high: number };
  /** Great marks of its own, such as the first days of months; else the ruler chooses. */
  readonly marks?: readonly { readonly at: number; readonly label: string }[];
  /** Distance of the small marks, where great marks are given. */
  readonly smallMarkEvery?: number;
  readonly disabled?: boolean;
}

const share = (value: number, low: number, high: number): number =>
  Math.min(1, Math.max(0, (value - low) / (high - low)));
// The notch's middle runs from half its width inside the left edge to half its width inside the right one.
const place = (fraction: number): string => `calc(var(--notch) / 2 + (100% - var(--notch)) * ${fraction.toFixed(4)})`;

/** A ruler's numbers carry no idle zeros. */
const short = (number: string): string => number.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');

/** A tailor's ruler with one notch for your value and a double notch for a published one. Underneath, a native slider. */
export function RulerSlider(props: RulerSliderProps) {
  const { label, help, value, low, high, step, quantityOf, onChange, published, disabled = false } = props;
  const { messages } = useWords();
  const id = useId();
  const ticks = rulerTicks(low, high, step, props.smallMarkEvery);
  const marks = props.marks ?? ticks.great.map((at) => ({ at, label: short(quantityOf(at).number) }));
  const now = quantityOf(value);
  const move = (by: number) => {
    const next = Math.min(high, Math.max(low, value + by));
    if (next !== value) onChange(Number(next.toFixed(6)));
  };
  return (
    <div class="ruler-slider">
      <div class="control-head">
        <label class="control-label" for={id}>
          {label}
        </label>
        <output class="control-value" for={id}>
          {now.text}
        </output>
      </div>
      <div class="ruler-row">
        <button
          type="button"
          class="patch patch-button step-button"
          data-cut="2"
          aria-label={fill(messages.common.stepDown, { label })}
          aria-disabled={value <= low || disabled ? true : undefined}
          onClick={() => !disabled && move(-step)}
        >
          <span aria-hidden="true">−</span>
        </button>
        <div class="ruler">
          <div class="ruler-marks" aria-hidden="true">
            {ticks.small.map((at) => (
              <i key={at} class="tick" style={{ left: place(share(at, low, high)) }} />
            ))}
            {marks.map(({ at, label: text }) => (
              <i key={`great ${at}`} class="tick great" style={{ left: place(share(at, low, high)) }}>
                <span>{text}</span>
              </i>
            ))}
            {published ? (
              <span
                class="published-range"
                style={{
                  left: place(share(published.low, low, high)),
                  right: `calc(100% - (${place(share(published.high, low, high))}))`,
                }}
              >
                <span class="double-notch" />
                <span class="double-notch" />
              </span>
            ) : null}
          </div>
          <input
            id={id}
            type="range"
            min={low}
            max={high}
            step={step}
            value={value}
            disabled={disabled}
            aria-valuetext={now.spoken}
            aria-describedby={help || published ? `${id}-help` : undefined}
            onInput={(event) => onChange(Number(event.currentTarget.value))}
          />
        </div>
        <button
          type="button"
          class="patch patch-button step-button"
          data-cut="3"
          aria-label={fill(messages.common.stepUp, { label })}
          aria-disabled={value >= high || disabled ? true : undefined}
          onClick={() => !disabled && move(step)}
        >
          <span aria-hidden="true">+</span>
        </button>
      </div>
      {help || published ? (
        <p id={`${id}-help`} class="caption">
          {published ? (
            <span class="published-words">
              <span class="double-notch" aria-hidden="true" />{' '}
              {fill(messages.common.published, {
                low: quantityOf(published.low).text,
                high: quantityOf(published.high).text,
              })}
              .{' '}
            </span>
          ) : null}
          {help}
        </p>
      ) : null}
    </div>
  );
}
