import { useId } from 'preact/hooks';

export interface SelectFieldProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChoose: (value: Value) => void;
}

/** A choice among many. */
export function SelectField<Value extends string>({ label, value, options, onChoose }: SelectFieldProps<Value>) {
  const id = useId();
  return (
    <div class="bench-field bench-select">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => {
          const chosen = options[event.currentTarget.selectedIndex];
          if (chosen) onChoose(chosen.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value} selected={option.value === value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Options from a list of names. */
export const optionsOf = <Value extends string>(names: Readonly<Record<Value, string>>) =>
  (Object.entries(names) as [Value, string][]).map(([value, label]) => ({ value, label }));
