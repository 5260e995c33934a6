import { useId } from 'preact/hooks';
import { useWords } from '../language/words.ts';

export interface SwitchProps {
  readonly label: string;
  readonly help?: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly disabled?: boolean;
}

/** Yes or no: two pieces, of which one is sewn. One switch for the keyboard and for speech. */
export function Switch({ label, help, on, onChange, disabled = false }: SwitchProps) {
  const { messages } = useWords();
  const id = useId();
  return (
    <div class="switch-row">
      <span id={`${id}-label`} class="control-label">
        {label}
      </span>
      <button
        type="button"
        role="switch"
        class="switch"
        aria-checked={on}
        aria-labelledby={`${id}-label`}
        aria-describedby={help ? `${id}-help` : undefined}
        aria-disabled={disabled ? true : undefined}
        onClick={() => !disabled && onChange(!on)}
      >
        <span class="patch choice" data-cut="2" data-state={on ? 'chalked' : 'sewn'}>
          {messages.common.no}
        </span>
        <span class="patch choice" data-cut="3" data-state={on ? 'sewn' : 'chalked'}>
          {messages.common.yes}
        </span>
      </button>
      {help ? (
        <p id={`${id}-help`} class="caption">
          {help}
        </p>
      ) : null}
    </div>
  );
}
