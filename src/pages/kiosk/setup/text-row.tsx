import { useId, useState } from 'preact/hooks';

export interface TextRowProps {
  readonly label: string;
  readonly value: string;
  readonly help?: string;
  /** Said where what was typed may not stand. */
  readonly rule: string;
  readonly mostLetters: number;
  readonly mayStand: (text: string) => boolean;
  readonly onChange: (text: string) => void;
}

/** One line to type. What may not stand is said beside it, and the line before stays in force. */
export function TextRow({ label, value, help, rule, mostLetters, mayStand, onChange }: TextRowProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const text = typed ?? value;
  const isWrong = !mayStand(text.trim());
  return (
    <div class="setup-field">
      <label class="control-label" for={id}>
        {label}
      </label>
      <input
        id={id}
        class="setup-typed"
        type="text"
        autocomplete="off"
        spellcheck={false}
        maxLength={mostLetters}
        value={text}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? `${id}-wrong` : help ? `${id}-help` : undefined}
        onInput={({ currentTarget }) => {
          setTyped(currentTarget.value);
          const next = currentTarget.value.trim();
          if (mayStand(next)) onChange(next);
        }}
        onBlur={() => setTyped(null)}
      />
      {isWrong ? (
        <p id={`${id}-wrong`} class="refusal">
          {rule}
        </p>
      ) : null}
      {help ? (
        <p id={`${id}-help`} class="caption">
          {help}
        </p>
      ) : null}
    </div>
  );
}
