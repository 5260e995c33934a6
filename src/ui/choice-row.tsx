import { useId } from 'preact/hooks';
import { cutOf } from './cut-of.ts';
import { Pin } from './pin.tsx';

export interface ChoiceRowProps<Value extends string | number> {
  /** What is being chosen. */
  readonly label: string;
  readonly help?: string;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly value: Value | null;
  readonly onChoose: (value: Value) => void;
  /** The choice is pinned and basted, not yet sewn: a guess, or a decision that does not count yet. */
  readonly basted?: boolean;
  readonly disabled?: boolean;
  /** Hides the label from sight, where a heading beside the row already says it. */
  readonly labelUnseen?: boolean;
}

/** A row of pieces of which one is chosen: a native radio group, so that arrow keys and speech work as everywhere. */
export function ChoiceRow<Value extends string | number>(props: ChoiceRowProps<Value>) {
  const { label, help, options, value, onChoose, basted = false, disabled = false, labelUnseen = false } = props;
  const id = useId();
  return (
    <fieldset class="choice-row" aria-describedby={help ? `${id}-help` : undefined} disabled={disabled}>
      <legend class={labelUnseen ? 'unseen' : 'control-label'}>{label}</legend>
      <div class="choices">
        {options.map((option) => {
          const chosen = option.value === value;
          return (
            <label
              key={option.value}
              class="patch choice"
              data-state={chosen ? (basted ? 'basted' : 'sewn') : 'chalked'}
              data-cut={cutOf(option.label)}
            >
              <input
                type="radio"
                name={id}
                value={String(option.value)}
                checked={chosen}
                onChange={() => onChoose(option.value)}
              />
              <span>{option.label}</span>
              {chosen && basted ? <Pin /> : null}
            </label>
          );
        })}
      </div>
      {help ? (
        <p id={`${id}-help`} class="caption">
          {help}
        </p>
      ) : null}
    </fieldset>
  );
}
