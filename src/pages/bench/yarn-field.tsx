import { useEffect, useId, useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { parseYarnNumber } from '../../model/mill/yarn-number.ts';
import { benchWords } from './bench-words.ts';

export interface YarnFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
}

/** A yarn number as the trade writes it. What cannot be read is said beside it, and the yarn before stays in force. */
export function YarnField({ label, value, onChange }: YarnFieldProps) {
  const { language } = useWords();
  const { yarn: said } = benchWords(language);
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? value;
  // Changed from elsewhere, by another cloth, it lets go of what was typed.
  useEffect(() => setTyped((entry) => (entry?.trim() === value ? entry : null)), [value]);
  const id = useId();
  const wrong = !parseYarnNumber(text).ok;
  return (
    <div class="bench-field bench-yarn-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        class="bench-number"
        type="text"
        autocomplete="off"
        value={text}
        aria-invalid={wrong}
        aria-describedby={`${id}-help`}
        onInput={(event) => {
          const entry = event.currentTarget.value;
          setTyped(entry);
          if (parseYarnNumber(entry).ok) onChange(entry.trim());
        }}
        onBlur={() => setTyped(null)}
      />
      <p id={`${id}-help`} class={wrong ? 'caption refusal' : 'caption'}>
        {said.numberHelp}
      </p>
    </div>
  );
}
